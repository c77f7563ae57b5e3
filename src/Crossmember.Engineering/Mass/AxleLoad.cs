using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using UnitsNet;

namespace Crossmember.Engineering.Mass;

/// <summary>Load on one axle from the total mass and its moment about the front axle.</summary>
/// <remarks>
/// Formula:  rear = Mx / L, front = M - Mx / L (M kg, Mx kg m about the front axle plane, L m)
/// Valid:    standing on level ground, two axles; braking, grades and a trailer move load beyond this
/// Source:   statics, docs/derivations/axle-and-wheel-load.md
/// Example:  2150 kg at 1291.9 mm behind the front axle, wheelbase 2560 mm -> front 1065 kg, rear 1085 kg
/// </remarks>
public sealed class AxleLoad() : Calculation<AxleLoad.Inputs, AxleLoad.Result>(new()
{
    Id = "mass.axle-load",
    Version = 1,
    Title = "Axle load",
    Purpose = "What each axle carries with everything fitted and loaded, against what it is rated for: bumpers, winches, spare carriers and racks all move it.",
    Formula = "rear = Mx / L, front = M - Mx / L",
    Validity = "Two axles, standing on level ground. Mx is the mass times its distance behind the front axle; what hangs behind the rear axle unloads the front.",
    Sources = ["Statics, derived"],
    Checks =
    [
        new("on-ground", Sense.AtLeast, "Does the center of gravity lie between the axles?"),
        new("rating", Sense.AtMost, "Does the axle carry no more than its rating?", "rating"),
    ],
    NoTrends =
    [
        new("total", "at one moment the front axle takes all of a change and the rear axle none"),
        new("momentX", "raises the rear axle's load as much as it lowers the front axle's"),
        new("wheelbase", "moves load from rear to front where the moment is positive"),
        new("rating", "only compared with the result"),
    ],
    Examples =
    [
        new(new Dictionary<string, string> { ["total"] = "2150 kg", ["momentX"] = "2777.6 kg m", ["wheelbase"] = "2560 mm", ["axle"] = "front" },
            new Dictionary<string, double> { ["load"] = 1065 }, 1e-9,
            "Wheels 545 + 520 front, 560 + 525 kg rear: moment 1085 x 2.560, by hand", Provenance.Derived),
        new(new Dictionary<string, string> { ["total"] = "1800 kg", ["momentX"] = "1890 kg m", ["wheelbase"] = "1.8 m", ["axle"] = "rear" },
            new Dictionary<string, double> { ["load"] = 1050 }, 1e-9,
            "School physics exercise, from memory: 1800 kg, center 1.05 m behind the front axle, each rear wheel 5145 N at 9.8 m/s2", Provenance.HandbookMemory),
    ],
    Cautions =
    [
        "An axle's rating is that of its weakest part: axle, springs, wheels or tires. "
        + "Stronger springs alone do not raise it; the maker's plate and local rules decide.",
        "Weigh the finished vehicle, loaded as it will be used, before it is handed over.",
    ],
})
{
    public sealed record Inputs(
        [Input("total mass", "kg", MoreThan = 0, Measure = AxleBalance.HowTotal)] UnitsNet.Mass Total,
        [Input("moment of the mass about the front axle, positive to the rear", "kg m", Measure = AxleBalance.HowMomentX)] MassMoment MomentX,
        [Input("wheelbase", "m", MoreThan = 0, Low = 1.2, High = 8, Measure = AxleBalance.HowWheelbase)] Length Wheelbase,
        [Input("axle", OneOf = [AxleBalance.FrontAxle, AxleBalance.RearAxle])] string Axle,
        [Input("rating of the axle", "kg", MoreThan = 0,
            Measure = "read the plate; else the lowest of axle, springs, wheels and tires, from their makers")] UnitsNet.Mass? Rating);

    public sealed record Result([Output("load on the axle; unknown where an axle would leave the ground", "kg")] UnitsNet.Mass? Load);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double M = x.Total.Kilograms, Mx = x.MomentX.KilogramMeters, L = x.Wheelbase.Meters; // kg, kg m, m
        var balance = new AxleBalance(M, Mx, L);
        w.Line("rear", "Mx / L", $"{Mx} / {L}", balance.Rear, "kg");
        if (x.Axle == AxleBalance.FrontAxle) w.Line("front", "M - Mx / L", $"{M} - {balance.Rear}", balance.Front, "kg");
        var least = Math.Min(balance.Front, balance.Rear);
        w.AtLeast("on-ground", least, 0, "kg", least < 0 ? Beyond(balance)
            : $"The center of gravity lies {1000 * Mx / M:0} mm behind the front axle, between the axles.");
        if (least < 0) return new(null);
        var load = balance.On(x.Axle);
        if (x.Rating is { } rating)
            w.AtMost("rating", load, rating.Kilograms, "kg", $"The {x.Axle} axle carries {load:0} kg of {rating.Kilograms:0} kg.");
        return new(UnitsNet.Mass.FromKilograms(load));
    }

    private static string Beyond(AxleBalance b) =>
        $"By these figures the center of gravity lies {(b.Rear < 0 ? "ahead of the front axle and the rear" : "behind the rear axle and the front")} axle would lift: "
        + "check the readings, the places of the parts and the wheelbase.";
}
