using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Tests.Evaluation;

/// <summary>Hot brakes through the sheet: discs in front, drums behind, stated as a builder states them. All figures invented.</summary>
public sealed class HeatSheetTests
{
    private const string Weighed = """
        "weighings":[{"date":"2026-01-10","axles":{"front":"1092 kg","rear":"1008 kg"},"wheelbase":"2560 mm","condition":"empty","fitted":{}}],
        "conditions":{"empty":[],"loaded":[{"id":"load","mass":"600 kg","at":["2 m","0 m","0.8 m"]}]},
        """;

    private const string Slots = """
        ,{"id":"facts","parent":"vehicle","title":"Facts","options":[{"id":"as-found","parameters":{"vehicle.drag-area":"1.3 m2","axle.front.brake.force":"12642.9 N","axle.rear.brake.force":"5442.7 N",
          "axle.front.brake.threshold":"0.02 MPa","axle.rear.brake.threshold":"0.4 MPa","brakes.valve.kind":"none","brakes.fluid.grade":"DOT 3","wheel.rear.*.brake.friction-sensitivity":"1.4",
          "wheel.front.*.brake.friction-sensitivity":"1","wheel.*.*.brake.friction-letters":"FE"}}]}
        ,{"id":"discs","parent":"vehicle","title":"Front discs","options":[
          {"id":"as-found","masses":[],"parameters":{"wheel.front.*.brake.kind":"disc","wheel.front.*.brake.rotor-diameter":"280 mm","wheel.front.*.brake.rotor-thickness":"12 mm","wheel.front.*.brake.rotor-vented":"solid","wheel.front.*.brake.pad-area":"45 cm2"}},
          {"id":"thick","class":"upgrade","originality":0,"masses":[],"parameters":{"wheel.front.*.brake.kind":"disc","wheel.front.*.brake.rotor-diameter":"300 mm","wheel.front.*.brake.rotor-thickness":"26 mm",
            "wheel.front.*.brake.rotor-vented":"vented","wheel.front.*.brake.rotor-mass":"9.5 kg","wheel.front.*.brake.pad-area":"60 cm2","wheel.front.*.brake.lining":"semi-metallic"}}]}
        ,{"id":"drums","parent":"vehicle","title":"Rear drums","options":[{"id":"as-found","masses":[],"parameters":{"wheel.rear.*.brake.kind":"drum","wheel.rear.*.brake.drum-diameter":"280 mm","wheel.rear.*.brake.lining-width":"57 mm","wheel.rear.*.brake.drum-mass":"10 kg"}}]}
        """;

    private const string Scenarios = """
        {"id":"working","base":null,"choices":{}},{"id":"thick","base":"working","choices":{"discs":"thick"}},
        {"id":"flat","base":"working","choices":{},"whatIf":{"duty.descent.grade":"0.01","duty.stops.count":"1"}},
        {"id":"geared","base":"working","choices":{},"whatIf":{"duty.descent.engine-power":"12 kW"}}
        """;

    private static readonly Opened s_truck = Opened.Vehicle(Slots, Scenarios, Weighed);

    [Fact]
    public void More_iron_and_air_stay_cooler_in_every_condition()
    {
        foreach (var condition in new[] { "empty", "loaded" })
            Assert.True(Kelvin("thick", condition, "frontRotor") < Kelvin("working", condition, "frontRotor") - 50);
        Assert.True(Kelvin("working", "loaded", "frontRotor") > Kelvin("working", "empty", "frontRotor") + 30);
        Assert.True(Kelvin("geared", "empty", "frontRotor") < Kelvin("working", "empty", "frontRotor"));
        Assert.True(Kelvin("flat", "empty", "frontRotor") < 473);
    }

    [Theory]
    [InlineData("working", "brakes.heat-store[axle=front]/weighed", Verdict.Caution)]
    [InlineData("thick", "brakes.heat-store[axle=front]/weighed", Verdict.Pass)]
    [InlineData("working", "brakes.heat-store[axle=rear]/weighed", Verdict.Pass)]
    [InlineData("working", "brakes.drive-heat[condition=empty]/linings", Verdict.Caution)]
    [InlineData("flat", "brakes.drive-heat[condition=empty]/linings", Verdict.Pass)]
    [InlineData("flat", "brakes.drive-heat[condition=empty]/iron", Verdict.Pass)]
    [InlineData("flat", "brakes.drive-heat[condition=empty]/fluid", Verdict.Pass)]
    [InlineData("flat", "brakes.drive-heat[condition=empty]/fade", Verdict.Pass)]
    [InlineData("working", "brakes.drive-heat[condition=loaded]/fade", Verdict.Caution)]
    [InlineData("working", "brakes.descent[axle=front,condition=loaded]/linings", Verdict.Caution)]
    [InlineData("flat", "brakes.descent[axle=front,condition=loaded]/linings", Verdict.Pass)]
    public void Verdicts_turn_where_they_should(string scenario, string finding, Verdict verdict)
    {
        var found = s_truck.Sheet(scenario).Findings().Single(f => f.Id == finding).Finding;
        Assert.True(verdict == found.Verdict, found.Text);
    }

    // What the drive leaves of an axle goes on to whoever asks: FE is 0.30 / 0.40 from 288 C on, and the disc goes with it one to one.
    [Fact]
    public void The_hot_share_is_published_for_every_axle_and_condition()
    {
        Assert.Equal(0.75, Opened.Told(s_truck.Sheet("working"), "axle.front.loaded.brake-hot-share"), 1e-9);
        Assert.InRange(Opened.Told(s_truck.Sheet("working"), "axle.rear.empty.brake-hot-share"), 0.5, 1);
    }

    // 1.04 x 2100 kg x (60 mph)^2 / 2, and the same again with 2700 kg.
    [Fact]
    public void The_heat_of_a_stop_goes_with_the_load()
    {
        double empty = Si("working", "brakes.stop-heat[axle=front,condition=empty]", "energy"), loaded = Si("working", "brakes.stop-heat[axle=front,condition=loaded]", "energy");
        Assert.Equal(0.52 * 2100 * 26.8224 * 26.8224, empty, 1e-6 * empty);
        Assert.Equal(2700.0 / 2100, loaded / empty, 1e-9);
        Assert.Equal(1, Si("working", "brakes.stop-heat[axle=front,condition=empty]", "share") + Si("working", "brakes.stop-heat[axle=rear,condition=empty]", "share"), 1e-9);
    }

    private static double Kelvin(string scenario, string condition, string output) => Si(scenario, $"brakes.drive-heat[condition={condition}]", output);

    private static double Si(string scenario, string instance, string output)
    {
        var state = s_truck.Sheet(scenario).Instance(instance)!;
        var value = state.Outcome.Outputs[state.Instance.Calculation.OutputIndex(output)];
        Assert.True(value.IsNumber, $"{instance} {output}: {string.Join("; ", state.Outcome.Missing.Select(m => m.Input))}");
        return value.Number;
    }
}
