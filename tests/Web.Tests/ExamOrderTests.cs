using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Exam;
using MomentArm.Web.Pages.Exam;

namespace MomentArm.Web;

public sealed class ExamOrderTests
{
    private static readonly ContentLibrary Content = ContentLibrary.Read(Path.Combine(House.Root, "content"));

    [Fact]
    public void Enter_goes_from_left_to_right_to_the_next_row_and_shift_enter_the_same_way_back()
    {
        var rows = ExamOrder.Rows(Content.Exam.Measures, []);
        var left = new CellKey("hip-internal-rotation-range", Side.Left);
        var right = left with { Side = Side.Right };
        Assert.Equal(right, ExamOrder.Next(rows, left));
        Assert.Equal(new CellKey("knee-extension-strength", Side.Left), ExamOrder.Next(rows, right));

        var walked = new List<CellKey> { rows[0].Cells[0] };
        while (ExamOrder.Next(rows, walked[^1]) is { } next)
            walked.Add(next);
        Assert.Equal(rows.SelectMany(row => row.Cells), walked);
        for (var i = walked.Count - 1; i > 0; i--)
            Assert.Equal(walked[i - 1], ExamOrder.Previous(rows, walked[i]));
        Assert.Null(ExamOrder.Previous(rows, walked[0]));
    }

    [Fact]
    public void Rows_follow_the_positions_so_that_the_person_turns_once()
    {
        var positions = ExamOrder.Rows(Content.Exam.Measures, []).Select(row => row.Measure.Position).ToArray();
        Assert.Equal(positions.Order(), positions);
        Assert.Equal(ExamPosition.Interview, positions[0]);
    }

    [Fact]
    public void Each_activity_has_a_row_of_its_own_before_the_row_that_adds_one()
    {
        CellKey[] named = [new("patient-specific-function", null, "stairs"), new("patient-specific-function", null, "running")];
        var rows = ExamOrder.Rows(Content.Exam.Measures, named).Where(row => row.Measure.Id == "patient-specific-function").ToArray();
        Assert.Equal(["stairs", "running", null], rows.Select(row => row.Activity));
        Assert.True(rows[2].AddsActivities);
    }

    [Fact]
    public void Every_cell_has_an_id_of_its_own_that_says_what_it_is()
    {
        var ids = ExamOrder.Rows(Content.Exam.Measures, []).SelectMany(row => row.Cells).Select(key => key.ElementId).ToArray();
        Assert.Equal(ids.Distinct(), ids);
        Assert.Contains("cell-hip-abduction-strength-left", ids);
        Assert.Equal("cell-pain-now-going-down-stairs", new CellKey("pain-now", null, "Going down, stairs!").ElementId);
    }

    [Theory]
    [InlineData("hip-abduction-strength", "118 N at 36 cm pain 3")]
    [InlineData("hip-abduction-strength", "118 121 116")]
    [InlineData("hip-abduction-strength", "42 Nm")]
    [InlineData("straight-leg-raise", "72.5°")]
    [InlineData("modified-ober", "-5°")]
    public void What_is_written_short_reads_as_the_same_measurement(string measureId, string typed)
    {
        var measure = Content.Exam.Measures.Single(m => m.Id == measureId);
        var read = Assert.Single(TypedEntry.Parse(typed, measure, Side.Left).Measurements);
        var again = Assert.Single(TypedEntry.Parse(CellText.Short(measure, read), measure, Side.Left).Measurements);
        Assert.Equal(read.Trials.AsEnumerable(), again.Trials);
        Assert.Equal((read.LeverArmM, read.PainDuring, read.Side), (again.LeverArmM, again.PainDuring, again.Side));
    }
}
