using System.Text;
using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Prescribing;

namespace MomentArm.Web.Pages.Designer;

/// <summary>Where a form begins, and the ids that forms get.</summary>
public static class NewForm
{
    private const string ExerciseSchema = "../schemas/exercise.schema.json";
    private const string WordsSchema = "../../../schemas/exercise-words.schema.json";

    /// <summary>Standing upright on both feet, nothing said yet.</summary>
    public static OwnFormFile Neutral()
    {
        PoseFile Stand(string name) => new()
        {
            Name = name,
            Orientation = Orientation.Upright,
            Contacts = [new ContactFile("foot", SurfaceKind.Floor, Limb.Working), new ContactFile("foot", SurfaceKind.Floor, Limb.Other)],
        };
        return new OwnFormFile
        {
            Format = OwnForm.CurrentFormat,
            Exercise = new ExerciseFile
            {
                Schema = ExerciseSchema,
                Id = OwnForm.IdStart + "new",
                Name = "",
                Purpose = Purpose.Strengthen,
                Region = BodyRegion.Hip,
                Position = BodyPosition.Standing,
                View = ViewKind.Side,
                Loads = [],
                Groups = [],
                Equipment = [],
                Ladder = "own-forms",
                Rung = 1,
                Dose = new DoseFile { Sets = 3, Repetitions = 10, HoldSeconds = 1, DaysPerWeek = 3, Source = "common-practice" },
                Cautions = [],
                Faults = [new FaultFile("", ""), new FaultFile("", "")],
                Poses = [Stand("start"), Stand("end")],
                Source = "common-practice",
            },
            Words = new FormWordsFile { En = Blank() },
        };
    }

    /// <summary>Words not written yet.</summary>
    public static ExerciseWordsFile Blank() => new()
    {
        Schema = WordsSchema,
        Title = "",
        SetUp = [],
        Steps = [],
        Feel = "",
        Watch = [],
        Easier = "",
        Harder = "",
        RepetitionWord = "",
    };

    /// <summary>A copy to be changed: another name, and a ladder of its own so that it does not stand on the rung of what it came from.</summary>
    public static OwnFormFile CopyOf(OwnFormFile form, string newName)
    {
        ArgumentNullException.ThrowIfNull(form);
        return form with { Exercise = form.Exercise with { Id = OwnForm.IdStart + "new", Name = newName, Ladder = "own-forms", Rung = 1, Change = null, OrderNote = null } };
    }

    /// <summary>An id from a name that none of the taken ones has.</summary>
    public static string IdFor(string name, IReadOnlyCollection<string> taken)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(taken);
        var start = OwnForm.IdStart + Slug(name, "form");
        var id = start;
        for (var next = 2; taken.Contains(id); next++)
            id = FormattableString.Invariant($"{start}-{next}");
        return id;
    }

    /// <summary>A text as small letters, digits and hyphens; the other one where nothing of it is left.</summary>
    public static string Slug(string text, string otherwise)
    {
        ArgumentNullException.ThrowIfNull(text);
        var slug = new StringBuilder();
        foreach (var letter in text.ToLowerInvariant())
        {
            if (char.IsAsciiLetterOrDigit(letter))
                slug.Append(letter);
            else if (slug.Length > 0 && slug[^1] != '-')
                slug.Append('-');
        }

        return slug.ToString().Trim('-') is { Length: > 0 } made ? made : otherwise;
    }
}
