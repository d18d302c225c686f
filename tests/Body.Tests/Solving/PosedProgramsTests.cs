using System.IO.Compression;
using System.Text.Json;
using Xunit;

namespace MomentArm.Body.Tests;

/// <summary>
/// Sixty programs posed by the engine for the shipped exercises, whose optima another solver found (cvxopt 1.3.0, polished; how
/// stands in tools/outside-engine). Softness of the equations is there as unknowns of their own.
/// </summary>
public class PosedProgramsTests
{
    /// <summary>Same optimum: of each unknown and of the cost, over 1 and its size.</summary>
    private const double Same = 1e-6;

    private static readonly JsonDocument Fixture = Read();

    public static TheoryData<int> Programs => [.. Enumerable.Range(0, Fixture.RootElement.GetProperty("programs").GetArrayLength())];

    [Theory]
    [MemberData(nameof(Programs))]
    public void The_solver_finds_the_optimum_that_another_solver_found(int index)
    {
        var posed = Fixture.RootElement.GetProperty("programs")[index];
        var name = posed.GetProperty("name").GetString();
        var program = Program(posed);
        var solver = new DualNewtonSolver(program);
        var solution = solver.Solve(program);
        Assert.Equal(SolutionStatus.Optimal, solution.Status);
        var objective = posed.GetProperty("objective").GetDouble();
        Assert.True(Math.Abs(solution.Objective - objective) <= Same * (1 + Math.Abs(objective)), $"{name}: {solution.Objective:R} against {objective:R}");
        foreach (var (x, other) in solver.X.ToArray().Zip(Numbers(posed, "x")))
            Assert.True(Math.Abs(x - other) <= Same * (1 + Math.Abs(other)), $"{name}: {x:R} against {other:R}");
    }

    [Fact]
    public void There_are_at_least_fifty() => Assert.True(Programs.Count >= 50);

    private static SeparableProgram Program(JsonElement posed)
    {
        var (equations, unknowns) = (posed.GetProperty("equations").GetInt32(), posed.GetProperty("unknowns").GetInt32());
        var entries = posed.GetProperty("a").EnumerateArray().Select(e => (Row: e[0].GetInt32(), Column: e[1].GetInt32(), Value: e[2].GetDouble())).ToArray();
        var (d, c) = (Numbers(posed, "d"), Numbers(posed, "c"));
        var (lower, upper) = (Numbers(posed, "lower", double.NegativeInfinity), Numbers(posed, "upper", double.PositiveInfinity));
        var program = new SeparableProgram(equations, unknowns, entries.Length);
        program.Clear(equations, 1);
        Numbers(posed, "b").CopyTo(program.RightSide);
        for (var i = 0; i < equations; i++)
            program.Softness[i] = 1 / d[unknowns + i];
        foreach (var column in entries.Where(e => e.Column < unknowns).GroupBy(e => e.Column).OrderBy(g => g.Key))
        {
            while (program.Unknowns <= column.Key)
                program.AddUnknown(d[program.Unknowns], c[program.Unknowns], lower[program.Unknowns], upper[program.Unknowns]);
            foreach (var (row, _, value) in column.OrderBy(e => e.Row))
                program.AddEntry(row, value);
        }

        while (program.Unknowns < unknowns)
            program.AddUnknown(d[program.Unknowns], c[program.Unknowns], lower[program.Unknowns], upper[program.Unknowns]);
        return program;
    }

    private static double[] Numbers(JsonElement posed, string name, double none = double.NaN) =>
        [.. posed.GetProperty(name).EnumerateArray().Select(v => v.ValueKind == JsonValueKind.Null ? none : v.GetDouble())];

    private static JsonDocument Read()
    {
        var path = Path.Combine(TestBody.ContentFolder, "..", "tests", "Body.Tests", "Solving", "fixtures", "posed-programs.json.gz");
        using var packed = new GZipStream(File.OpenRead(path), CompressionMode.Decompress);
        return JsonDocument.Parse(packed);
    }
}
