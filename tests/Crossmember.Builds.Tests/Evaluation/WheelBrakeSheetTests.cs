using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Tests.Evaluation;

/// <summary>Wheel brakes through the sheet: drums all round, discs in front, a maker's factor, as a builder states them with a star.</summary>
public sealed class WheelBrakeSheetTests
{
    private const double Told = 6.894757293168; // MPa

    private const string Slots = """
        ,{"id":"tires","parent":"vehicle","title":"Tires","options":[{"id":"as-found","masses":[],"parameters":{"axle.*.loaded-radius":"375 mm","axle.*.*.datum-height":"0 mm"}}]}
        ,{"id":"front","parent":"vehicle","title":"Front brakes","options":[
          {"id":"as-found","masses":[],"parameters":{"wheel.front.*.brake.kind":"drum","wheel.front.*.brake.friction":"0.35","wheel.front.*.brake.drum-kind":"duo-servo","wheel.front.*.brake.drum-diameter":"240 mm",
            "wheel.front.*.brake.shoe-anchor-distance":"100 mm","wheel.front.*.brake.shoe-actuator-distance":"100 mm","wheel.front.*.brake.cylinder-bore":"25.4 mm"}},
          {"id":"discs","class":"upgrade","originality":0,"masses":[],"parameters":{"wheel.front.*.brake.kind":"disc","wheel.front.*.brake.friction":"0.38","wheel.front.*.brake.caliper":"sliding",
            "wheel.front.*.brake.pistons":"2","wheel.front.*.brake.piston-diameter":"48 mm","wheel.front.*.brake.pad-outer-diameter":"300 mm","wheel.front.*.brake.pad-inner-diameter":"200 mm",
            "wheel.front.*.brake.rotor-diameter":"302 mm"}},
          {"id":"unread","class":"upgrade","originality":0,"masses":[],"parameters":{"wheel.front.*.brake.kind":"disc"}}]}
        ,{"id":"rear","parent":"vehicle","title":"Rear brakes","options":[{"id":"as-found","masses":[],"parameters":{"wheel.rear.*.brake.kind":"drum","wheel.rear.*.brake.friction":"0.35",
            "wheel.rear.*.brake.drum-kind":"leading-trailing","wheel.rear.*.brake.drum-diameter":"254 mm","wheel.rear.*.brake.shoe-anchor-distance":"100 mm","wheel.rear.*.brake.cylinder-bore":"25.4 mm",
            "wheel.rear.*.brake.factor":"2.30","wheel.rear.*.brake.release-pressure":"0.3 MPa"}}]}
        ,{"id":"lines","parent":"vehicle","title":"Lines","options":[
          {"id":"as-found","masses":[],"parameters":{"brakes.circuits":"one","brakes.residual.front":"0.07 MPa","brakes.residual.rear":"0.07 MPa","brakes.metering.pressure":"0 MPa"}},
          {"id":"split","class":"upgrade","originality":0,"masses":[],"parameters":{"brakes.circuits":"front-rear","brakes.residual.front":"0 MPa","brakes.residual.rear":"0.07 MPa","brakes.metering.pressure":"0.7 MPa"}}]}
        ,{"id":"parking","parent":"vehicle","title":"Parking brake","options":[
          {"id":"as-found","masses":[],"parameters":{"brakes.parking.kind":"driveline","axle.rear.ratio":"4.10","brakes.parking.factor":"2","brakes.parking.drum-diameter":"200 mm",
            "brakes.parking.strut-ratio":"5","brakes.parking.lever-ratio":"7","brakes.parking.operation":"hand"}},
          {"id":"at-drums","class":"upgrade","originality":0,"masses":[],"parameters":{"brakes.parking.kind":"rear","axle.rear.ratio":"4.10","brakes.parking.strut-ratio":"5","brakes.parking.lever-ratio":"7","brakes.parking.operation":"hand"}}]}
        """;

