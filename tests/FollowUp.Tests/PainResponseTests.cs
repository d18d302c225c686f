namespace MomentArm.FollowUp.Tests;

/// <summary>
/// The pain-monitoring rule. Bands after Thomee 1997 (Phys Ther 77:1690, from memory) and Silbernagel 2007 (Am J Sports Med
/// 35:897, read in a summary); what the bands lead to is our choice.
/// </summary>
public class PainResponseTests
{
    [Theory]

    // Straight from the rule's table: 4 and a usual morning holds; 4 and a morning 2 up goes a step back; 6 stops.
    [InlineData(4, 2, 2, PainLight.Amber)]
    [InlineData(4, 4, 2, PainLight.Red)]
    [InlineData(6, 2, 2, PainLight.Red)]

    // Edges of the bands.
    [InlineData(0, 0, 0, PainLight.Green)]
    [InlineData(3, 3, 2, PainLight.Green)]
    [InlineData(3, 4, 2, PainLight.Amber)]
    [InlineData(3, 5, 2, PainLight.Red)]
    [InlineData(5, 2, 2, PainLight.Amber)]
    [InlineData(5, 3, 2, PainLight.Amber)]
    [InlineData(0, 9, 2, PainLight.Red)]
    [InlineData(2, 0, 5, PainLight.Green)]

    // Answers left out.
    [InlineData(4, null, 2, PainLight.Amber)]
    [InlineData(4, 9, null, PainLight.Amber)]
    [InlineData(2, null, null, PainLight.Green)]
    [InlineData(null, 2, 2, PainLight.Green)]
    [InlineData(null, 4, 2, PainLight.Amber)]
    [InlineData(null, 5, 2, PainLight.Red)]
    public void The_light_follows_from_pain_and_the_next_morning(int? worst, int? morning, int? usual, PainLight light) =>
        Assert.Equal(light, PainResponse.Judge(worst, morning, usual, 3)!.Value.Light);

    [Fact]
    public void Without_answers_there_is_no_light() => Assert.Null(PainResponse.Judge(null, null, 2, 3));

    [Theory]
    [InlineData(0, 1, PainLight.Amber)]
    [InlineData(2, 3, PainLight.Amber)]
    [InlineData(2, 2, PainLight.Green)]
    [InlineData(5, 5, PainLight.Green)]
    [InlineData(5, 6, PainLight.Red)]
    public void The_accepted_pain_is_a_setting_but_over_five_is_always_red(int ceiling, int worst, PainLight light) =>
        Assert.Equal(light, PainResponse.Judge(worst, null, null, ceiling)!.Value.Light);

    [Theory]
    [InlineData(6, 2, 2, "pain 6 of 10 while exercising")]
    [InlineData(1, 6, 2, "next morning 4 points above usual")]
    [InlineData(4, 2, 2, "pain 4 of 10 while exercising, above 3")]
    [InlineData(4, 4, 2, "pain 4 of 10 while exercising and next morning 2 points above usual")]
    [InlineData(1, 4, 2, "next morning 2 points above usual")]
    [InlineData(1, 2, 2, "pain 1 of 10 while exercising")]
    [InlineData(null, 2, 2, "next morning 2 of 10")]
    public void The_reason_says_which_answer_decided(int? worst, int? morning, int? usual, string why) =>
        Assert.Equal(why, PainResponse.Judge(worst, morning, usual, 3)!.Value.Why);

    [Fact]
    public void More_pain_never_gives_a_better_light()
    {
        for (var worst = 0; worst < 10; worst++)
        {
            for (var morning = 0; morning < 10; morning++)
            {
                var here = PainResponse.Judge(worst, morning, 2, 3)!.Value.Light;
                Assert.True(PainResponse.Judge(worst + 1, morning, 2, 3)!.Value.Light >= here);
                Assert.True(PainResponse.Judge(worst, morning + 1, 2, 3)!.Value.Light >= here);
            }
        }
    }
}
