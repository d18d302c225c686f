using System.Globalization;
using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Content;

/// <summary>Reads the tables of content/norms. Every cell is checked; a row that may grade must be verified and have an SD.</summary>
internal sealed class NormReader(IReadOnlyDictionary<string, Measure> measures, ISet<string> sources, FaultList faults)
{
    private static readonly string[] Columns =
    [
        "measureId", "sex", "ageFrom", "ageTo", "unit", "mean", "median", "sd", "meanFrom", "meanTo", "quarter", "threeQuarters",
        "limit", "n", "population", "method", "mode", "use", "source", "verified", "note",
    ];

    private string file = "";
    private int line;
    private string[] cells = [];

    /// <summary>Reads every table, in the order of the files and rows.</summary>
    internal IReadOnlyList<Norm> ReadAll(string contentFolder)
    {
        var norms = new List<Norm>();
        foreach (var path in StrictJson.FilesIn(Path.Combine(contentFolder, "norms"), ".csv"))
        {
            file = "norms/" + Path.GetFileName(path);
            var lines = File.ReadAllLines(path);
            line = 1;
            if (lines.Length == 0 || !CsvLine.TrySplit(lines[0], out var head) || !head.SequenceEqual(Columns))
            {
                Fault("", "The first line does not name the columns.", "Write: " + string.Join(',', Columns));
                continue;
            }

            for (line = 2; line <= lines.Length; line++)
            {
                if (lines[line - 1].Length > 0 && Row(lines[line - 1]) is { } norm)
                    norms.Add(norm);
            }
        }

        return norms;
    }

    private Norm? Row(string text)
    {
        var before = faults.Faults.Count;
        if (!CsvLine.TrySplit(text, out cells) || cells.Length != Columns.Length)
        {
            Fault(
                "", $"The row has {cells.Length} cells and not {Columns.Length}, or a quote is open.",
                "Count the commas; put text with a comma in quotes.");
            return null;
        }

        if (!measures.TryGetValue(Cell("measureId"), out var measure))
        {
            Fault("measureId", $"There is no measure \"{Cell("measureId")}\".", "Use the id of a file in measures/.");
            return null;
        }

        if (!sources.Contains(Cell("source")))
            Fault("source", $"The source \"{Cell("source")}\" is not in sources.json.", "Add it there or correct the key.");
        var norm = Make(measure);
        CheckMeaning(norm);
        return faults.Faults.Count == before ? norm : null;
    }

    private Norm Make(Measure measure)
    {
        var unit = Choice("unit", UnitWords(measure));
        var scale = unit == NormUnit.Measure ? measure.Shown.StoredPerShown : 1;
        return new Norm
        {
            MeasureId = measure.Id,
            Sex = Choice("sex", [("female", (Sex?)Sex.Female), ("male", Sex.Male), ("both", null)]),
            AgeFrom = Number("ageFrom") ?? Missing("ageFrom"),
            AgeTo = Number("ageTo"),
            Mean = (Number("mean") ?? Number("median")) * scale,
            IsMedian = Cell("median").Length > 0,
            Quarter = Number("quarter") * scale,
            ThreeQuarters = Number("threeQuarters") * scale,
            Limit = Number("limit") * scale,
            Sd = Number("sd") * scale,
            MeanFrom = Number("meanFrom") * scale,
            MeanTo = Number("meanTo") * scale,
            N = Number("n") is { } n ? (int)Math.Clamp(n, 0, 1_000_000) : null,
            Unit = unit,
            Population = Cell("population"),
            Method = Cell("method"),
            Mode = Choice("mode", [("", MotionMode.NotApplicable), ("active", MotionMode.Active), ("passive", MotionMode.Passive)]),
            Use = Choice("use", [("beside", NormUse.Beside), ("grade", NormUse.Grade)]),
            Source = Cell("source"),
            Verified = Choice("verified", [("yes", true), ("no", false)]),
            Note = Cell("note").Length > 0 ? Cell("note") : null,
        };
    }

    private void CheckMeaning(Norm norm)
    {
        if ((norm.Mean ?? norm.Quarter ?? norm.Limit) is null || (Cell("mean").Length > 0 && norm.IsMedian))
            Fault("mean", "The row gives no number, or both a mean and a median.", "Give mean or median, the two quarters, or a limit.");
        if (norm.Quarter is null != norm.ThreeQuarters is null || norm.Quarter >= norm.ThreeQuarters)
            Fault("quarter", "The middle half needs two ends in order.", "Give both or neither.");
        if (norm.Sd is { } sd && !(sd > 0))
            Fault("sd", "The standard deviation is not above 0.", "Correct it or leave it empty.");
        if (norm.MeanFrom is null != norm.MeanTo is null || norm.MeanFrom >= norm.MeanTo)
            Fault("meanFrom", "The interval of the mean needs two ends in order.", "Give both or neither.");
        if (norm.AgeTo < norm.AgeFrom)
            Fault("ageTo", "The ages are not in order.", "Put the younger age first.");
        if (norm.Use == NormUse.Grade && !(norm.Verified && (norm.Limit is not null || norm is { Sd: not null, IsMedian: false })))
            Fault(
                "use", "A row that grades must be verified and have a mean with SD or a limit; an interval of the mean is not a normal range.",
                "Write beside, or complete the row.");
    }

    private static (string Word, NormUnit Value)[] UnitWords(Measure measure) => measure.Kind == MeasureKind.Strength
        ?
        [
            ("newtons", NormUnit.Measure), ("nmPerKg", NormUnit.TorquePerMass),
            ("percentWeightHeight", NormUnit.PercentWeightHeight), ("percentWeight", NormUnit.PercentWeight), ("nPerKg", NormUnit.ForcePerMass),
        ]
        : [(measure.Shown.Word, NormUnit.Measure)];

    private string Cell(string column) => cells[Array.IndexOf(Columns, column)].Trim();

    private double? Number(string column)
    {
        var text = Cell(column);
        if (text.Length == 0)
            return null;
        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value))
            return value;
        Fault(column, $"\"{text}\" is not a number.", "Write digits with a decimal point.");
        return null;
    }

    private double Missing(string column)
    {
        if (Cell(column).Length == 0)
            Fault(column, "The number is missing.", "Give it.");
        return 0;
    }

    private T Choice<T>(string column, (string Word, T Value)[] words)
    {
        foreach (var (word, value) in words)
        {
            if (word == Cell(column))
                return value;
        }

        Fault(
            column, $"\"{Cell(column)}\" is not known here.",
            "Write one of: " + string.Join(", ", words.Select(w => w.Word.Length == 0 ? "(empty)" : w.Word)) + ".");
        return words[0].Value;
    }

    private void Fault(string path, string what, string mend) => faults.Add(file, line, path, what, mend);
}