    private const string Scenarios = """
        {"id":"working","base":null,"choices":{}},{"id":"discs","base":null,"choices":{"front":"discs"}},{"id":"done","base":null,"choices":{"front":"discs","lines":"split","parking":"at-drums"}},
        {"id":"unread","base":null,"choices":{"front":"unread"}}
        """;

    private const string Weighed = """
        "weighings":[{"date":"2026-01-10","axles":{"front":"1092 kg","rear":"1008 kg"},"wheelbase":"2600 mm","height":"0.76 m","datumHeight":"0 m","condition":"empty","fitted":{}}],
        "conditions":{"empty":[],"loaded":[{"id":"cargo","mass":"300 kg","at":["2.4 m","0 m","0.9 m"]}]},
        """;

    private static readonly Opened s_truck = Opened.Vehicle(Slots, Scenarios);

    // Discs 343.8 N m for each MPa and wheel, 1833.7 N on 375 mm; drums of a stated 2.30 148.0 and 789.4; duo-servo 4.1617 x 506.7 mm2 x 0.120 m = 253.05 N m, 1349.6 N.
    [Theory]
    [InlineData("working", "axle.front.brake.force", 1349.6)]
    [InlineData("discs", "axle.front.brake.force", 1833.7)]
    [InlineData("working", "axle.rear.brake.force", 789.4)]
    [InlineData("discs", "wheel.front.left.brake.torque", 343.8)]
    [InlineData("discs", "wheel.rear.right.brake.torque", 148.0)]
    public void Torque_and_force_are_told_at_1000_psi(string scenario, string key, double each) => Assert.Equal(each, Opened.Told(s_truck.Sheet(scenario), key) / Told, each * 3e-4);

    // A maker's factor goes on to torque; what the readings give stays to be seen beside it.
    [Fact]
    public void A_stated_factor_counts_and_differs_from_the_one_worked_out()
    {
        var sheet = s_truck.Sheet();
        Assert.Equal(2.3, Opened.Told(sheet, "wheel.rear.left.brake.factor"));
        Assert.Contains(sheet.Findings(), f => f.Id == "model/differs[wheel.rear.left.brake.factor]");
        // Idealised, one distance: 4 mu / (1 - k^2) with k 0.35 x 127 / 100.
        var state = sheet.Instance("brakes.factor[axle=rear,side=left]")!;
        Assert.Equal(1.4 / (1 - (0.4445 * 0.4445)), state.Outcome.Outputs[0].Number, 1e-9);
    }

    [Fact]
    public void Thresholds_come_by_kind_or_as_measured()
    {
        Assert.Equal(0.4, Opened.Told(s_truck.Sheet(), "axle.front.brake.threshold"), 1e-12);
        Assert.Equal(0.02, Opened.Told(s_truck.Sheet("discs"), "axle.front.brake.threshold"), 1e-12);
        Assert.Equal(0.3, Opened.Told(s_truck.Sheet(), "axle.rear.brake.threshold"), 1e-12);
    }

    [Theory]
    [InlineData("working", "brakes.layout/circuits", Verdict.Fail)]
    [InlineData("done", "brakes.layout/circuits", Verdict.Pass)]
    [InlineData("working", "brakes.layout/residual-front", Verdict.Pass)]
    [InlineData("discs", "brakes.layout/residual-front", Verdict.Fail)]
    [InlineData("done", "brakes.layout/residual-front", Verdict.Pass)]
    [InlineData("discs", "brakes.wheel-drag[axle=front,side=left]/lets-go", Verdict.Fail)]
    [InlineData("done", "brakes.wheel-drag[axle=front,side=left]/lets-go", Verdict.Pass)]
    [InlineData("working", "brakes.layout/metering", Verdict.Pass)]
    [InlineData("discs", "brakes.layout/metering", Verdict.Caution)]
    [InlineData("working", "brakes.layout/parking", Verdict.Caution)]
    [InlineData("done", "brakes.layout/parking", Verdict.Pass)]
    [InlineData("working", "brakes.layout/fluid", Verdict.Unknown)]
    [InlineData("working", "brakes.axle-force[axle=front]/sides", Verdict.Pass)]
    [InlineData("working", "brakes.axle-force[axle=front]/grab", Verdict.Pass)]
    [InlineData("unread", "brakes.axle-force[axle=front]/sides", Verdict.Unknown)]
    public void Discs_flip_what_they_should(string scenario, string finding, Verdict verdict) =>
        Assert.Equal(verdict, s_truck.Sheet(scenario).Findings().Single(f => f.Id == finding).Finding.Verdict);

