using CsCheck;
using Xunit;

namespace MomentArm.Body.Tests;

public class DualNewtonSolverTests
{
    [Fact]
    public void Hand_solved_program_with_one_equation()
    {
        // Least x1^2 + x2^2 with x1 + 2 x2 = 5 and x2 at most 1 (equation all but hard): x2 = 1, x1 = 3, y = 6.
        var program = new SeparableProgram(1, 2, 2);
        program.Clear(1, 1e-12);
        program.RightSide[0] = 5;
        program.AddUnknown(2, 0, 0, double.PositiveInfinity);
        program.AddEntry(0, 1);
        program.AddUnknown(2, 0, 0, 1);
        program.AddEntry(0, 2);
        var solver = new DualNewtonSolver(program);
        var solution = solver.Solve(program);
        Assert.Equal(SolutionStatus.Optimal, solution.Status);
        Assert.Equal(3, solver.X[0], 1e-10);
        Assert.Equal(1, solver.X[1], 1e-10);
        Assert.Equal(6, solver.Multipliers[0], 1e-9);
    }

    [Fact]
    public void Two_equal_muscles_share_evenly_and_with_cubes_the_longer_arm_still_works_more()
    {
        // sum a^3/3 with r1 a1 + r2 a2 = M: a1 / a2 = sqrt(r1 / r2).
        var program = new SeparableProgram(1, 2, 2);
        program.Clear(1, 1e-12);
        program.RightSide[0] = 1;
        program.AddUnknown(1e-12, 0, 0, 1, 1);
        program.AddEntry(0, 4);
        program.AddUnknown(1e-12, 0, 0, 1, 1);
        program.AddEntry(0, 1);
        var solver = new DualNewtonSolver(program);
        Assert.Equal(SolutionStatus.Optimal, solver.Solve(program).Status);
        Assert.Equal(2, solver.X[0] / solver.X[1], 1e-6);
        Assert.Equal(1, 4 * solver.X[0] + solver.X[1], 1e-9);
    }

    [Fact]
    public void What_cannot_be_reached_is_missed_and_said()
    {
        var program = new SeparableProgram(1, 1, 1);
        program.Clear(1, 0.5);
        program.RightSide[0] = 7;
        program.AddUnknown(1, 0, 0, 1);
        program.AddEntry(0, 4);
        var solver = new DualNewtonSolver(program);
        solver.Solve(program);
        Assert.Equal(1, solver.X[0], 1e-12);
        Assert.Equal(3, solver.Miss(0), 1e-12);
    }

    [Fact]
    public void Every_random_program_is_solved_to_rounding()
    {
        RandomPrograms.Of(12, 40, false).Sample(Optimal, iter: 3000);
    }

    [Fact]
    public void So_is_every_one_with_cubes()
    {
        RandomPrograms.Of(8, 25, true).Sample(Optimal, iter: 2000);
    }

    [Fact]
    public void Programs_as_large_as_a_body_are_solved_too()
    {
        RandomPrograms.Of(45, 260, false).Sample(Optimal, iter: 150);
    }

    [Fact]
    public void Small_programs_meet_the_best_of_every_set_of_active_bounds()
    {
        RandomPrograms.Of(3, 5, false, hardest: 1e-4).Sample(plain =>
        {
            var program = plain.ToProgram();
            var solver = new DualNewtonSolver(program);
            var solution = solver.Solve(program);
            var oracle = ActiveSets.Least(plain);
            Assert.True(
                Math.Abs(solution.Objective - oracle) <= 1e-6 * (1 + Math.Abs(oracle)),
                $"{solution.Objective:R} against {oracle:R}");
        }, iter: 1500);
    }

    [Fact]
    public void A_warm_start_gives_the_same_optimum()
    {
        RandomPrograms.Of(10, 30, false, hardest: 1e-4).Sample(plain =>
        {
            var program = plain.ToProgram();
            var solver = new DualNewtonSolver(program);
            solver.Solve(program);
            var cold = solver.X.ToArray();
            program.RightSide[0] *= 1.01;
            solver.Solve(program, warmStart: true);
            program.RightSide[0] = plain.B[0];
            Assert.Equal(SolutionStatus.Optimal, solver.Solve(program, warmStart: true).Status);
            for (var j = 0; j < cold.Length; j++)
                Assert.Equal(cold[j], solver.X[j], 1e-6 * (1 + Math.Abs(cold[j])));
        }, iter: 1000);
    }

    [Fact]
    public void Solving_allocates_nothing_and_repeats_to_the_bit()
    {
        var program = RandomPrograms.Of(30, 120, false).Single().ToProgram();
        var solver = new DualNewtonSolver(program);
        solver.Solve(program);
        var first = solver.X.ToArray();
        var before = GC.GetAllocatedBytesForCurrentThread();
        solver.Solve(program);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.Equal(first, solver.X.ToArray());
    }

    [Theory]
    [InlineData(0.0, 0, 0, 1, "curvature")]
    [InlineData(double.NaN, 0, 0, 1, "curvature")]
    [InlineData(1.0, double.NaN, 0, 1, "curvature")]
    [InlineData(1.0, 0, 2, 1, "bounds")]
    [InlineData(1.0, 0, double.NaN, 1, "bounds")]
    public void Bad_numbers_are_refused_in_words(double d, double c, double l, double u, string word)
    {
        var program = new SeparableProgram(1, 1, 1);
        program.Clear(1, 1);
        program.AddUnknown(d, c, l, u);
        program.AddEntry(0, 1);
        Assert.Contains(word, program.Fault()!, StringComparison.Ordinal);
        var solver = new DualNewtonSolver(program);
        Assert.Equal(SolutionStatus.Refused, solver.Solve(program).Status);
    }

    private static void Optimal(PlainProgram plain)
    {
        var program = plain.ToProgram();
        var solver = new DualNewtonSolver(program);
        var solution = solver.Solve(program);
        Assert.True(solution.Status == SolutionStatus.Optimal, $"{solution}");

        // Independent of the solver's own figures: no unknown can lower the cost by moving alone.
        var x = solver.X;
        var y = solver.Multipliers;
        for (var j = 0; j < plain.Unknowns; j++)
        {
            Assert.InRange(x[j], plain.Lower[j], plain.Upper[j]);
            double pull = -plain.Slope[j], size = Math.Abs(plain.Slope[j]);
            for (var i = 0; i < plain.Equations; i++)
            {
                pull += plain.A[i, j] * y[i];
                size += Math.Abs(plain.A[i, j] * y[i]);
            }

            var gradient = x[j] * (plain.Curvature[j] + plain.Cubic[j] * x[j]) - pull;
            var scale = 1e-9 * (size + Math.Abs(plain.Curvature[j] * x[j]) + 1e-12);
            Assert.True(x[j] <= plain.Lower[j] || gradient <= scale, $"unknown {j} could fall: {gradient:R}");
            Assert.True(x[j] >= plain.Upper[j] || gradient >= -scale, $"unknown {j} could rise: {gradient:R}");
        }
    }
}
