using System.Text;
using System.Text.Json.Nodes;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Files;
using Crossmember.Documents.Brakes;
using Crossmember.Documents.Tests.Reports;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;
using Crossmember.Tests.Brakes;

namespace Crossmember.Documents.Tests.Brakes;

public sealed class GaugeSheetTests
{
    internal static Sheet Truck(string scenario, params (string Key, JsonNode Value)[] also)
    {
        using var stream = typeof(Demo).Assembly.GetManifestResourceStream("packhorse.json")!;
        using var reader = new StreamReader(stream);
        var faults = new Faults();
        var file = BuildFile.Read(Encoding.UTF8.GetBytes(BrakedTruck.Of(reader.ReadToEnd(), also)), Catalogue.Shipped, faults);
        Assert.Empty(faults.List);
        var build = file!.Build with { Position = 41 };
        return new EvaluationPlan(Catalogue.Shipped, build).Evaluate(build, file.Shop, build.Scenarios[scenario]);
    }

    /// <summary>By hand: 100 lbf x 6 x 0.9 x 0.97 on a bore of 1 in (0.785398 sq in) is 666.9 psi, in front as behind; statics.</summary>
    [Fact]
    public void A_leg_alone_on_one_cylinder_makes_what_statics_says()
    {
        var sheet = GaugeSheet.Of(Truck(BrakedTruck.Drums), "empty", MeasureSystem.UsCustomary);
        Assert.False(sheet.Boosted);
        var row = Assert.Single(sheet.Rows, r => Math.Abs(r.Pedal - 444.822) < 0.01);
        Assert.All((double?[])[row.Front, row.Rear, row.DeadFront, row.DeadRear], p => Assert.Equal(666.9, p!.Value / 6894.757, 0.1));
        Assert.Equal("670 psi", GaugeSheet.Told(row.Front!.Value, Dimension.Pressure, MeasureSystem.UsCustomary));
        Assert.Equal(10, sheet.RestFront / 6894.757, 0.001);
    }

    /// <summary>Above its knee the valve lets 0.35 of each psi through: 450 + 0.35 (p - 450); statics of a stepped piston.</summary>
    [Fact]
    public void The_rear_valve_and_the_booster_stand_in_the_figures()
    {
        var sheet = GaugeSheet.Of(Truck(BrakedTruck.Discs), "empty", MeasureSystem.UsCustomary);
        Assert.True(sheet.Boosted);
        foreach (var row in sheet.Rows)
        {
            Assert.True(row.Front >= row.DeadFront);
            double Behind(double front) => front <= 450 ? Math.Max(10, front) : 450 + (0.35 * (front - 450));
            Assert.Equal(Behind(row.Front!.Value / 6894.757), row.Rear!.Value / 6894.757, 0.5);
            Assert.Equal(Behind(row.DeadFront!.Value / 6894.757), row.DeadRear!.Value / 6894.757, 0.5);
        }
        Assert.Contains(sheet.Rows, r => r.Front > r.Rear);
    }

    [Fact]
    public void Without_a_pedal_nothing_is_guessed_and_without_the_valve_nothing_of_the_rear()
    {
        Assert.All(GaugeSheet.Of(Demo.Sheet("steading"), null, MeasureSystem.Metric).Rows, r => Assert.Null(r.Front));
        Assert.All(GaugeSheet.Of(Truck(BrakedTruck.Discs), null, MeasureSystem.Metric).Rows, r => Assert.True(r.Front is not null && r.Rear is null));
    }

    [Fact]
    public void The_check_of_the_gauges_expects_the_same_pressures()
    {
        // What the sheet expects, noted as if it had been read: then every reading is good.
        var told = GaugeSheet.Of(Truck(BrakedTruck.Discs), "empty", MeasureSystem.Metric).Rows;
        JsonArray Read(Func<GaugeRow, double?> of) => [.. told.Select(r => (JsonNode)new JsonArray($"{r.Pedal} N", FormattableString.Invariant($"{of(r)!.Value / 1e6:0.####} MPa")))];
        var sheet = Truck(BrakedTruck.Discs, ("brakes.gauge.front", Read(r => r.Front)), ("brakes.gauge.rear", Read(r => r.Rear)), ("brakes.gauge.dead-front", Read(r => r.DeadFront)), ("brakes.gauge.dead-rear", Read(r => r.DeadRear)));
        var state = sheet.Instance("brakes.gauge-check")!;
        Assert.Equal(28, state.Outcome.Outputs[state.Instance.Calculation.OutputIndex("within")].Number);
        Assert.InRange(Math.Abs(state.Outcome.Outputs[state.Instance.Calculation.OutputIndex("worstGap")].Number), 0, 200);
    }
}
