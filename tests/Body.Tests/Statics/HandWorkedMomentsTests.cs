namespace MomentArm.Body.Tests.Statics;

/// <summary>Moments worked by hand, written out beside each check.</summary>
public class HandWorkedMomentsTests
{
    /// <summary>
    /// A thigh of 10 kg and 0.40 m with its mass centre at 0.17 m, a shank of 4 kg with its mass centre at 0.18 m, both
    /// plain hinges. Source: the same two links in a general physics engine gave these holding torques to 1e-14 N m
    /// (docs/models/body.md, section 3).
    /// </summary>
    [Fact]
    public void Two_links_on_hinges_need_the_torques_of_the_hand_formula_and_of_a_physics_engine()
    {
        var state = TestBody.Posed(TwoLinks(), Pose(0.5, -0.9));
        var moments = TestBody.Moments(state);

        // R(t)(0, -y) has x = y sin t. Hip: g (10 c1x + 4 c2x); knee: 4 g (c2x - kx).
        const double a = 0.5;
        const double b = -0.9;
        var thighX = 0.17 * Math.Sin(a);
        var kneeX = 0.40 * Math.Sin(a);
        var shankX = kneeX + 0.18 * Math.Sin(a + b);
        Assert.Equal(9.81 * (10 * thighX + 4 * shankX), moments[0], 1e-12);
        Assert.Equal(4 * 9.81 * (shankX - kneeX), moments[1], 1e-12);

        Assert.Equal(12.769903325839, moments[0], 1e-12);
        Assert.Equal(-2.750539635394, moments[1], 1e-12);
    }

    [Theory]
    [InlineData(Sex.Male, 1.741, 73.0, 0.62)]
    [InlineData(Sex.Female, 1.735, 61.9, 0.57)]
    public void Side_lying_abduction_of_a_level_straight_leg_asks_the_leg_weight_moment(Sex sex, double stature, double mass, double perKg)
    {
        // Source: de Leva 1996 (doi:10.1016/0021-9290(95)00178-6) Table 4, worked to a leg-weight moment: 0.62 and 0.57 N m/kg.
        // The table does not say how far below the ankle the foot's mass lies; 3 cm more or less change the figure by 0.004,
        // so one unit of the last printed digit is allowed, not half.
        var model = TestBody.Content.Build(new Physique(sex, 30, stature, mass));
        var state = TestBody.Posed(model, new BodyPose(model) { PelvisRotation = OnTheLeftSide });
        var abduction = -TestBody.Moments(state)[model.IndexOf(Motion.HipAdduction, Side.Right)];
        Assert.Equal(perKg, abduction / mass, 2 * Tolerances.TwoDecimals);

        // By hand from the table's fractions: every mass centre lies along the leg from the hip; the foot adds its share at the ankle.
        var row = TestBody.Content.Tables.Single(t => t.Sex == sex).Parts;
        var (thigh, shank, foot) = (row[BodyPart.Thigh], row[BodyPart.Shank], row[BodyPart.Foot]);
        var byHand = 9.81 * stature * (
            thigh.MassFraction * thigh.CenterFraction * thigh.LengthFraction
            + shank.MassFraction * (thigh.LengthFraction + shank.CenterFraction * shank.LengthFraction)
            + foot.MassFraction * (thigh.LengthFraction + shank.LengthFraction));
        Assert.Equal(byHand, abduction / mass, 0.004);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(20)]
    [InlineData(45)]
    [InlineData(70)]
    public void A_straight_leg_raise_asks_the_leg_weight_moment_times_the_cosine_of_elevation(double elevationDeg)
    {
        // Hu et al. 2011 (doi:10.1007/s00586-010-1508-5) names the task; the cosine is plain geometry.
        var model = TestBody.Man;
        var pose = new BodyPose(model) { PelvisRotation = OnTheBack };
        var level = TestBody.Moments(TestBody.Posed(model, pose))[model.IndexOf(Motion.HipFlexion, Side.Right)];
        pose.Angles[model.IndexOf(Motion.HipFlexion, Side.Right)] = TestBody.Radians(elevationDeg);
        var raised = TestBody.Moments(TestBody.Posed(model, pose))[model.IndexOf(Motion.HipFlexion, Side.Right)];

        // The foot's mass lies some centimetres in front of the leg's line: at most 0.1 m of 1 kg, so 1 N m.
        Assert.Equal(level * Math.Cos(TestBody.Radians(elevationDeg)), raised, 1.0);
        Assert.Equal(0.62, level / model.MassKg, 0.02);
    }

    /// <summary>
    /// The free body is the body less the stance leg. Source: the textbook balance (W - W leg) d = moment of the abductors;
    /// with masses of Winter it comes to 0.819 N m/kg for hips 0.167 m apart (75.16 kg).
    /// </summary>
    [Fact]
    public void Single_leg_stance_needs_the_abduction_moment_of_the_body_less_the_stance_leg()
    {
        var model = TestBody.Content.Build(new Physique(Sex.Male, 30, 1.80, 75.16));
        var (state, forces) = StandingOnTheRightLeg(model);
        var abduction = -TestBody.Moments(state, forces)[model.IndexOf(Motion.HipAdduction, Side.Right)];

        // Hand formula: every part that is not the stance leg, its weight times its distance inward of the stance hip.
        var hip = state.Origins[model.IndexOf(SegmentKind.Thigh, Side.Right)];
        var byHand = 0.0;
        for (var i = 0; i < model.Segments.Length; i++)
        {
            var segment = model.Segments[i];
            if (!(segment.Side == Side.Right && Leg.Contains(segment.Kind)))
                byHand += segment.MassKg * 9.81 * (hip.Z - state.Point(i, segment.MassCenter).Z);
        }

        Assert.Equal(byHand, abduction, 1e-3);

        // The stance leg hangs straight below its hip in the symmetric body, so the whole comes to m g times half the hip width.
        var halfHipWidth = hip.Z - state.Origins[0].Z;
        Assert.Equal(9.81 * halfHipWidth, abduction / model.MassKg, 0.01);

        // The published figure is for half a hip width of 0.0835 m.
        Assert.Equal(0.819, abduction / model.MassKg * 0.0835 / halfHipWidth, 0.01);
    }

