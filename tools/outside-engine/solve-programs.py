#!/usr/bin/env python3
"""Optima of convex quadratic programs by a solver that is not ours, to hold the Body room's own solver to.

    solve-programs.py programs.json solutions.json
    solve-programs.py --self-test [count]

Reads a list of programs {"name"?, "d": [...], "c": [...], "a": [[row, column, value], ...], "b": [...],
"lower": [...], "upper": [...]}: minimize sum 1/2 d x^2 + c x subject to A x = b, lower <= x <= upper (null: no bound).
Bounds may be left out; d must not be negative.

Writes {"solver", "script", "solutions": [{"name"?, "status", "x", "objective", "equalityMultipliers", "polished", "residuals"}]}.
Status is "optimal", "infeasible", "unbounded" or "unsolved". The interior-point answer of cvxopt is polished: the bounds it touches are
taken as known, the optimality equations are solved for them in full, and bounds are exchanged until every sign is right.
The residuals say how well the conditions of the optimum hold: equality and bounds (in x, over 1 + the largest number of the
row or bound), stationarity and sign of the bound multipliers (over 1 + the largest |c|), complementarity, and the duality gap over
1 + |objective|. An answer whose residuals are not tiny is "unsolved", never handed out as an optimum.
"polished" false means that the interior-point answer stands as it is. "unique" false means that other x reach the same objective.
Multipliers y are those of L = objective - y (A x - b).

Needs Debian's python3-cvxopt, python3-numpy and python3-scipy.
"""
import copy
import json
import math
import sys

import cvxopt
import cvxopt.solvers
import numpy as np
import scipy.linalg
from scipy.optimize import linprog

SCRIPT = "1.0.0"
SOLVER = f"cvxopt {cvxopt.__version__} (coneqp), polished with numpy {np.__version__}"
ACCEPTED = 1e-9
# The polish makes up for a looser end, which the solver needs where only few x are feasible.
ENDS = [1e-12, 1e-9, 1e-7, 1e-5]


class Program:
    """A program as arrays, with its scaled form for the interior-point solver."""

    def __init__(self, text):
        self.name = text.get("name")
        self.d = np.array(text["d"], float)
        self.c = np.array(text["c"], float)
        self.b = np.array(text["b"], float)
        n = len(self.d)
        if len(self.c) != n or not (np.isfinite(self.d).all() and np.isfinite(self.c).all() and np.isfinite(self.b).all()):
            raise ValueError(f"{self.name}: d and c must be finite and of one length, b finite.")
        if (self.d < 0).any():
            raise ValueError(f"{self.name}: a negative d is not convex.")
        self.a = np.zeros((len(self.b), n))
        for row, column, value in text["a"]:
            self.a[row, column] += value
        self.lower = self.bounds(text.get("lower"), -math.inf, n)
        self.upper = self.bounds(text.get("upper"), math.inf, n)
        if (self.lower > self.upper).any():
            raise ValueError(f"{self.name}: a lower bound lies over its upper one.")

    @staticmethod
    def bounds(values, missing, n):
        if values is None:
            return np.full(n, missing)
        if len(values) != n:
            raise ValueError("One bound is needed for each variable, or null.")
        return np.array([missing if v is None else v for v in values], float)

    def without(self, fixed):
        """The program of the other variables, these at their one value."""
        rest = copy.copy(self)
        rest.b = self.b - self.a[:, fixed] @ self.lower[fixed]
        # What cancels must be nothing, or an empty row would seem to ask for its rounding.
        rest.b[np.abs(rest.b) < 1e-14 * (1 + np.abs(self.a[:, fixed]) @ np.abs(self.lower[fixed]))] = 0
        rest.a = self.a[:, ~fixed]
        rest.d, rest.c, rest.lower, rest.upper = (v[~fixed] for v in (self.d, self.c, self.lower, self.upper))
        return rest

    def objective(self, x):
        return math.fsum([0.5 * d * v * v for d, v in zip(self.d, x)] + [c * v for c, v in zip(self.c, x)])


def independent_rows(a, b):
    """Indexes of rows that are not sums of others, after dividing each by its largest number; None when b contradicts A."""
    size = np.abs(a).max(axis=1, initial=0)
    if (b[size == 0] != 0).any():
        return None
    used = np.flatnonzero(size > 0)
    if len(used) == 0:
        return used
    scaled = a[used] / size[used, None]
    _, r, order = scipy.linalg.qr(scaled.T, mode="economic", pivoting=True)
    diagonal = np.abs(np.diag(r))
    rank = int((diagonal > 1e-12 * diagonal[0]).sum())
    kept = np.sort(order[:rank])
    rest = np.sort(order[rank:])
    if len(rest):
        mix = np.linalg.lstsq(scaled[kept].T, scaled[rest].T, rcond=None)[0]
        expected = mix.T @ (b[used] / size[used])[kept]
        if np.abs(expected - (b[used] / size[used])[rest]).max() > 1e-9 * (1 + np.abs(b[used] / size[used]).max()):
            return None
    return used[kept]


