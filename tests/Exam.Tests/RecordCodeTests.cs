using MomentArm.Body;

namespace MomentArm.Exam.Tests;

public sealed class RecordCodeTests
{
    [Fact]
    public void Words_find_the_code_of_the_affected_side_first()
    {
        // M76.31 right, M76.32 left: printed in a textbook chapter (read in a summary).
        Assert.Equal("M76.32", RecordCode.Find(Shipped.Exam.Codes, "iliotibial", Side.Left).First().Code);
        Assert.Equal("M76.31 iliotibial band syndrome, right", RecordCode.Find(Shipped.Exam.Codes, "BAND m76", Side.Right).First().Words);
        Assert.Empty(RecordCode.Find(Shipped.Exam.Codes, "no such complaint", null));
    }

    [Fact]
    public void Every_code_says_how_far_it_was_confirmed_and_sides_come_in_pairs()
    {
        Assert.All(Shipped.Exam.Codes, c => Assert.Contains(c.Confirmation, (string[])["read in a summary", "from memory"]));
        var unpaired = Shipped.Exam.Codes.Where(c => c.Side is not null)
            .GroupBy(c => (c.System, c.Label, c.Condition)).Where(g => g.Select(c => c.Side).Distinct().Count() != 2).Select(g => g.Key.Label);
        Assert.Empty(unpaired);
    }
}
