using MomentArm.Records;

namespace MomentArm.Web.Pages.People;

/// <summary>
/// Asks about values that are possible but unusual. It never blocks: the same values sent again are saved. The bounds are
/// common practice without a source; they only decide what is asked.
/// </summary>
public static class Plausibility
{
    public static IReadOnlyList<string> Questions(PatientDetails details, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(details);
        var questions = new List<string>();
        var age = new Patient { DisplayName = "", BirthDate = details.BirthDate, BirthYear = details.BirthYear }.AgeOn(today);
        if (age is < 16)
            questions.Add(FormattableString.Invariant(
                $"Is the patient {age} years old? The models here were made from adults and were not checked for children."));
        else if (age > 95)
            questions.Add(FormattableString.Invariant($"Is the patient {age} years old?"));
        var stature = details.StatureM;
        var mass = details.MassKg;
        if (stature is { } tall && tall is < 1.40 or > 2.05)
            questions.Add($"Is the stature {BodySizeText.Stature(stature.Value)}?");
        if (stature is { } m && mass is { } kg)
        {
            var index = kg / (m * m);
            if (index is < 15 or > 45)
            {
                questions.Add(
                    $"Do {BodySizeText.Stature(m)} and {BodySizeText.Mass(kg)} belong together? "
                    + FormattableString.Invariant($"Mass over stature squared would be {index:0} kg/m². Was a unit left out?"));
            }
        }
        else if (mass is { } alone && alone is < 38 or > 160)
        {
            questions.Add($"Is the body mass {BodySizeText.Mass(mass.Value)}? A number without unit is taken as kilograms.");
        }

        return questions;
    }
}
