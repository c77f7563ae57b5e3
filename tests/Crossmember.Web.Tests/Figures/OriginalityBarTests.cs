using Bunit;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;
using Crossmember.Web.Features.Figures;
using Crossmember.Web.Tests.MasterSheet;

namespace Crossmember.Web.Tests.Figures;

/// <summary>The bar says what becomes of the old vehicle in words, not by colour.</summary>
public sealed class OriginalityBarTests : BunitContext
{
    private IRenderedComponent<OriginalityBar> Bar(params (string, string)[] sides) =>
        Render<OriginalityBar>(p => p.Add(b => b.Sides, [.. sides.Select(s => (s.Item1, OriginalityShares.Of(DemoShop.Sheet("packhorse", s.Item2))))]));

    [Fact]
    public void Each_part_is_named_with_its_share_and_tells_its_items()
    {
        var bar = Bar(("as wished", "working"));
        Assert.StartsWith("as wished: kept 59.1 %, refurbished 24.2 %, upgraded 13.6 %, made here 3 %", bar.Find(".bar").GetAttribute("aria-label")!, StringComparison.Ordinal);
        Assert.Contains("Camper body, Wiring", string.Join(", ", bar.FindAll("tbody tr")[3].QuerySelector("td:last-child")!.TextContent.Split(", ").Order(StringComparer.Ordinal)), StringComparison.Ordinal);
        Assert.Equal(4, bar.FindAll(".key li").Count);
    }

    [Fact]
    public void Parts_are_as_wide_as_their_shares()
    {
        var grown = Bar(("as wished", "working")).FindAll(".part").Select(p => double.Parse(p.GetAttribute("style")!.Split(':')[1], System.Globalization.CultureInfo.InvariantCulture)).ToList();
        Assert.Equal(OriginalityShares.Of(DemoShop.Sheet("packhorse", "working")).Select(s => Math.Round(s.Share, 4)), grown);
    }

    [Fact]
    public void Old_stands_above_new_with_both_shares()
    {
        var bar = Bar(("asked", "asked"), ("as wished", "working"));
        Assert.Equal(2, bar.FindAll(".bar").Count);
        Assert.Contains("→ 59.1 %", bar.FindAll(".key li")[0].TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Patterns_differ_by_class() =>
        Assert.Equal(4, Bar(("as wished", "working")).FindAll(".part").Select(p => p.ClassName).Distinct().Count());

    [Fact]
    public void Where_no_item_has_a_weight_the_bar_says_so() =>
        Assert.Contains("No item has a weight", Render<OriginalityBar>(p => p.Add(b => b.Sides, [("x", Array.Empty<OriginalityShare>())])).Markup, StringComparison.Ordinal);

    /// <summary>An option left off takes its weight out of what is kept.</summary>
    [Fact]
    public void Leaving_an_item_off_shows_as_left_off()
    {
        var shares = OriginalityShares.Of(Bracken.With(("heater", Option.None)));
        // Engine 3, gearbox 2, final drives 1, tires 1, heater 1: 1 of 8.
        Assert.Equal(1.0 / 8, shares.Single(s => s.Class == OptionClass.None).Share, 12);
    }
}
