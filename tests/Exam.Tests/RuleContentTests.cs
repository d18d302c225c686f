using MomentArm.Content;

namespace MomentArm.Exam.Tests;

public class RuleContentTests
{
    // The published rules this clinic tool relies on; the form whose terms forbid parts of it is not among them.
    private static readonly string[] Wanted =
    [
        "back-fracture-signs", "before-exercise", "canadian-neck", "compartment-signs", "cuff-irritation-cluster", "cuff-tear-cluster",
        "hip-arthritis-criteria", "hip-five-findings", "knee-arthritis-criteria", "kneecap-pain-cluster", "neck-cord-cluster",
        "neck-root-cluster", "nexus-neck", "ottawa-ankle", "ottawa-foot", "ottawa-knee", "pain-screen-total", "pittsburgh-knee",
        "sacroiliac-provocation", "shin-pain-criteria", "spinal-inflammation-list", "wells-dvt",
    ];

    [Fact]
    public void Every_usable_rule_is_there() => Assert.Equal(Wanted, Shipped.Exam.Rules.Select(r => r.Id));

    [Fact]
    public void Every_accuracy_figure_has_its_interval_or_says_why_not() =>
        Assert.All(Shipped.Exam.Rules.SelectMany(r => r.Accuracy), row =>
        {
            var whole = !row.Figures.IsEmpty && row.Figures.All(f => f.Low is not null && f.High is not null);
            Assert.True(whole || row.IntervalNote is { Length: > 10 }, row.Population);
            Assert.DoesNotContain(row.Figures, f => f.Low > f.Value || f.High < f.Value);
        });

    [Fact]
    public void Every_rule_can_reach_each_of_its_bands() =>
        Assert.All(Shipped.Exam.Rules, rule =>
        {
            var nothing = RuleEvaluation.Of(rule, new Dictionary<string, RuleValue>());
            Assert.All(nothing.Outcomes, o => Assert.Equal(o.Outcome.Bands, o.Possible));
            Assert.Equal(RuleState.NotYet, nothing.State);
            Assert.Equal(rule.Items.Select(i => i.Id), nothing.Needs.Select(i => i.Id).Union(rule.Items.Where(OnlyInLast(rule)).Select(i => i.Id)).OrderBy(id => rule.Items.Select(i => i.Id).ToList().IndexOf(id)));
        });

    [Fact]
    public void Every_fault_of_a_damaged_rule_is_told_with_a_way_to_mend_it()
    {
        var folder = Directory.CreateTempSubdirectory("momentarm-rules").FullName;
        Copy(Shipped.ContentFolder, folder);
        var file = Path.Combine(folder, "rules", "ottawa-knee.json");
        var text = File.ReadAllText(file)
            .Replace("\"atLeast\": 55", "\"atLeast\": 55, \"below\": 60", StringComparison.Ordinal)
            .Replace("\"source\": \"cheung-2013\"", "\"source\": \"nobody-1900\"", StringComparison.Ordinal)
            .Replace("\"intervalNote\": \"No interval for specificity in the abstract we read.\"", "\"intervalNote\": \"\"", StringComparison.Ordinal)
            .Replace("\"value\": 0.05", "\"value\": 0.5", StringComparison.Ordinal);
        File.WriteAllText(file, text);
        var hip = Path.Combine(folder, "rules", "hip-five-findings.json");
        File.WriteAllText(hip, File.ReadAllText(hip).Replace("\"item\": \"rotation\"", "\"item\": \"rotating\"", StringComparison.Ordinal));
        var error = Assert.Throws<ContentException>(() => ExamContent.Read(folder));
        Assert.Contains(error.Faults, f => f.Path == "criteria[0].when");
        Assert.Contains(error.Faults, f => f.What.Contains("nobody-1900", StringComparison.Ordinal));
        Assert.Contains(error.Faults, f => f.Path == "accuracy[2]" && f.What.Contains("no interval", StringComparison.Ordinal));
        Assert.Contains(error.Faults, f => f.Path == "accuracy[0]" && f.What.Contains("outside its interval", StringComparison.Ordinal));
        Assert.Contains(error.Faults, f => f.File == "rules/hip-five-findings.json" && f.What.Contains("rotating", StringComparison.Ordinal));
        Assert.All(error.Faults, f => Assert.True(f.Mend.Length > 3));
    }

    /// <summary>The last item of the clot score moves a further reading only, by design.</summary>
    private static Func<RuleItem, bool> OnlyInLast(DecisionRule rule) => item => rule.Id == "wells-dvt" && item.Id == "alternative";

    private static void Copy(string from, string to)
    {
        foreach (var part in new[] { "measures", "norms", "danger-signs", "rules", "codes" })
        {
            Directory.CreateDirectory(Path.Combine(to, part));
            foreach (var file in Directory.EnumerateFiles(Path.Combine(from, part)))
                File.Copy(file, Path.Combine(to, part, Path.GetFileName(file)));
        }

        File.Copy(Path.Combine(from, "sources.json"), Path.Combine(to, "sources.json"));
    }
}
