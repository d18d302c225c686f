using System.Text.Json;

namespace MomentArm.Exam.Tests;

public sealed class CourseTests
{
    [Theory]
    [InlineData("iliotibial-band-syndrome", "44 of 100 fully well after 8 weeks")]
    [InlineData("iliotibial-band-syndrome", "91.7 of 100 back in sport after 6 months")]
    [InlineData("patellofemoral-pain", "50 of 100 recovered after 7 weeks")]
    [InlineData("achilles-tendinopathy", "50 of 100 recovered after 8 weeks")]
    [InlineData("medial-tibial-stress-syndrome", "50 of 100 recovered after 10 weeks")]
    [InlineData("calf-strain", "Soleus strain: back in training after 25.1 days")]
    [InlineData("bone-stress-injury", "Back in sport after 4 weeks to 12 months")]
    public void The_course_says_what_its_paper_says(string pattern, string words)
    {
        // Beals and Flanigan 2013 (doi:10.1155/2013/367169): 44 % at 8 weeks, 91.7 % by 6 months. Mulvad 2018 (PLoS One 13:e0204742), medians:
        // 49 days kneecap pain, 56 Achilles, 70 inner shin. Green 2022: soleus 25.1 days. Kahanov 2015: 4 weeks to a year.
        Assert.Contains(words, Course.Of(Shipped.Exam.Courses, pattern)!.Figures.Select(f => f.Words));
    }

    [Fact]
    public void What_has_no_read_course_has_none() => Assert.Null(Course.Of(Shipped.Exam.Courses, "knee-osteoarthritis"));

    [Fact]
    public void No_figure_rests_on_memory_and_all_are_in_order()
    {
        using var sources = JsonDocument.Parse(File.ReadAllText(Path.Combine(Shipped.ContentFolder, "sources.json")));
        foreach (var course in Shipped.Exam.Courses)
        {
            Assert.Equal(course.Figures.Select(f => f.Days).Order(), course.Figures.Select(f => f.Days));
            Assert.All(course.Figures, f => Assert.StartsWith(
                "read", sources.RootElement.GetProperty(f.Source).GetProperty("confirmation").GetString()!, StringComparison.Ordinal));
        }
    }
}
