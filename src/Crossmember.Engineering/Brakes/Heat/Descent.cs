using Crossmember.Engineering.Calculations;
using UnitsNet;
using How = Crossmember.Engineering.Brakes.Balance.HowToMeasureBalance;

namespace Crossmember.Engineering.Brakes.Heat;

/// <summary>Temperature of a rotor or drum at the bottom of a long grade taken at a steady speed.</summary>
/// <remarks>
/// Formula:  P = v (m g sin th - f m g cos th - rho CdA v^2 / 2) - engine; one brake q = P x axle share / 2 x rotor share; T = air + q / hA + (T0 - air - q / hA) e^(-hA t / (m c))
/// Valid:    steady speed; iron of one temperature, constant cooling, no radiation: above 400 C it is cooler than this
/// Source:   statics and one store of heat, derived in docs/derivations/brake-heat.md
/// Example:  2500 kg, 7 %, 40 km/h, 6 km, hA 9.0 W/K, 3600 J/K: 404.7 C
/// </remarks>
public sealed class Descent() : Calculation<Descent.Inputs, Descent.Result>(new()
{
    Id = "brakes.descent",
    Version = 1,
    Title = "Long grade down",
    Purpose = "How hot the brakes are at the bottom of a long hill, and what they would come to on one without end: the case that boils fluid and makes brakes go away.",
    Formula = "P = v (m g sin th - f m g cos th - rho CdA v^2 / 2) - engine; T = air + q / hA + (T0 - air - q / hA) e^(-hA t / (m c)), q = P x share / 2 x share of the iron",
    Validity = "Steady speed, brakes dragged all the way. Iron of one temperature, nothing radiated or led away: above about 400 C it is cooler than this. "
        + "Where no engine braking is stated none is counted; a low gear takes much of it.",
    Sources = ["Statics and a single store of heat, derived"],
    Checks = [new("linings", Sense.AtMost, "Do the brakes stay below what the linings are used to on the grade?")],
    Trends =
    [
        new("mass", "bottom", '+', 1500, 5000), new("grade", "bottom", '+', 0.04, 0.15), new("length", "bottom", '+', 1, 20), new("enginePower", "bottom", '-', 0, 10),
        new("heatMass", "bottom", '-', 3, 30), new("rotorShare", "bottom", '+', 0.8, 1), new("cooling", "bottom", '-', 300, 2000), new("airTemperature", "bottom", '+', -20, 45),
        new("startTemperature", "bottom", '+', 20, 150), new("rollingResistance", "power", '-', 0.005, 0.03), new("dragArea", "power", '-', 0.5, 3), new("airDensity", "power", '-', 0.9, 1.3),
    ],
    NoTrends =
    [
        new("speed", "faster makes more heat a second but leaves less time, more air and better cooling"),
        new("forces", "one for each axle: what one axle gains the other loses"), new("thresholds", "move the share from axle to axle"), new("valveKnee", "moves the share from axle to axle"),
        new("valveSlope", "moves the share from axle to axle"), new("metering", "moves the share from axle to axle"), new("rearShare", "moves the share from axle to axle"), new("coolingArea", "bears on the cooling in still air alone, at little speed"),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["mass"] = "2500 kg", ["axle"] = "front", ["forces"] = """{"front":"7000 N","rear":"3000 N"}""", ["thresholds"] = """{"front":"0 MPa","rear":"0 MPa"}""", ["valve"] = "none",
                ["grade"] = "0.07", ["length"] = "6 km", ["speed"] = "40 km/h", ["rollingResistance"] = "0.015", ["dragArea"] = "1.3 m2", ["airDensity"] = "1.2 kg/m3", ["enginePower"] = "0 kW",
                ["heatMass"] = "7.5 kg", ["rotorShare"] = "0.95", ["kind"] = """{"left":"disc"}""", ["cooling"] = "1316.98 W", ["coolingArea"] = "0 cm2", ["startTemperature"] = "25 C", ["airTemperature"] = "25 C",
            },
            new Dictionary<string, double> { ["power"] = 13.88, ["perBrake"] = 4.614, ["bottom"] = 404.7, ["steady"] = 537.6 }, 0.0005,
            "1316.98 W at 40 mph is 9.0 W/K at 40 km/h; 11.111 x (1711.9 - 366.9 - 96.3) W; 512.6 (1 - e^-1.35) over 25 C; by hand", Provenance.Derived),
    ],
    Cautions = [HowToMeasureHeat.Grades, HowToMeasureHeat.Estimate],
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
        [Input("grade as rise over run", MoreThan = 0, High = 0.5, Default = 0.07, Measure = HowToMeasureHeat.Grade)] Ratio Grade,
        [Input("length of the grade", "km", MoreThan = 0, High = 100, Default = 6, Measure = HowToMeasureHeat.Length)] Length Length,
        [Input("speed on the grade", "km/h", MoreThan = 0, Low = 10, High = 120, Default = 60, Measure = HowToMeasureHeat.Speed)] Speed Speed,
        [Input("power that the engine holds back", "kW", AtLeast = 0, High = 100, Default = 0, Measure = HowToMeasureHeat.EnginePower)] Power EnginePower,
        [Input("rolling resistance as a share of weight", AtLeast = 0, High = 0.1, Default = 0.015, Measure = HowToMeasureHeat.Rolling)] Ratio RollingResistance,
        [Input("drag area; 0 leaves the air out", "m2", AtLeast = 0, High = 6, Default = 0, Measure = HowToMeasureHeat.DragArea)] Area DragArea,
        [Input("density of the air", "kg/m3", AtLeast = 0, Low = 0.7, High = 1.5, Default = 1.2, Measure = HowToMeasureHeat.AirDensity)] Density AirDensity,
        [Input("kind of brake", OneOf = [TwoAxles.Disc, TwoAxles.Drum], Measure = HowToMeasureHeat.Kind)] Members<string> Kind,
        [Input("mass of one rotor or drum", "kg", MoreThan = 0, Low = 2, High = 60, Measure = HowToMeasureHeat.HeatMass)] UnitsNet.Mass HeatMass,
        [Input("share of the heat that goes into the iron", MoreThan = 0, High = 1, Default = 0.95, Measure = HowToMeasureHeat.RotorShare)] Ratio RotorShare,
        [Input("heat shed by one wheel at 40 mph when 100 K hotter than the air", "W", MoreThan = 0, Low = 100, High = 6000, Measure = HowToMeasureHeat.Cooling)] Power Cooling,
        [Input("what the air sweeps of one rotor or drum", "cm2", AtLeast = 0, High = 5000, Measure = HowToMeasureHeat.CoolingArea)] Area CoolingArea,
        [Input("temperature of the brakes before", "C", Low = -40, High = 500, Default = 80, Measure = HowToMeasureHeat.Start)] Temperature StartTemperature,
        [Input("temperature of the air", "C", Low = -40, High = 60, Default = 25, Measure = HowToMeasureHeat.Air)] Temperature AirTemperature,
        [Input("kind of lining", OneOf = [Linings.Organic, Linings.SemiMetallic, Linings.Ceramic, Linings.Sintered], Measure = HowToMeasureHeat.Lining)] Members<string>? Lining);

    public sealed record Result(
        [Output("power that all brakes take", "kW")] Power Power,
        [Output("heat into one rotor or drum of this axle", "kW")] Power PerBrake,
        [Output("time on the grade", "min")] Duration Time,
        [Output("temperature at the bottom", "C")] Temperature Bottom,
        [Output("temperature that a grade without end would lead to", "C")] Temperature Steady);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        if (!TwoAxles.Knows(w, x.Valve, x.ValveKnee, x.ValveSlope)) return null;
        double m = x.Mass.Kilograms, v = x.Speed.MetersPerSecond, th = Math.Atan(x.Grade.DecimalFractions), f = x.RollingResistance.DecimalFractions; // kg, m/s, rad
        double air = x.AirTemperature.Kelvins, start = x.StartTemperature.Kelvins, store = x.HeatMass.Kilograms * GrayIron.SpecificHeat, t = x.Length.Meters / v;
        if (TwoAxles.Same(x.Kind) is not { } kind || TwoAxles.Rig(x.Forces, x.Thresholds, x.Valve, x.ValveKnee, x.ValveSlope, x.Metering, x.RearShare) is not { } rig) return null;
        var driven = new Driven(m, 1, f, 0.5 * x.AirDensity.KilogramsPerCubicMeter * x.DragArea.SquareMeters, (double)x.EnginePower.Watts);
        var P = driven.Lasting(t, v, v, Math.Sin(th)).PowerAt(v);
        double share = 0;
        if (P > 0)
        {
            if (TwoAxles.Share(rig, P / v, x.Axle == TwoAxles.Front) is not { } part) return null;
            share = part;
        }
        double q = P * share / 2 * x.RotorShare.DecimalFractions, hA = Airflow.Of(kind == TwoAxles.Drum, (double)x.Cooling.Watts, x.CoolingArea.SquareMeters).At(v);
        double steady = air + (q / hA), bottom = steady + ((start - steady) * Math.Exp(-hA * t / store));
        w.Line("P", "v (m g sin th - f m g cos th - rho CdA v^2 / 2) - engine", $"at {v} m/s on {x.Grade.DecimalFractions}", P / 1000, "kW");
        w.Line("q", "P x share / 2 x share of the iron", $"{P / 1000} x {share} / 2 x {x.RotorShare.DecimalFractions}", q / 1000, "kW");
        w.Line("T steady", "air + q / hA", $"{air - 273.15} + {q} / {hA}", steady - 273.15, "C");
        w.Line("T", "steady + (T0 - steady) e^(-hA t / (m c))", $"{steady - 273.15} + ({start - 273.15} - {steady - 273.15}) exp(-{hA} x {t} / {store})", bottom - 273.15, "C");
        var lining = x.Lining is { } sides ? TwoAxles.Same(sides) : null;
        var limit = Linings.Limit(lining) - 273.15;
        w.AtMost("linings", bottom - 273.15, limit, "C", P <= 0
            ? "Engine, air and rolling hold it on this grade: the brakes are not needed to keep the speed."
            : $"{x.Length.Kilometers:0.#} km down {100 * x.Grade.DecimalFractions:0.#} % at {x.Speed.KilometersPerHour:0} km/h bring the {x.Axle} brakes to {bottom - 273.15:0} C; "
                + $"{Linings.Named(lining)} is used up to about {limit:0} C. {Engine(x)}", Linings.Source, beyond: Verdict.Caution);
        return new(Power.FromWatts(P), Power.FromWatts(q), Duration.FromSeconds(t), Temperature.FromKelvins(bottom), Temperature.FromKelvins(steady));
    }

    private static string Engine(Inputs x) =>
        x.EnginePower.Watts > 0 ? $"The engine is counted with {x.EnginePower.Kilowatts:0.#} kW." : "No engine braking is counted.";
}
