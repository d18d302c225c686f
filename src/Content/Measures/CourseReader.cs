using MomentArm.Exam;

namespace MomentArm.Content;

/// <summary>Reads content/courses.json; a content without it knows no course.</summary>
internal static class CourseReader
{
    private const string Name = "courses.json";

    internal static IReadOnlyList<Course> ReadAll(string contentFolder, ISet<string> sources, FaultList faults)
    {
        var path = Path.Combine(contentFolder, Name);
        var files = File.Exists(path) ? StrictJson.ReadFile<CoursesFile>(path, Name, faults)?.Courses ?? [] : [];
        foreach (var twice in files.GroupBy(f => f.Pattern).Where(g => g.Count() > 1))
            faults.Add(Name, null, "courses", $"The course of \"{twice.Key}\" is there twice.", "Put its figures together.");
        for (var i = 0; i < files.Count; i++)
        {
            for (var j = 0; j < files[i].Figures.Count; j++)
                Check(files[i].Figures[j], $"courses[{i}].figures[{j}]", sources, faults);
        }

        return
        [
            .. files.Select(f => new Course(
                f.Pattern, [.. f.Figures.Select(x => new CourseFigure(x.Share, x.Days, x.ToDays, x.Outcome, x.Population, x.Source))])),
        ];
    }

    private static void Check(CourseFigureFile figure, string path, ISet<string> sources, FaultList faults)
    {
        if (figure.Share is not (null or (> 0 and <= 1)) || figure.Days is <= 0 || (figure.ToDays is { } to && !(to > figure.Days)))
            faults.Add(Name, null, path, "The share or the time is not usable.", "Give a share over 0 and up to 1, days above 0, and toDays after days.");
        if (figure is { Share: null, Days: null })
            faults.Add(Name, null, path, "The figure has neither a share nor a time.", "Give one of the two.");
        if (string.IsNullOrWhiteSpace(figure.Outcome) || string.IsNullOrWhiteSpace(figure.Population))
            faults.Add(Name, null, path, "Outcome or population is empty.", "Say what came true, and for whom.");
        if (!sources.Contains(figure.Source))
            faults.Add(Name, null, path + ".source", $"The source \"{figure.Source}\" is not in sources.json.", "Add it there or correct the key.");
    }
}
