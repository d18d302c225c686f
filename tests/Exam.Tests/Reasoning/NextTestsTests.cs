using System.Collections.Immutable;
using CsCheck;
using MomentArm.Body;

namespace MomentArm.Exam.Tests.Reasoning;

public class NextTestsTests
{
    private static ReasoningBasis Basis(params ClinicalTest[] tests) => new(
        [
            new Pattern
            {
                Id = Made.PatternId, Name = "Made", Group = 1, Regions = [BodyRegion.Knee], Summary = "s", Defining = [], Supporting = [],
                Opposing = [], ThinkOf = ["x"], Course = "c", CourseSource = "s", Source = "s",
                Priors = [new PatternPrior { Population = "p", Value = 0.3, Source = "s", Usable = true }],
            },
        ],
        [], [.. tests], []);

    private static double Next(double prior, double se, double sp)
    {
        var figure = Made.Figure(se / (1 - sp), (1 - se) / sp) with { Sensitivity = se, Specificity = sp };
        var basis = Basis(Made.Test("t", "f", figure));
        var input = new ReasoningInput { Priors = new Dictionary<string, OwnPrior> { [Made.PatternId] = new(prior) }.ToImmutableDictionary() };
        return Assert.Single(NextTests.Rank(basis, input, Reasoner.Judge(basis, input))).Bits!.Value;
    }

    /// <summary>Mutual information of condition and result, by summing over the four cells of the joint table.</summary>
    private static double Enumerated(double prior, double se, double sp)
    {
        double[,] joint = { { prior * se, prior * (1 - se) }, { (1 - prior) * (1 - sp), (1 - prior) * sp } };
        var bits = 0.0;
        for (var d = 0; d < 2; d++)
        {
            for (var r = 0; r < 2; r++)
                bits += joint[d, r] * Math.Log2(joint[d, r] / ((joint[d, 0] + joint[d, 1]) * (joint[0, r] + joint[1, r])));
        }
        return bits;
    }

    [Fact]
    public void Expected_information_is_the_mutual_information_by_enumeration() =>
        // Inside the limits on ratio and shown probability, where nothing is cut.
        Gen.Select(Gen.Double[0.2, 0.7], Gen.Double[0.6, 0.85], Gen.Double[0.6, 0.85]).Sample((prior, se, sp) =>
            Assert.Equal(Enumerated(prior, se, sp), Next(prior, se, sp), 1e-9));

    [Fact]
    public void Expected_information_is_also_the_expected_drop_of_entropy()
    {
        static double Entropy(double p) => -(p * Math.Log2(p)) - ((1 - p) * Math.Log2(1 - p));
        var (prior, se, sp) = (0.4, 0.8, 0.7);
        var chance = (prior * se) + ((1 - prior) * (1 - sp));
        var drop = Entropy(prior) - (chance * Entropy(Odds.After(prior, se / (1 - sp)))) - ((1 - chance) * Entropy(Odds.After(prior, (1 - se) / sp)));
        Assert.Equal(drop, Next(prior, se, sp), 1e-9);
    }

    [Fact]
    public void A_test_that_cannot_tell_gives_no_bits() => Assert.Equal(0, Next(0.4, 0.5, 0.5), 1e-9);

    [Fact]
    public void The_better_test_comes_first_and_a_done_one_is_gone()
    {
        var good = Made.Test("good", "a", Made.Figure(8, 0.2, "g") with { Sensitivity = 0.82, Specificity = 0.9 });
        var poor = Made.Test("poor", "b", Made.Figure(2, 0.7, "p") with { Sensitivity = 0.46, Specificity = 0.77 });
        var basis = Basis(poor, good);
        var input = new ReasoningInput();
        Assert.Equal(["good", "poor"], NextTests.Rank(basis, input, Reasoner.Judge(basis, input)).Select(n => n.Test.Id));
        var done = input with { Tests = [new TestResult("good", null, TestOutcome.Positive)] };
        Assert.Equal(["poor"], NextTests.Rank(basis, done, Reasoner.Judge(basis, done)).Select(n => n.Test.Id));
    }

    [Fact]
    public void A_second_test_of_a_family_promises_less_than_the_first()
    {
        var first = Made.Test("first", "same", Made.Figure(8, 0.2, "g") with { Sensitivity = 0.82, Specificity = 0.9 });
        var second = Made.Test("second", "same", Made.Figure(5, 0.4, "p") with { Sensitivity = 0.65, Specificity = 0.87 });
        var basis = Basis(first, second);
        double Of(ReasoningInput input) => NextTests.Rank(basis, input, Reasoner.Judge(basis, input)).Single(n => n.Test.Id == "second").Bits!.Value;
        var before = Of(new ReasoningInput());
        var after = Of(new ReasoningInput { Tests = [new TestResult("first", null, TestOutcome.Positive)] });
        Assert.True(after < before);
        Assert.Equal(0, after, 1e-9);
    }

    [Fact]
    public void Without_accuracy_data_nothing_is_promised_and_it_says_so()
    {
        var input = new ReasoningInput
        {
            Region = BodyRegion.Knee,
            Answers = new Dictionary<string, ItemAnswer> { ["runner"] = ItemAnswer.Yes, ["outer-knee-pain"] = ItemAnswer.Yes }.ToImmutableDictionary(),
        };
        var basis = Shipped.Exam.Reasoning;
        var next = NextTests.Rank(basis, input, Reasoner.Judge(basis, input)).Single(n => n.Test.Id == "noble-compression");
        Assert.Null(next.Bits);
        Assert.Contains("No accuracy data", next.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Shipped_tests_promise_a_finite_number_of_bits_and_tell_what_they_cost()
    {
        var basis = Shipped.Exam.Reasoning;
        foreach (var next in NextTests.Rank(basis, new ReasoningInput(), Reasoner.Judge(basis, new ReasoningInput())))
        {
            Assert.False(string.IsNullOrWhiteSpace(next.Why));
            if (next.Bits is { } bits)
            {
                Assert.InRange(bits, 0, 3);
                Assert.Contains(" min, ", next.Why, StringComparison.Ordinal);
            }
        }
    }
}
