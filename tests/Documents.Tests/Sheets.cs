using System.Collections.Immutable;
using System.Xml;
using System.Xml.Linq;
using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Prescribing;

namespace MomentArm.Documents.Tests;

/// <summary>Handouts made from the shipped content.</summary>
internal static class Sheets
{
    public static ContentLibrary Library { get; } = ContentLibrary.Read(Path.Combine(Root(), "content"));

    public static HandoutInput Input(params ProgramItem[] items) => new()
    {
        Program = new HomeProgram
        {
            Items = [.. items],
            DaysPerWeek = 4,
            PainCeiling = 3,
            EngineVersion = "0.1.0",
            ContentVersion = Library.Version,
        },
        Area = "left hip, outer side",
        Exercise = Library.Exercise,
        Words = id => Library.Words("en", id),
        Phrases = Library.PatientWords,
        Model = Library.Body.Build(new Physique(Sex.Female, 41, 1.67, 66)),
        Points = Library.Body.Points,
        Day = new DateOnly(2026, 3, 2),
    };

    public static ProgramItem Item(string id, Side side, string? note = null)
    {
        var exercise = Library.Exercise(id)!;
        return new ProgramItem
        {
            ExerciseId = id,
            WorkingSide = exercise.Movement.Bilateral ? null : side,
            Dose = exercise.Dose,
            Note = note,
        };
    }

    public static ProgramItem[] All(Side side) => [.. Library.Exercises.Select(e => Item(e.Id, side))];

    /// <summary>The page read as strict XML: a tag left open or a text not encoded is an error.</summary>
    public static XDocument Parse(string page)
    {
        using var reader = XmlReader.Create(new StringReader(page), new XmlReaderSettings { DtdProcessing = DtdProcessing.Ignore });
        return XDocument.Load(reader);
    }

    public static ImmutableArray<XElement> WithClass(this XContainer page, string name) =>
        [.. page.Descendants().Where(e => ((string?)e.Attribute("class"))?.Split(' ').Contains(name) == true)];

    private static string Root()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            if (File.Exists(Path.Combine(at.FullName, "MomentArm.slnx")))
                return at.FullName;
        }

        throw new InvalidOperationException("No folder above holds MomentArm.slnx.");
    }
}