def interior(p, rows, end):
    """The interior-point answer: x, multipliers of the lower and upper bounds. Rows and variables are scaled for the solver."""
    n = len(p.d)
    span = np.where(np.isfinite(p.upper) & np.isfinite(p.lower) & (p.upper > p.lower), p.upper - p.lower, 0)
    unit = np.where(span > 0, span, np.where(p.d > 0, 1 / np.sqrt(np.where(p.d > 0, p.d, 1)), 1))
    a = p.a[rows] * unit
    size = np.abs(a).max(axis=1, initial=0) if len(rows) else np.zeros(0)
    a, b = a / size[:, None], p.b[rows] / size
    d, c = p.d * unit ** 2, p.c * unit
    weight = max(np.abs(d).max(initial=0), np.abs(c).max(initial=0), 1e-300)
    below = np.flatnonzero(np.isfinite(p.lower))
    above = np.flatnonzero(np.isfinite(p.upper))
    g = np.zeros((len(below) + len(above), n))
    g[np.arange(len(below)), below] = -1
    g[len(below) + np.arange(len(above)), above] = 1
    h = np.concatenate([-(p.lower / unit)[below], (p.upper / unit)[above]])
    cvxopt.solvers.options.update({"show_progress": False, "abstol": end, "reltol": end, "feastol": end, "maxiters": 200})
    matrix = cvxopt.matrix
    equality = (matrix(a), matrix(b)) if len(rows) else (None, None)
    # cvxopt wants at least one inequality; this one always holds.
    if len(h) == 0:
        g, h = np.zeros((1, n)), np.ones(1)
    answer = cvxopt.solvers.coneqp(matrix(np.diag(d / weight)), matrix(c / weight), matrix(g), matrix(h), None, *equality)
    x = np.array(answer["x"]).ravel() * unit
    z = np.array(answer["z"]).ravel() * weight
    z_low, z_high = np.zeros(n), np.zeros(n)
    z_low[below] = z[:len(below)] / unit[below]
    z_high[above] = z[len(below):len(below) + len(above)] / unit[above]
    return x, z_low, z_high


def why_not(p, rows):
    """Why no optimum was found, by linear programs of another library (HiGHS): no x at all, or a way down without end."""
    size = np.abs(p.a[rows]).max(axis=1, initial=0)[:, None]
    a = p.a[rows] / size if len(rows) else None
    if linprog(np.zeros(len(p.d)), A_eq=a, b_eq=p.b[rows] / size[:, 0] if len(rows) else None,
               bounds=list(zip(p.lower, p.upper)), method="highs").status == 2:
        return "infeasible"
    ways = [(0 if d > 0 or math.isfinite(low) else -1, 0 if d > 0 or math.isfinite(high) else 1)
            for d, low, high in zip(p.d, p.lower, p.upper)]
    down = linprog(p.c, A_eq=a, b_eq=np.zeros(len(rows)) if len(rows) else None, bounds=ways, method="highs")
    return "unbounded" if down.status == 0 and down.fun < -1e-7 * (1 + np.abs(p.c).max(initial=0)) else "unsolved"


def refined(matrix, right):
    """Solves a symmetric system and mends the answer with residuals in longer arithmetic; also whether it has one answer only."""
    scale = 1 / np.sqrt(np.maximum(np.abs(matrix).max(axis=1), 1e-300))
    m = matrix * scale[:, None] * scale
    long = m.astype(np.longdouble)
    target = (right * scale).astype(np.longdouble)
    single = np.linalg.matrix_rank(m) == len(m)
    solve = (lambda r, f=scipy.linalg.lu_factor(m): scipy.linalg.lu_solve(f, r)) if single else (
        lambda r: np.linalg.lstsq(m, r, rcond=None)[0])
    x = np.zeros(len(m), np.longdouble)
    for _ in range(4):
        x = x + solve((target - long @ x).astype(float))
    return (x * scale).astype(float), single


