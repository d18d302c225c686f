using System.Collections.Immutable;
using System.Globalization;

namespace MomentArm.Body;

/// <summary>
/// Scales the published skeleton to a person, segment by segment, and gives the segments their masses
/// (de Leva 1996 fractions of this person's stature and mass). See docs/models/body.md, section 2.
/// </summary>
public static class BodyModelBuilder
{
    /// <summary>The published skeleton at its own size, without masses: for checks against published positions and lengths.</summary>
    /// <param name="skeleton">The published skeleton.</param>
    /// <returns>A body with factor 1 everywhere.</returns>
    public static BodyModel Unscaled(SkeletonData skeleton)
    {
        ArgumentNullException.ThrowIfNull(skeleton);
        return Assemble(skeleton, _ => 1, (_, _) => (0, Vec3.Zero), 0, 0, []);
    }

    /// <summary>A person's body.</summary>
    /// <param name="skeleton">The published skeleton.</param>
    /// <param name="tables">The mass tables, one for each sex.</param>
    /// <param name="physique">What is known of the person; missing parts take defaults, named in the model's assumptions.</param>
    /// <returns>The scaled body.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Stature or mass outside what a person can have.</exception>
    public static BodyModel Build(SkeletonData skeleton, IReadOnlyList<SegmentTable> tables, Physique physique)
    {
        ArgumentNullException.ThrowIfNull(skeleton);
        ArgumentNullException.ThrowIfNull(tables);
        ArgumentNullException.ThrowIfNull(physique);
        var table = TableFor(tables, physique.Sex);
        var assumptions = ImmutableArray.CreateBuilder<string>();
        if (physique.Sex is null)
            assumptions.Add("Sex not given: mean of the female and male tables.");
        if (physique.AgeYears is null)
            assumptions.Add("Age not given: strength of a young adult taken.");
        if (physique.StatureM is null)
            assumptions.Add(string.Create(CultureInfo.InvariantCulture, $"Stature not given: {table.StatureM:0.00} m taken."));
        if (physique.MassKg is null)
            assumptions.Add(string.Create(CultureInfo.InvariantCulture, $"Body mass not given: {table.MassKg:0} kg taken."));
        var stature = Quantity.Within(physique.StatureM ?? table.StatureM, 0.8, 2.4, "m", "stature");
        var mass = Quantity.Within(physique.MassKg ?? table.MassKg, 15, 350, "kg", "body mass");
        var scales = Scales(skeleton.ReferenceLengths, table, stature);
        return Assemble(
            skeleton, kind => scales[kind], (kind, scaled) => MassOf(kind, scaled, skeleton, table, stature, mass), mass, stature,
            assumptions.ToImmutable());
    }

    private static MeanTable TableFor(IReadOnlyList<SegmentTable> tables, Sex? sex)
    {
        var used = tables.Where(t => sex is null || t.Sex == sex).ToArray();
        if (used.Length == 0)
            throw new ArgumentException("There is no mass table for that sex.", nameof(tables));
        BodyPartRow Mean(BodyPart part) => new(
            used.Average(t => t.Parts[part].MassFraction),
            used.Average(t => t.Parts[part].LengthFraction),
            used.Average(t => t.Parts[part].CenterFraction));
        return new MeanTable(
            Enum.GetValues<BodyPart>().ToDictionary(part => part, Mean),
            used.Average(t => t.ReferenceStatureM),
            used.Average(t => t.ReferenceMassKg));
    }

    private static Dictionary<SegmentKind, double> Scales(ReferenceLengths reference, MeanTable table, double stature)
    {
        double Factor(BodyPart part, double modelLength) => table.Rows[part].LengthFraction * stature / modelLength;
        var trunk = Factor(BodyPart.ShoulderToHip, reference.Trunk);
        var foot = Factor(BodyPart.Foot, reference.Foot);
        var forearm = Factor(BodyPart.Forearm, reference.Forearm);
        return new Dictionary<SegmentKind, double>
        {
            [SegmentKind.Pelvis] = trunk,
            [SegmentKind.Torso] = trunk,
            [SegmentKind.Head] = Factor(BodyPart.Head, reference.Head),
            [SegmentKind.Thigh] = Factor(BodyPart.Thigh, reference.Thigh),
            [SegmentKind.Shank] = Factor(BodyPart.Shank, reference.Shank),
            [SegmentKind.Talus] = foot,
            [SegmentKind.Foot] = foot,
            [SegmentKind.Toes] = foot,
            [SegmentKind.UpperArm] = Factor(BodyPart.UpperArm, reference.UpperArm),
            [SegmentKind.Ulna] = forearm,
            [SegmentKind.Radius] = forearm,
            [SegmentKind.Hand] = Factor(BodyPart.Hand, reference.Hand),
        };
    }

