using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>One thing wrong with a frame: where, what, and how to mend it.</summary>
/// <param name="Place">Place in the frame as files name it, such as working.hipFlexionDeg or contacts[0].point.</param>
/// <param name="What">What is wrong, with the value found, its unit and the range.</param>
/// <param name="Mend">What to do.</param>
public sealed record FrameFault(string Place, string What, string Mend)
{
    /// <inheritdoc/>
    public override string ToString() => $"{Place}: {What} {Mend}";
}

/// <summary>
/// Checks what an author wrote before it is settled: angles no joint has, points the body lacks, heights and tilts that
/// no surface has. The ranges are wide (our choice): beyond every usual range of motion, inside what typing errors give.
/// </summary>
public static class FrameCheck
{
    /// <summary>The highest surface, metres.</summary>
    public const double HighestM = 1.5;

    /// <summary>The steepest board, radians (45 degrees).</summary>
    public const double Steepest = Math.PI / 4;

    /// <summary>The shortest and the longest strap, metres.</summary>
    public const double ShortestStrapM = 0.02;

    /// <inheritdoc cref="ShortestStrapM"/>
    public const double LongestStrapM = 3;

    private const double Degree = Math.PI / 180;

    private static readonly ImmutableArray<Range<LimbAngles>> LimbRanges =
    [
        new("hipFlexionDeg", -40, 140, a => a.HipFlexion),
        new("hipAbductionDeg", -45, 70, a => a.HipAbduction),
        new("hipInternalRotationDeg", -70, 60, a => a.HipInternalRotation),
        new("kneeFlexionDeg", -10, 155, a => a.KneeFlexion),
        new("ankleDorsiflexionDeg", -60, 45, a => a.AnkleDorsiflexion),
        new("subtalarEversionDeg", -35, 25, a => a.SubtalarEversion),
        new("toeExtensionDeg", -45, 80, a => a.ToeExtension),
        new("shoulderFlexionDeg", -70, 185, a => a.ShoulderFlexion),
        new("shoulderAbductionDeg", -60, 185, a => a.ShoulderAbduction),
        new("shoulderInternalRotationDeg", -100, 100, a => a.ShoulderInternalRotation),
        new("elbowFlexionDeg", -10, 155, a => a.ElbowFlexion),
        new("forearmPronationDeg", 0, 180, a => a.ForearmPronation),
        new("wristFlexionDeg", -90, 90, a => a.WristFlexion),
    ];

    private static readonly ImmutableArray<Range<AxialAngles>> AxialRanges =
    [
        new("trunkFlexionDeg", -45, 110, a => a.TrunkFlexion),
        new("trunkBendToWorkingDeg", -45, 45, a => a.TrunkBendToWorking),
        new("trunkTurnToWorkingDeg", -60, 60, a => a.TrunkTurnToWorking),
        new("neckFlexionDeg", -70, 70, a => a.NeckFlexion),
        new("neckBendToWorkingDeg", -50, 50, a => a.NeckBendToWorking),
        new("neckTurnToWorkingDeg", -90, 90, a => a.NeckTurnToWorking),
    ];

    /// <summary>Every fault of a frame, all at once.</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="points">The named points of the body.</param>
    /// <returns>The faults; empty when there is none.</returns>
    public static IReadOnlyList<FrameFault> Faults(PosedFrame frame, SurfacePoints points)
    {
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(points);
        List<FrameFault>? faults = null;
        CheckAngles(frame.Working, LimbRanges, "working.", ref faults);
        CheckAngles(frame.Other, LimbRanges, "other.", ref faults);
        CheckAngles(frame.Axial, AxialRanges, "axial.", ref faults);
        if (!Inside(frame.PitchHint / Degree, -120, 120))
            Add(ref faults, "pitchHintDeg", Outside(frame.PitchHint / Degree, -120, 120, "degrees"), "Correct the number.");
        for (var i = 0; i < frame.Contacts.Length; i++)
            CheckContact(frame, frame.Contacts[i], points, i, ref faults);
        for (var i = 0; i < frame.Ties.Length; i++)
            CheckTie(frame.Ties[i], points, i, ref faults);
        return faults ?? (IReadOnlyList<FrameFault>)[];
    }

    /// <summary>Every fault of the angles of one limb.</summary>
    /// <param name="limb">The angles.</param>
    /// <param name="place">What the limb is called where it is written, such as tested.</param>
    /// <returns>The faults; empty when there is none.</returns>
    public static IReadOnlyList<FrameFault> Faults(LimbAngles limb, string place)
    {
        ArgumentNullException.ThrowIfNull(limb);
        List<FrameFault>? faults = null;
        CheckAngles(limb, LimbRanges, place + ".", ref faults);
        return faults ?? (IReadOnlyList<FrameFault>)[];
    }

    /// <summary>Refuses a frame that has faults.</summary>
    /// <exception cref="ArgumentException">There are faults; the message lists every one.</exception>
    internal static void Require(PosedFrame frame, SurfacePoints points)
    {
        var faults = Faults(frame, points);
        if (faults.Count > 0)
            throw new ArgumentException(string.Join(" ", faults), nameof(frame));
    }

