using Crossmember.Engineering.Calculations;
using UnitsNet;
using static Crossmember.Engineering.Springs.HowToMeasureSprings;

namespace Crossmember.Engineering.Springs;

/// <summary>How fast the body bounces on an axle's springs, and how far the load presses them.</summary>
/// <remarks>
/// Formula:  f = sqrt(k / m) / (2 pi), m = (load - unsprung) / 2; static deflection m g / k; with the tire k kt / (k + kt)
/// Valid:    straight-line springs, each end by itself, no friction or damping; a progressive spring by its rate at this height
/// Source:   free vibration of one mass; docs/derivations/springs.md
/// Example:  480 kg on 35 N/mm -> 1.359 Hz; with a tire of 250 N/mm 1.273 Hz
/// </remarks>
public sealed class RideFrequency() : Calculation<RideFrequency.Inputs, RideFrequency.Result>(new()
{
    Id = "springs.frequency",
    Version = 1,
    Title = "Ride frequency",
    Purpose = "Whether an axle is sprung hard or soft for what it carries: the frequency of its bounce says it at once, empty and loaded.",
    Formula = "f = sqrt(k / m) / (2 pi), m = (axle load - unsprung) / 2; with the tire k kt / (k + kt)",
    Validity = "The body bouncing over this axle alone, straight-line springs, dampers and friction left out: leaf friction lets small bumps through as if the "
        + "spring were 1.1 to 1.5 times as stiff. The shortcut 15.76 / sqrt(deflection in mm) holds for straight-line springs only.",
    Sources = ["Free vibration of one mass on a spring, derived (docs/derivations/springs.md)", "1.2 to 2 Hz: common practice, no source"],
    Checks = [new("usual", null, "Does it bounce about as fast as such vehicles do?")],
    Trends =
    [
        new("load", "frequency", '-', 500, 3000), new("unsprungMass", "frequency", '+', 50, 400), new("springRate", "frequency", '+', 10, 150), new("tireRate", "withTire", '+', 150, 500),
        new("wheelRate", "frequency", '+', 10, 150),
    ],
    Examples =
    [
        new(new Dictionary<string, string> { ["load"] = "1160 kg", ["unsprungMass"] = "200 kg", ["wheelRate"] = "35 N/mm", ["tireRate"] = "250 N/mm" },
            new Dictionary<string, double> { ["frequency"] = 1.359, ["withTire"] = 1.273, ["deflection"] = 134.5 }, 0.0004,
            "480 kg at each wheel: sqrt(35000 / 480) / (2 pi); in series 30.70 N/mm; by hand", Provenance.Derived),
        new(new Dictionary<string, string> { ["load"] = "1160 kg", ["unsprungMass"] = "200 kg", ["wheelRate"] = "35 N/mm", ["springRate"] = "70 N/mm" },
            new Dictionary<string, double> { ["frequency"] = 1.922, ["deflection"] = 67.25 }, 0.0005, "Helper engaged: sqrt 2 times 1.359 Hz by hand", Provenance.Derived),
    ],
    Cautions = [Stops, Qualified],
})
{
    /// <summary>Springs of such vehicles stand 3 to 6 in deflected, 1.3 to 1.8 Hz, with some room. Common practice, no source.</summary>
    internal const double Slowest = 1.2, Fastest = 2;

    public sealed record Inputs(
        [Input("load on the axle", "kg", MoreThan = 0, High = 10000, Measure = AxleLoad)] UnitsNet.Mass Load,
        [Input("mass of the unsprung parts of the axle", "kg", AtLeast = 0, High = 1500, Measure = HowToMeasureSprings.UnsprungMass)] UnitsNet.Mass UnsprungMass,
        [Input("spring rate at one wheel", "N/mm", MoreThan = 0, Low = 5, High = 600, Measure = HowToMeasureSprings.WheelRate)] ForcePerLength WheelRate,
        [Input("the same as it stands there, with whatever touches", "N/mm", MoreThan = 0, Low = 5, High = 2000, Measure = "comes from the ride height")] ForcePerLength? SpringRate,
        [Input("rate of one tire", "N/mm", MoreThan = 0, Low = 80, High = 1000, Measure = HowToMeasureSprings.TireRate)] ForcePerLength? TireRate);

    public sealed record Result(
        [Output("frequency on the springs", "Hz")] Frequency? Frequency,
        [Output("frequency with the tire in series", "Hz")] Frequency? WithTire,
        [Output("how far this load presses a straight-line spring of that rate", "mm")] Length? Deflection);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double m = (x.Load.Kilograms - x.UnsprungMass.Kilograms) / 2, k = (x.SpringRate ?? x.WheelRate).NewtonsPerMeter; // kg, N/m
        if (m <= 0)
        {
            w.Answer("usual", Verdict.Fail, $"The unsprung parts, {x.UnsprungMass.Kilograms:0} kg, weigh as much as the axle's load, {x.Load.Kilograms:0} kg: weigh both again.");
            return new(null, null, null);
        }
        var f = Math.Sqrt(k / m) / (2 * Math.PI); // Hz
        w.Line("m", "(load - unsprung) / 2", $"({x.Load.Kilograms} - {x.UnsprungMass.Kilograms}) / 2", m, "kg");
        w.Line("f", "sqrt(k / m) / (2 pi)", $"sqrt({k} / {m}) / (2 pi)", f, "Hz");
        double? with = null;
        if (x.TireRate is { } tire)
        {
            var kt = tire.NewtonsPerMeter;
            with = Math.Sqrt(k / ((1 + (k / kt)) * m)) / (2 * Math.PI);
            w.Line("f tire", "sqrt(k kt / ((k + kt) m)) / (2 pi)", $"{k / 1000} and {kt / 1000} N/mm in series", with.Value, "Hz");
        }
        var usual = f is >= Slowest and <= Fastest;
        w.Answer("usual", usual ? Verdict.Pass : Verdict.Caution, $"It bounces at {f:0.00} Hz with {m:0} kg on each spring, pressed {1000 * m * Gravity / k:0} mm"
            + (usual ? "." : f > Fastest ? $": hard, {Slowest} to {Fastest} Hz are usual." : $": soft, {Slowest} to {Fastest} Hz are usual; it will wallow and use up its travel."), f, "Hz", Practice);
        return new(UnitsNet.Frequency.FromHertz(f), with is { } t ? UnitsNet.Frequency.FromHertz(t) : null, Meters(m * Gravity / k));
    }
}
