using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Web.Features.Driveline;

namespace Crossmember.Web.Tests.Driveline;

/// <summary>Expected speeds by the inch rule, mph = rpm x tire diameter (in) / (336.135 x overall ratio): 63360 in in a mile over 60 min in an hour and pi.</summary>
public sealed class DrivelineViewTests : IDisposable
{
    private const double InchRule = 1056 / Math.PI, Mph = 0.44704; // rpm in / mph; m/s

    private readonly DrivelineShop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void Every_gear_of_a_range_is_told_with_ratio_and_speeds_on_both_sides()
    {
        var gears = _shop.View().Gears("high");
        Assert.Equal(["1", "2", "3", "4"], gears.Select(g => g.Gear));
        Assert.Equal(6.4 * 4.1, gears[0].Ratio.Now!.Value, 9);
        Assert.Equal(3200 * 33 / (InchRule * 4.1) * Mph, gears[3].AtRedline.Now!.Value, 4); // direct
        var found = ((2 * 0.75 * 235) + (15 * 25.4)) / 25.4; // 235/75R15 in inches
        Assert.Equal(3200 * found / (InchRule * 4.1) * Mph, gears[3].AtRedline.Then!.Value, 4);
        Assert.Equal(65 * InchRule * 4.1 / 33, gears[3].AtCruise.Now!.Value * 30 / Math.PI, 2);
        var low = _shop.View().Gears("low");
        Assert.All(gears.Zip(low), g => Assert.Equal(2.03, g.Second.Ratio.Now!.Value / g.First.Ratio.Now!.Value, 9));
    }

    [Fact]
    public void Without_another_side_nothing_was() =>
        Assert.All(_shop.View(against: null).Gears("high"), g => Assert.Equal((null, null, null), (g.Ratio.Then, g.AtRedline.Then, g.AtCruise.Then)));

    /// <summary>4.1 x 33 / 29 = 4.6655; 4.88 is 4.6 % deeper, 4.10 12.1 % and 3.73 20.1 % taller: worked by hand.</summary>
    [Fact]
    public void Axle_ratios_of_the_options_stand_by_how_near_they_come_to_the_one_that_restores()
    {
        var view = _shop.View();
        Assert.Equal(4.6655, view.Number("driveline.restoring-ratio", "axleRatio").Now!.Value, 4);
        var ratios = view.AxleRatios;
        Assert.Equal([("4.88 gears", 0.046), ("As found", -0.121), ("3.73 gears", -0.201)], ratios.Select(r => (r.Title, Math.Round(r.Off!.Value, 3))));
        Assert.Equal(["As found"], ratios.Where(r => r.IsChosen).Select(r => r.Title));
        Assert.All(ratios, r => Assert.Equal("final-drives", r.Item.Id));
        Assert.Equal([("front", 4.88), ("rear", 4.88)], ratios[0].Ratios);
    }

    [Fact]
    public void Where_nothing_says_what_it_left_the_works_with_the_ratios_are_listed_all_the_same()
    {
        using var plain = new DrivelineShop(Bracken.Json);
        var ratios = plain.View().AxleRatios;
        Assert.Equal(3, ratios.Count);
        Assert.All(ratios, r => Assert.Null(r.Off));
        Assert.Contains(plain.View().Missing, m => m.Key == "vehicle.original.axle-ratio" && m.Waiting.Contains("Axle ratio for larger tires"));
    }

    [Fact]
    public void What_is_missing_is_told_once_with_how_to_get_it()
    {
        var missing = _shop.View().Missing;
        Assert.Equal(missing.Select(m => m.Key).Distinct(), missing.Select(m => m.Key));
        var idle = missing.Single(m => m.Key == "engine.idle-speed");
        Assert.Contains("tachometer", idle.How, StringComparison.Ordinal);
        Assert.Contains("Crawl ratio", idle.Waiting);
        Assert.DoesNotContain(missing, m => m.Key == "engine.redline");
    }

    [Fact]
    public void The_checks_are_those_of_the_driveline_worst_first()
    {
        var findings = _shop.View().Findings;
        Assert.All(findings, f => Assert.StartsWith("driveline.", f.Id, StringComparison.Ordinal));
        Assert.Equal(findings.OrderByDescending(f => f.Finding.Verdict).Select(f => f.Finding.Verdict), findings.Select(f => f.Finding.Verdict));
        Assert.Equal(Verdict.Pass, findings.Single(f => f.Id == "driveline.cruise/redline").Finding.Verdict);
    }

    [Fact]
    public void A_side_is_compared_with_what_is_approved_else_with_what_was_found()
    {
        Assert.Equal(["as-found"], DrivelineView.Sides(_shop.Desk.Open("bracken")!, "working"));
        Assert.Null(_shop.View("working", "working").Then);
    }

    [Fact]
    public void The_curves_of_the_range_are_drawn_in_the_readers_units_and_can_be_had_as_files()
    {
        var view = _shop.View();
        var (chart, files) = view.Charts("low", "empty", MeasureSystem.Metric).First(c => c.Files.Instance.StartsWith("driveline.speed-curves", StringComparison.Ordinal));
        Assert.Equal(("driveline.speed-curves[range=low]", "working", "as-found"), (files.Instance, files.In, files.Against));
        Assert.Equal(("road speed (km/h)", "engine speed (rpm)"), (chart.X.Title, chart.Y.Title));
        Assert.Equal(8, chart.Lines.Count);
        Assert.Equal("Engine speed over road speed, low range", chart.Title);
        // The tires are 33 / 28.878 as large: every gear is that much faster at the redline.
        double End(bool then) => chart.Lines.Single(l => l.Name == "gear 4" && l.Then == then).X[^1];
        Assert.Equal(33 * 25.4 / 733.5, End(false) / End(true), 3);
    }
}
