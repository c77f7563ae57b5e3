using Crossmember.Documents.Curves;

namespace Crossmember.Web.Tests.Figures;

/// <summary>What is saved from a page looks as the page does in the light.</summary>
public sealed class InkTests
{
    private static readonly string s_tokens = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "css", "tokens.css"));

    public static TheoryData<string, string> Inks => [.. Ink.All.Select(i => (i.Token, i.Light))];

    [Theory, MemberData(nameof(Inks))]
    public void Every_ink_is_a_token_of_the_desk_with_its_light_colour(string token, string light) =>
        Assert.Contains($"--{token}: light-dark({light}, ", s_tokens, StringComparison.OrdinalIgnoreCase);
}
