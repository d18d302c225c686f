// The cubic through all knots whose third derivative in each end interval is that of the one cubic through the four
// outermost knots (Forsythe, Malcolm and Moler 1977). Written with slopes as unknowns and a full elimination with
// pivoting: another road than the one of the Body room, to the same curve. Straight outside the knots.

/** @param {number[][]} knots [argument, value], arguments rising; two, or four and more. */
export function spline(knots) {
  const x = knots.map(k => k[0]);
  const y = knots.map(k => k[1]);
  const n = x.length;
  const secant = i => (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
  const slopes = n === 2 ? [secant(0), secant(0)] : solve(...equations(x, y, secant));
  return at => {
    if (at <= x[0]) return { value: y[0] + slopes[0] * (at - x[0]), slope: slopes[0] };
    if (at >= x[n - 1]) return { value: y[n - 1] + slopes[n - 1] * (at - x[n - 1]), slope: slopes[n - 1] };
    const i = x.findLastIndex(knot => knot <= at);
    const h = x[i + 1] - x[i];
    const t = (at - x[i]) / h;
    // Hermite form of the piece.
    const value = (1 + 2 * t) * (1 - t) ** 2 * y[i] + t * (1 - t) ** 2 * h * slopes[i]
      + t * t * (3 - 2 * t) * y[i + 1] + t * t * (t - 1) * h * slopes[i + 1];
    const slope = 6 * t * (1 - t) * secant(i) + (1 - t) * (1 - 3 * t) * slopes[i] + t * (3 * t - 2) * slopes[i + 1];
    return { value, slope };
  };
}

/** One row for each knot: ends as said above, inner knots by equal second derivatives of both pieces. */
function equations(x, y, secant) {
  const n = x.length;
  const matrix = x.map(() => new Array(n).fill(0));
  const right = new Array(n).fill(0);
  const end = (row, i, first) => {
    // Third derivative of piece i: 6 (s_i + s_(i+1) - 2 secant) / h^2.
    const h = x[i + 1] - x[i];
    matrix[row][i] = 1;
    matrix[row][i + 1] = 1;
    right[row] = 2 * secant(i) + h * h * leading(x, y, first);
  };
  end(0, 0, 0);
  end(n - 1, n - 2, n - 4);
  for (let i = 1; i < n - 1; i++) {
    const before = 1 / (x[i] - x[i - 1]);
    const after = 1 / (x[i + 1] - x[i]);
    matrix[i][i - 1] = before;
    matrix[i][i] = 2 * (before + after);
    matrix[i][i + 1] = after;
    right[i] = 3 * (before * secant(i - 1) + after * secant(i));
  }
  return [matrix, right];
}

/** Leading coefficient of the cubic through four knots, after Lagrange. */
function leading(x, y, first) {
  let sum = 0;
  for (let i = first; i < first + 4; i++) {
    let product = 1;
    for (let j = first; j < first + 4; j++) if (j !== i) product *= x[i] - x[j];
    sum += y[i] / product;
  }
  return sum;
}

/** Gaussian elimination with row pivoting. */
function solve(matrix, right) {
  const n = right.length;
  const a = matrix.map((row, i) => [...row, right[i]]);
  for (let k = 0; k < n; k++) {
    let best = k;
    for (let i = k + 1; i < n; i++) if (Math.abs(a[i][k]) > Math.abs(a[best][k])) best = i;
    [a[k], a[best]] = [a[best], a[k]];
    for (let i = k + 1; i < n; i++) {
      const factor = a[i][k] / a[k][k];
      for (let j = k; j <= n; j++) a[i][j] -= factor * a[k][j];
    }
  }
  const s = new Array(n);
  for (let i = n - 1; i >= 0; i--) {
    s[i] = a[i][n];
    for (let j = i + 1; j < n; j++) s[i] -= a[i][j] * s[j];
    s[i] /= a[i][i];
  }
  return s;
}
