using System.Text.Json.Nodes;
using Bunit;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Workshop;
using Crossmember.Engineering.Quantities;
using Crossmember.Web.Features.Layout;
using Crossmember.Web.Features.Settings;

namespace Crossmember.Web.Tests.Settings;

/// <summary>Each section's main act, what it would do to the builds, conflicts and undo.</summary>
public sealed class SettingsPageTests : WrittenPages
{
    private Viewer _kept = Ana;

    private IRenderedComponent<SettingsPage> Page() =>
        Render<SettingsPage>(p => p.AddCascadingValue(Ana).AddCascadingValue(new ViewerKeeper(v => { _kept = v; return Task.CompletedTask; })));

    private static void Press(IRenderedComponent<SettingsPage> page, string label) =>
        page.FindAll("button").First(b => (b.GetAttribute("aria-label") ?? b.TextContent.Trim()) == label).Click();

    private static void Fill(IRenderedComponent<SettingsPage> page, string field, string typed) => page.Find(field).Input(typed);

    private void ChooseTires() => Ben("bracken", EntryKind.ChoiceMade, "scenarios/working/choices/tires", new JsonObject { ["option"] = "at33" });

    [Fact]
    public void A_rate_shows_what_it_moves_before_it_is_kept_and_is_undone()
    {
        ChooseTires();
        var page = Page();
        Press(page, "Change the rate of technician");
        Fill(page, "#rate", "100");
        var row = page.Find(".preview tbody tr").TextContent;
        // Four tires at 325 and 3 hours: 1300 + 3 x 90 before, 1300 + 3 x 100 then.
        Assert.Contains("1,570.00 USD", row, StringComparison.Ordinal);
        Assert.Contains("1,600.00 USD", row, StringComparison.Ordinal);
        Assert.Contains("+30.00 USD", row, StringComparison.Ordinal);
        Assert.Contains("Moves the totals of 1 of 1 build", page.Find(".preview").TextContent, StringComparison.Ordinal);
        Assert.Equal("90.00 USD", Facts.Rates["technician"].ToString());
        page.Find("form.change").Submit();
        Assert.Equal("100.00 USD", Facts.Rates["technician"].ToString());
        Assert.Contains("Ana rated technician at 100.00 USD an hour", page.Find(".news").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("#rate"));
        Press(page, "Undo mine");
        Assert.Equal("90.00 USD", Facts.Rates["technician"].ToString());
        Assert.Contains("took back: rated technician at 100.00 USD", page.Find("#changes").TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("ninety", "no amount")]
    [InlineData("95,50", "no number")]
    [InlineData("-5", "below zero")]
    [InlineData("95 EUR", "keeps its books in USD")]
    [InlineData("95.12345", "four decimals")]
    public void What_is_no_rate_is_answered_beside_the_field_and_stays_in_it(string typed, string wrong)
    {
        var page = Page();
        Press(page, "Change the rate of technician");
        Fill(page, "#rate", typed);
        page.Find("form.change").Submit();
        Assert.Contains(wrong, page.Find("#rate-error").TextContent, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(typed, page.Find("#rate").GetAttribute("value"));
        Assert.Equal("90.00 USD", Facts.Rates["technician"].ToString());
    }

    [Fact]
    public void A_trade_is_added_and_one_without_rate_has_none()
    {
        var page = Page();
        Fill(page, "#new-trade", "welder");
        page.Find("form.add").Submit();
        Fill(page, "#new-rate", "1,110.00");
        page.Find("form.change").Submit();
        Assert.Equal("1110.00 USD", Facts.Rates["welder"].ToString());
        Press(page, "Change the rate of welder");
        Press(page, "No rate");
        Assert.Null(Facts.Rates["welder"]);
        Fill(page, "#new-trade", "a/b");
        page.Find("form.add").Submit();
        Assert.Contains("no name of a trade", page.Find("#new-trade-error").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tax_is_typed_as_percent_and_kept_as_an_exact_fraction()
    {
        var page = Page();
        Press(page, "Change the tax on freight");
        Fill(page, "#tax-percent", "7.25 %");
        page.Find("form.change").Submit();
        Assert.Equal(0.0725m, Facts.Tax["freight"]);
        Assert.Contains("7.25 %", page.Find("#tax").TextContent, StringComparison.Ordinal);
        Press(page, "Change the tax on freight");
        Press(page, "No tax");
        Assert.Equal(0m, Facts.Tax["freight"]);
    }

    [Fact]
    public void Rounding_shows_an_example_and_refuses_a_step_that_no_coins_make()
    {
        var page = Page();
        Press(page, "Change the rounding");
        Fill(page, "#rounding-step", "0.05");
        Assert.Contains("becomes 1,234.55 USD", page.Find("#rounding").TextContent, StringComparison.Ordinal); // 24691.34 steps, 24691 whole ones
        page.Find("form.change").Submit();
        Assert.Equal(0.05m, Facts.Rounding);
        Press(page, "Change the rounding");
        Fill(page, "#rounding-step", "0.004");
        Assert.Contains("multiple of the smallest coin", page.Find("#rounding-step-error").TextContent, StringComparison.Ordinal);
        Press(page, "The smallest coin");
        Assert.Null(Facts.Rounding);
    }

    [Fact]
    public void The_currency_cannot_change_while_there_are_rates_and_prices_and_the_page_says_why()
    {
        var section = Page().Find("#currency");
        Assert.Contains("there are 1 rate and prices in 1 build in USD", section.TextContent, StringComparison.Ordinal);
        Assert.Null(section.QuerySelector("button"));
    }

    [Fact]
    public void Somebody_is_named_changed_and_no_longer_offered()
    {
        var page = Page();
        Fill(page, "#person-name", "Zsófia");
        Fill(page, "#person-role", "lead");
        page.Find(".add-person").Submit();
        var person = Assert.Single(Facts.People.Values);
        Assert.Equal(("Zsófia", "lead", false), (person.Name, person.Role, person.Away));
        Assert.Equal(["Zsófia"], page.FindAll("#who-here option").Select(o => o.GetAttribute("value")));
        Press(page, "Change Zsófia");
        page.Find("#people input[type=checkbox]").Change(true);
        page.Find("#people form.change").Submit();
        Assert.True(Facts.People[person.Id].Away);
        Assert.Empty(page.FindAll("#who-here option"));
        Fill(page, "#person-name", " ");
        page.Find(".add-person").Submit();
        Assert.Contains("name is missing", page.Find("#person-error").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_is_listed_changed_found_taken_off_whole_and_put_back()
    {
        var page = Page();
        Press(page, "List a part");
        Fill(page, "#stock-title", "U-bolt");
        Fill(page, "#stock-each", "11.40");
        Fill(page, "#stock-until", "2020-01-31");
        page.Find("#stock form.change").Submit();
        Assert.Equal("11.40 USD", Assert.Single(Facts.Stock.Values).Each.ToString());
        Assert.Contains("held until 2020-01-31, over", page.Find(".stock .over").TextContent, StringComparison.Ordinal);
        Press(page, "Change U-bolt");
        Fill(page, "#stock-each", "12.00");
        page.Find("#stock form.change").Submit();
        Assert.Equal("12.00 USD", Assert.Single(Facts.Stock.Values).Each.ToString());
        Fill(page, "#stock-search", "zeppelin");
        Assert.Empty(page.FindAll(".stock tbody tr"));
        Fill(page, "#stock-search", "u-b");
        Press(page, "Take off U-bolt");
        Assert.Empty(Facts.Stock);
        Press(page, "Put back U-bolt");
        Assert.Equal("12.00 USD", Assert.Single(Facts.Stock.Values).Each.ToString());
    }

    [Fact]
    public void A_part_has_the_id_of_its_name_whether_it_is_listed_here_or_pasted()
    {
        var page = Page();
        Press(page, "List a part");
        Fill(page, "#stock-title", "Brake hose");
        Fill(page, "#stock-number", "BH-7");
        page.Find("#stock form.change").Submit();
        Assert.Equal(NewId.Of("Brake hose", []), Assert.Single(Facts.Stock.Keys));
    }

    [Fact]
    public void What_is_wrong_with_a_part_stands_at_its_fields()
    {
        var page = Page();
        Press(page, "List a part");
        Fill(page, "#stock-each", "cheap");
        Fill(page, "#stock-on-hand", "many");
        page.Find("#stock form.change").Submit();
        Assert.Contains("no title", page.Find("#stock-title-error").TextContent, StringComparison.Ordinal);
        Assert.Contains("'cheap", page.Find("#stock-each-error").TextContent, StringComparison.Ordinal);
        Assert.Contains("'many' is no count", page.Find("#stock-onHand-error").TextContent, StringComparison.Ordinal);
        Assert.Empty(Facts.Stock);
    }

    [Fact]
    public void Two_on_one_rate_see_both_words_and_pick()
    {
        var page = Page();
        Press(page, "Change the rate of technician");
        Fill(page, "#rate", "99");
        Ben(Fact.Shop, EntryKind.TradeRated, "trades/technician", new JsonObject { ["rate"] = "98.00 USD" });
        page.WaitForAssertion(() => Assert.Contains("Somebody has decided what you are looking at", page.Find(".news").TextContent, StringComparison.Ordinal));
        page.Find("form.change").Submit();
        var clash = page.Find(".clash").TextContent;
        Assert.Contains("Ben rated technician at 98.00 USD an hour", clash, StringComparison.Ordinal);
        Assert.Contains("Ana rated technician at 99.00 USD an hour", clash, StringComparison.Ordinal);
        Assert.Equal("98.00 USD", Facts.Rates["technician"].ToString());
        Press(page, "Use mine");
        Assert.Equal("99.00 USD", Facts.Rates["technician"].ToString());
        Assert.Empty(page.FindAll("#rate"));
    }

    [Fact]
    public void What_somebody_else_changes_elsewhere_on_the_page_shows_at_once()
    {
        var page = Page();
        Ben(Fact.Shop, EntryKind.TaxSet, "tax/parts", new JsonObject { ["fraction"] = 0.06 });
        page.WaitForAssertion(() => Assert.Contains("Just now: Ben set the tax on parts to 6 %", page.Find(".news").TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public void Units_and_name_go_to_the_layout_that_keeps_them()
    {
        var page = Page();
        page.FindAll("#browser input[name=units]")[1].Change("on");
        Assert.Equal(MeasureSystem.Metric, _kept.Measure);
        Fill(page, "#who", "Bea");
        page.Find("#browser form").Submit();
        Assert.Equal(("Bea", true), (_kept.Person, _kept.Asked));
    }

    [Fact]
    public void Every_section_has_a_heading_and_an_anchor_that_the_list_of_sections_leads_to()
    {
        var page = Page();
        var anchors = page.FindAll(".contents a").Select(a => a.GetAttribute("href")!.Split('#')[1]).ToList();
        Assert.Equal(8, anchors.Count);
        Assert.All(anchors, a => Assert.NotNull(page.Find($"section#{a} h2")));
    }
}
