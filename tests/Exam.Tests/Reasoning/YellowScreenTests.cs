namespace MomentArm.Exam.Tests.Reasoning;

public class YellowScreenTests
{
    private static IReadOnlyList<YellowFlag> Flags => Shipped.Exam.Reasoning.YellowFlags;

    [Fact]
    public void Not_asked_is_not_no()
    {
        var reading = YellowScreen.Read(Flags, new Dictionary<string, ItemAnswer>());
        Assert.Equal("Not asked yet.", reading.Sentence);
        Assert.Equal(Flags.Count, reading.Unasked.Length);
    }

    [Theory]
    [InlineData(0, "All asked, none present.")]
    [InlineData(1, "is present: talk about it")]
    [InlineData(3, "are present: talk about them")]
    [InlineData(4, "sharing the care")]
    public void Present_flags_are_counted_and_never_called_a_diagnosis(int yes, string says)
    {
        var answers = Flags.Select((f, i) => (f.Id, i < yes ? ItemAnswer.Yes : ItemAnswer.No)).ToDictionary(a => a.Id, a => a.Item2);
        var reading = YellowScreen.Read(Flags, answers);
        Assert.Contains(says, reading.Sentence, StringComparison.Ordinal);
        Assert.Equal(yes, reading.Present.Length);
        Assert.DoesNotContain("diagnos", reading.Sentence, StringComparison.OrdinalIgnoreCase);
    }
}
