using CsCheck;
using static MomentArm.Body.Tests.SettlingFrames;

namespace MomentArm.Body.Tests;

/// <summary>Random frames with random contacts and ties on random bodies: never an exception, never a number that is none.</summary>
public class RandomFramesTests
{
    /// <summary>How many frames are tried.</summary>
    private const int Frames = 3000;

    private static readonly string[] Names = [.. TestBody.Content.Points.Points.Keys.Concat(TestBody.Content.Points.Groups.Keys).Order(StringComparer.Ordinal)];

    private static readonly Gen<string> Name = Gen.Int[0, Names.Length - 1].Select(i => Names[i]);

    private static readonly Gen<Limb?> AnyLimb = Gen.Bool.Select(working => (Limb?)(working ? Limb.Working : Limb.Other));

    private static readonly Gen<LimbAngles> Limbs = Gen.Double[0, 1].Array[13].Select(a => new LimbAngles
    {
        HipFlexion = In(a[0], -40, 140), HipAbduction = In(a[1], -45, 70), HipInternalRotation = In(a[2], -70, 60), KneeFlexion = In(a[3], -10, 155),
        AnkleDorsiflexion = In(a[4], -60, 45), SubtalarEversion = In(a[5], -35, 25), ToeExtension = In(a[6], -45, 80),
        ShoulderFlexion = In(a[7], -70, 185), ShoulderAbduction = In(a[8], -60, 185), ShoulderInternalRotation = In(a[9], -100, 100),
        ElbowFlexion = In(a[10], -10, 155), ForearmPronation = In(a[11], 0, 180), WristFlexion = In(a[12], -90, 90),
    });

    private static readonly Gen<AxialAngles> Axial = Gen.Double[0, 1].Array[6].Select(a => new AxialAngles
    {
        TrunkFlexion = In(a[0], -45, 110), TrunkBendToWorking = In(a[1], -45, 45), TrunkTurnToWorking = In(a[2], -60, 60),
        NeckFlexion = In(a[3], -70, 70), NeckBendToWorking = In(a[4], -50, 50), NeckTurnToWorking = In(a[5], -90, 90),
    });

    private static readonly Gen<SurfaceContact> Contact = Gen.Select(
        Name, AnyLimb, Gen.Enum<SurfaceKind>(), Gen.Double[0, 1.5], Gen.Bool, Gen.Double[-45, 45], Gen.Bool,
        (name, limb, surface, height, bears, tilt, low) => new SurfaceContact(name, limb, surface, low ? height / 10 : height, bears)
        {
            Tilt = surface == SurfaceKind.Board ? Degrees(tilt) : 0,
        });

    private static readonly Gen<Tie> Ties = Gen.Select(
        Gen.Enum<TieKind>(), Name, AnyLimb, Name, AnyLimb, Gen.Double[0.02, 3], Gen.Bool,
        (kind, from, fromLimb, to, toLimb, length, free) =>
            new Tie(kind, from, fromLimb, to, toLimb, kind == TieKind.Hold || free ? null : length));

    private static readonly Gen<PosedFrame> Frame = Gen.Select(
        Gen.Enum<Orientation>(), Gen.Double[-120, 120], Limbs, Limbs, Axial, Contact.Array[0, 7], Ties.Array[0, 3],
        (orientation, pitch, working, other, axial, contacts, ties) => Placed(new PosedFrame
        {
            Name = "any",
            Orientation = orientation,
            PitchHint = Degrees(pitch),
            Working = working,
            Other = other,
            Axial = axial,
            Contacts = [.. contacts],
            Ties = [.. ties],
        }));

    [Fact]
    public void Any_valid_frame_settles_or_is_refused_in_words() => Gen.Select(RandomBodies.Body, Frame, Gen.Bool).Sample(
        (model, frame, left) =>
        {
            var settled = Settling.Settle(model, TestBody.Content.Points, frame, left ? Side.Left : Side.Right);
            Assert.All(settled.Pose.Angles, angle => Assert.True(double.IsFinite(angle)));
            Assert.True(double.IsFinite(settled.Pose.PelvisPosition.Length + settled.LargestGapM));
            Assert.All(settled.Contacts, c => Assert.True(double.IsFinite(c.Point.Length + c.Gap) && Math.Abs(c.Normal.Length - 1) < 1e-9));
            Assert.All(settled.Ties, t => Assert.True(double.IsFinite(t.LengthM + t.Gap)));
            if (Settling.Refusal(model, settled) is { } reason)
                Assert.EndsWith(".", reason, StringComparison.Ordinal);
            else
                Assert.InRange(settled.LargestGapM, 0, Settling.Refused);
        },
        iter: Frames);

    [Fact]
    public void Joints_stay_inside_their_usual_range_or_where_the_author_put_them() => Frame.Sample(
        frame =>
        {
            var settled = Settle(frame);
            var before = ClinicalPose.Of(Woman, frame, Side.Right);
            for (var k = 0; k < before.Angles.Length; k++)
            {
                var coordinate = Woman.Coordinates[k];
                Assert.InRange(
                    settled.Pose.Angles[k], Math.Min(coordinate.NormalLeast, before.Angles[k]), Math.Max(coordinate.NormalMost, before.Angles[k]));
            }
        },
        iter: Frames / 4);

    private static double In(double share, double least, double most) => Degrees(least + share * (most - least));

    /// <summary>Takes the ties that join two parts, and gives midline points no limb.</summary>
    private static PosedFrame Placed(PosedFrame frame)
    {
        var points = TestBody.Content.Points;
        Limb? Of(string name, Limb? limb) => points.Resolve(name)[0].BothSides ? limb : null;
        var sided = frame with
        {
            Contacts = [.. frame.Contacts.Select(c => c with { Limb = Of(c.Point, c.Limb) })],
            Ties = [.. frame.Ties.Select(t => t with { FromLimb = Of(t.From, t.FromLimb), ToLimb = Of(t.To, t.ToLimb) })],
        };
        return sided with { Ties = [.. sided.Ties.Where(t => FrameCheck.Faults(frame with { Contacts = [], Ties = [t] }, points).Count == 0)] };
    }
}
