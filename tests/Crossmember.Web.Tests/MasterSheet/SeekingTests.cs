using Bunit;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;
using Crossmember.Web.Features.MasterSheet;

namespace Crossmember.Web.Tests.MasterSheet;

/// <summary>Finding one's way on the sheet: search, filters, tree, what is missing.</summary>
public sealed class SeekingTests : SheetPages
{
    private SheetLines Lines => new(Sheet);

    [Fact]
    public void Ratio_finds_every_ratio()
    {
        var page = Page();
        page.Find("#seek").Input("ratio");
        page.FindAll(".middle button").SingleOrDefault(b => b.TextContent.StartsWith("Show all", StringComparison.Ordinal))?.Click();
        var found = page.FindAll("[data-key-name]").SelectMany(r => r.QuerySelector("th")!.GetAttribute("title")!.Split(", ")).ToHashSet();
        var named = Enumerable.Range(0, Sheet.Plan.Space.KeyCount).Where(k => Sheet.Keys[k].Exists).Select(Sheet.Plan.Space.KeyName).Where(k => k.Contains("ratio", StringComparison.Ordinal)).ToList();
        Assert.True(named.Count > 8, "gears, ranges, axles");
        Assert.Superset(named.ToHashSet(), found);
        Assert.Contains("Gearbox", page.FindAll(".sheet-tree .what").Select(w => Text(w).Split(" Four")[0]));
    }

    [Theory]
    [InlineData("redline", "engine.redline")]
    [InlineData("all-terrain", "wheel.front.left.tire.size")]
    [InlineData("WHEELBASE front", "vehicle.wheelbase")]
    public void Words_are_sought_in_meanings_keys_items_and_options(string words, string key) =>
        Assert.Contains(Lines.All.Where(new Sought(words, Only.Everything).Finds), l => l.Key == key);

    [Fact]
    public void A_search_without_answer_says_what_to_try()
    {
        var page = Page();
        page.Find("#seek").Input("zeppelin");
        Assert.Contains("No value, key or item has “zeppelin” in it", page.Find(".middle").TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("What is missing", "shaft")]
    [InlineData("What was assumed", "speed the vehicle is to cruise at")]
    [InlineData("Measured", "wheelbase|front to rear axle center")]
    public void A_filter_leaves_only_its_kind(string filter, string shows)
    {
        var page = Page();
        page.FindAll(".seek button").Single(b => b.TextContent.StartsWith(filter, StringComparison.Ordinal)).Click();
        Assert.Contains(shows.Split('|'), s => page.Find(".values").TextContent.Contains(s, StringComparison.OrdinalIgnoreCase));
        Assert.True(page.FindAll(".sheet-tree li").Count < Sheet.Build.Slots.Length + 1);
        Assert.Single(page.FindAll(".seek button[aria-pressed=true]"));
        page.Find(".seek button[aria-pressed=true]").Click();
        Assert.Equal(Sheet.Build.Slots.Length + 1, page.FindAll(".sheet-tree li").Count);
    }

    [Fact]
    public void Kinds_do_not_mix()
    {
        Assert.All(Lines.All.Where(new Sought("", Only.Missing).Finds), l => Assert.True(l.State.Value.IsAbsent));
        Assert.All(Lines.All.Where(new Sought("", Only.Measured).Finds), l => Assert.Equal(Basis.Measured, l.State.Basis));
        Assert.All(Lines.All.Where(new Sought("", Only.Assumed).Finds), l => Assert.Equal(Basis.Assumed, l.State.Basis));
    }

    [Fact]
    public void What_is_missing_on_the_page_is_what_would_settle_the_sheet()
    {
        var shown = MissingValues.Of(Sheet, Lines);
        Assert.Equal(Unsettled.Of(Sheet), shown.Select(s => s.Item1));
        Assert.All(shown.Where(s => s.Item1.What != Unsettled.Mass), s => Assert.NotEmpty(s.Item2));
        var page = Page();
        page.FindAll(".wanted button").Single().Click();
        Assert.Equal(Unsettled.Of(Sheet).Count, page.FindAll(".needed li").Count);
    }

    [Fact]
    public void Every_missing_value_belongs_to_one_item_and_its_button_opens_the_form_with_it()
    {
        var lines = Lines;
        Assert.Equal(lines.Missing().SelectMany(l => l.Keys).Order(), Sheet.Build.Slots.SelectMany(s => lines.Missing(s.Id)).SelectMany(l => l.Keys).Order());
        var page = Page();
        page.FindAll(".wanted button").Single().Click();
        var link = page.FindAll(".needed a").First(a => a.GetAttribute("href")!.Contains("service-description", StringComparison.Ordinal)).GetAttribute("href")!;
        Assert.Contains("item=tires&in=working&key=wheel.%2A.%2A.tire.service-description#note", link, StringComparison.Ordinal);
        Assert.Equal("wheel.*.*.tire.service-description", Page("tires", "wheel.*.*.tire.service-description").Find("#note-key").GetAttribute("value"));
    }

    [Fact]
    public void Items_fold_and_the_tree_is_one_stop_of_Tab()
    {
        var page = Page("engine");
        Assert.Single(page.FindAll(".sheet-tree a[tabindex='0']"), a => a.GetAttribute("title") == "engine");
        var all = page.FindAll(".sheet-tree li").Count;
        page.Find(".sheet-tree .fold").Click();
        Assert.Equal(2, page.FindAll(".sheet-tree li").Count);
        Assert.Equal("false", page.Find(".sheet-tree .fold").GetAttribute("aria-expanded"));
        Assert.Equal("0", page.Find(".sheet-tree a").GetAttribute("tabindex"));
        page.Find(".sheet-tree .fold").Click();
        Assert.Equal(all, page.FindAll(".sheet-tree li").Count);
    }

    [Fact]
    public void A_row_tells_option_class_mass_and_whether_it_is_decided()
    {
        var tires = Text(Page().Find(".sheet-tree a[title=tires]"));
        foreach (var told in (string[])["29 in, as found", "keep", "200 lb", "open"]) Assert.Contains(told, tires, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_a_value_is_from_is_told_for_each_kind()
    {
        Desk.Append([Desk.Deciding.TryOut("bracken", "working", "duty.cruise-speed", "70 mph", View.Seen("scenarios/working/what-ifs/duty.cruise-speed"), "Ana", "here")], Crossmember.Builds.Journal.Arrival.Online);
        var page = Page("vehicle");
        string From(string key) => Text(page.Find($"[data-key-name='{key}'] td:nth-child(3)"));
        Assert.StartsWith("measured came with the file", From("vehicle.wheelbase"), StringComparison.Ordinal);
        Assert.StartsWith("tried in this what-if", From("duty.cruise-speed"), StringComparison.Ordinal);
        Assert.Contains("the option itself says 65 mph, assumed", From("duty.cruise-speed"), StringComparison.Ordinal);
        Assert.StartsWith("usual value", From("duty.grip"), StringComparison.Ordinal);
        var whole = Page("vehicle");
        while (whole.FindAll("button").FirstOrDefault(b => b.TextContent.StartsWith("Show all", StringComparison.Ordinal)) is { } more) more.Click();
        var load = whole.Find("[data-key-name='axle.front.empty.load'] td:nth-child(3)");
        Assert.StartsWith("calculated: Axle load", Text(load), StringComparison.Ordinal);
        Assert.Equal("builds/bracken/bench/mass.axle-load%5Baxle%3Dfront%2Ccondition%3Dempty%5D?in=working", load.QuerySelector("a")!.GetAttribute("href"));
    }
}