    [Fact]
    public void In_two_leg_stance_each_hip_holds_its_foot_s_force_less_the_leg()
    {
        var model = TestBody.Man;
        var state = new BodyState(model);
        var points = Sole(model, state, Side.Right).Concat(Sole(model, state, Side.Left)).ToArray();
        var forces = FloorForces(state, points);
        Assert.Equal(TotalWeight(model) / 2, forces.Take(3).Sum(f => f.Force.Y), Tolerances.Balance * 1000);
        var adduction = TestBody.Moments(state, forces)[model.IndexOf(Motion.HipAdduction, Side.Right)];

        // Hand formula: the floor's forces times their distance outward of the hip, less the leg's own weights likewise.
        var hip = state.Origins[model.IndexOf(SegmentKind.Thigh, Side.Right)];
        var byHand = points.Take(3).Select((p, i) => forces[i].Force.Y * (p.Point.Z - hip.Z)).Sum();
        foreach (var kind in Leg)
        {
            var index = model.IndexOf(kind, Side.Right);
            byHand -= model.Segments[index].MassKg * 9.81 * (state.Point(index, model.Segments[index].MassCenter).Z - hip.Z);
        }

        Assert.Equal(byHand, adduction, Tolerances.TwoRoutes);
        Assert.True(Math.Abs(adduction) / model.MassKg < 0.1, "a tenth of the single-leg moment at most");
    }

    private static readonly SegmentKind[] Leg =
        [SegmentKind.Thigh, SegmentKind.Shank, SegmentKind.Talus, SegmentKind.Foot, SegmentKind.Toes];

    private static Mat3 OnTheLeftSide => new(0, -1, 0, 0, 0, 1, -1, 0, 0);

    private static Mat3 OnTheBack => Mat3.Rotation(Vec3.UnitZ, Math.PI / 2);

    private static double TotalWeight(BodyModel model) => model.Segments.Sum(s => s.MassKg) * 9.81;

    private static IEnumerable<(int Segment, Vec3 Point)> Sole(BodyModel model, BodyState state, Side side)
    {
        foreach (var point in TestBody.Content.Points.Resolve("foot"))
        {
            var (segment, local) = point.On(model, side);
            yield return (segment, state.Point(segment, local));
        }
    }

    /// <summary>Upright, level pelvis, the right hip adducted until the middle of its sole is below the mass centre; the left foot off the floor.</summary>
    private static (BodyState State, PointForce[] Forces) StandingOnTheRightLeg(BodyModel model)
    {
        var pose = new BodyPose(model);
        var state = new BodyState(model);
        var (inner, outer) = (-0.1, 0.4);
        for (var i = 0; i < 60; i++)
        {
            var middle = (inner + outer) / 2;
            pose.Angles[model.IndexOf(Motion.HipAdduction, Side.Right)] = middle;
            state.Update(pose);
            if (Sole(model, state, Side.Right).Average(p => p.Point.Z) > state.MassCenter().Z)
                inner = middle;
            else
                outer = middle;
        }

        var sole = Sole(model, state, Side.Right).ToArray();
        return (state, FloorForces(state, sole));
    }

    /// <summary>Upward forces of a smooth floor that balance the body.</summary>
    private static PointForce[] FloorForces(BodyState state, (int Segment, Vec3 Point)[] points)
    {
        var balance = Balancing.Held.BalanceOf(state.Model);
        ContactPoint[] contacts = [.. points.Select(p => new ContactPoint(p.Segment, p.Point, Vec3.UnitY, 0, 0))];
        var pose = new BodyPose(state.Model);
        balance.Solve(state, pose, contacts, [], [], [], EffortRule.Usual);
        Assert.True(Standing.Stands(state.Model, balance.Unbalanced.Force, balance.Unbalanced.Moment));
        return [.. points.Select((p, i) => new PointForce(p.Segment, p.Point, balance.ContactForce(i)))];
    }

    private static BodyPose Pose(double hip, double knee)
    {
        var pose = new BodyPose(TwoLinks());
        pose.Angles[0] = hip;
        pose.Angles[1] = knee;
        return pose;
    }

    private static BodyModel TwoLinks() => new(
        [
            new Segment(SegmentKind.Pelvis, null, -1, Vec3.Zero, 0, 0, 0, Vec3.Zero, 1, null, null, 1),
            new Segment(SegmentKind.Thigh, Side.Right, 0, Vec3.Zero, 0, 1, 10, new Vec3(0, -0.17, 0), 1, null, null, 1),
            new Segment(SegmentKind.Shank, Side.Right, 1, new Vec3(0, -0.40, 0), 1, 1, 4, new Vec3(0, -0.18, 0), 1, null, null, 1),
        ],
        [
            new JointCoordinate(Motion.HipFlexion, Side.Right, 1, Vec3.UnitZ, -1, 1),
            new JointCoordinate(Motion.KneeExtension, Side.Right, 2, Vec3.UnitZ, -1, 1),
        ],
        14, 1.7, []);
}
