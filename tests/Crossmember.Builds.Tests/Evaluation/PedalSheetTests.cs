using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Tests.Evaluation;

/// <summary>Pedal, booster, fluid and readings through the sheet: a truck with discs in front and drums behind, as a builder states it.</summary>
public sealed class PedalSheetTests
{
    private const string Slots = """
        ,{"id":"pedal","parent":"vehicle","title":"Pedal","options":[{"id":"as-found","masses":[],"parameters":{
          "brakes.pedal.ratio":4.2,"brakes.pedal.efficiency":0.95,"brakes.pedal.floor-travel":"150 mm","brakes.pedal.free-play":"0 mm","duty.pedal-force":"150 N","duty.hard-pressure":"6.894757 MPa"}}]}
        ,{"id":"master","parent":"vehicle","title":"Master cylinder","options":[
          {"id":"as-found","masses":[],"parameters":{"brakes.master.kind":"tandem","brakes.master.bore":"25.4 mm","brakes.master.stroke":"36 mm","brakes.master.front-stroke":"14 mm","brakes.master.rear-stroke":"14 mm","brakes.circuits":"front-rear"}},
          {"id":"wide","class":"replace","originality":0,"masses":[],"parameters":{"brakes.master.kind":"tandem","brakes.master.bore":"28.575 mm","brakes.master.stroke":"36 mm","brakes.circuits":"front-rear"}},
          {"id":"old","class":"replace","originality":0,"masses":[],"parameters":{"brakes.master.kind":"single","brakes.master.bore":"25.4 mm","brakes.master.stroke":"36 mm","brakes.circuits":"one"}},
          {"id":"pair","class":"replace","originality":0,"masses":[],"parameters":{"brakes.master.kind":"twin","brakes.master.front-bore":"19.05 mm","brakes.master.rear-bore":"22.225 mm","brakes.master.bar-front-distance":"30 mm",
            "brakes.master.bar-rear-distance":"34 mm","brakes.master.front-stroke":"28 mm","brakes.master.rear-stroke":"28 mm"}}]}
        ,{"id":"booster","parent":"vehicle","title":"Booster","options":[
          {"id":"as-found","masses":[],"parameters":{"brakes.booster.kind":"vacuum","brakes.booster.diaphragm-diameter":"225.6758 mm","brakes.booster.vacuum":"70 kPa","brakes.booster.shell-volume":"4000 cm3"}},
          {"id":"unread","class":"replace","originality":0,"masses":[],"parameters":{"brakes.booster.kind":"vacuum","brakes.booster.diaphragm-diameter":"225.6758 mm"}},
          {"id":"left-off","class":"replace","originality":0,"masses":[],"parameters":{"brakes.booster.kind":"none"}}]}
        ,{"id":"brakes","parent":"vehicle","title":"Brakes","options":[{"id":"as-found","masses":[],"parameters":{
          "wheel.front.*.brake.kind":"disc","wheel.front.*.brake.piston-diameter":"48 mm","wheel.front.*.brake.pistons":2,"wheel.rear.*.brake.kind":"drum","wheel.rear.*.brake.cylinder-bore":"25.4 mm",
          "axle.front.hose.length":"0.45 m","axle.rear.hose.length":"0.40 m","brakes.fluid.volume":"250 cm3"}}]}
        ,{"id":"readings","parent":"vehicle","title":"Readings","options":[{"id":"as-found","masses":[]},
          {"id":"read","class":"replace","originality":0,"masses":[],"parameters":{
            "brakes.gauge.front":[["100 N","3.02 MPa"],["140 N","4.31 MPa"],["180 N","5.60 MPa"],["260 N","6.76 MPa"]],"brakes.gauge.dead-front":[["200 N","0.90 MPa"],["400 N","2.19 MPa"]],"brakes.gauge.error":"0.1 MPa"}}]}
        """;