    /// <summary>Mass and mass centre of a segment in its own (scaled) frame.</summary>
    private static (double Mass, Vec3 Center) MassOf(
        SegmentKind kind, ScaledJoints joints, SkeletonData skeleton, MeanTable table, double stature, double mass)
    {
        double Share(BodyPart part) => table.Rows[part].MassFraction * mass;
        double Center(BodyPart part) => table.Rows[part].CenterFraction;
        var trunk = new TrunkLine(joints, table, stature);
        return kind switch
        {
            SegmentKind.Pelvis => (Share(BodyPart.LowerTrunk), trunk.InPelvis(trunk.LowerTrunkHeight)),
            SegmentKind.Torso => (
                Share(BodyPart.UpperTrunk) + Share(BodyPart.MiddleTrunk),
                trunk.InTorso(
                    (Share(BodyPart.UpperTrunk) * trunk.UpperTrunkHeight + Share(BodyPart.MiddleTrunk) * trunk.MiddleTrunkHeight)
                    / (Share(BodyPart.UpperTrunk) + Share(BodyPart.MiddleTrunk)))),

            // The head's mass centre is given from the vertex; the frame starts at the cervicale.
            SegmentKind.Head => (
                Share(BodyPart.Head),
                new Vec3(0, (1 - Center(BodyPart.Head)) * table.Rows[BodyPart.Head].LengthFraction * stature, 0)),
            SegmentKind.Thigh => (Share(BodyPart.Thigh), Center(BodyPart.Thigh) * joints.KneeInThigh),
            SegmentKind.Shank => (Share(BodyPart.Shank), Center(BodyPart.Shank) * joints.AnkleInShank),
            SegmentKind.Foot => (
                Share(BodyPart.Foot),
                new Vec3(Center(BodyPart.Foot) * skeleton.ReferenceLengths.Foot * joints.FootScale, 0.015 * joints.FootScale, 0)),
            SegmentKind.UpperArm => (Share(BodyPart.UpperArm), Center(BodyPart.UpperArm) * joints.ElbowInUpperArm),
            SegmentKind.Ulna => (Share(BodyPart.Forearm), Center(BodyPart.Forearm) * joints.WristInUlna),
            SegmentKind.Hand => (
                Share(BodyPart.Hand),
                new Vec3(0, -Center(BodyPart.Hand) * table.Rows[BodyPart.Hand].LengthFraction * stature, 0)),
            SegmentKind.Talus or SegmentKind.Toes or SegmentKind.Radius => (0, Vec3.Zero),
        };
    }

    private static BodyModel Assemble(
        SkeletonData skeleton,
        Func<SegmentKind, double> scale,
        Func<SegmentKind, ScaledJoints, (double Mass, Vec3 Center)> massOf,
        double mass,
        double stature,
        ImmutableArray<string> assumptions)
    {
        var joints = new ScaledJoints(skeleton, scale);
        var segments = ImmutableArray.CreateBuilder<Segment>();
        var coordinates = ImmutableArray.CreateBuilder<JointCoordinate>();
        var index = new Dictionary<(SegmentKind, Side?), int>();

        // Right leg and arm, then left, each parent before its children.
        foreach (var data in skeleton.Segments)
        {
            Side?[] sides = data.BothSides ? [Side.Right, Side.Left] : [null];
            foreach (var side in sides)
            {
                var left = side == Side.Left;
                var parent = data.Parent is { } kind
                    ? index.TryGetValue((kind, side), out var own) ? own : index[(kind, null)]
                    : -1;
                var parentScale = data.Parent is { } p ? scale(p) : 1;
                var offset = parentScale * data.Offset;
                var (segmentMass, center) = massOf(data.Kind, joints);
                index[(data.Kind, side)] = segments.Count;
                segments.Add(new Segment(
                    data.Kind, side, parent, left ? offset.Mirrored : offset, coordinates.Count, data.Coordinates.Length,
                    segmentMass, left ? center.Mirrored : center, scale(data.Kind), data.TranslationX, data.TranslationY, parentScale));
                foreach (var c in data.Coordinates)
                {
                    // A mirrored axis keeps its z part: the same sign then means the same anatomical motion.
                    var axis = left ? new Vec3(-c.Axis.X, -c.Axis.Y, c.Axis.Z) : c.Axis;
                    coordinates.Add(new JointCoordinate(c.Motion, side, segments.Count - 1, axis.Normalized(), c.NormalLeast, c.NormalMost));
                }
            }
        }

        return new BodyModel(segments.ToImmutable(), coordinates.ToImmutable(), mass, stature, assumptions);
    }

