namespace MomentArm.Web.Account;

public sealed class LocalPathTests
{
    [Theory]
    [InlineData("/", "/")]
    [InlineData("/patients?q=a", "/patients?q=a")]
    [InlineData(null, "/")]
    [InlineData("", "/")]
    [InlineData("//elsewhere.example", "/")]
    [InlineData("/\\elsewhere.example", "/")]
    [InlineData("https://elsewhere.example/", "/")]
    [InlineData("javascript:alert(1)", "/")]
    [InlineData("/a\r\nSet-Cookie: b", "/")]
    public void Only_a_place_in_this_app_is_taken(string? wanted, string expected) =>
        Assert.Equal(expected, LocalPath.Or(wanted));
}