    private const string Scenarios = """
        {"id":"working","base":null,"choices":{}},{"id":"wide","base":null,"choices":{"master":"wide"}},{"id":"old","base":null,"choices":{"master":"old"}},
        {"id":"pair","base":null,"choices":{"master":"pair","booster":"left-off"}},{"id":"unread","base":null,"choices":{"booster":"unread"}},{"id":"bare","base":null,"choices":{"booster":"left-off"}},
        {"id":"read","base":null,"choices":{"readings":"read"}},{"id":"high","base":null,"choices":{},"whatIf":{"duty.altitude":"2000 m"}},
        {"id":"high-read","base":null,"choices":{"readings":"read"},"whatIf":{"duty.altitude":"2000 m"}},
        {"id":"knocked","base":null,"choices":{},"whatIf":{"wheel.front.*.brake.knock-back":"0.4 mm"}}
        """;

    private static readonly Opened s_truck = Opened.Vehicle(Slots, Scenarios);

    // The cases of docs/checks.md by the way of the sheet: 172.9 N, 6.413 MPa; 85.99 mm; 24.0 mm more with 0.4 mm of knock-back; 70.6 mm on 28.575 mm.
    [Fact]
    public void The_keys_carry_the_numbers_worked_by_hand()
    {
        var sheet = s_truck.Sheet();
        Assert.Equal(172.9, Opened.Told(sheet, "brakes.pedal.knee"), 0.05);
        Assert.Equal(6.413, Opened.Told(sheet, "brakes.pedal.knee-pressure"), 0.0005);
        Assert.Equal(5.537, Opened.Told(sheet, "brakes.pressure"), 0.0005);
        Assert.Equal(85.99, Opened.Told(sheet, "brakes.pedal.travel"), 0.02);
        Assert.Equal(24.0, Opened.Told(s_truck.Sheet("knocked"), "brakes.pedal.travel") - Opened.Told(sheet, "brakes.pedal.travel"), 0.05);
        Assert.Equal(70.6, Opened.Told(s_truck.Sheet("wide"), "brakes.pedal.travel"), 0.05);
        Assert.Equal(1.629, Opened.Told(sheet, "wheel.front.left.brake.full-volume"), 0.0005);
        Assert.Equal(0.507, Opened.Told(sheet, "wheel.rear.right.brake.take-up-volume"), 0.0005);
    }

    // Front lost: 14 + 1.5 mm and the rear's own way are under the floor of 150 mm: (35.71 - 17.5) / 0.5896 MPa. The rear chamber of 14 mm is at its end before: (14 - 3.5) / 0.5896 = 17.8 MPa. One circuit keeps nothing.
    [Fact]
    public void The_end_of_the_way_with_a_circuit_lost_is_told()
    {
        Assert.Equal(17.8, Opened.Told(s_truck.Sheet(), "brakes.pedal.front-lost-pressure"), 0.05);
        Assert.True(Opened.Told(s_truck.Sheet(), "brakes.pedal.rear-lost-pressure") < 10);
        Assert.True(s_truck.Sheet("wide").Key("brakes.pedal.front-lost-pressure")!.Value.Value.IsAbsent);
        Assert.Equal(0, Opened.Told(s_truck.Sheet("old"), "brakes.pedal.rear-lost-pressure"));
        Assert.Equal(Verdict.Fail, VerdictOf(s_truck.Sheet("old"), "brakes.layout/circuits"));
    }

    // The formula of its own and the pedal line are one number, boosted, bare, in the mountains and on a bar.
    [Theory]
    [InlineData("working")]
    [InlineData("bare")]
    [InlineData("high")]
    [InlineData("pair")]
    [InlineData("wide")]
    public void The_pressure_told_is_that_of_the_pedal_line(string scenario)
    {
        var sheet = s_truck.Sheet(scenario);
        double At(string key) => sheet.Key("brakes.pedal." + key)!.Value.Value.Number;
        var line = new PedalLine(At("plain-pressure") / PedalLine.ReferenceForce, At("cut-in"), At("jump-in"), At("knee"), At("knee-pressure"), At("dead-loss"));
        Assert.Equal(line.Pressure(150), sheet.Key("brakes.pressure")!.Value.Value.Number, 1e-3);
    }

