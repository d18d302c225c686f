using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Web.Pages.Exam;

/// <summary>Measures beyond the short exam, shown together when they are wanted.</summary>
public enum ExamGroup
{
    /// <summary>Hops, steps, stands, walks, reaches, endurance.</summary>
    Performance,

    /// <summary>Questionnaires.</summary>
    Questionnaires,

    /// <summary>Pain ratings beyond now and worst, load history, global change, girth.</summary>
    Details,
}

/// <summary>Which measures an exam shows: of the chosen parts of the body, the short core set, what was measured last time, and what was added.</summary>
/// <param name="Regions">Chosen parts of the body; none stands for all.</param>
/// <param name="Groups">Chosen groups beyond the short exam.</param>
/// <param name="Added">Measures added by name.</param>
public sealed record ExamPlan(ImmutableHashSet<BodyRegion> Regions, ImmutableHashSet<ExamGroup> Groups, ImmutableHashSet<string> Added)
{
    /// <summary>Most minutes of the patient's time that the core set may take (our choice).</summary>
    public const double CoreMinutes = 3;

    // Content numbers what belongs to every visit below this, the rest from it on.
    private const int FirstOfDetails = 50;

    private static readonly (string[] Words, BodyRegion Region)[] Named =
    [
        (["hip", "groin", "thigh", "gluteal", "hamstring", "trochanter"], BodyRegion.Hip),
        (["knee", "patella", "kneecap"], BodyRegion.Knee),
        (["ankle", "foot", "heel", "calf", "achilles", "shin", "ankleFoot"], BodyRegion.AnkleFoot),
        (["back", "trunk", "lumbar", "spine", "pelvis"], BodyRegion.Trunk),
        (["shoulder", "cuff", "scapula"], BodyRegion.Shoulder),
        (["elbow", "wrist", "hand", "forearm", "elbowWrist"], BodyRegion.ElbowWrist),
        (["neck", "cervical"], BodyRegion.Neck),
    ];

    /// <summary>The plan of an episode before anything was chosen: the parts of the body that its region or title name.</summary>
    public static ExamPlan For(string? region, string title)
    {
        ArgumentNullException.ThrowIfNull(title);
        var words = $"{region} {title}".Split([' ', ',', '-', '/', '(', ')'], StringSplitOptions.RemoveEmptyEntries);
        var found = Named.Where(n => n.Words.Any(w => words.Contains(w, StringComparer.OrdinalIgnoreCase))).Select(n => n.Region);
        return new ExamPlan([.. found], [], []);
    }

    /// <summary>Whether a measure has a row.</summary>
    public bool Shows(Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        if (Added.Contains(measure.Id))
            return true;
        var fits = Regions.IsEmpty || measure.Regions.IsEmpty || measure.Regions.Any(Regions.Contains);
        return fits && (GroupOf(measure) is not { } group || measure.CoreMinutes is not null || Groups.Contains(group));
    }

    /// <summary>The group that shows a measure; null for the short exam.</summary>
    public static ExamGroup? GroupOf(Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return measure.Kind switch
        {
            MeasureKind.RangeOfMotion or MeasureKind.MuscleLength or MeasureKind.Strength => null,
            MeasureKind.Performance or MeasureKind.Endurance => ExamGroup.Performance,
            MeasureKind.Questionnaire => ExamGroup.Questionnaires,
            MeasureKind.PainRating or MeasureKind.PatientSpecific => measure.Order < FirstOfDetails ? null : ExamGroup.Details,
            _ => ExamGroup.Details,
        };
    }

    /// <summary>The core set of the chosen parts, the shortest first, within <see cref="CoreMinutes"/>.</summary>
    public ImmutableArray<Measure> Core(IEnumerable<Measure> measures)
    {
        var core = ImmutableArray.CreateBuilder<Measure>();
        var minutes = 0.0;
        foreach (var measure in measures.Where(m => m.CoreMinutes is not null && (m.Regions.IsEmpty || Regions.IsEmpty || m.Regions.Any(Regions.Contains))).OrderBy(m => m.CoreMinutes))
        {
            if (minutes + measure.CoreMinutes!.Value > CoreMinutes)
                break;
            minutes += measure.CoreMinutes.Value;
            core.Add(measure);
        }

        return core.ToImmutable();
    }

    /// <summary>With a part of the body chosen or not.</summary>
    public ExamPlan Toggle(BodyRegion region) => this with { Regions = Regions.SymmetricExcept([region]) };

    /// <summary>With a group shown or not.</summary>
    public ExamPlan Toggle(ExamGroup group) => this with { Groups = Groups.SymmetricExcept([group]) };

    /// <summary>The items that are kept with the visit.</summary>
    public IEnumerable<(string Item, string Value)> Kept =>
    [
        ("regions", string.Join(' ', Regions.Order())), ("groups", string.Join(' ', Groups.Order())), ("added", string.Join(' ', Added.Order(StringComparer.Ordinal))),
    ];

    /// <summary>With what was kept with the visit; what was never chosen stays.</summary>
    public ExamPlan With(string item, string value)
    {
        ArgumentNullException.ThrowIfNull(value);
        var words = value.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return item switch
        {
            "regions" => this with { Regions = [.. Values<BodyRegion>(words)] },
            "groups" => this with { Groups = [.. Values<ExamGroup>(words)] },
            "added" => this with { Added = [.. words] },
            _ => this,
        };
    }

    private static IEnumerable<T> Values<T>(string[] words)
        where T : struct, Enum => words.Where(w => Enum.TryParse<T>(w, out _)).Select(Enum.Parse<T>);
}
