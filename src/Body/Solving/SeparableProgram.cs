namespace MomentArm.Body;

/// <summary>
/// A convex program whose cost couples no two unknowns and whose equations may be missed at a price:
/// minimize sum of c x + 1/2 d x^2 + 1/3 t x^3 over the unknowns plus sum of e^2 / (2 s) over the equations,
/// subject to A x + e = b and l &lt;= x &lt;= u. The miss e is what nothing explains; a small softness s makes it dear.
/// A is kept by sparse columns in flat arrays that are made once for the largest program and filled again for each.
/// A friction pyramid needs no constraint of its own: the contact force is a sum of the pyramid's edges, each
/// times an unknown with lower bound 0.
/// </summary>
public sealed class SeparableProgram
{
    private readonly int[] start;
    private readonly int[] rowOf;
    private readonly double[] value;
    private readonly double[] curvature;
    private readonly double[] cubic;
    private readonly double[] slope;
    private readonly double[] lower;
    private readonly double[] upper;
    private readonly double[] rightSide;
    private readonly double[] softness;

    /// <summary>Makes room for programs up to these sizes.</summary>
    /// <param name="equations">Most equations; at least one.</param>
    /// <param name="unknowns">Most unknowns; at least one.</param>
    /// <param name="entries">Most entries of A.</param>
    public SeparableProgram(int equations, int unknowns, int entries)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(equations, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(unknowns, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(entries);
        start = new int[unknowns + 1];
        rowOf = new int[entries];
        value = new double[entries];
        (curvature, cubic, slope) = (new double[unknowns], new double[unknowns], new double[unknowns]);
        (lower, upper) = (new double[unknowns], new double[unknowns]);
        (rightSide, softness) = (new double[equations], new double[equations]);
    }

    /// <summary>How many equations the program has now.</summary>
    public int Equations { get; private set; }

    /// <summary>How many unknowns the program has now.</summary>
    public int Unknowns { get; private set; }

    /// <summary>Most equations there is room for.</summary>
    public int MostEquations => rightSide.Length;

    /// <summary>Most unknowns there is room for.</summary>
    public int MostUnknowns => curvature.Length;

    /// <summary>The right sides b, to be read and written.</summary>
    public Span<double> RightSide => rightSide.AsSpan(0, Equations);

    /// <summary>The softness s of each equation, above 0, to be read and written.</summary>
    public Span<double> Softness => softness.AsSpan(0, Equations);

    /// <summary>The curvatures d, above 0.</summary>
    public ReadOnlySpan<double> Curvature => curvature.AsSpan(0, Unknowns);

    /// <summary>The cubic factors t, 0 or above.</summary>
    public ReadOnlySpan<double> Cubic => cubic.AsSpan(0, Unknowns);

    /// <summary>The slopes c at 0.</summary>
    public ReadOnlySpan<double> Slope => slope.AsSpan(0, Unknowns);

    /// <summary>The lower bounds l.</summary>
    public ReadOnlySpan<double> Lower => lower.AsSpan(0, Unknowns);

    /// <summary>The upper bounds u.</summary>
    public ReadOnlySpan<double> Upper => upper.AsSpan(0, Unknowns);

    /// <summary>Where each column's entries begin; one more than there are unknowns.</summary>
    public ReadOnlySpan<int> Start => start.AsSpan(0, Unknowns + 1);

    /// <summary>Equation of each entry, rising within a column.</summary>
    public ReadOnlySpan<int> RowOf => rowOf.AsSpan(0, start[Unknowns]);

    /// <summary>The entries of A, column after column.</summary>
    public ReadOnlySpan<double> Value => value.AsSpan(0, start[Unknowns]);

    /// <summary>Empties the program: no unknowns, right sides 0.</summary>
    /// <param name="equations">How many equations the next program has.</param>
    /// <param name="soft">Softness of every equation until it is written; above 0.</param>
    public void Clear(int equations, double soft)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(equations, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(equations, rightSide.Length);
        Equations = equations;
        Unknowns = 0;
        RightSide.Clear();
        Softness.Fill(soft);
    }

    /// <summary>Adds an unknown whose column is empty as yet.</summary>
    /// <param name="d">Curvature of its cost, above 0.</param>
    /// <param name="c">Slope of its cost at 0.</param>
    /// <param name="l">Lower bound; may be negative infinity.</param>
    /// <param name="u">Upper bound, not below <paramref name="l"/>; may be infinity.</param>
    /// <param name="t">Cubic factor, 0 or above; above 0 only with a lower bound of 0 or above.</param>
    /// <returns>Its index.</returns>
    public int AddUnknown(double d, double c, double l, double u, double t = 0)
    {
        if (Unknowns == curvature.Length)
            throw new InvalidOperationException("The program has no room for another unknown.");
        var j = Unknowns;
        (curvature[j], cubic[j], slope[j], lower[j], upper[j]) = (d, t, c, l, u);
        start[j + 1] = start[j];
        Unknowns = j + 1;
        return j;
    }

    /// <summary>Adds an entry to the column of the last unknown; zeros are passed over.</summary>
    /// <param name="equation">Its equation; larger than that of the entry before in this column.</param>
    /// <param name="a">Its value.</param>
    public void AddEntry(int equation, double a)
    {
        if (a == 0)
            return;
        ArgumentOutOfRangeException.ThrowIfNegative(equation);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(equation, Equations);
        if (Unknowns == 0)
            throw new InvalidOperationException("An entry needs an unknown to belong to.");
        var at = start[Unknowns];
        if (at > start[Unknowns - 1] && rowOf[at - 1] >= equation)
            throw new ArgumentException("The equations of a column's entries must rise.", nameof(equation));
        if (at == value.Length)
            throw new InvalidOperationException("The program has no room for another entry.");
        rowOf[at] = equation;
        value[at] = a;
        start[Unknowns] = at + 1;
    }

    /// <summary>What the solver must refuse, in words; null when there is nothing.</summary>
    /// <returns>The first fault, with the number of its equation or unknown.</returns>
    public string? Fault()
    {
        for (var i = 0; i < Equations; i++)
        {
            if (!double.IsFinite(rightSide[i]))
                return $"Equation {i} has a right side that is not a finite number.";
            if (!(softness[i] > 0) || !double.IsFinite(softness[i]))
                return $"Equation {i} needs a softness above 0.";
        }

        for (var j = 0; j < Unknowns; j++)
        {
            if (!(curvature[j] > 0) || !double.IsFinite(curvature[j]) || !double.IsFinite(slope[j]))
                return $"Unknown {j} needs a finite cost with a curvature above 0.";
            if (!(lower[j] <= upper[j]) || double.IsPositiveInfinity(lower[j]) || double.IsNegativeInfinity(upper[j]))
                return $"Unknown {j} has no room between its bounds.";
            if (!(cubic[j] >= 0) || !double.IsFinite(cubic[j]) || (cubic[j] > 0 && lower[j] < 0))
                return $"Unknown {j} has a cubic cost that is not convex within its bounds.";
            for (var e = start[j]; e < start[j + 1]; e++)
            {
                if (!double.IsFinite(value[e]))
                    return $"Unknown {j} has an entry that is not a finite number.";
            }
        }

        return null;
    }
}
