using Crossmember.Engineering.Calculations;
using UnitsNet;
using How = Crossmember.Engineering.Brakes.Balance.HowToMeasureBalance;

namespace Crossmember.Engineering.Brakes.Heat;

/// <summary>Heat of one stop and how far it warms rotor or drum, through and at the face.</summary>
/// <remarks>
/// Formula:  E = k m v^2 / 2; one brake Q = E x axle share / 2 x rotor share; dT = Q / (m c); face: wall heated by a flow that falls evenly to nothing
/// Valid:    brakes alone stop it on the level; nothing is cooled during the stop; the share of the axles is that at this deceleration
/// Source:   energy, derived; face: step response of a slab superposed, docs/derivations/brake-heat.md
/// Example:  2100 kg from 100 km/h, front share 0.75, 7.5 kg: 300.2 kJ, 83.4 K
/// </remarks>
public sealed class StopHeat() : Calculation<StopHeat.Inputs, StopHeat.Result>(new()
{
    Id = "brakes.stop-heat",
    Version = 1,
    Title = "Heat of one stop",
    Purpose = "What one hard stop puts into each rotor or drum and how hot it gets: heavier trucks and bigger tires ask for more iron, not only for more squeeze.",
    Formula = "E = 1.04 m v^2 / 2; into one rotor or drum E x share of the axle / 2 x share of the iron; rise E / (m c), at the face by the wall's own step response",
    Validity = "Brakes alone stop it, on level road and without cooling. Engine, air and rolling take a few per cent off. The face is reckoned as evenly heated: "
        + "hot spots are hotter. 1.04 is for wheels and shafts that turn as well.",
    Sources = ["Energy and statics, derived", "Slab under a falling heat flow, superposed from its step response (Carslaw and Jaeger, from memory)"],
    Trends =
    [
        new("mass", "bulkRise", '+', 800, 5000), new("speed", "bulkRise", '+', 10, 80), new("heatMass", "bulkRise", '-', 3, 30), new("rotorShare", "bulkRise", '+', 0.8, 1),
        new("sweptArea", "surfaceRise", '-', 400, 2000), new("depth", "surfaceRise", '-', 3, 10), new("deceleration", "surfaceRise", '+', 0.2, 1), new("rotatingFactor", "energy", '+', 1, 1.3),
    ],
    NoTrends =
    [
        new("forces", "one for each axle: what one axle gains the other loses"), new("thresholds", "move the share from axle to axle"), new("valveKnee", "moves the share from axle to axle"),
        new("valveSlope", "moves the share from axle to axle"), new("metering", "moves the share from axle to axle"), new("rearShare", "moves the share from axle to axle"),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["mass"] = "2100 kg", ["axle"] = "front", ["forces"] = """{"front":"7500 N","rear":"2500 N"}""", ["thresholds"] = """{"front":"0 MPa","rear":"0 MPa"}""", ["valve"] = "none",
                ["deceleration"] = "0.6557", ["speed"] = "100 km/h", ["heatMass"] = "7.5 kg", ["rotorShare"] = "0.95", ["sweptArea"] = "785.4 cm2", ["depth"] = "11 mm",
            },
            new Dictionary<string, double> { ["energy"] = 842.6, ["perBrake"] = 300.2, ["bulkRise"] = 83.4, ["share"] = 0.75 }, 0.0005,
            "1.04 x 2100 x 27.778^2 / 2 = 842.6 kJ, x 0.75 / 2 x 0.95 / 3600 J/K; by hand", Provenance.Derived),
    ],
    Cautions = [HowToMeasureHeat.Estimate],
})
{
    public sealed record Inputs(
        [Input("total mass", "kg", MoreThan = 0, Measure = HowToMeasureHeat.Mass)] UnitsNet.Mass Mass,
        [Input("axle", OneOf = [TwoAxles.Front, TwoAxles.Rear])] string Axle,
        [Input("braking force of each axle at 1000 psi over its threshold", "N", AtLeast = 0, Measure = HowToMeasureHeat.Force)] Members<Force> Forces,
        [Input("threshold pressure of each axle", "MPa", AtLeast = 0, Measure = HowToMeasureHeat.Threshold)] Members<Pressure> Thresholds,
        [Input(How.Valve, OneOf = [How.NoValve, How.FixedValve, How.AdjustableValve, How.LoadValve], Measure = How.ValveKind)] string Valve,
        [Input("line pressure at the rear valve's knee", "MPa", AtLeast = 0, Measure = HowToMeasureHeat.Valve)] Pressure? ValveKnee,
        [Input("slope of the rear valve above its knee", AtLeast = 0, High = 1, Measure = HowToMeasureHeat.Slope)] Ratio? ValveSlope,
        [Input("pressure at which the metering valve opens", "MPa", AtLeast = 0, Measure = HowToMeasureHeat.Metering)] Pressure? Metering,
        [Input("pressure of the rear circuit over that of the front", MoreThan = 0, Low = 0.2, High = 3, Measure = HowToMeasureHeat.RearShare)] Ratio? RearShare,
        [Input("deceleration as a share of g", MoreThan = 0, High = 1.2, Default = 0.6, Measure = HowToMeasureHeat.Braking)] Ratio Deceleration,
        [Input("speed before the stop", "mph", MoreThan = 0, High = 100, Default = 60, Measure = HowToMeasureHeat.StopSpeed)] Speed Speed,
        [Input("mass with what turns over mass", AtLeast = 1, High = 2, Default = 1.04, Measure = HowToMeasureHeat.Rotating)] Ratio RotatingFactor,
        [Input("mass of one rotor or drum", "kg", MoreThan = 0, Low = 2, High = 60, Measure = HowToMeasureHeat.HeatMass)] UnitsNet.Mass HeatMass,
        [Input("share of the heat that goes into the iron", MoreThan = 0, High = 1, Default = 0.95, Measure = HowToMeasureHeat.RotorShare)] Ratio RotorShare,
        [Input("swept face of one rotor or drum", "cm2", MoreThan = 0, Low = 100, High = 3000, Measure = HowToMeasureHeat.SweptArea)] Area? SweptArea,
        [Input("iron behind a swept face", "mm", MoreThan = 0, Low = 2, High = 30, Measure = HowToMeasureHeat.Depth)] Length? Depth);

    public sealed record Result(
        [Output("heat of the stop, all wheels", "kJ")] Energy Energy,
        [Output("share of this axle")] Ratio Share,
        [Output("heat into one rotor or drum", "kJ")] Energy PerBrake,
        [Output("time of the stop", "s")] Duration Time,
        [Output("rise of the whole rotor or drum", "dC")] TemperatureDelta BulkRise,
        [Output("greatest rise of the rubbed face", "dC")] TemperatureDelta? SurfaceRise);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        if (!TwoAxles.Knows(w, x.Valve, x.ValveKnee, x.ValveSlope)) return null;
        double m = x.Mass.Kilograms, k = x.RotatingFactor.DecimalFractions, v = x.Speed.MetersPerSecond, a = x.Deceleration.DecimalFractions * Stretch.Gravity; // kg, m/s, m/s2
        if (TwoAxles.Rig(x.Forces, x.Thresholds, x.Valve, x.ValveKnee, x.ValveSlope, x.Metering, x.RearShare) is not { } rig) return null;
        if (TwoAxles.Share(rig, m * a, x.Axle == TwoAxles.Front) is not { } share) return null;
        double E = 0.5 * k * m * v * v, iron = x.HeatMass.Kilograms, Q = E * share / 2 * x.RotorShare.DecimalFractions, ts = v / a, bulk = Q / (iron * GrayIron.SpecificHeat); // J, s, K
        w.Line("E", "k m v^2 / 2", $"{k} x {m} x {v}^2 / 2", E / 1000, "kJ");
        w.Line("Q", "E x share / 2 x share of the iron", $"{E / 1000} x {share} / 2 x {x.RotorShare.DecimalFractions}", Q / 1000, "kJ");
        w.Line("dT", "Q / (m c)", $"{Q} / ({iron} x {GrayIron.SpecificHeat})", bulk, "dC");
        double? face = null;
        if (x.SweptArea is { } swept && x.Depth is { } depth)
        {
            var q0 = 2 * Q / (swept.SquareMeters * ts); // W/m2, twice the mean
            face = SurfaceRise.Greatest(q0, ts, depth.Meters);
            w.Line("q0", "2 Q / (A ts)", $"2 x {Q} / ({swept.SquareMeters} x {ts})", q0 / 1e6, "1");
            w.Line("dT face", "wall of this depth under a heat flow falling from q0 (MW/m2)", $"q0 {q0 / 1e6}, ts {ts}, depth {depth.Millimeters} mm", face.Value, "dC");
        }
        return new(Energy.FromJoules(E), Ratio.FromDecimalFractions(share), Energy.FromJoules(Q), Duration.FromSeconds(ts), TemperatureDelta.FromKelvins(bulk),
            face is { } rise ? TemperatureDelta.FromKelvins(rise) : null);
    }
}
