using System.Collections.Immutable;
using System.Globalization;
using MomentArm.Body;
using MomentArm.Drawing;
using MomentArm.Prescribing;

namespace MomentArm.Content;

/// <summary>Reads content/cards and their words.</summary>
internal sealed class CardReader(BodyContent body, IReadOnlyList<Exercise> exercises, ISet<string> sources, FaultList faults)
{
    private string file = "";

    internal IReadOnlyList<EducationCard> ReadAll(string contentFolder)
    {
        var cards = new List<EducationCard>();
        foreach (var path in StrictJson.FilesIn(Path.Combine(contentFolder, "cards"), ".json"))
        {
            file = "cards/" + Path.GetFileName(path);
            if (StrictJson.ReadFile<CardFile>(path, file, faults) is not { } raw)
                continue;
            if (raw.Id != Path.GetFileNameWithoutExtension(path))
                Fault("id", $"The id \"{raw.Id}\" differs from the file name.", "Give both the same name.");
            if (raw.Pictures.Count == 0)
                Fault("pictures", "There is no picture.", "Give at least one.");
            foreach (var key in raw.Sources.Where(key => !sources.Contains(key)))
                Fault("sources", $"There is no source \"{key}\".", "Add it to sources.json or correct the key.");
            var pictures = raw.Pictures.Select((p, i) => Picture(p, $"pictures[{i}]")).ToArray();
            if (pictures.All(p => p is not null))
                cards.Add(new EducationCard(raw.Id, raw.Name, raw.Region, [.. pictures.OfType<CardPicture>()], [.. raw.Sources]));
        }

        return [.. cards.OrderBy(c => c.Region).ThenBy(c => c.Id, StringComparer.Ordinal)];
    }

    internal ImmutableDictionary<(string Language, string Id), CardWords> ReadWords(string contentFolder, string language, IReadOnlyList<EducationCard> cards)
    {
        var words = ImmutableDictionary.CreateBuilder<(string Language, string Id), CardWords>();
        foreach (var card in cards)
        {
            file = $"words/{language}/cards/{card.Id}.json";
            var path = Path.Combine(contentFolder, "words", language, "cards", card.Id + ".json");
            if (StrictJson.ReadFile<CardWordsFile>(path, file, faults) is not { } raw)
                continue;
            if (raw.Captions.Count != card.Pictures.Length)
                Fault("captions", $"There are {raw.Captions.Count} captions for {card.Pictures.Length} pictures.", "Give one for each.");
            var made = new CardWords(raw.Title, [.. raw.Text], [.. raw.Captions], [.. raw.Help]);
            var grade = ReadingGrade.Of(made.AllText, language);
            if (grade > WordsReader.HighestGrade)
                Fault("", string.Create(CultureInfo.InvariantCulture, $"Reading grade {grade:0.0} is above {WordsReader.HighestGrade:0}."), "Use shorter words and sentences.");
            if (ReadingGrade.LongestSentence(made.AllText) is > WordsReader.LongestSentence and var length)
                Fault("", $"A sentence has {length} words.", $"Use at most {WordsReader.LongestSentence}.");
            words[(language, card.Id)] = made;
        }

        return words.ToImmutable();
    }

    private CardPicture? Picture(CardPictureFile raw, string path)
    {
        foreach (var line in raw.Lines.Where(line => body.Muscles.Paths.All(p => p.Id != line) && body.Muscles.BandParts.All(p => p.Id != line)))
            Fault($"{path}.lines", $"There is no line \"{line}\".", "Name a line of body/muscles.json.");
        if (!(raw.At is >= 0 and <= 1))
            Fault($"{path}.at", "The moment lies outside 0 to 1.", "Correct it.");
        var movement = raw.Pose is { } pose
            ? new Movement
            {
                Frames = [PoseConversion.ToFrame(pose)],
                Props = [.. raw.Props.Select(p => new Prop(p.Kind, p.At, p.Limb, p.HeightM))],
                Loads = [],
                View = raw.View ?? ViewKind.Side,
            }
            : exercises.FirstOrDefault(e => e.Id == raw.Exercise) is { } exercise
                ? exercise.Movement with { View = raw.View ?? exercise.Movement.View }
                : null;
        if (raw.CloseUp is { } point && !body.Points.Has(point))
            Fault($"{path}.closeUp", $"The body has no point \"{point}\".", "Use a name of body/surface-points.json.");
        if (movement is null)
        {
            Fault($"{path}.exercise", $"There is no usable exercise \"{raw.Exercise}\" and no pose.", "Name an exercise or give a pose.");
            return null;
        }

        return new CardPicture(raw.CloseUp is null ? movement : movement with { CloseUp = raw.CloseUp }, raw.At, [.. raw.Tints.Select(t => new Tint(t.Area, t.Limb, t.Kind))], [.. raw.Lines]);
    }

    private void Fault(string path, string what, string mend) => faults.Add(file, null, path, what, mend);
}