def stationary(p, rows, at_low, at_high):
    """The optimum with some variables held at their bounds: x, y, reduced gradient, whether there is only one."""
    free = ~(at_low | at_high)
    x = np.where(at_low, p.lower, np.where(at_high, p.upper, 0.0))
    k = int(free.sum())
    a = p.a[np.ix_(rows, np.flatnonzero(free))]
    matrix = np.zeros((k + len(rows), k + len(rows)))
    matrix[:k, :k] = np.diag(p.d[free])
    matrix[:k, k:] = -a.T
    matrix[k:, :k] = -a
    right = np.concatenate([-p.c[free], -(p.b[rows] - p.a[rows] @ np.where(free, 0, x))])
    answer, single = refined(matrix, right) if len(matrix) else (np.zeros(0), True)
    x[free] = answer[:k]
    y = answer[k:]
    return x, y, p.d * x + p.c - p.a[rows].T @ y, single


def touched(p, x, z_low, z_high):
    """Guesses of the bounds that the interior-point answer touches: multiplier against distance, in several units."""
    span = np.where(np.isfinite(p.upper - p.lower) & (p.upper > p.lower), p.upper - p.lower, 1 + np.abs(x))
    for unit in (np.maximum(p.d, 1e-12), (1 + np.abs(p.c)) / span, np.full(len(x), (1 + np.abs(p.c).max(initial=0)) / (1 + np.abs(x).max(initial=0)))):
        at_low = np.isfinite(p.lower) & ((x - p.lower) * unit < z_low) & (z_low >= z_high)
        yield at_low, np.isfinite(p.upper) & ((p.upper - x) * unit < z_high) & ~at_low


def polish(p, rows, x, z_low, z_high):
    """The optimum in full digits from the first guess of touched bounds that leads to it: x, y, whether it is the only one; or None."""
    for at_once in (True, False):
        for at_low, at_high in touched(p, x, z_low, z_high):
            found = exchange(p, rows, at_low, at_high, at_once)
            if found is not None:
                return found
    return None


def exchange(p, rows, at_low, at_high, at_once):
    """
    Exchanges bounds until x lies inside them and every held variable pushes against its bound: all wrong ones at once, or only
    the first (Murty's rule, which cannot go in circles where the optimum is the only one). None when that does not end.
    """
    grade = 1 + np.abs(p.c).max(initial=0)
    seen = set()
    for _ in range(60 if at_once else 600):
        new, y, gradient, single = stationary(p, rows, at_low, at_high)
        slack = 1e-12 * (1 + np.abs(new))
        free = ~at_low & ~at_high
        # A free variable without curvature that still has a slope runs down it to its bound.
        slope = np.where(free & (np.abs(gradient) > 1e-9 * grade), gradient, 0)
        to_low = free & np.where(slope != 0, slope > 0, new < p.lower - slack)
        to_high = free & np.where(slope != 0, slope < 0, new > p.upper + slack)
        if np.isinf(p.lower[to_low]).any() or np.isinf(p.upper[to_high]).any():
            return None
        wrong = to_low | to_high | (at_low & (gradient < -1e-13 * grade)) | (at_high & (gradient > 1e-13 * grade))
        if not wrong.any():
            return np.clip(new, p.lower, p.upper), y, single
        key = (at_low.tobytes(), at_high.tobytes())
        if key in seen:
            return None
        seen.add(key)
        if not at_once:
            wrong &= np.arange(len(new)) == np.flatnonzero(wrong)[0]
        at_low, at_high = (at_low & ~wrong) | (to_low & wrong), (at_high & ~wrong) | (to_high & wrong)
    return None


def residuals(p, rows, x, y):
    """How well the conditions of an optimum hold; each 0 at the optimum."""
    size = np.abs(p.a).max(axis=1, initial=0) * (1 + np.abs(x).max(initial=0)) if len(p.b) else np.zeros(0)
    equality = np.abs(p.a.astype(np.longdouble) @ x - p.b) / (1e-300 + np.maximum(size, 1e-300)) if len(p.b) else np.zeros(1)
    bounds = np.maximum(np.maximum(p.lower - x, x - p.upper), 0) / (1 + np.abs(x))
    # What the gradient leaves must be carried by a bound that is touched.
    gradient = p.d * x + p.c - p.a[rows].T @ y
    grade = 1 + np.abs(p.c).max(initial=0)
    low = np.where(np.isfinite(p.lower), np.maximum(gradient, 0), 0)
    high = np.where(np.isfinite(p.upper), np.maximum(-gradient, 0), 0)
    stationarity = np.abs(gradient - low + high) / grade
    with np.errstate(invalid="ignore"):
        from_low = np.where(low > 0, x - p.lower, 0)
        from_high = np.where(high > 0, p.upper - x, 0)
    gap = math.fsum(low * from_low) + math.fsum(high * from_high)
    return {
        "equality": float(equality.max(initial=0)), "bounds": float(bounds.max(initial=0)),
        "stationarity": float(stationarity.max(initial=0)), "gap": float(abs(gap) / (1 + abs(p.objective(x)))),
    }


