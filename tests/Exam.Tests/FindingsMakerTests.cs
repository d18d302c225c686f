using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Exam.Tests;

public class FindingsMakerTests
{
    [Fact]
    public void Runner_with_outer_knee_pain()
    {
        // Written case of ours: right abductors 1.05 against 1.32 N m/kg (index 79.5 %), Ober 4 degrees shorter.
        // Known answer: the abductors pass, Ober does not, and the plan is for the right side.
        var findings = From(Side.Right, "hip abd R 73.5 Nm, L 92.4 Nm; ober R 14, L 18; psfs running 3");
        var weak = findings.Single(f => f.Impairment?.Kind == ImpairmentKind.Weak);
        Assert.Equal("hip-abduction-strength:right:weak", weak.Id);
        Assert.Equal(Side.Right, weak.Impairment!.Side);
        Assert.Equal(JointAction.HipAbduction, weak.Impairment.Action);
        Assert.Equal(0.205, weak.Impairment.Deficit, 0.001);
        Assert.True(weak.BeyondError);
        Assert.DoesNotContain(findings, f => f.MeasureIds.Contains("modified-ober") && f.Impairment is not null);
        Assert.Contains(findings, f => f.Id == "patient-specific-function:activity:running");
    }

    [Fact]
    public void A_short_group_beyond_error()
    {
        // Neto 2015: SEM 2.6, so 7.2 degrees detectable; 13 degrees are beyond.
        var finding = Assert.Single(From(null, "slr L 62 R 75"));
        Assert.Equal((ImpairmentKind.Short, Side.Left, MuscleGroup.Hamstrings),
            (finding.Impairment!.Kind, finding.Impairment.Side!.Value, finding.Impairment.Group!.Value));
        Assert.Contains("13° shorter", finding.Headline, StringComparison.Ordinal);
        Assert.Contains("7.2°", finding.Detail, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("hip flex L 118 R 125", false)]
    [InlineData("hip flex L 105 R 125", true)]
    public void Without_a_published_error_a_stated_limit_decides(string line, bool acts)
    {
        var findings = From(null, line);
        Assert.Equal(acts, findings.Any(f => f.Impairment is not null));
        Assert.All(findings, f => Assert.Null(f.BeyondError));
        Assert.All(findings, f => Assert.Contains("default limit is 10°", f.Detail, StringComparison.Ordinal));
    }

    [Fact]
    public void A_difference_within_error_is_told_without_impairment()
    {
        var finding = Assert.Single(From(null, "slr L 70 R 75"));
        Assert.False(finding.BeyondError);
        Assert.Null(finding.Impairment);
    }

    [Fact]
    public void Pain_under_load_is_a_finding_of_its_own_and_marks_the_weakness()
    {
        var findings = From(Side.Left, "hip abd L 118 at 36 cm pain 4, R 149");
        Assert.Contains(findings, f => f.Impairment?.Kind == ImpairmentKind.PainUnderLoad);
        Assert.Contains("may be pain", findings.Single(f => f.Impairment?.Kind == ImpairmentKind.Weak).Detail, StringComparison.Ordinal);
    }

    [Fact]
    public void The_affected_side_ranks_before_the_other()
    {
        var findings = From(Side.Left, "slr L 62 R 75; hip abd R 118 at 36 cm, L 149");
        Assert.Equal(Side.Left, findings[0].Impairment!.Side);
    }

    [Fact]
    public void Words_and_manual_grades_rank_low_and_are_not_lost()
    {
        var typed = TypedEntry.Parse("hip abd L 4/5; knee flex R limited; slr L full", Shipped.Exam.Measures);
        var findings = FindingsMaker.From([], null, typed.Observations, Shipped.Exam.Measures);
        Assert.Equal(
            ["hip-abduction-strength:left:weak", "knee-flexion-range:right:stiff"],
            findings.Select(f => f.Id).Order(StringComparer.Ordinal));
        Assert.All(findings, f => Assert.Null(f.BeyondError));
    }

    [Fact]
    public void The_order_of_the_measures_does_not_matter()
    {
        const string Line = "slr L 62 R 75; hip abd R 118 at 36 cm, L 149; psfs running 3, stairs 6; knee flex L 100 R 130";
        var there = Interpretations(Side.Left, Line);
        Assert.Equal(
            FindingsMaker.From(there, Side.Left).Select(f => f.Id),
            FindingsMaker.From([.. there.Reverse()], Side.Left).Select(f => f.Id));
    }

    private static ImmutableArray<Finding> From(Side? affected, string line) =>
        FindingsMaker.From(Interpretations(affected, line), affected);

    private static ImmutableArray<Interpretation> Interpretations(Side? affected, string line)
    {
        var typed = TypedEntry.Parse(line, Shipped.Exam.Measures);
        Assert.Empty(typed.Faults);
        return
        [
            .. typed.Measurements.GroupBy(m => m.MeasureId).Select(g => Interpreter.Interpret(new InterpretationInput
            {
                Measure = Shipped.Measure(g.Key),
                Now = [.. g],
                Person = new Physique(Sex.Male, 34, 1.80, 70),
                AffectedSide = affected,
                Norms = Shipped.Exam.Norms,
            })),
        ];
    }
}
