using System.Text.Json.Nodes;
using Bunit;
using Crossmember.Builds.Journal;
using Crossmember.Engineering.Calculations;
using Crossmember.Web.Features;
using Crossmember.Web.Features.Decisions;
using Crossmember.Web.Features.Writing;

namespace Crossmember.Web.Tests.Decisions;

/// <summary>The smaller parts of the page, each by itself.</summary>
public sealed class PanelTests : BunitContext
{
    private static Fact Choice(string person, string option, string device = "tablet") => new(
        FactIds.New(TimeProvider.System), "bracken", "choice.made", 1, DateTimeOffset.UnixEpoch, person, device, "scenarios/working/choices/tires", null, null, null, new JsonObject { ["option"] = option });

    private static Entry Kept(Fact fact, long sequence) => Stamp.On(new(sequence - 1, new byte[32]), fact, FactText.Write(fact), DateTimeOffset.UnixEpoch.AddMinutes(sequence));

    private IRenderedComponent<ItemTree> Tree(string? selected = null) => Render<ItemTree>(p => p
        .Add(t => t.Build, Bracken.Build).Add(t => t.Selected, selected).Add(t => t.Address, item => $"builds/bracken/decisions?item={item}")
        .Add(t => t.Marks, ItemMarks.Of(Bracken.With(("final-drives", "short")), Bracken.Working)));

    [Fact]
    public void The_tree_marks_trouble_and_what_is_open_and_links_to_each_item()
    {
        var items = Tree("tires").FindAll(".items li a").ToDictionary(a => a.QuerySelector("span")?.TextContent ?? a.TextContent);
        Assert.Equal("no", items["Final drives"].QuerySelector(".verdict")!.TextContent.Trim());
        Assert.Null(items["Heater"].QuerySelector(".verdict, .open-mark"));
        Assert.Equal("builds/bracken/decisions?item=tires", items["Tires"].GetAttribute("href"));
        Assert.Equal("true", items["Tires"].GetAttribute("aria-current"));
        Assert.Equal("final-drives", items["Final drives"].GetAttribute("title"));
    }

