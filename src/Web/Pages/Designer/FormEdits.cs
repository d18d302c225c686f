using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Prescribing;

namespace MomentArm.Web.Pages.Designer;

/// <summary>Changes that must keep several parts of a form together: a band is pulled, drawn and needed, and so is a weight.</summary>
public static class FormEdits
{
    private const string CommonPractice = "common-practice";

    /// <summary>A new pull of a kind, whole enough to be computed (starting numbers are our choice).</summary>
    public static PullFile NewPull(PullKind kind) => kind switch
    {
        PullKind.Loop => new PullFile { Kind = kind, At = "kneeOuter", Toward = "kneeInner", Fraction = 0.5, LimbRadiusM = 0.06, Band = Band(0.6) },
        PullKind.Link => new PullFile { Kind = kind, At = "palm", Limb = Limb.Working, To = new PlaceFile("forefootSole", Limb.Working), Band = Band(null) },
        PullKind.Anchored => new PullFile
        {
            Kind = kind,
            At = "palm",
            Limb = Limb.Working,
            Anchor = new AnchorFile { Direction = BodyDirection.Forward, DistanceM = 1, HeightM = 1 },
            Band = Band(null),
        },
        PullKind.Help => new PullFile { Kind = kind, At = "heel", Limb = Limb.Working, Direction = BodyDirection.Up, ForceN = 20, Source = CommonPractice },
    };

    /// <summary>A pull as another kind: where it is tied stays, what the kind needs is added, what it has no use for goes.</summary>
    public static PullFile As(PullFile pull, PullKind kind, SurfacePoints points)
    {
        ArgumentNullException.ThrowIfNull(pull);
        var fresh = NewPull(kind);
        if (kind == PullKind.Loop && !BodyPlaces.HasSides(points, pull.At))
            return fresh;
        return fresh with
        {
            At = pull.At,
            Limb = kind == PullKind.Loop ? null : BodyPlaces.LimbFor(points, pull.At, pull.Limb),
            Toward = pull.Toward,
            Fraction = pull.Fraction,
            Band = kind == PullKind.Help ? null : pull.Band ?? fresh.Band,
        };
    }

