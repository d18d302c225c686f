using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Prescribing;

/// <summary>Offers exercises for findings, each with the load it asks of this person. Nothing is hidden; the order is a suggestion.</summary>
public static class Candidates
{
    /// <summary>Computes every exercise for a person and ranks it by the findings it acts on and by how its load fits.</summary>
    /// <param name="exercises">The library.</param>
    /// <param name="load">Computes the load of an exercise for a working side.</param>
    /// <param name="findings">The accepted findings.</param>
    /// <param name="limits">What limits the choice.</param>
    /// <param name="fallbackSide">The side to work when a finding names none.</param>
    /// <returns>All candidates, most suitable first; the order does not depend on the order of the inputs.</returns>
    public static ImmutableArray<Candidate> For(
        IEnumerable<Exercise> exercises, Func<Exercise, Side, MovementLoad> load, IReadOnlyList<Finding> findings, Limits limits,
        Side fallbackSide)
    {
        ArgumentNullException.ThrowIfNull(exercises);
        ArgumentNullException.ThrowIfNull(load);
        ArgumentNullException.ThrowIfNull(findings);
        ArgumentNullException.ThrowIfNull(limits);
        return
        [
            .. exercises.Select(exercise => Make(exercise, load, findings, limits, fallbackSide))
                .OrderBy(c => c.Obstacles.IsEmpty ? 0 : 1)
                .ThenByDescending(c => c.Relevance > 0)
                .ThenBy(c => Rank(c.Fit))
                .ThenByDescending(c => c.Relevance)
                .ThenBy(c => c.Exercise.Id, StringComparer.Ordinal),
        ];
    }

    /// <summary>How a share lies to a window.</summary>
    /// <param name="share">The share, or null.</param>
    /// <param name="low">Lower edge of the window.</param>
    /// <param name="high">Upper edge of the window.</param>
    /// <returns>The fit.</returns>
    public static LoadFit FitOf(LoadShare? share, double low, double high)
    {
        if (share is null)
            return LoadFit.NotJudged;
        if (share.High < low)
            return LoadFit.TooLight;
        if (share.Low > high)
            return LoadFit.TooHeavy;
        return share.Middle < low ? LoadFit.MaybeLight : share.Middle > high ? LoadFit.MaybeHeavy : LoadFit.Inside;
    }

    /// <summary>What lacks on one side is trained less by both at once: the stronger side may take over (common practice, no source; the half is our choice).</summary>
    private const double BothSidesForOne = 0.5;

    private static Candidate Make(
        Exercise exercise, Func<Exercise, Side, MovementLoad> load, IReadOnlyList<Finding> findings, Limits limits, Side fallbackSide)
    {
        var matches = findings
            .Select(f => (Finding: f, Match: Match(exercise, f.Impairment) * (exercise.Movement.Bilateral && f.Impairment?.Side is not null ? BothSidesForOne : 1)))
            .Where(m => m.Match > 0)
            .OrderByDescending(m => m.Match * m.Finding.Weight)
            .ThenBy(m => m.Finding.Id, StringComparer.Ordinal)
            .ToArray();
        var side = matches.Select(m => m.Finding.Impairment!.Side).FirstOrDefault(s => s is not null) ?? fallbackSide;
        var computed = load(exercise, side);
        var main = PersonalLoads.Main(exercise, computed, side);
        var fit = FitOf(main, limits.WindowLow, limits.WindowHigh);
        return new Candidate(
            exercise, side, computed, main, fit,
            [.. matches.Select(m => m.Finding.Id)],
            matches.Sum(m => m.Match * m.Finding.Weight),
            Reasons(matches.Select(m => m.Finding), main, fit, limits, computed),
            Obstacles(exercise, limits));
    }

    // A form that loads the right muscles for another purpose helps endurance and control too, but less. Our choice.
    private const double LessFitting = 0.6;

    /// <summary>1 when the first thing the exercise acts on is what is lacking, less for the second and third; 0 for none.</summary>
    private static double Match(Exercise exercise, Impairment? impairment)
    {
        static double ByPlace(int place) => place < 0 ? 0 : 1.0 / (1 + place);
        return impairment switch
        {
            { Kind: ImpairmentKind.Weak or ImpairmentKind.PainUnderLoad, Action: { } action } when exercise.Purpose.Loads() =>
                ByPlace(exercise.Loads.IndexOf(action)),
            { Kind: ImpairmentKind.Short, Group: { } group } when exercise.Purpose is Purpose.Stretch or Purpose.Release =>
                ByPlace(exercise.Groups.IndexOf(group)) * (exercise.Purpose == Purpose.Release ? 0.5 : 1),
            { Kind: ImpairmentKind.Stiff, Action: { } action } when exercise.Purpose == Purpose.Stretch =>
                Opposed(action) is { } opposed ? ByPlace(exercise.Groups.IndexOf(opposed)) : 0,
            { Kind: ImpairmentKind.Tires, Action: { } action } when exercise.Purpose.Loads() =>
                ByPlace(exercise.Loads.IndexOf(action)) * (exercise.Purpose == Purpose.Endure ? 1 : LessFitting),
            { Kind: ImpairmentKind.PoorControl, Action: { } action } when exercise.Purpose.Loads() =>
                ByPlace(exercise.Loads.IndexOf(action)) * (exercise.Purpose == Purpose.Control ? 1 : LessFitting),
            { Kind: ImpairmentKind.LowLoadTolerance } when exercise.Purpose is Purpose.Functional or Purpose.Aerobic => 0.3,
            { Kind: ImpairmentKind.Activity } when exercise.Purpose == Purpose.Functional => 0.3,
            _ => 0,
        };
    }

