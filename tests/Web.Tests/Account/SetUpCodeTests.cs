namespace MomentArm.Web.Account;

public sealed class SetUpCodeTests
{
    private readonly List<string> announced = [];

    [Fact]
    public void The_announced_code_matches_however_it_is_typed()
    {
        var code = Begun();
        Assert.True(code.Matches(announced[0]));
        Assert.True(code.Matches(" " + announced[0].Replace("-", " ", StringComparison.Ordinal).ToLowerInvariant()));
    }

    [Fact]
    public void A_retired_code_matches_nothing()
    {
        var code = Begun();
        code.Retire();
        Assert.False(code.Matches(announced[0]));
    }

    [Fact]
    public void Nothing_matches_before_a_code_was_made()
    {
        var code = new SetUpCode(announced.Add);
        Assert.False(code.Matches(""));
        Assert.False(code.Matches(null));
    }

    [Fact]
    public void After_ten_wrong_tries_another_code_rules()
    {
        var code = Begun();
        for (var i = 0; i < SetUpCode.TriesPerCode; i++)
        {
            Assert.False(code.Matches("WRONG-WRONG"));
        }

        Assert.Equal(2, announced.Count);
        Assert.False(code.Matches(announced[0]));
        Assert.True(code.Matches(announced[1]));
    }

    private SetUpCode Begun()
    {
        var code = new SetUpCode(announced.Add);
        code.Begin();
        code.Begin();
        Assert.Single(announced);
        return code;
    }
}