    /// <summary>With other pulls: bands that are drawn and needed follow them.</summary>
    public static ExerciseFile WithPulls(ExerciseFile file, IReadOnlyList<PullFile> pulls)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(pulls);
        var changed = file with { Pulls = pulls };
        changed = Follow(changed, file.Pulls.Any(IsLoop), pulls.Any(IsLoop), PropKind.LoopBand, Equipment.LoopBand, new PropFile(PropKind.LoopBand, pulls.FirstOrDefault(IsLoop)?.At));
        changed = Follow(changed, file.Pulls.Any(IsBand), pulls.Any(IsBand), PropKind.Band, Equipment.Band, new PropFile(PropKind.Band));
        var (was, now) = (file.Pulls.Where(IsLoop).ToArray(), pulls.Where(IsLoop).ToArray());
        return was.Length == 1 && now.Length == 1 && was[0].At != now[0].At
            ? changed with { Props = [.. changed.Props.Select(p => p.Kind == PropKind.LoopBand && p.At == was[0].At ? p with { At = now[0].At } : p)] }
            : changed;
    }

    /// <summary>With a weight more: a dumbbell in the hand or a cuff at the ankle, drawn and needed.</summary>
    public static ExerciseFile WithWeight(ExerciseFile file, bool cuff)
    {
        ArgumentNullException.ThrowIfNull(file);
        var load = new AddedLoadFile(LoadKind.Weight, cuff ? "ankle" : "palm", Limb.Working, cuff ? 1 : 2);
        var (prop, thing) = cuff ? (PropKind.CuffWeight, Equipment.CuffWeight) : (PropKind.HandWeight, Equipment.HandWeight);
        return file with
        {
            AddedLoads = [.. file.AddedLoads, load],
            Props = file.Props.Any(p => (p.Kind, p.At, p.Limb) == (prop, load.At, load.Limb)) ? file.Props : [.. file.Props, new PropFile(prop, load.At, load.Limb)],
            Equipment = file.Equipment.Contains(thing) ? file.Equipment : [.. file.Equipment, thing],
        };
    }

    /// <summary>With a weight changed, or taken out where it is null; what is drawn at its place follows.</summary>
    public static ExerciseFile WithWeight(ExerciseFile file, int at, AddedLoadFile? load)
    {
        ArgumentNullException.ThrowIfNull(file);
        var was = file.AddedLoads[at];
        bool Drawn(PropFile p) => p.Kind is PropKind.HandWeight or PropKind.CuffWeight && p.At == was.At && p.Limb == was.Limb;
        var changed = file with
        {
            AddedLoads = [.. file.AddedLoads.SelectMany((l, i) => i != at ? [l] : load is null ? Array.Empty<AddedLoadFile>() : [load])],
            Props = load is null
                ? [.. file.Props.Where(p => !Drawn(p))]
                : [.. file.Props.Select(p => Drawn(p) ? p with { At = load.At, Limb = load.Limb } : p)],
        };
        var unused = new[] { (PropKind.HandWeight, Equipment.HandWeight), (PropKind.CuffWeight, Equipment.CuffWeight) }
            .Where(pair => file.Props.Any(p => p.Kind == pair.Item1) && changed.Props.All(p => p.Kind != pair.Item1)).Select(pair => pair.Item2).ToHashSet();
        return changed with { Equipment = [.. changed.Equipment.Where(e => !unused.Contains(e))] };
    }

    /// <summary>A prop of a kind where it usually is: under the first contact with such a surface, else in or at a usual place (our choice).</summary>
    public static PropFile NewProp(ExerciseFile file, PropKind kind)
    {
        ArgumentNullException.ThrowIfNull(file);
        SurfaceKind? surface = kind switch
        {
            PropKind.Chair => SurfaceKind.Seat,
            PropKind.Table => SurfaceKind.Bench,
            PropKind.Ball or PropKind.SmallBall => SurfaceKind.Roller,
            PropKind.Towel => SurfaceKind.Pillow,
            _ => Enum.TryParse<SurfaceKind>(kind.ToString(), out var same) ? same : null,
        };
        var contact = file.Poses.SelectMany(p => p.Contacts).FirstOrDefault(c => c.Surface == surface);
        return kind switch
        {
            PropKind.Mat or PropKind.Wall or PropKind.Band or PropKind.Bicycle => new PropFile(kind),
            PropKind.Chair or PropKind.Table => new PropFile(kind, HeightM: contact?.HeightM ?? (kind == PropKind.Chair ? 0.43 : 0.74)),
            _ when contact is not null => new PropFile(kind, contact.Point, contact.Limb, contact.HeightM),
            PropKind.Strap => new PropFile(kind, "ballInner", Limb.Working),
            PropKind.LoopBand => new PropFile(kind, "kneeOuter"),
            PropKind.CuffWeight => new PropFile(kind, "ankle", Limb.Working),
            PropKind.HandWeight => new PropFile(kind, "palm", Limb.Working),
            PropKind.SmallBall => new PropFile(kind, "palm", Limb.Working, 0.065),
            PropKind.Pillow or PropKind.Towel => new PropFile(kind, "headBack", HeightM: 0.04),
            _ => new PropFile(kind, "foot", Limb.Working, kind == PropKind.Step ? 0.15 : 0.13),
        };
    }

    private static ElasticFile Band(double? restLengthM) => new()
    {
        F100N = 30,
        RestLengthM = restLengthM,
        PreStretchPercent = restLengthM is null ? 10 : null,
        Source = CommonPractice,
    };

    private static bool IsLoop(PullFile pull) => pull.Kind == PullKind.Loop;

    private static bool IsBand(PullFile pull) => pull.Kind is PullKind.Link or PullKind.Anchored;

    private static ExerciseFile Follow(ExerciseFile file, bool was, bool now, PropKind drawn, Equipment thing, PropFile fresh) => (was, now) switch
    {
        (false, true) => file with
        {
            Props = file.Props.Any(p => p.Kind == drawn) ? file.Props : [.. file.Props, fresh],
            Equipment = file.Equipment.Contains(thing) ? file.Equipment : [.. file.Equipment, thing],
        },
        (true, false) => file with { Props = [.. file.Props.Where(p => p.Kind != drawn)], Equipment = [.. file.Equipment.Where(e => e != thing)] },
        _ => file,
    };
}