    // A vacuum nobody read must not become a leg alone.
    [Fact]
    public void An_unread_vacuum_leaves_the_pressure_unknown()
    {
        var sheet = s_truck.Sheet("unread");
        Assert.True(sheet.Key("brakes.pressure")!.Value.Value.IsAbsent);
        Assert.True(sheet.Key("brakes.pedal.knee")!.Value.Value.IsAbsent);
        Assert.Equal(Verdict.Unknown, VerdictOf(sheet, "brakes.pedal-line/run-out"));
        Assert.Equal(Verdict.Unknown, VerdictOf(sheet, "brakes.booster-reserve/one-stroke"));
        Assert.Equal(Verdict.Unknown, VerdictOf(sheet, "brakes.pedal-travel/reserve"));
        Assert.Equal(Verdict.Pass, VerdictOf(sheet, "brakes.pedal-travel/floor"));
        Assert.Contains(Unsettled.Of(sheet), u => u.What == "brakes.booster.vacuum");
    }

    [Theory]
    [InlineData("working", "brakes.pedal-travel/floor", Verdict.Pass)]
    [InlineData("working", "brakes.pedal-travel/reserve", Verdict.Pass)]
    [InlineData("working", "brakes.pedal-travel/stroke", Verdict.Pass)]
    [InlineData("working", "brakes.pedal-travel/failed-front", Verdict.Pass)]
    [InlineData("working", "brakes.pedal-travel/free-play", Verdict.Caution)]
    [InlineData("wide", "brakes.pedal-travel/failed-front", Verdict.Unknown)]
    [InlineData("old", "brakes.pedal-travel/failed-rear", Verdict.Caution)]
    [InlineData("working", "brakes.pedal-line/run-out", Verdict.Caution)]
    [InlineData("high", "brakes.pedal-line/vacuum", Verdict.Caution)]
    [InlineData("bare", "brakes.pedal-line/vacuum", Verdict.Pass)]
    [InlineData("bare", "brakes.booster-reserve/one-stroke", Verdict.Pass)]
    [InlineData("working", "brakes.gauge-check/readings", Verdict.Unknown)]
    public void Each_check_answers_where_it_should(string scenario, string finding, Verdict verdict) => Assert.Equal(verdict, VerdictOf(s_truck.Sheet(scenario), finding));

    // Readings made by hand with 0.80 instead of 0.95 on the pedal; in the mountains the expectation is carried back to the shop.
    [Theory]
    [InlineData("read")]
    [InlineData("high-read")]
    public void The_gauge_names_the_pedal(string scenario)
    {
        var finding = s_truck.Sheet(scenario).Findings().Single(f => f.Id == "brakes.gauge-check/readings").Finding;
        Assert.Equal(Verdict.Caution, finding.Verdict);
        Assert.Contains("Pedal efficiency 0.8", finding.Text);
    }

    // One cylinder: no word of a bar, and nobody is asked for it. On a bar the rear has its own pressure.
    [Fact]
    public void A_bar_is_only_spoken_of_where_there_is_one()
    {
        var sheet = s_truck.Sheet();
        Assert.DoesNotContain(sheet.Findings(), f => f.Id.StartsWith("brakes.bias-bar", StringComparison.Ordinal));
        Assert.DoesNotContain(Unsettled.Of(sheet), u => u.What.Contains("bar-", StringComparison.Ordinal) || u.What.Contains("front-bore", StringComparison.Ordinal));
        Assert.Equal(1, Opened.Told(sheet, "brakes.pedal.rear-share"), 1e-12);
        var pair = s_truck.Sheet("pair");
        Assert.Equal(3.625 / 5.592, Opened.Told(pair, "brakes.pedal.rear-share"), 0.0002);
        var bar = pair.Instance("brakes.bias-bar")!;
        Assert.Equal(Opened.Told(pair, "brakes.pressure"), bar.Outcome.Outputs[bar.Instance.Calculation.OutputIndex("frontPressure")].Number / 1e6, 1e-9);
    }

    private static Verdict VerdictOf(Sheet sheet, string finding) => sheet.Findings().Single(f => f.Id == finding).Finding.Verdict;
}
