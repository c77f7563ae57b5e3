using System.Text.Json.Nodes;
using AngleSharp.Dom;
using Bunit;
using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Calculations;
using Crossmember.Tests.Brakes;
using Crossmember.Web.Features;
using Crossmember.Web.Features.Brakes;

namespace Crossmember.Web.Tests.Brakes;

/// <summary>A leg alone, a parking brake on the driveline, and a gauge that reads less than expected: what the overview says of them.</summary>
public sealed class BrakesWatchedTests() : ShopPages(BrakedTruck.Of(Demo(), ("brakes.parking.kind", "driveline"), ("duty.altitude", "6000 ft"), ("brakes.gauge.front", JsonNode.Parse("""[["0 lbf","0 psi"],["50 lbf","60 psi"],["100 lbf","120 psi"]]""")!)))
{
    private static string Demo()
    {
        using var stream = typeof(BrakesPageTests).Assembly.GetManifestResourceStream("demo/packhorse.json")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    private Sheet Sheet(string scenario) => BuildView.Of(Desk, "packhorse")!.Sheet(scenario);

    private IRenderedComponent<BrakesPage> Page(string part, string scenario)
    {
        Nav.NavigateTo($"builds/packhorse/brakes/{part}?in={scenario}&against=nothing");
        return Render<BrakesPage>(p => p.Add(d => d.Id, "packhorse").Add(d => d.Part, part.Length == 0 ? null : part).AddCascadingValue(Ana));
    }

    private static string Text(IElement e) => string.Join(' ', e.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private Dictionary<string, IElement> Rows(string scenario) => Page("", scenario).FindAll(".glance tbody tr").ToDictionary(r => Text(r.Children[0]), r => r);

    [Fact]
    public void Nothing_is_judged_of_a_booster_that_is_not_there()
    {
        var rows = Rows(BrakedTruck.Drums);
        foreach (var row in new[] { "Booster", "Booster dead", "Strokes left, engine dead" })
        {
            Assert.Equal("none fitted", Text(Assert.Single(rows[row].QuerySelectorAll("td"))));
            Assert.Null(rows[row].QuerySelector(".verdict"));
        }
        Assert.All(Rows(BrakedTruck.Discs).Values, r => Assert.DoesNotContain("none fitted", Text(r), StringComparison.Ordinal));
    }

    [Fact]
    public void The_booster_row_names_what_is_watched()
    {
        Assert.Contains(Sheet(BrakedTruck.Discs).Findings(), f => f is { Id: "brakes.pedal-line/vacuum", Finding.Verdict: Verdict.Caution });
        var said = Rows(BrakedTruck.Discs)["Booster"].QuerySelectorAll(".said > span");
        Assert.Contains("of vacuum at 6000 ft", Text(said[^1]), StringComparison.Ordinal);
    }

    [Fact]
    public void Lost_circuits_do_not_stand_at_the_pedal_that_is_left()
    {
        var travel = Sheet(BrakedTruck.Drums).Findings().Where(f => f.Id.StartsWith("brakes.pedal-travel", StringComparison.Ordinal) && !f.Finding.Check.StartsWith("failed", StringComparison.Ordinal)).Max(f => f.Finding.Verdict);
        Assert.Equal(Words.Of(travel), Text(Rows(BrakedTruck.Drums)["Pedal left"].QuerySelector(".verdict")!));
    }

    [Fact]
    public void A_parking_brake_on_the_driveline_is_watched_where_the_hill_stands()
    {
        Assert.All(Rows(BrakedTruck.Drums)["Hill it parks on"].QuerySelectorAll("td"), c => Assert.Contains("jacked", Text(c), StringComparison.Ordinal));
        Assert.Contains("jacked", Text(Page("parking", BrakedTruck.Drums).Find(".checks li")), StringComparison.Ordinal);
    }

    [Fact]
    public void Gauges_that_read_otherwise_stand_first()
    {
        var first = Page("", BrakedTruck.Drums).Find(".glance tbody tr");
        Assert.StartsWith("Gauges", Text(first), StringComparison.Ordinal);
        Assert.Contains("pressures on these pages may be off: 2 of 3 readings are off", Text(first), StringComparison.Ordinal);
    }

    [Fact]
    public void The_tightest_place_of_the_balance_is_told_in_words()
    {
        var row = Text(Rows(BrakedTruck.Discs)["By the rule picked"]);
        Assert.Matches(@"(rear ahead of front|front ahead of rear) by \d\.\d\d of grip ?at \d\.\d\d g", row);
        var grip = Sheet(BrakedTruck.Discs).Key("duty.grip")!.Value.Value.Number;
        Assert.Contains($"on a road of grip {grip:0.00} uses", Text(Rows(BrakedTruck.Discs)["Which end locks first"]), StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_booster_or_a_valve_is_made_of_is_not_rested_on_where_there_is_none()
    {
        List<string?> Keys(string part, string scenario) => [.. Page(part, scenario).FindAll(".rests-on tbody th").Select(t => t.GetAttribute("title"))];
        Assert.Contains("brakes.booster.vacuum", Keys("", BrakedTruck.Discs));
        Assert.DoesNotContain("brakes.booster.vacuum", Keys("", BrakedTruck.Drums));
        Assert.Contains("brakes.booster.kind", Keys("pedal", BrakedTruck.Drums));
        Assert.Contains("brakes.valve.knee", Keys("balance", BrakedTruck.Discs));
        Assert.Equal(["brakes.valve.kind"], Keys("balance", BrakedTruck.Drums).Where(k => k!.StartsWith("brakes.valve.", StringComparison.Ordinal)));
        Assert.DoesNotContain("brakes.gauge.dead-front", Keys("gauge", BrakedTruck.Drums));
        var heat = Keys("heat", BrakedTruck.Drums);
        Assert.All((string[])["duty.stop-speed", "duty.stops.count", "duty.descent.grade"], k => Assert.Contains(k, heat));
    }
}