def least_multipliers(p, rows, x):
    """Multipliers of the equations from the variables that lie inside their bounds."""
    inside = (x > p.lower + 1e-7 * (1 + np.abs(x))) & (x < p.upper - 1e-7 * (1 + np.abs(x)))
    if not len(rows):
        return np.zeros(0)
    return np.linalg.lstsq(p.a[np.ix_(rows, np.flatnonzero(inside))].T, (p.d * x + p.c)[inside], rcond=None)[0]


def solve(p):
    """One program to one solution, as it is written."""
    head = {} if p.name is None else {"name": p.name}
    fixed = p.lower == p.upper
    if not fixed.any():
        return head | solve_open(p)
    found = solve_open(p.without(fixed))
    if found["status"] == "optimal":
        x = p.lower.copy()
        x[~fixed] = found["x"]
        found |= {"x": x.tolist(), "objective": p.objective(x)}
    return head | found


def solve_open(p):
    """The same where every variable has room between its bounds."""
    if len(p.d) == 0:
        none = {"status": "optimal", "x": [], "objective": 0.0, "equalityMultipliers": [0.0] * len(p.b), "polished": True, "unique": True}
        return none | {"residuals": residuals(p, [], np.zeros(0), np.zeros(0))} if not p.b.any() else {"status": "infeasible"}
    rows = independent_rows(p.a, p.b)
    if rows is None:
        return {"status": "infeasible"}
    why = {}
    for end in ENDS:
        try:
            x, z_low, z_high = interior(p, rows, end)
        except (ArithmeticError, ValueError) as error:
            why = {"why": str(error)}
            continue
        found = polish(p, rows, x, z_low, z_high)
        if found is None:
            x = np.clip(x, p.lower, p.upper)
            y, single = least_multipliers(p, rows, x), False
        else:
            x, y, single = found
        left = residuals(p, rows, x, y)
        if all(v <= ACCEPTED for v in left.values()):
            break
        why = {"residuals": left}
    else:
        return {"status": why_not(p, rows)} | why
    multipliers = np.zeros(len(p.b))
    multipliers[rows] = y
    return {
        "status": "optimal", "x": x.tolist(), "objective": p.objective(x), "equalityMultipliers": multipliers.tolist(),
        "polished": found is not None, "unique": bool(single), "residuals": left,
    }


