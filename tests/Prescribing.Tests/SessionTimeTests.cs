using MomentArm.Body;

namespace MomentArm.Prescribing.Tests;

/// <summary>Minutes of a session, worked by hand.</summary>
public class SessionTimeTests
{
    [Fact]
    public void One_exercise_is_set_up_plus_sets_plus_the_rests_between()
    {
        // 20 s set-up; 3 sets of 10 x (2 + 2 + 3) s = 210 s; 2 rests of 60 s: 20 + 210 + 120 = 350 s.
        Assert.Equal(350, SessionTime.Seconds(Samples.Item("a"), Samples.Exercise("a")), 1e-9);
    }

    [Fact]
    public void Both_sides_double_the_sets_and_rest_between_all_of_them()
    {
        // 20 + 6 x 70 + 5 x 60 = 740 s.
        Assert.Equal(740, SessionTime.Seconds(Samples.Item("a", bothSides: true), Samples.Exercise("a")), 1e-9);
    }

    [Fact]
    public void A_single_hold_counts_the_way_in_and_out()
    {
        // 3 x 30 s hold, 2 s in, 3 s out, 30 s rests: 10 + 3 x 35 + 2 x 30 = 175 s.
        var dose = new Dose { Sets = 3, Repetitions = 1, HoldSeconds = 30, RestSeconds = 30, DaysPerWeek = 7 };
        Assert.Equal(175, SessionTime.Seconds(Samples.Item("a", dose), Samples.Exercise("a", setUpSeconds: 10)), 1e-9);
    }

    [Fact]
    public void A_program_adds_a_change_of_position_where_there_is_one()
    {
        var library = new Dictionary<string, Exercise>
        {
            ["lying"] = Samples.Exercise("lying", position: BodyPosition.SideLying),
            ["lying2"] = Samples.Exercise("lying2", position: BodyPosition.SideLying),
            ["standing"] = Samples.Exercise("standing", position: BodyPosition.Standing),
        };

        // Three times 350 s and one change of 20 s.
        Assert.Equal(
            1070, SessionTime.Seconds([Samples.Item("lying"), Samples.Item("lying2"), Samples.Item("standing")], library.GetValueOrDefault), 1e-9);

        // Two changes when the standing one is in the middle: order costs time.
        Assert.Equal(
            1090, SessionTime.Seconds([Samples.Item("lying"), Samples.Item("standing"), Samples.Item("lying2")], library.GetValueOrDefault), 1e-9);
    }

    [Fact]
    public void An_exercise_that_is_no_longer_known_adds_nothing_and_an_empty_program_takes_no_time()
    {
        Assert.Equal(350, SessionTime.Seconds([Samples.Item("gone"), Samples.Item("a")], id => id == "a" ? Samples.Exercise("a") : null), 1e-9);
        Assert.Equal(0, SessionTime.Seconds([], _ => null));
    }
}
