using System.Text.Json.Nodes;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Files;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Web.Features.MasterSheet;
using Crossmember.Web.Features.VehicleDrawing;

namespace Crossmember.Web.Tests.MasterSheet;

/// <summary>The page against what <c>crossmember check --json</c> says of the same build, for every demo build in every what-if.</summary>
public sealed class DemoSheetTests
{
    [Theory, MemberData(nameof(DemoShop.Sheets), MemberType = typeof(DemoShop))]
    public void The_values_shown_are_those_of_the_command_line(string build, string scenario)
    {
        var sheet = DemoShop.Sheet(build, scenario);
        var written = SheetJson.Of(sheet, (0, 0))["parameters"]!.AsObject();
        var lines = new SheetLines(sheet);
        Assert.Equal(written.Select(w => w.Key), lines.All.Select(l => l.Key).Order(StringComparer.Ordinal));
        foreach (var line in lines.All)
        {
            var said = written[line.Key]!;
            Assert.Equal(said["value"] is null, line.State.Value.IsAbsent);
            if (said["value"] is null) continue;
            Assert.Equal((string?)said["basis"], Words.Of(line.State.Basis));
            Same(said["value"]!, line);
        }
    }

    [Theory, MemberData(nameof(DemoShop.Sheets), MemberType = typeof(DemoShop))]
    public void Every_item_is_either_on_the_drawing_or_listed_beside_it(string build, string scenario)
    {
        var sheet = DemoShop.Sheet(build, scenario);
        var vehicle = DrawnVehicle.Of(sheet);
        Assert.Equal(sheet.Build.Slots.Select(s => s.Id).Order(StringComparer.Ordinal), vehicle.Items.Select(i => i.Drawn.Id).Concat(vehicle.Unplaced.Select(u => u.Item.Id)).Order(StringComparer.Ordinal));
        Assert.Equal(Enumerable.Range(1, vehicle.Items.Count), vehicle.Items.Select(i => i.Drawn.Number));
        Assert.All(vehicle.Unplaced, u => Assert.NotEqual("", u.Why));
        // What is on these vehicles has a place; only papers and what is not there have none.
        Assert.True(vehicle.Unplaced.Count(u => u.Why == "nobody has said where it sits") <= 1);
    }

    [Theory, MemberData(nameof(DemoShop.Sheets), MemberType = typeof(DemoShop))]
    public void What_becomes_of_the_old_vehicle_adds_up_to_the_whole(string build, string scenario)
    {
        var sheet = DemoShop.Sheet(build, scenario);
        var shares = OriginalityShares.Of(sheet);
        Assert.Equal(1, shares.Sum(s => s.Share), 9);
        Assert.Equal(sheet.Build.Slots.Where(s => s.Weight > 0).Select(s => s.Id).Order(StringComparer.Ordinal), shares.SelectMany(s => s.Items).Select(s => s.Id).Order(StringComparer.Ordinal));
    }

    /// <summary>By hand, from the file: the weights of the Packhorse add up to 66; wiring and camper body are made here, 1 each.</summary>
    [Fact]
    public void The_share_of_a_class_is_its_weight_in_the_weight_of_all()
    {
        var made = OriginalityShares.Of(DemoShop.Sheet("packhorse", "working")).Single(s => s.Class == OptionClass.Make);
        Assert.Equal(["camper", "harness"], made.Items.Select(i => i.Id).Order(StringComparer.Ordinal));
        Assert.Equal(2.0 / 66, made.Share, 12);
    }

    [Theory, MemberData(nameof(DemoShop.Sheets), MemberType = typeof(DemoShop))]
    public void What_waits_for_each_key_is_what_waits_for_its_pattern(string build, string scenario)
    {
        var sheet = DemoShop.Sheet(build, scenario);
        var byKey = Unsettled.ByKey(sheet);
        foreach (var need in Unsettled.Of(sheet))
        {
            var keys = byKey.Where(k => (sheet.Plan.Catalogue.Table.Of(k.Key)?.Text ?? k.Key) == need.What).ToList();
            Assert.Equal(need.Checks, keys.SelectMany(k => k.Value).Distinct().Count());
        }
        Assert.All(byKey.Values.SelectMany(v => v).Distinct(), id => Assert.Equal(Verdict.Unknown, sheet.Findings().Single(f => f.Id == id).Finding.Verdict));
    }

    private static void Same(JsonNode written, SheetLine line)
    {
        if (line.State.Value.IsNumber)
        {
            Assert.Equal(written.GetValue<double>(), line.Pattern.Told(line.State.Value.Number), 9);
            // What is shown can be typed again and means the same, to the figures shown.
            var shown = ShopNotation.Read(line.Value(MeasureSystem.Metric), line.Pattern.Dimension!);
            Assert.True(shown.Ok, line.Value(MeasureSystem.Metric));
            Assert.InRange(shown.Value!.Si, Math.Min(line.State.Value.Number * 0.999, line.State.Value.Number * 1.001) - 1e-6, Math.Max(line.State.Value.Number * 0.999, line.State.Value.Number * 1.001) + 1e-6);
        }
        else if (line.State.Value.Text is { } text) Assert.Equal(written.GetValue<string>(), text);
        else Assert.Equal(written.AsArray().Count, line.State.Value.Curve!.Points.Count);
    }
}