    /// <summary>The muscle group that is lengthened when a joint goes further in a direction; null where no single group is.</summary>
    private static MuscleGroup? Opposed(JointAction action) => action switch
    {
        JointAction.HipExtension => MuscleGroup.HipFlexors,
        JointAction.HipFlexion => MuscleGroup.GluteusMaximus,
        JointAction.HipAdduction => MuscleGroup.LateralHip,
        JointAction.HipAbduction => MuscleGroup.Adductors,
        JointAction.HipInternalRotation => MuscleGroup.DeepRotators,
        JointAction.KneeFlexion => MuscleGroup.RectusFemoris,
        JointAction.KneeExtension => MuscleGroup.Hamstrings,
        JointAction.AnkleDorsiflexion => MuscleGroup.Gastrocnemius,
        _ => null,
    };

    private static int Rank(LoadFit fit) => fit switch
    {
        LoadFit.Inside => 0,
        LoadFit.NotJudged => 1,
        LoadFit.MaybeLight => 2,
        LoadFit.MaybeHeavy => 3,
        LoadFit.TooLight => 4,
        LoadFit.TooHeavy => 5,
    };

    private static ImmutableArray<string> Reasons(
        IEnumerable<Finding> matches, LoadShare? main, LoadFit fit, Limits limits, MovementLoad load)
    {
        var reasons = ImmutableArray.CreateBuilder<string>();
        foreach (var finding in matches)
            reasons.Add("For: " + finding.Headline + ".");
        var window = FormattableString.Invariant($"{limits.WindowLow * 100:0}-{limits.WindowHigh * 100:0} %");
        if (main is not null)
        {
            var share = FormattableString.Invariant($"{main.Middle * 100:0} % ({main.Low * 100:0}-{main.High * 100:0})");
            reasons.Add(fit switch
            {
                LoadFit.TooLight => $"Too light: {share}, below the window {window}.",
                LoadFit.MaybeLight => $"On the light side: {share}, window {window}.",
                LoadFit.Inside => $"Load share {share} lies in the window {window}.",
                LoadFit.MaybeHeavy => $"On the heavy side: {share}, window {window}.",
                LoadFit.TooHeavy => main.Low > 1
                    ? $"Beyond capacity: {share}."
                    : $"Too heavy now: {share}, above the window {window}.",
                LoadFit.NotJudged => share,
            });
        }

        if (main is { Capacity.BeyondCurve: true })
            reasons.Add("The joint goes beyond the angles of the published strength curve; the curve's end value is used.");
        foreach (var problem in load.Problems)
            reasons.Add(load.Computed ? problem : "Load not computed. " + problem);
        return reasons.ToImmutable();
    }

    private static ImmutableArray<string> Obstacles(Exercise exercise, Limits limits)
    {
        var obstacles = ImmutableArray.CreateBuilder<string>();
        if (limits.Owned is { } owned)
        {
            foreach (var missing in exercise.Equipment.Where(e => !owned.Contains(e)))
                obstacles.Add($"Needs {Name(missing)}.");
        }

        if (limits.Avoid.Contains(exercise.Position))
            obstacles.Add($"Position to avoid: {Name(exercise.Position)}.");
        return obstacles.ToImmutable();
    }

    /// <summary>The everyday name of a piece of equipment, with its article.</summary>
    /// <param name="equipment">The equipment.</param>
    /// <returns>Such as "a strap".</returns>
    public static string Name(Equipment equipment) => equipment switch
    {
        Equipment.Mat => "a mat",
        Equipment.Chair => "a chair",
        Equipment.Step => "a step",
        Equipment.Wall => "a wall",
        Equipment.Roller => "a roller",
        Equipment.Strap => "a strap",
        Equipment.LoopBand => "a loop band",
        Equipment.CuffWeight => "a cuff weight",
        Equipment.Band => "a long band",
        Equipment.HandWeight => "a hand weight",
        Equipment.Ball => "a ball",
        Equipment.SmallBall => "a small ball",
        Equipment.Towel => "a towel",
        Equipment.Pillow => "a pillow",
        Equipment.Bench => "a bench or bed",
        Equipment.Table => "a table",
        Equipment.Board => "a tilted board",
        Equipment.Stick => "a stick",
        Equipment.Bicycle => "a stationary bicycle",
    };

    /// <summary>The name of a position in running text.</summary>
    /// <param name="position">The position.</param>
    /// <returns>Such as "side-lying".</returns>
    public static string Name(BodyPosition position) => position switch
    {
        BodyPosition.Supine => "on the back",
        BodyPosition.SideLying => "side-lying",
        BodyPosition.Prone => "on the front",
        BodyPosition.Kneeling => "kneeling",
        BodyPosition.Sitting => "sitting",
        BodyPosition.Standing => "standing",
    };
}