    private static void CheckAngles<T>(T angles, ImmutableArray<Range<T>> ranges, string path, ref List<FrameFault>? faults)
    {
        foreach (var range in ranges)
        {
            var degrees = range.Angle(angles) / Degree;
            if (!Inside(degrees, range.Least, range.Most))
                Add(ref faults, path + range.Name, Outside(degrees, range.Least, range.Most, "degrees"), "Correct the number.");
        }
    }

    private static void CheckContact(PosedFrame frame, SurfaceContact contact, SurfacePoints points, int index, ref List<FrameFault>? faults)
    {
        CheckPoint(contact.Point, contact.Limb, points, "contacts", index, "point", "limb", ref faults);
        if (!Inside(contact.HeightM, 0, HighestM))
            Add(ref faults, At("heightM"), Outside(contact.HeightM, 0, HighestM, "m"), "Give the height over the floor in meters.");
        if (!Inside(contact.Tilt, -Steepest, Steepest))
            Add(ref faults, At("tiltDeg"), Outside(contact.Tilt / Degree, -45, 45, "degrees"), "Give degrees, toes down positive.");
        else if (contact.Tilt != 0 && contact.Surface != SurfaceKind.Board)
            Add(ref faults, At("tiltDeg"), $"A {Words.Of(contact.Surface)} has no tilt.", "Name the surface board, or leave the tilt out.");
        if (contact.ShareOfWeight is { } share && !Inside(share, 0, 1))
            Add(ref faults, At("shareOfWeightPercent"), Outside(100 * share, 0, 100, "percent"), "Give the part of the whole weight in percent.");
        else if (contact.ShareOfWeight is not null && !contact.BearsWeight)
            Add(ref faults, At("shareOfWeightPercent"), "A contact that bears no weight has no share of it.", "Leave the share out, or let the contact bear weight.");
        if (contact.Wall is not { } wall)
            return;
        if (contact.Surface != SurfaceKind.Wall)
            Add(ref faults, At("wall"), $"A {Words.Of(contact.Surface)} is no wall.", "Name the surface wall, or leave the place of the wall out.");
        else if (!Walls.Stands(frame.Orientation, wall))
            Add(ref faults, At("wall"), $"A wall {Words.Of(wall)} someone {Words.Of(frame.Orientation)} would be the floor or the ceiling.", $"Say {Words.Places(frame.Orientation)}.");

        string At(string what) => FormattableString.Invariant($"contacts[{index}].{what}");
    }

    private static void CheckTie(Tie tie, SurfacePoints points, int index, ref List<FrameFault>? faults)
    {
        var good = CheckPoint(tie.From, tie.FromLimb, points, "ties", index, "from", "fromLimb", ref faults)
            & CheckPoint(tie.To, tie.ToLimb, points, "ties", index, "to", "toLimb", ref faults);
        var where = FormattableString.Invariant($"ties[{index}].");
        if (tie.LengthM is { } length)
        {
            if (tie.Kind == TieKind.Hold)
                Add(ref faults, where + "lengthM", "A hold has no length.", "Leave the length out, or make it a strap.");
            else if (!Inside(length, ShortestStrapM, LongestStrapM))
                Add(ref faults, where + "lengthM", Outside(length, ShortestStrapM, LongestStrapM, "m"), "Give the straight length in meters.");
        }

        if (!good)
            return;
        foreach (var (name, key) in new[] { (tie.From, "from"), (tie.To, "to") })
        {
            if (points.Resolve(name).Any(p => p.Segment != points.Resolve(name)[0].Segment))
            {
                Add(ref faults, where + key, $"\"{name}\" spans more than one part of the body.", "Name a point of one part.");
                good = false;
            }
        }

        var (from, to) = (points.Resolve(tie.From)[0], points.Resolve(tie.To)[0]);
        if (good && from.Segment == to.Segment && (Midline(from) || tie.FromLimb == tie.ToLimb))
            Add(ref faults, where + "to", "The tie joins a part of the body to itself.", "Name points of two parts.");
    }

    private static bool CheckPoint(
        string name, Limb? limb, SurfacePoints points, string list, int index, string key, string limbKey, ref List<FrameFault>? faults)
    {
        if (!points.Has(name))
        {
            Add(ref faults, FormattableString.Invariant($"{list}[{index}].{key}"), $"The body has no point \"{name}\".", "Use a name of body/surface-points.json.");
            return false;
        }

        if (limb is null && points.Resolve(name)[0].BothSides)
        {
            Add(ref faults, FormattableString.Invariant($"{list}[{index}].{limbKey}"), $"\"{name}\" is there on both sides.", "Say whose: working or other.");
            return false;
        }

        return true;
    }

    private static bool Midline(SurfacePoint point) => point.Segment is SegmentKind.Pelvis or SegmentKind.Torso or SegmentKind.Head;

    private static void Add(ref List<FrameFault>? faults, string place, string what, string mend) =>
        (faults ??= []).Add(new FrameFault(place, what, mend));

    // A hair of room for the way from degrees to radians and back.
    private static bool Inside(double value, double least, double most) => value >= least - 1e-9 && value <= most + 1e-9;

    private static string Outside(double value, double least, double most, string unit) =>
        FormattableString.Invariant($"{Math.Round(value, 6)} {unit} lies outside {least} to {most}.");

    private sealed record Range<T>(string Name, double Least, double Most, Func<T, double> Angle);
}