def random_program(random, kind):
    """A program made backward from its optimum: x, what touches, and multipliers first, then c and b."""
    if kind == "body":
        return random_body(random)
    n = int(random.integers(2, 160))
    m = int(random.integers(0, max(1, n // 4)))
    flat = random.random(n) < (0.2 if kind == "partly flat" else 0)
    d = np.where(flat, 0, 10 ** random.uniform(-3, 3, n))
    a = np.where(random.random((m, n)) < 0.3, random.normal(size=(m, n)) * 10 ** random.uniform(-2, 3, (1, n)), 0)
    x = random.uniform(0, 1, n) * 10 ** random.uniform(-1, 2, n)
    where = random.integers(0, 4, n)  # 0 free with bounds, 1 at the lower, 2 at the upper, 3 without bounds
    where[flat] = random.integers(1, 3, int(flat.sum()))  # flat ones at bounds, so that the optimum is the only one
    lower = np.where(where == 3, -math.inf, np.where(where == 1, x, x - random.uniform(0.1, 2, n)))
    upper = np.where(where == 3, math.inf, np.where(where == 2, x, x + random.uniform(0.1, 2, n)))
    y = random.normal(size=m)
    push = random.uniform(0.1, 3, n) if kind != "degenerate" else np.where(random.random(n) < 0.3, 0, random.uniform(0.1, 3, n))
    c = -d * x + a.T @ y + np.where(where == 1, push, 0) - np.where(where == 2, push, 0)
    b = a @ x
    if kind == "fixed":
        still = random.random(n) < 0.3
        lower, upper = np.where(still, x, lower), np.where(still, x, upper)
    if kind == "dependent rows" and m > 1:
        a, b = np.vstack([a, 2 * a[0] - a[1]]), np.append(b, 2 * b[0] - b[1])
    return written(d, c, a, b, lower, upper), x


def written(d, c, a, b, lower, upper):
    no = lambda values: [v if math.isfinite(v) else None for v in values.tolist()]
    entries = [[int(i), int(j), float(a[i, j])] for i, j in zip(*np.nonzero(a))]
    return {"d": d.tolist(), "c": c.tolist(), "a": entries, "b": b.tolist(), "lower": no(lower), "upper": no(upper)}


def random_body(random):
    """The same with the sizes of a posed body: activations on moments of some ten newton meters, cheap contact forces of hundreds
    of newtons without upper end, dear reserves of either sign."""
    m, muscles, contacts = 30, 100, 18
    pulls = np.where(random.random((m, muscles)) < 0.12, random.normal(size=(m, muscles)) * 10 ** random.uniform(0, 2, (1, muscles)), 0)
    presses = np.where(random.random((m, contacts)) < 0.4, random.normal(size=(m, contacts)), 0)
    a = np.hstack([pulls, presses, np.eye(m)])
    d = np.concatenate([np.full(muscles, 2.0), np.full(contacts, 1e-6), np.full(m, 20.0)])
    active = random.random(muscles) < 0.5
    full = random.random(muscles) < 0.05
    loaded = random.random(contacts) < 0.6
    x = np.concatenate([
        np.where(full, 1, np.where(active, random.uniform(0, 0.9, muscles), 0)), np.where(loaded, random.uniform(5, 600, contacts), 0),
        random.normal(size=m) * 1e-3])
    lower = np.concatenate([np.zeros(muscles + contacts), np.full(m, -math.inf)])
    upper = np.concatenate([np.ones(muscles), np.full(contacts + m, math.inf)])
    push = random.uniform(1e-4, 1, len(d))
    y = random.normal(size=m) * 0.02
    c = -d * x + a.T @ y + np.where(x == lower, push, 0) - np.where(x == upper, push, 0)
    return written(d, c, a, a @ x, lower, upper), x


def self_test(count):
    """Random programs of known optimum, and some without any."""
    random = np.random.default_rng(20)
    worst, polished = {"x": 0.0, "objective": 0.0}, 0
    for i in range(count):
        kind = ["plain", "partly flat", "dependent rows", "degenerate", "fixed", "body"][i % 6]
        text, x = random_program(random, kind)
        p = Program(text)
        found = solve(p)
        if found["status"] != "optimal":
            raise SystemExit(f"{i} ({kind}): {found['status']} {found.get('residuals')} {found.get('why')}")
        off_x = float((np.abs(np.array(found["x"]) - x) / (1 + np.abs(x))).max())
        off = abs(found["objective"] - p.objective(x)) / (1 + abs(p.objective(x)))
        worst = {"x": max(worst["x"], off_x if found["unique"] else 0), "objective": max(worst["objective"], off)}
        polished += found["polished"]
        # The known x is that of the numbers before rounding; a steep program moves it by more than a flat one.
        if off > 1e-10 or (off_x > 1e-8 and found["unique"]):
            raise SystemExit(f"{i} ({kind}): x off by {off_x}, objective by {off}; polished {found['polished']}, unique {found['unique']}")
    no_way = [
        {"d": [1, 1], "c": [0, 0], "a": [[0, 0, 1], [0, 1, 1]], "b": [3], "lower": [0, 0], "upper": [1, 1]},
        {"d": [1], "c": [0], "a": [[0, 0, 1], [1, 0, 2]], "b": [1, 3]},
        {"d": [1], "c": [0], "a": [], "b": [1]},
    ]
    for text in no_way:
        if solve(Program(text))["status"] != "infeasible":
            raise SystemExit("A program without any x was given one.")
    if solve(Program({"d": [0, 1], "c": [-1, 0], "a": [], "b": []}))["status"] != "unbounded":
        raise SystemExit("A program without end was given an optimum.")
    print(f"{SOLVER}: {count} random programs, {polished} polished, largest differences {worst}; {len(no_way)} infeasible ones and one without end told.")


def main(arguments):
    if arguments[:1] == ["--self-test"]:
        self_test(int(arguments[1]) if len(arguments) > 1 else 200)
        return
    if len(arguments) != 2:
        raise SystemExit(__doc__)
    with open(arguments[0], encoding="utf-8") as file:
        programs = [Program(text) for text in json.load(file)]
    solutions = [solve(p) for p in programs]
    with open(arguments[1], "w", encoding="utf-8") as file:
        file.write(json.dumps({"solver": SOLVER, "script": SCRIPT})[:-1] + ', "solutions": [\n')
        file.write(",\n".join(json.dumps(s, allow_nan=False) for s in solutions) + "\n]}\n")
    told = {status: sum(s["status"] == status for s in solutions) for status in {s["status"] for s in solutions}}
    print(f"{SOLVER}: {told}, {sum(s.get('polished', False) for s in solutions)} polished")


if __name__ == "__main__":
    main(sys.argv[1:])
