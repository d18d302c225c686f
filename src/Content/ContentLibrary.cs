using System.Collections.Immutable;
using System.Text.Json.Serialization;
using MomentArm.Body;
using MomentArm.Prescribing;

namespace MomentArm.Content;

/// <summary>All content, read once at start and checked whole. Immutable and shareable.</summary>
public sealed class ContentLibrary
{
    private readonly ImmutableDictionary<string, Exercise> exercises;
    private readonly ImmutableDictionary<(string Language, string Id), ExerciseWords> words;
    private readonly ImmutableDictionary<string, PatientWords> patientWords;
    private readonly ImmutableDictionary<(string Language, string Id), CardWords> cardWords;
    private readonly ImmutableDictionary<string, ImmutableDictionary<Equipment, ThingWords>> things;

    private ContentLibrary(
        string version,
        BodyContent body,
        BodyChecks bodyChecks,
        ImmutableDictionary<string, Source> sources,
        ExamContent exam,
        ImmutableDictionary<string, PatientWords> patientWords,
        IReadOnlyList<Exercise> ordered,
        ImmutableDictionary<(string Language, string Id), ExerciseWords> words,
        IReadOnlyList<EducationCard> cards,
        ImmutableDictionary<(string Language, string Id), CardWords> cardWords,
        ImmutableDictionary<string, ImmutableDictionary<Equipment, ThingWords>> things)
    {
        this.things = things;
        Cards = cards;
        this.cardWords = cardWords;
        Version = version;
        Body = body;
        BodyChecks = bodyChecks;
        Sources = sources;
        Exam = exam;
        this.patientWords = patientWords;
        Exercises = ordered;
        exercises = ordered.ToImmutableDictionary(e => e.Id);
        this.words = words;
        Basis = new CaseBasis(
            body.Skeleton, body.Tables, body.Points, body.Capacities, exam.Measures, exam.Norms, ordered, body.Muscles)
        {
            Predictions = exam.Predictions,
        };
    }

    /// <summary>Version of the content, kept with every stored program.</summary>
    public string Version { get; }

    /// <summary>Skeleton, masses, points and strength tables.</summary>
    public BodyContent Body { get; }

    /// <summary>Values from outside that the body model is held to.</summary>
    public BodyChecks BodyChecks { get; }

    /// <summary>Sources by key.</summary>
    public ImmutableDictionary<string, Source> Sources { get; }

    /// <summary>Measures, norms and danger signs.</summary>
    public ExamContent Exam { get; }

    /// <summary>What a case is read against.</summary>
    public CaseBasis Basis { get; }

    /// <summary>Exercises ordered by ladder and rung.</summary>
    public IReadOnlyList<Exercise> Exercises { get; }

    /// <summary>Education cards by part of the body.</summary>
    public IReadOnlyList<EducationCard> Cards { get; }

    /// <summary>What patients read around the exercises, in English.</summary>
    public PatientWords PatientWords => patientWords["en"];

    /// <summary>Languages that every word for patients stands in.</summary>
    public static ImmutableArray<string> Languages { get; } = ["en", "es"];

    /// <summary>Reads a content folder.</summary>
    /// <exception cref="ContentException">Anything is wrong; every fault is listed.</exception>
    public static ContentLibrary Read(string folder)
    {
        var (library, faults) = TryRead(folder);
        return library ?? throw new ContentException(faults);
    }

    /// <summary>Reads a content folder; gives the library, or every fault.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="settle">Whether every pose is settled for three builds too, which takes seconds; a command that only looks something up need not.</param>
    public static (ContentLibrary? Library, IReadOnlyList<ContentFault> Faults) TryRead(string folder, bool settle = true)
    {
        var faults = new FaultList();
        if (!Directory.Exists(folder))
        {
            faults.Add(folder, null, "", "The content folder does not exist.", "Give the folder that holds body/, exercises/ and words/.");
            return (null, faults.Faults);
        }

        var about = StrictJson.ReadFile<AboutFile>(Path.Combine(folder, "content.json"), "content.json", faults);
        var sources = StrictJson.ReadFile<Dictionary<string, Source>>(Path.Combine(folder, "sources.json"), "sources.json", faults) ?? [];
        var body = BodyContent.Read(folder, faults);
        if (body is null || about is null)
            return (null, faults.Faults);
        var bodyChecks = BodyChecks.Read(folder, body, sources.Keys.ToHashSet(), faults);
        var exam = ExamContent.Read(folder, sources.Keys.ToHashSet(), faults).WithReasoning(folder, sources, faults);
        var exercises = new ExerciseReader(body.Points, sources.Keys.ToHashSet(), faults).ReadAll(folder);
        var words = Languages.SelectMany(language => WordsReader.Read(folder, language, exercises, faults)).ToImmutableDictionary();
        var patientWords = Languages.Select(language => (Language: language, Words: PatientWordsFile.Read(folder, language, faults)))
            .Where(w => w.Words is not null).ToImmutableDictionary(w => w.Language, w => w.Words!);
        var cardReader = new CardReader(body, exercises, sources.Keys.ToHashSet(), faults);
        var cards = cardReader.ReadAll(folder);
        var cardWords = Languages.SelectMany(language => cardReader.ReadWords(folder, language, cards)).ToImmutableDictionary();
        var things = Languages.ToImmutableDictionary(language => language, language => EquipmentWordsFile.Read(folder, language, faults));
        if (settle)
            PoseCheck.Check(body, exercises, faults);
        LengthPoseCheck.Check(body, exam.Measures, faults);
        return faults.Faults.Count > 0
            ? (null, faults.Faults)
            : (new ContentLibrary(about.Version, body, bodyChecks!, sources.ToImmutableDictionary(), exam, patientWords, exercises, words, cards, cardWords, things), []);
    }

    /// <summary>What patients read around the exercises, in a language.</summary>
    /// <exception cref="KeyNotFoundException">The language is none of <see cref="Languages"/>.</exception>
    public PatientWords PatientWordsIn(string language) => patientWords[language];

    /// <summary>An exercise by id; null when there is none.</summary>
    public Exercise? Exercise(string id) => exercises.GetValueOrDefault(id);

    /// <summary>What a thing is called for patients, and what a home has in its place.</summary>
    /// <exception cref="KeyNotFoundException">The language is none of <see cref="Languages"/>.</exception>
    public ThingWords Thing(string language, Equipment thing) => things[language][thing];

    /// <summary>The words of a card in a language.</summary>
    /// <exception cref="KeyNotFoundException">There are none: content checks make sure of every language of <see cref="Languages"/>.</exception>
    public CardWords CardWords(string language, string cardId) => cardWords[(language, cardId)];

    /// <summary>The words of an exercise in a language.</summary>
    /// <exception cref="KeyNotFoundException">There are none: content checks make sure of every language of <see cref="Languages"/>.</exception>
    public ExerciseWords Words(string language, string exerciseId) => words[(language, exerciseId)];
}

/// <summary>content/content.json.</summary>
internal sealed record AboutFile([property: JsonPropertyName("$schema")] string Schema, string Version, string Note);
