using Crossmember.Documents.Paper;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Web.Tests.Paper;

/// <summary>A verdict on paper has the colour that it has on the desk.</summary>
public sealed class PaperTokenTests
{
    private static readonly string s_tokens = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "css", "tokens.css"));

    [Theory]
    [InlineData(Verdict.Pass, "pass")]
    [InlineData(Verdict.Caution, "caution")]
    [InlineData(Verdict.Fail, "fail")]
    [InlineData(Verdict.Unknown, "unknown")]
    public void Every_verdict_is_a_token_of_the_desk_with_its_light_colour(Verdict verdict, string token)
    {
        var ink = VerdictShape.InkOf(verdict);
        Assert.Equal(token, ink.Token);
        Assert.Contains($"--{token}: light-dark({ink.Light}, ", s_tokens, StringComparison.OrdinalIgnoreCase);
    }
}
