using System.Globalization;
using System.Text.RegularExpressions;

namespace Crossmember.Web.Tests;

/// <summary>Every colour that text is written in stands out from every ground by 4.5 to 1 in both themes (WCAG 2.2, 1.4.3 Contrast (Minimum)).</summary>
public sealed partial class TokenContrastTests
{
    private static readonly string s_css = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "css", "tokens.css"));

    [GeneratedRegex(@"--([a-z-]+): light-dark\((#[0-9A-Fa-f]{6}), (#[0-9A-Fa-f]{6})\);")]
    private static partial Regex Token();

    private static Dictionary<string, string[]> Tokens => Token().Matches(s_css).ToDictionary(m => m.Groups[1].Value, m => new[] { m.Groups[2].Value, m.Groups[3].Value });

    public static TheoryData<string, string> Pairs
    {
        get
        {
            var pairs = new TheoryData<string, string>();
            foreach (var ink in new[] { "ink", "quiet", "action", "link", "pass", "caution", "fail", "unknown" })
                foreach (var ground in new[] { "ground", "card" }) pairs.Add(ink, ground);
            pairs.Add("on-action", "action");
            pairs.Add("ground", "ink"); // the line about a lost connection
            return pairs;
        }
    }

    [Theory, MemberData(nameof(Pairs))]
    public void Text_stands_out_in_light_and_dark(string ink, string ground)
    {
        for (var theme = 0; theme < 2; theme++)
            Assert.True(Contrast(Tokens[ink][theme], Tokens[ground][theme]) >= 4.5, $"{ink} on {ground}, theme {theme}: {Contrast(Tokens[ink][theme], Tokens[ground][theme]):0.00}");
    }

    /// <summary>Black on white is 21 to 1 and a colour on itself 1 to 1 (WCAG 2.2, definition of contrast ratio).</summary>
    [Theory]
    [InlineData("#000000", "#FFFFFF", 21)]
    [InlineData("#8A3B2A", "#8A3B2A", 1)]
    public void The_measure_is_the_published_one(string a, string b, double ratio) => Assert.Equal(ratio, Contrast(a, b), 9);

    [Fact]
    public void No_other_sheet_names_a_colour_of_its_own()
    {
        foreach (var sheet in Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "css")).Where(f => !f.EndsWith("tokens.css", StringComparison.Ordinal)))
            Assert.DoesNotMatch("#[0-9A-Fa-f]{3,8}[;, )]", File.ReadAllText(sheet));
    }

    private static double Contrast(string a, string b)
    {
        double x = Luminance(a), y = Luminance(b);
        return (Math.Max(x, y) + 0.05) / (Math.Min(x, y) + 0.05);
    }

    private static double Luminance(string colour)
    {
        double Channel(int at)
        {
            var c = int.Parse(colour.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
            return c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
        }
        return (0.2126 * Channel(1)) + (0.7152 * Channel(3)) + (0.0722 * Channel(5));
    }
}
