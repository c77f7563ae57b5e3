using Bunit;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Quantities;
using Crossmember.Web.Features.Decisions;

namespace Crossmember.Web.Tests.Decisions;

public sealed class OptionCardTests : BunitContext
{
    private static OptionFacts Facts(string item, string option, MeasureSystem measure = MeasureSystem.UsCustomary)
    {
        var sheet = Bracken.With((item, option));
        return OptionFacts.Of(sheet.InEffect[sheet.Plan.SlotId(item)]!, sheet.Plan, Bracken.Build, measure);
    }

    private static InOneBreath Breath(string item, string option) =>
        InOneBreath.Of(Bracken.KnockOn((item, option)), Bracken.With().Totals, Bracken.With((item, option)).Totals);

    [Fact]
    public void It_says_what_the_option_costs_takes_and_weighs()
    {
        var card = Render<OptionCard>(p => p.Add(c => c.Facts, Facts("final-drives", "tall")).Add(c => c.Item, "Final drives"));
        var facts = card.FindAll(".facts div").ToDictionary(d => d.Children[0].TextContent, d => d.Children[1].TextContent);
        Assert.Equal("620.00 USD", facts["Price"]);
        Assert.Equal("12 h", facts["Hours"]);
        Assert.Equal("3 weeks", facts["Lead time"]);
        Assert.Equal("30 %", facts["Original"]);
        Assert.Equal("32 lb", facts["Mass"]);
    }

    [Fact]
    public void What_it_brings_stands_with_where_it_is_from()
    {
        var brings = Render<OptionCard>(p => p.Add(c => c.Facts, Facts("final-drives", "tall"))).Find(".brings dl").Children.Single();
        Assert.Equal("axle.front.ratio, axle.rear.ratio", brings.QuerySelector("dt")!.GetAttribute("title"));
        Assert.Contains("3.73", brings.TextContent, StringComparison.Ordinal);
        Assert.EndsWith("vendor", brings.TextContent.Trim(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_it_would_change_is_told_before_anybody_chooses()
    {
        // 2 x 310 for parts and 12 h at 90 an hour; 2 lb more; the redline check goes from good to no with 4.88 only.
        var tall = Breath("final-drives", "tall");
        Assert.Equal((0, 0, 1700m, 12d), (tall.Worse, tall.Better, tall.Cost, tall.Hours));
        Assert.Equal(2 * 0.45359237, tall.Mass!.Value, 9);
        Assert.Equal((1, 0), (Breath("final-drives", "short").Worse, Breath("final-drives", "short").Better));
        var card = Render<OptionCard>(p => p.Add(c => c.Facts, Facts("final-drives", "short")).Add(c => c.Breath, Breath("final-drives", "short")));
        Assert.Contains("1 worse", card.Find(".breath").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Looking_needs_no_click_and_choosing_does()
    {
        List<string?> looked = [], pinned = [], chosen = [];
        var card = Render<OptionCard>(p => p.Add(c => c.Facts, Facts("tires", "at33")).Add(c => c.Item, "Tires").Add(c => c.OnLook, looked.Add).Add(c => c.OnPin, pinned.Add).Add(c => c.OnChoose, chosen.Add));
        card.Find("article").MouseEnter();
        card.Find("article").FocusIn();
        Assert.Equal(["at33"], looked);
        Assert.Equal(["at33"], pinned); // by keyboard it stays, whatever the pointer does
        Assert.Empty(chosen);
        card.Find("button.look").Click();
        Assert.Equal(["at33", "at33"], pinned);
        card.Find("button[aria-label='Choose 33 in all-terrain for Tires']").Click();
        Assert.Equal(["at33"], chosen);
    }

    [Fact]
    public void The_chosen_one_can_only_be_given_back()
    {
        List<string?> chosen = [];
        var card = Render<OptionCard>(p => p.Add(c => c.Facts, Facts("tires", "at33")).Add(c => c.IsChosen, true).Add(c => c.CanGoBack, true).Add(c => c.OnChoose, chosen.Add));
        card.Find("button").Click();
        Assert.Equal([null], chosen);
    }

    [Fact]
    public void A_mass_nobody_knows_is_not_nothing()
    {
        Assert.Equal("none", Facts("final-drives", "short").Mass);
        Assert.Equal("none", Facts("heater", Option.None).Mass);
        Assert.Equal("as weighed", Facts("engine", Option.AsFound).Mass);
        Assert.Equal("90.718 kg", Facts("tires", Option.AsFound, MeasureSystem.Metric).Mass);
    }
}