    [Fact]
    public void Searching_leaves_the_items_with_the_word_and_says_when_there_are_none()
    {
        var tree = Tree();
        tree.Find("input[type=search]").Input("TIRE");
        Assert.Equal(["What is in trouble", "Tires"], tree.FindAll(".items li a").Select(a => a.QuerySelector("span")?.TextContent ?? a.TextContent));
        tree.Find("input[type=search]").Input("wings");
        Assert.Contains("No item has “wings”", tree.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void The_history_tells_the_latest_first_and_counts_what_came_with_the_file()
    {
        Entry[] entries = [Kept(Choice("import", "as-found", "file"), 1), Kept(Choice("Ana", "at33"), 2), Kept(Choice("Ben", "none"), 3)];
        var history = Render<History>(p => p.Add(h => h.Entries, entries).Add(h => h.Build, Bracken.Build));
        Assert.Equal(["Ben left Tires off, in working", "Ana chose “33 in all-terrain” for Tires, in working"], history.FindAll("li > span").Select(s => s.TextContent));
        Assert.Equal("1970-01-01 00:03 UTC", history.Find("time").TextContent);
        Assert.Contains("1 choice came with the imported file", history.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void A_history_without_decisions_says_what_would_make_one() =>
        Assert.Contains("Choose an option", Render<History>(p => p.Add(h => h.Build, Bracken.Build)).Markup, StringComparison.Ordinal);

    [Fact]
    public void A_clash_shows_both_words_and_picks_one()
    {
        var picked = "";
        var panel = Render<ConflictPanel>(p => p.Add(c => c.Clash, new Clash(Choice("Ben", "none"), Kept(Choice("Ana", "at33"), 2))).Add(c => c.Say, f => EntryWords.Say(f, Bracken.Build, _ => null))
            .Add(c => c.OnTheirs, () => picked += "theirs").Add(c => c.OnMine, () => picked += "mine"));
        var sides = panel.FindAll(".both > div").Select(d => d.TextContent).ToList();
        Assert.Contains("Ana chose “33 in all-terrain”", sides[0], StringComparison.Ordinal);
        Assert.Contains("Ben left Tires off", sides[1], StringComparison.Ordinal);
        panel.FindAll("button")[0].Click();
        panel.FindAll("button")[1].Click();
        Assert.Equal("theirsmine", picked);
    }

    /// <summary>The lines were counted by hand for these; what else is asked of the flatbed is another list.</summary>
    private static bool Counted(string finding) =>
        finding is "driveline.cruise/redline" or "driveline.speedometer/legal" || finding.StartsWith("tires.", StringComparison.Ordinal) || finding.StartsWith("mass.axle-load", StringComparison.Ordinal) || finding.StartsWith("mass.wheel-load", StringComparison.Ordinal);

    [Fact]
    public void A_no_is_listed_with_what_would_settle_it_and_the_same_words_only_once()
    {
        var sheet = Bracken.With(("final-drives", "short"));
        var list = Render<TroubleList>(p => p.Add(t => t.Findings, [.. sheet.Findings().Where(f => f.Finding.Verdict is Verdict.Fail or Verdict.Unknown && Counted(f.Id))])
            .Add(t => t.Sheet, sheet).Add(t => t.Marks, ItemMarks.Of(sheet, Bracken.Working)).Add(t => t.Address, item => $"to/{item}")
            .Add(t => t.Remedies, _ => [new(Bracken.Item("final-drives"), "3.73 gears", [], 2)]));
        var rows = list.FindAll("li");
        Assert.Equal(5, rows.Count); // redline, speedometer, and three checks that say the same of four wheels
        Assert.Equal("to/final-drives", rows[0].QuerySelector(".remedies a")!.GetAttribute("href"));
        Assert.Equal("Final drives: 3.73 gears (▼ 2 worse elsewhere)", rows[0].QuerySelector(".remedies a")!.TextContent);
        Assert.Contains("3692.2 rpm, at most 3200 rpm", rows[0].TextContent, StringComparison.Ordinal);
        Assert.Contains("front left (empty); front right (empty); rear left (empty); rear right (empty)", list.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_was_held_can_be_taken_in_or_set_aside()
    {
        var fact = Choice("Ben", "none");
        List<Guid> taken = [], aside = [];
        var list = Render<HeldList>(p => p.Add(h => h.Held, [new HeldFact(fact, "", DateTimeOffset.UnixEpoch, null, "Ana had chosen meanwhile")]).Add(h => h.Say, f => EntryWords.Say(f, Bracken.Build, _ => null))
            .Add(h => h.OnRelease, taken.Add).Add(h => h.OnSetAside, aside.Add));
        Assert.Contains("Ana had chosen meanwhile", list.Markup, StringComparison.Ordinal);
        // Found and clicked in one turn of the renderer, so that no re-render comes between.
        await list.InvokeAsync(() => list.FindAll("button")[0].Click());
        await list.InvokeAsync(() => list.FindAll("button")[1].Click());
        Assert.Equal([fact.Id], taken);
        Assert.Equal([fact.Id], aside);
    }

    [Fact]
    public void Totals_show_what_would_become_of_them_only_where_something_would()
    {
        var totals = Render<TotalsLine>(p => p.Add(t => t.Now, Bracken.With().Totals).Add(t => t.Then, Bracken.With(("tires", "at33")).Totals))
            .FindAll(".totals div").ToDictionary(d => d.Children[0].TextContent, d => d.Children[1].TextContent.Trim().Replace("→", " →", StringComparison.Ordinal).Replace("  ", " ", StringComparison.Ordinal));
        Assert.Equal("0.00 USD → 1,300.00 USD", totals["Bought"]);
        Assert.Equal("3500 lb → 3560 lb", totals["Mass"]);
        Assert.Equal("- → 270.00 USD", totals["Labour"]); // 3 h at 90 an hour
    }
}