    // 2100 kg, 1.248 m behind the front axle, wheelbase 2560 mm: 20 % takes 4038.8 N. Driveline: x 0.375 / 4.10 / (2 x 0.1 x 35 x 0.75) = 70.36 N; at the drums of 2.30: 2 x 757.3 / (2.3 x 0.127 x 35 x 0.75)
    // backward, where the readings give 1.7447 instead: 2 x 757.3 / (1.7447 x 0.127 x 26.25) = 260.4 N.
    [Fact]
    public void The_parking_brake_is_worked_out_for_each_load()
    {
        var truck = Opened.Vehicle(Slots, Scenarios, Weighed);
        Sheet before = truck.Sheet(), done = truck.Sheet("done");
        Assert.Equal(70.36, Opened.Told(before, "brakes.empty.parking-effort"), 0.01);
        Assert.Equal(260.4, Opened.Told(done, "brakes.empty.parking-effort"), 0.05);
        Assert.Equal(0.7 * 1.248 / (2.56 - (0.7 * 0.76)), Opened.Told(before, "brakes.empty.parking-grade-up"), 1e-6);
        Assert.Equal(0.7 * 1.248 / (2.56 + (0.7 * 0.76)), Opened.Told(before, "brakes.empty.parking-grade-down"), 1e-6);
        Assert.True(Opened.Told(done, "brakes.loaded.parking-effort") > Opened.Told(done, "brakes.empty.parking-effort"));
        var rule = done.Findings().Single(f => f.Id == "brakes.parking[condition=empty]/rule").Finding;
        Assert.Equal(Verdict.Unknown, rule.Verdict);
        Assert.Contains("pick the rule", rule.Text);
    }

    // A single master cylinder is one circuit, whatever is said of the lines; letters that do not go with a friction are told.
    [Fact]
    public void A_single_master_and_letters_come_in_from_the_sheet()
    {
        var sheet = Opened.Vehicle(Slots, """
            {"id":"working","base":null,"choices":{"lines":"split","front":"discs"},"whatIf":{"brakes.master.kind":"single","wheel.front.*.brake.friction-letters":"EE"}}
            """).Sheet();
        Assert.Equal(Verdict.Fail, sheet.Findings().Single(f => f.Id == "brakes.layout/circuits").Finding.Verdict);
        Assert.Equal(Verdict.Caution, sheet.Findings().Single(f => f.Id == "brakes.factor[axle=front,side=left]/geometry").Finding.Verdict);
        var parked = Opened.Vehicle(Slots.Replace("\"wheel.rear.*.brake.friction\":\"0.35\",", "", StringComparison.Ordinal).Replace("leading-trailing", "two-leading", StringComparison.Ordinal),
            """{"id":"working","base":null,"choices":{"parking":"at-drums"}}""", Weighed).Sheet();
        Assert.Contains("backward is missing", parked.Findings().Single(f => f.Id == "brakes.parking[condition=empty]/effort").Finding.Text);
    }

    // A disc is asked for its own readings only.
    [Fact]
    public void Nothing_of_a_drum_is_asked_for_at_a_disc()
    {
        var asked = Unsettled.Of(Opened.Vehicle(Slots, """{"id":"working","base":null,"choices":{"front":"unread"}}""").Sheet()).Select(u => u.What).ToList();
        Assert.Contains("wheel.{axle}.{side}.brake.friction", asked);
        Assert.DoesNotContain("wheel.{axle}.{side}.brake.shoe-link-distance", asked);
        Assert.DoesNotContain("wheel.{axle}.{side}.brake.drum-kind", asked);
    }
}
