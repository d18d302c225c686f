using MomentArm.Body;

namespace MomentArm.Prescribing.Tests;

/// <summary>Hints while a program is built.</summary>
public class ProgramHintsTests
{
    [Theory]
    [InlineData(1, 0)]
    [InlineData(2, 0)]
    [InlineData(4, 0)]
    [InlineData(5, 1)]
    [InlineData(8, 1)]
    public void The_hint_about_numbers_appears_from_five_exercises_on(int count, int hints)
    {
        var found = Hints(3, Samples.NoLimits, [.. Enumerable.Range(0, count).Select(i => Samples.Item($"e{i}"))]);
        Assert.Equal(hints, found.Length);
        if (hints > 0)
            Assert.Equal($"{count} exercises. Two to four are done; more are done less and less well (Henry 1999, Eckard 2015).", found[0]);
    }

    [Fact]
    public void An_empty_program_says_so() => Assert.Equal(["No exercise chosen yet."], Hints(3, Samples.NoLimits));

    [Fact]
    public void Minutes_above_what_was_agreed_are_said_and_a_session_that_fits_is_not()
    {
        // Two of 350 s are 11 min 40 s.
        ProgramItem[] two = [Samples.Item("a"), Samples.Item("b")];
        Assert.Equal(["12 minutes a session; 10 were agreed."], Hints(3, Samples.NoLimits with { Minutes = 10 }, two));
        Assert.Empty(Hints(3, Samples.NoLimits with { Minutes = 12 }, two));
    }

    [Fact]
    public void A_session_a_little_over_never_reads_as_fifteen_minutes_against_fifteen()
    {
        // 350 s and 90 s of work: 910 s are 15 min 10 s. Once rounded down to "15 minutes a session; 15 were agreed."
        var dose = new Dose { Sets = 1, Repetitions = 54, OutSeconds = 5, BackSeconds = 5, DaysPerWeek = 3 };
        Assert.Equal(910, SessionTime.Seconds([Samples.Item("a", Samples.ThreeTens), Samples.Item("b", dose)], id => Samples.Exercise(id)), 1e-9);
        Assert.Equal(
            ["16 minutes a session; 15 were agreed."],
            Hints(3, Samples.NoLimits with { Minutes = 15 }, Samples.Item("a"), Samples.Item("b", dose)));
    }

    [Theory]
    [InlineData(7, 6, true)]
    [InlineData(6, 6, true)]
    [InlineData(5, 6, false)]
    [InlineData(7, 5, false)]
    [InlineData(7, null, false)]
    public void Hard_strengthening_on_six_or_seven_days_wants_rest(int days, int? effort, bool hint)
    {
        var found = Hints(days, Samples.NoLimits, Samples.Item("a", Samples.ThreeTens with { Effort = effort }));
        Assert.Equal(hint ? ["Strengthening at an effort of 6 or more wants a day of rest between sessions (ACSM 2009)."] : [], found);
    }

    [Fact]
    public void The_same_exercise_twice_on_one_side_is_said_but_not_on_both()
    {
        Assert.Equal(["Exercise a is there twice."], Hints(3, Samples.NoLimits, Samples.Item("a"), Samples.Item("a")));
        Assert.Empty(Hints(3, Samples.NoLimits, Samples.Item("a"), Samples.Item("a") with { WorkingSide = Side.Left }));
    }

    private static string[] Hints(int days, Limits limits, params ProgramItem[] items) =>
        [.. ProgramHints.For(Samples.Program(days, items), id => Samples.Exercise(id), limits)];
}
