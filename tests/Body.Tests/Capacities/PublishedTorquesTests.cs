namespace MomentArm.Body.Tests.Capacities;

/// <summary>Published torques of trunk, neck, arms and turning against other sources than those they come from.</summary>
public class PublishedTorquesTests
{
    private static readonly (double Mass, double Stature, Sex Sex)[] DanishSample = [(73.8, 1.80, Sex.Male), (62.8, 1.68, Sex.Female)];

    [Fact]
    public void Every_action_has_a_figure_for_men_and_women()
    {
        foreach (var action in Enum.GetValues<JointAction>())
        {
            foreach (var sex in Enum.GetValues<Sex>())
                Assert.True(Torque(action, sex, 30, 1.7, 70) > 0, $"{action} {sex}");
        }
    }

    /// <summary>Source: Danneskiold-Samsøe et al. 2009, 20-29 years (public copy): the sample gets its own torques back.</summary>
    [Theory]
    [InlineData(JointAction.ShoulderFlexion, 63.0, 30.0)]
    [InlineData(JointAction.ShoulderAdduction, 89.6, 42.0)]
    [InlineData(JointAction.ElbowFlexion, 70.3, 36.2)]
    [InlineData(JointAction.WristExtension, 13.1, 6.9)]
    [InlineData(JointAction.HipExternalRotation, 49.7, 36.6)]
    public void The_sample_gets_its_own_torques_back(JointAction action, double men, double women)
    {
        Assert.Equal(men, Torque(action, Sex.Male, 21, 1.80, 73.8), 0.05);
        Assert.Equal(women, Torque(action, Sex.Female, 21, 1.68, 62.8), 0.05);
    }

    [Theory]
    [InlineData(JointAction.ShoulderAdduction, 67.9, 28.4)]
    [InlineData(JointAction.WristExtension, 10.2, 4.6)]
    public void Arm_torques_agree_with_another_laboratory(JointAction action, double mean, double deviation)
    {
        // Source: Holzbaur et al. 2007, J Biomech, doi:10.1016/j.jbiomech.2006.11.013: 10 young men and women.
        var ours = DanishSample.Average(s => Torque(action, s.Sex, 21, s.Stature, s.Mass));
        Assert.InRange(ours, mean - 0.5 * deviation, mean + 0.5 * deviation);
    }

    [Theory]
    [InlineData(JointAction.NeckFlexion, 30, 6)]
    [InlineData(JointAction.NeckExtension, 51, 11)]
    [InlineData(JointAction.NeckSideBend, 32, 9)]
    [InlineData(JointAction.NeckRotation, 13, 5)]
    public void Neck_torques_of_men_agree_with_another_laboratory(JointAction action, double mean, double deviation)
    {
        // Source: Ann Biomed Eng 2014, doi:10.1007/s10439-014-1046-0: 9 men.
        Assert.InRange(Torque(action, Sex.Male, 29, 1.78, 78), mean - deviation, mean + deviation);
    }

    [Fact]
    public void Neck_rotation_of_women_holds_the_mean_of_220_inside_its_interval_and_does_not_change_with_age_or_mass()
    {
        // Source: Salo et al. 2006: 8.1 N m (SD 2.3), 220 women of 20-59 years; no difference between ages.
        var physique = new Physique(Sex.Female, 45, 1.65, 65);
        var able = Of(physique).At(JointAction.NeckRotation, Side.Left, 0)!.Value;
        Assert.InRange(8.1, able.Low, able.High);
        Assert.True(able.WeakSource);
        Assert.Equal(able.Middle, Of(physique with { AgeYears = 70, MassKg = 95 }).At(JointAction.NeckRotation, Side.Left, 0)!.Value.Middle, 1e-12);
    }

    [Theory]
    [InlineData(Sex.Male, 0.216)]
    [InlineData(Sex.Female, 0.184)]
    public void Outward_turning_of_the_hip_agrees_with_force_above_the_ankle(Sex sex, double partOfWeight)
    {
        // Source: college athletes, 21.6 and 18.4 % of body weight, strap-stabilized (Leetun et al. 2004); the lever of 0.22
        // statures from knee to ankle is worked from segment lengths.
        var perKg = partOfWeight * 9.81 * 0.22 * (sex == Sex.Male ? 1.85 : 1.72);
        var able = Of(new Physique(sex, 20, sex == Sex.Male ? 1.85 : 1.72, 70)).At(JointAction.HipExternalRotation, Side.Right, 0)!.Value;
        Assert.InRange(perKg * 70, able.Low, able.High);
    }

    [Theory]
    [InlineData(JointAction.AnkleInversion, 34.8)]
    [InlineData(JointAction.AnkleEversion, 29.9)]
    public void Turning_of_the_foot_agrees_with_the_mean_of_its_whole_sample(JointAction action, double mean)
    {
        // Source: da Fonseca et al., abstract of 2023: 69 men and 31 women together.
        var ours = 0.69 * Torque(action, Sex.Male, 21, 1.70, 77.1) + 0.31 * Torque(action, Sex.Female, 21, 1.70, 77.1);
        Assert.Equal(mean, ours, 0.05 * mean);
    }

    [Fact]
    public void The_trunk_extends_more_than_it_flexes_bends_and_turns_and_its_interval_holds_both_sources()
    {
        double Man(JointAction action) => Torque(action, Sex.Male, 25, 1.75, 73.4);
        Assert.True(Man(JointAction.TrunkExtension) > Man(JointAction.TrunkFlexion));
        Assert.True(Man(JointAction.TrunkFlexion) > Man(JointAction.TrunkSideBend));
        Assert.True(Man(JointAction.TrunkSideBend) > Man(JointAction.TrunkRotation));

        // Sources: Pan et al. 2025 (118 N m), Chaffin et al. 1999 (232 N m bent 40 degrees).
        var able = Of(new Physique(Sex.Male, 25, 1.75, 73.4)).At(JointAction.TrunkExtension, Side.Right, 0)!.Value;
        Assert.InRange(118.1, able.Low, able.Middle);
        Assert.InRange(232, able.Middle, able.High);
    }

    [Fact]
    public void Each_action_raises_its_own_coordinate_and_opposites_oppose()
    {
        var model = TestBody.Man;
        var taken = new HashSet<(int, int)>();
        foreach (var action in Enum.GetValues<JointAction>())
        {
            foreach (var side in action.HasSides() ? new[] { Side.Right, Side.Left } : [Side.Right])
                Assert.True(taken.Add(action.On(model, side)), $"{action} {side}");
        }

        Assert.Equal(JointAction.TrunkRotation.On(model, Side.Right).Index, JointAction.TrunkRotation.On(model, Side.Left).Index);
    }

    private static double Torque(JointAction action, Sex sex, double age, double stature, double mass) =>
        Of(new Physique(sex, age, stature, mass)).Published(action, 0)!.Value;

    private static PatientCapacity Of(Physique physique) =>
        new(TestBody.Content.Capacities, physique, TestBody.Content.Build(physique), []);
}
