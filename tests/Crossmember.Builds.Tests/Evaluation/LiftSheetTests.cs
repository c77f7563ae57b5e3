using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Tests.Evaluation;

/// <summary>What follows from a lift through the sheet: springs of two heights, a shaft, a hose and a wedge, stated as a builder states them.</summary>
public sealed class LiftSheetTests
{
    private const string Slots = """
        ,{"id":"springs","parent":"vehicle","title":"Springs","options":[
          {"id":"as-found","masses":[],"parameters":{"axle.*.*.ride-height":"150 mm","axle.*.*.bump-travel":"80 mm","axle.*.*.droop-travel":"100 mm","axle.*.trackbar.length":"0 mm"}},
          {"id":"tall","class":"upgrade","originality":0,"masses":[],"parameters":{"axle.front.*.ride-height":"200 mm","axle.rear.empty.ride-height":"250 mm","axle.rear.loaded.ride-height":"210 mm",
            "axle.*.*.bump-travel":"80 mm","axle.*.*.droop-travel":"100 mm","axle.front.trackbar.length":"800 mm","axle.front.trackbar.end-height":"50 mm","axle.rear.trackbar.length":"0 mm"}}]}
        ,{"id":"facts","parent":"vehicle","title":"Facts","governs":["leaf.front"],"options":[{"id":"as-found","masses":[],"parameters":{"axle.*.original-ride-height":"150 mm","axle.front.original-caster":"3 deg","leaf.front.eye-span":"44 in"}}]}
        ,{"id":"shaft","parent":"vehicle","title":"Shaft","options":[{"id":"as-found","masses":[],"parameters":{
          "axle.rear.propshaft.run":"1000 mm","axle.rear.propshaft.taped-height":"150 mm","axle.rear.propshaft.output-height":"20 mm","axle.rear.propshaft.pinion-height":"60 mm",
          "axle.rear.propshaft.output-slope":"2 deg","axle.rear.pinion-angle":"2 deg","axle.rear.propshaft.arc-radius":"450 mm","axle.rear.propshaft.arc-height":"-150 mm",
          "axle.rear.propshaft.arc-side":"toward the case","axle.rear.propshaft.slip-in":"15 mm","axle.rear.propshaft.splines-engaged":"90 mm","axle.rear.propshaft.spline-diameter":"40 mm",
          "axle.rear.propshaft.joint-limit":"15 deg"}}]}
        ,{"id":"hose","parent":"vehicle","title":"Hose","options":[{"id":"as-found","masses":[],"parameters":{"axle.rear.hose.length":"310 mm","axle.rear.hose.frame-height":"0 mm",
          "axle.rear.hose.axle-height":"50 mm","axle.rear.hose.along":"100 mm","axle.rear.hose.across":"150 mm"}}]}
        """;

    private const string Scenarios = """{"id":"working","base":null,"choices":{}},{"id":"tall","base":null,"choices":{"springs":"tall"}}""";

    private static readonly Opened s_truck = Opened.Vehicle(Slots, Scenarios);

    // atan(160 / 1000) = 9.09 deg at 200 mm; at 250 mm 210 in 1000: 11.86 deg. Rear up by 100 and front by 50 mm take atan(50 / 2560) of caster; loaded only 10 mm: atan(10 / 2560).
    [Fact]
    public void Every_condition_has_its_own_angles()
    {
        Assert.Equal(11.8598, Told("tall", "lift.pinion-angle[axle=rear,condition=empty]", "shaftSlope"), 1e-4);
        Assert.Equal(100, 1000 * Si("tall", "lift.pinion-angle[axle=rear,condition=empty]", "lift"), 1e-9);
        Assert.Equal(3 - 1.1189, Told("tall", "lift.caster-change[condition=empty]", "caster"), 1e-4);
        Assert.Equal(3 - 0.2238, Told("tall", "lift.caster-change[condition=loaded]", "caster"), 1e-4);
        Assert.Equal(3, Told("working", "lift.caster-change[condition=loaded]", "caster"), 1e-9);
    }

    // The lift takes the hose and the joint from good to no: 100, 150 and 300 mm are 350 mm for a hose of 310; at 350 mm of height 310 in 953 mm are 18 deg, 16 at the joints.
    [Theory]
    [InlineData("working", "lift.hose-length[axle=rear]/length", Verdict.Pass)]
    [InlineData("tall", "lift.hose-length[axle=rear]/length", Verdict.Fail)]
    [InlineData("working", "lift.shaft-travel[axle=rear]/joint", Verdict.Pass)]
    [InlineData("tall", "lift.shaft-travel[axle=rear]/joint", Verdict.Fail)]
    [InlineData("working", "lift.pinion-angle[axle=rear,condition=empty]/difference", Verdict.Pass)]
    [InlineData("working", "lift.trackbar-shift[axle=front]/shift", Verdict.Pass)]
    [InlineData("tall", "lift.trackbar-shift[axle=front]/shift", Verdict.Pass)] // 50 mm of lift: 4.7 mm
    [InlineData("tall", "lift.shaft-travel[axle=front]/bottom", Verdict.Unknown)]
    public void A_lift_flips_what_it_should(string scenario, string finding, Verdict verdict) =>
        Assert.Equal(verdict, s_truck.Sheet(scenario).Findings().Single(f => f.Id == finding).Finding.Verdict);

    // Nothing here is published: the measured working angles stay what is judged with the shaft.
    [Fact]
    public void Measured_angles_are_not_hidden() =>
        Assert.DoesNotContain(Catalogue.Shipped.Bindings, b => b.Calculation.Id.StartsWith("lift.", StringComparison.Ordinal) && b.Publishes.Count > 0);

    private static double Si(string scenario, string instance, string output)
    {
        var state = s_truck.Sheet(scenario).Instance(instance)!;
        return state.Outcome.Outputs[state.Instance.Calculation.OutputIndex(output)].Number;
    }

    /// <summary>In degrees.</summary>
    private static double Told(string scenario, string instance, string output) => Si(scenario, instance, output) * 180 / Math.PI;
}
