using MomentArm.Content;

namespace MomentArm.Exam.Tests;

public class ExamContentTests
{
    [Fact]
    public void The_shipped_exam_is_whole()
    {
        Assert.True(Shipped.Exam.Measures.Length >= 8);
        Assert.Equal(15, Shipped.Exam.DangerSigns.Count(s => s.IsGeneral()));
        Assert.Contains(Shipped.Exam.Norms, n => n.Use == NormUse.Grade);
        Assert.All(Shipped.Exam.Measures, m => Assert.Equal(m.Kind == MeasureKind.Strength, m.Strength is not null));
        Assert.All(Shipped.Exam.Measures, m => Assert.Equal(m.Kind == MeasureKind.MuscleLength, m.Length is not null));
    }

    [Fact]
    public void Measures_come_in_the_order_a_therapist_works() =>
        Assert.Equal(Shipped.Exam.Measures.OrderBy(m => m.Position).ThenBy(m => m.Order), Shipped.Exam.Measures);

    [Fact]
    public void Degrees_of_the_files_become_radians()
    {
        var knee = Shipped.Measure("knee-flexion-range");
        Assert.Equal(170 * Math.PI / 180, knee.HardRange.High, 1e-12);
        Assert.Equal(3.41 * Math.PI / 180, knee.Error!.Value, 1e-12);
        Assert.Equal(Math.PI / 2, Shipped.Measure("knee-extension-strength").Strength!.Tested.KneeFlexion, 1e-12);
    }

    [Fact]
    public void Every_fault_of_a_damaged_folder_is_told_at_once()
    {
        var folder = CopyOfContent();
        var measures = Path.Combine(folder, "measures");
        Change(Path.Combine(measures, "pain-now.json"), "\"kind\": \"painRating\"", "\"kind\": \"painRating\", \"colour\": 3");
        Change(Path.Combine(measures, "modified-ober.json"), "\"piva-2006\"", "\"nobody-1900\"");
        Change(Path.Combine(measures, "straight-leg-raise.json"), "\"slr\"", "\"ake\"");
        Change(Path.Combine(measures, "knee-flexion-range.json"), "\"hardHigh\": 170", "\"hardHigh\": 17");
        Change(Path.Combine(folder, "norms", "strength.csv"), "10.19,,1.1", "about ten,,1.1");
        Change(Path.Combine(folder, "danger-signs", "general.json"), "\"confirmation\": \"common practice\"", "\"confirmation\": \"heard\"");
        var error = Assert.Throws<ContentException>(() => ExamContent.Read(folder));
        Assert.Contains(error.Faults, f => f.File == "measures/pain-now.json" && f.Line is not null);
        Assert.Contains(error.Faults, f => f.File == "measures/modified-ober.json" && f.What.Contains("nobody-1900", StringComparison.Ordinal));
        Assert.Contains(error.Faults, f => f.File == "measures" && f.Path == "ake");
        Assert.Contains(error.Faults, f => f.File == "measures/knee-flexion-range.json" && f.Path == "range");
        Assert.Contains(error.Faults, f => f.File == "norms/strength.csv" && f is { Path: "mean", Line: 8 });
        Assert.Contains(error.Faults, f => f.File == "danger-signs/general.json" && f.What.Contains("heard", StringComparison.Ordinal));
        Assert.All(error.Faults, f => Assert.True(f.Mend.Length > 3));
    }

    [Fact]
    public void A_row_may_not_grade_by_the_interval_of_a_mean()
    {
        var folder = CopyOfContent();
        Change(Path.Combine(folder, "norms", "strength.csv"), "mostly fixed dynamometers\",,beside", "mostly fixed dynamometers\",,grade");
        var error = Assert.Throws<ContentException>(() => ExamContent.Read(folder));
        Assert.All(error.Faults, f => Assert.Equal(("norms/strength.csv", "use"), (f.File, f.Path)));
    }

    private static void Change(string path, string from, string to)
    {
        var text = File.ReadAllText(path);
        Assert.Contains(from, text, StringComparison.Ordinal);
        File.WriteAllText(path, text.Replace(from, to, StringComparison.Ordinal));
    }

    private static string CopyOfContent()
    {
        var folder = Directory.CreateTempSubdirectory("momentarm-exam").FullName;
        foreach (var part in new[] { "measures", "norms", "danger-signs", "rules" })
        {
            Directory.CreateDirectory(Path.Combine(folder, part));
            foreach (var file in Directory.EnumerateFiles(Path.Combine(Shipped.ContentFolder, part)))
                File.Copy(file, Path.Combine(folder, part, Path.GetFileName(file)));
        }

        File.Copy(Path.Combine(Shipped.ContentFolder, "sources.json"), Path.Combine(folder, "sources.json"));
        return folder;
    }
}
