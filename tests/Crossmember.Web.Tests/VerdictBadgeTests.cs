using Bunit;
using Crossmember.Engineering.Calculations;
using Crossmember.Web.Features.Figures;

namespace Crossmember.Web.Tests;

/// <summary>A verdict is told by word and shape as well as colour (WCAG 2.2, success criterion 1.4.1 Use of Color).</summary>
public sealed class VerdictBadgeTests : BunitContext
{
    [Theory]
    [InlineData(Verdict.Pass, "good", "circle")]
    [InlineData(Verdict.Caution, "watch", "path")]
    [InlineData(Verdict.Fail, "no", "rect")]
    [InlineData(Verdict.Unknown, "don't know", "circle")]
    public void It_has_a_word_a_shape_and_the_engineers_term(Verdict verdict, string word, string shape)
    {
        var badge = Render<VerdictBadge>(p => p.Add(b => b.Value, verdict)).Find(".verdict");
        Assert.Equal(word, badge.TextContent.Trim());
        Assert.NotNull(badge.QuerySelector($"svg[aria-hidden=true] > {shape}"));
        Assert.Contains(verdict.ToString().ToLowerInvariant(), badge.ClassList);
        Assert.Equal($"verdict: {verdict.ToString().ToLowerInvariant()}", badge.GetAttribute("title"));
    }

    [Fact]
    public void What_is_good_is_filled_and_what_is_not_known_is_hollow()
    {
        string Fill(Verdict v) => Render<VerdictBadge>(p => p.Add(b => b.Value, v)).Find("circle").GetAttribute("fill")!;
        Assert.Equal("currentColor", Fill(Verdict.Pass));
        Assert.Equal("none", Fill(Verdict.Unknown));
    }
}
