using Crossmember.Engineering.Calculations;
using UnitsNet;
using static Crossmember.Engineering.Springs.HowToMeasureSprings;

namespace Crossmember.Engineering.Springs;

/// <summary>Where an axle's springs stand under a load, and what travel that leaves to bump stop and droop.</summary>
/// <remarks>
/// Formula:  per wheel (load - taped load) g / 2 = k x + kh (x - ch) + ks (x - cs), each term from where it touches; height = taped height - x; full bump = cs + squash - x
/// Valid:    one rate until helper or stop touches; the same unsprung parts as when the height was taped; both wheels alike
/// Source:   equilibrium of straight-line springs in stages, docs/derivations/springs.md
/// Example:  95.39 kg more on 38 N/mm at each wheel -> 12.3 mm lower
/// </remarks>
public sealed class RideHeight() : Calculation<RideHeight.Inputs, RideHeight.Result>(new()
{
    Id = "springs.ride-height",
    Version = 1,
    Title = "Ride height and travel under a load",
    Purpose = "How high the frame stands over the axle and over the ground in this state of load, and how much travel is left before the bump stop and before the wheel hangs.",
    Formula = "height = taped height - x; (load - taped load) g / 2 = k x + helper (x - its gap) + stop (x - its gap), each from where it touches",
    Validity = "From one height taped under a known load. One rate until helper or stop touches; the same axle, wheels and brakes as then; friction settled by bouncing. "
        + "Both sides alike: a spring that sags on one side is not seen. A helper without a gap in the taped state is taken to carry nothing there: the spring carries no more than told.",
    Sources = ["Equilibrium of springs in stages, derived (docs/derivations/springs.md)", "2 in of bump travel and 1 in of sag: common practice, no source"],
    Checks =
    [
        new("travel", null, "Does the axle rest between its stops, with travel left?", "bumpClearance"),
        new("original", Sense.AtLeast, "Does it stand as high as it was built?", "originalHeight"),
    ],
    Trends =
    [
        new("load", "rideHeight", '-', 600, 1500), new("heightLoad", "rideHeight", '+', 600, 1700), new("height", "rideHeight", '+', 100, 300), new("wheelRate", "rideHeight", '+', 15, 120),
        new("helperRate", "rideHeight", '+', 10, 200), new("helperClearance", "rideHeight", '-', 5, 40), new("bumpClearance", "bumpTravel", '+', 60, 150),
        new("bumpRate", "rideHeight", '+', 50, 500), new("droop", "droopTravel", '+', 40, 150), new("bumpSquash", "fullBumpTravel", '+', 10, 60), new("loadedRadius", "datumHeight", '+', 300, 500),
    ],
    NoTrends = [new("originalHeight", "only compared with the result")],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["load"] = "1095.39 kg", ["heightLoad"] = "1000 kg", ["height"] = "200 mm", ["wheelRate"] = "38 N/mm", ["bumpClearance"] = "80 mm", ["droop"] = "90 mm",
                ["loadedRadius"] = "400 mm",
            },
            new Dictionary<string, double> { ["rideHeight"] = 187.69, ["datumHeight"] = 587.69, ["bumpTravel"] = 67.69, ["droopTravel"] = 102.31, ["change"] = -12.31 }, 0.0004,
            "95.39 x 9.80665 / (2 x 38) = 12.309 mm by hand", Provenance.Derived),
        new(new Dictionary<string, string>
            {
                ["load"] = "1600 kg", ["heightLoad"] = "1000 kg", ["height"] = "200 mm", ["wheelRate"] = "30 N/mm", ["helperRate"] = "20 N/mm", ["helperClearance"] = "40 mm",
                ["bumpClearance"] = "60 mm", ["bumpRate"] = "100 N/mm", ["bumpSquash"] = "30 mm",
            },
            new Dictionary<string, double> { ["rideHeight"] = 135.053, ["springRate"] = 150, ["carryingRate"] = 50, ["fullBumpTravel"] = 25.0534, ["relief"] = 101.3186 }, 1e-5,
            "2942.0 N: 40 mm take 1200, 20 mm more take 1000, the other 742.0 N take 4.947 mm at 150 N/mm; 30 - 4.947; (2942.0 - 30 x 64.947) / 9.80665; by hand", Provenance.Derived),
    ],
    Cautions = [Stops, "At full bump and full droop look at tires, brake hoses, shafts and steering with your own eyes, springs off, on rated stands.", StoredEnergy, UBolts, Qualified],
})
{
    /// <summary>Below this a rut already meets the stop; below this a spring counts as sagged. Common practice, no source.</summary>
    private const double LeastBump = 0.05, Sagged = 0.025;

    public sealed record Inputs(
        [Input("load on the axle", "kg", AtLeast = 0, High = 10000, Measure = AxleLoad)] UnitsNet.Mass Load,
        [Input("load under which the height was taped", "kg", AtLeast = 0, High = 10000, Measure = HeightLoad)] UnitsNet.Mass HeightLoad,
        [Input("height of the frame datum over the axle center then", "mm", Low = -300, High = 1000, Measure = HowToMeasureSprings.Height)] Length Height,
        [Input("spring rate at one wheel", "N/mm", MoreThan = 0, Low = 5, High = 600, Measure = HowToMeasureSprings.WheelRate)] ForcePerLength WheelRate,
        [Input("rate of one helper", "N/mm", MoreThan = 0, High = 1000, Measure = HowToMeasureSprings.HelperRate)] ForcePerLength? HelperRate,
        [Input("gap until the helper touches", "mm", AtLeast = 0, High = 300, Measure = HowToMeasureSprings.HelperClearance)] Length? HelperClearance,
        [Input("gap until the bump stop touches", "mm", AtLeast = 0, High = 400, Measure = "tape from the stop to what it meets, in the state in which the height was taped")]
        Length? BumpClearance,
        [Input("rate of one bump stop", "N/mm", MoreThan = 0, High = 5000, Measure = "ask its maker, or press it on a scale and tape it")] ForcePerLength? BumpRate,
        [Input("how far the bump stop gives until it is solid", "mm", MoreThan = 0, High = 200, Measure = "take half of a rubber stop's height, or ask its maker")] Length? BumpSquash,
        [Input("travel down until the wheel hangs", "mm", AtLeast = 0, High = 400,
            Measure = "jack the frame until the tire leaves the ground and tape how far it rose over the axle")] Length? Droop,
        [Input("height of the axle center over the ground", "mm", MoreThan = 0, High = 800, Measure = "tape from level ground to the hub center with the weight on")] Length? LoadedRadius,
        [Input("height over the axle center as it was built", "mm", Low = -300, High = 1000, Measure = "take it from the maker's handbook, or from a vehicle known to be unaltered")]
        Length? OriginalHeight);

    public sealed record Result(
        [Output("frame datum over the axle center", "mm")] Length? RideHeight,
        [Output("frame datum over the ground", "mm")] Length? DatumHeight,
        [Output("travel left until the bump stop touches", "mm")] Length? BumpTravel,
        [Output("travel left until the bump stop is solid: full bump", "mm")] Length? FullBumpTravel,
        [Output("travel left to full droop", "mm")] Length? DroopTravel,
        [Output("change against the taped height", "mm")] Length? Change,
        [Output("rate at one wheel as it stands there, with whatever touches", "N/mm")] ForcePerLength? SpringRate,
        [Output("the same without the bump stop", "N/mm")] ForcePerLength? CarryingRate,
        [Output("what helper and bump stop take off one spring, told at the wheel; unknown where the helper's gap is", "kg")] UnitsNet.Mass? Relief);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double force = (x.Load.Kilograms - x.HeightLoad.Kilograms) * Gravity / 2, cs = x.BumpClearance?.Meters ?? double.PositiveInfinity; // N a wheel, m
        // A helper that touches from the start is in the rate at the wheel already.
        var helps = x.HelperRate is not null && x.HelperClearance?.Meters > 0;
        if (x.HelperRate is not null && x.HelperClearance is null) w.Caution("The helper is left out: tape the gap until it touches.");
        var stages = new SpringStages(x.WheelRate.NewtonsPerMeter, helps ? x.HelperRate!.Value.NewtonsPerMeter : 0, helps ? x.HelperClearance!.Value.Meters : double.PositiveInfinity,
            cs, x.BumpRate?.NewtonsPerMeter, x.BumpSquash?.Meters ?? double.PositiveInfinity, x.Droop?.Meters ?? double.PositiveInfinity);
        var (c, rate, rest) = stages.Under(force);
        w.Line("F", "(load - taped load) g / 2", $"({x.Load.Kilograms} - {x.HeightLoad.Kilograms}) x {Gravity} / 2", force, "N");
        w.Line("x", "F = k x, and more from where helper and stop touch", $"{force} = {stages.Rate / 1000} x ...", 1000 * c, "mm");
        if (rest is Rest.Solid or Rest.OnUnknownStop or Rest.AtDroop)
        {
            if (x.BumpClearance is not null || rest == Rest.AtDroop) w.Answer("travel", Verdict.Fail, Beyond(rest, x, c));
            if (x.BumpClearance is null) w.Caution(Beyond(rest, x, c));
            return new(null, null, null, null, null, null, null, null, rest == Rest.AtDroop ? null : Relief(x, stages, force, c, rest));
        }
        var h = x.Height.Meters - c; // m
        w.Line("h", "taped height - x", $"{x.Height.Millimeters} - {1000 * c}", 1000 * h, "mm");
        var droop = x.Droop?.Meters + c; // m
        var full = cs + x.BumpSquash?.Meters - c; // m
        if (x.BumpClearance is not null) Travel(w, h, cs - c, droop);
        if (x.BumpClearance is not null && full is { } left) w.Line("full bump", "gap + squash - x", $"{1000 * cs} + {x.BumpSquash!.Value.Millimeters} - {1000 * c}", 1000 * left, "mm");
        if (x.OriginalHeight is { } original)
            w.AtLeast("original", 1000 * h, original.Millimeters, "mm", Against(h - original.Meters), Practice, beyond: h < original.Meters - Sagged ? Verdict.Caution : Verdict.Pass);
        return new(Meters(h), Meters(h + x.LoadedRadius?.Meters), x.BumpClearance is null ? null : Meters(Math.Max(0, cs - c)), x.BumpClearance is null ? null : Meters(full),
            Meters(droop), Meters(-c), Rate(rate), Rate(stages.Rate + (c > stages.HelperAt ? stages.Helper : 0)), Relief(x, stages, force, c, rest));
    }

    /// <summary>What does not hang on the spring itself. The spring carries what it did when taped and k x more; all other force is on helper and stop.</summary>
    private static UnitsNet.Mass? Relief(Inputs x, SpringStages stages, double force, double c, Rest rest)
    {
        if (x.HelperRate is not null && x.HelperClearance is null) return null;
        // Against a stop of unknown rate only the helper is told; a helper without a gap is in the rate at the wheel already.
        var beside = rest == Rest.OnUnknownStop ? stages.Helper * Math.Max(0, c - stages.HelperAt) : rest == Rest.Free && c <= stages.HelperAt ? 0 : force - (stages.Rate * c); // N
        if (x.HelperClearance?.Meters == 0 && x.HelperRate is { } helper) beside += helper.NewtonsPerMeter * Math.Max(0, c);
        return UnitsNet.Mass.FromKilograms(Math.Max(0, beside) / Gravity);
    }

    private static void Travel(Worksheet w, double h, double left, double? droop)
    {
        var down = droop is { } d ? $", {1000 * d:0} mm to full droop" : "";
        w.Answer("travel", left <= 0 ? Verdict.Fail : left < LeastBump ? Verdict.Caution : Verdict.Pass,
            left <= 0 ? $"It rests on the bump stop{(left < -0.0005 ? $", pressed in by {-1000 * left:0} mm" : "")}: no travel is left for a bump. Stiffer or higher springs, or less load."
            : $"It stands {1000 * h:0} mm over the axle: {1000 * left:0} mm to the bump stop{down}." + (left < LeastBump ? " That is little: two inches are usual." : ""),
            1000 * left, "mm", left > 0 && left < LeastBump ? Practice : null);
    }

    private static string Against(double more) =>
        Math.Abs(more) < 0.0005 ? "It stands as high as it was built."
        : $"It stands {Math.Abs(1000 * more):0} mm {(more < 0 ? "lower" : "higher")} than it was built.";

    private static string Beyond(Rest rest, Inputs x, double c) => rest switch
    {
        Rest.Solid => $"{x.Load.Kilograms:0} kg press the bump stop solid: the springs cannot carry this load. No height is told.",
        Rest.OnUnknownStop => $"{x.Load.Kilograms:0} kg bring the axle onto its bump stop after {1000 * c:0} mm: without the stop's rate no height is told, and there is no travel left.",
        _ => $"With {x.Load.Kilograms:0} kg the wheels hang at full droop: the springs hold up more than there is. Measure the droop, the taped height and its load again.",
    };
}