    private sealed record MeanTable(Dictionary<BodyPart, BodyPartRow> Rows, double StatureM, double MassKg);

    /// <summary>Joint centres of the right side in their parents' frames after scaling.</summary>
    private sealed class ScaledJoints
    {
        private readonly Dictionary<SegmentKind, SegmentData> data;
        private readonly Func<SegmentKind, double> scale;

        internal ScaledJoints(SkeletonData skeleton, Func<SegmentKind, double> scale)
        {
            data = skeleton.Segments.ToDictionary(s => s.Kind);
            this.scale = scale;
        }

        internal double FootScale => scale(SegmentKind.Foot);

        internal Vec3 KneeInThigh
        {
            get
            {
                var shank = data[SegmentKind.Shank];
                return scale(SegmentKind.Thigh) * (shank.Offset
                    + new Vec3(shank.TranslationX?.At(0).Value ?? 0, shank.TranslationY?.At(0).Value ?? 0, 0));
            }
        }

        internal Vec3 AnkleInShank => Offset(SegmentKind.Talus);

        internal Vec3 ElbowInUpperArm => Offset(SegmentKind.Ulna);

        internal Vec3 WristInUlna => Offset(SegmentKind.Radius) + Offset(SegmentKind.Hand);

        internal Vec3 Hip => Offset(SegmentKind.Thigh);

        internal Vec3 Back => Offset(SegmentKind.Torso);

        internal Vec3 ShoulderInTorso => Offset(SegmentKind.UpperArm);

        private Vec3 Offset(SegmentKind kind) => scale(data[kind].Parent!.Value) * data[kind].Offset;
    }

    /// <summary>The line from mid-hip to mid-shoulder on which the trunk's mass centres lie (our choice; de Leva gives heights only).</summary>
    private readonly struct TrunkLine
    {
        private readonly Vec3 midHip;
        private readonly Vec3 midShoulder;
        private readonly Vec3 back;

        internal TrunkLine(ScaledJoints joints, MeanTable table, double stature)
        {
            midHip = joints.Hip with { Z = 0 };
            back = joints.Back;
            midShoulder = back + joints.ShoulderInTorso with { Z = 0 };

            // Heights over the hip line as fractions of the line's length, each part on top of the ones below.
            double Length(BodyPart part) => table.Rows[part].LengthFraction * stature;
            double FromTop(BodyPart part) => table.Rows[part].CenterFraction * Length(part);
            var whole = Length(BodyPart.ShoulderToHip);
            var lower = Length(BodyPart.LowerTrunk);
            var middle = Length(BodyPart.MiddleTrunk);
            LowerTrunkHeight = (lower - FromTop(BodyPart.LowerTrunk)) / whole;
            MiddleTrunkHeight = (lower + middle - FromTop(BodyPart.MiddleTrunk)) / whole;
            UpperTrunkHeight = (lower + middle + Length(BodyPart.UpperTrunk) - FromTop(BodyPart.UpperTrunk)) / whole;
        }

        internal double LowerTrunkHeight { get; }

        internal double MiddleTrunkHeight { get; }

        internal double UpperTrunkHeight { get; }

        internal Vec3 InPelvis(double height) => midHip.Toward(midShoulder, height);

        internal Vec3 InTorso(double height) => InPelvis(height) - back;
    }
}
