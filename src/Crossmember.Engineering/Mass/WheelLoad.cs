using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using UnitsNet;

namespace Crossmember.Engineering.Mass;

/// <summary>Load on one wheel from the total mass and its moments.</summary>
/// <remarks>
/// Formula:  axle load as in mass.axle-load; right = axle (1/2 + y / T), left = axle (1/2 - y / T), y = My / M to the right (kg, kg m, m)
/// Valid:    level ground, standing; both axles are taken to see the same lateral offset, so a twisted frame or unequal springs (cross weight) do not show
/// Source:   statics, docs/derivations/axle-and-wheel-load.md
/// Example:  2000 kg, rear axle 1000 kg, y 20 mm to the right, track 1.6 m -> rear right 512.5 kg
/// </remarks>
public sealed class WheelLoad() : Calculation<WheelLoad.Inputs, WheelLoad.Result>(new()
{
    Id = "mass.wheel-load",
    Version = 1,
    Title = "Wheel load",
    Purpose = "What each tire and spring carries, when weight is added off the center line: fuel tank, battery, winch, spare.",
    Formula = "axle: rear Mx / L, front M - Mx / L; y = My / M; right = axle (1/2 + y / T), left = axle (1/2 - y / T)",
    Validity = "Two axles, standing on level ground. Both axles are assumed to see the same lateral offset of the center of gravity: "
        + "unequal springs or a twisted frame shift load diagonally, which only four scales show (a few per cent of the wheel load is common).",
    Sources = ["Statics, derived"],
    Checks = [new("on-ground", Sense.AtLeast, "Does the center of gravity lie between the wheels?")],
    NoTrends =
    [
        new("total", "at fixed moments it moves the center of gravity as well"),
        new("momentX", "raises the rear wheels' load as much as it lowers the front wheels'"),
        new("momentY", "raises the right wheel's load as much as it lowers the left wheel's"),
        new("wheelbase", "moves load from rear to front where the moment is positive"),
        new("track", "a wider track evens the two wheels, one up and one down"),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["total"] = "2000 kg", ["momentX"] = "2500 kg m", ["momentY"] = "40 kg m",
                ["wheelbase"] = "2.5 m", ["track"] = "1.6 m", ["axle"] = "rear", ["side"] = "right",
            },
            new Dictionary<string, double> { ["load"] = 512.5 }, 1e-9,
            "1000 kg on the rear axle, center 20 mm right of the middle: 1000 (1/2 + 0.02 / 1.6), by hand", Provenance.Derived),
    ],
    Cautions = ["Weigh the finished vehicle on four scales, loaded as it will be used, before wheel loads are relied on for tires, springs or brakes."],
})
{
    public sealed record Inputs(
        [Input("total mass", "kg", MoreThan = 0, Measure = AxleBalance.HowTotal)] UnitsNet.Mass Total,
        [Input("moment of the mass about the front axle, positive to the rear", "kg m", Measure = AxleBalance.HowMomentX)] MassMoment MomentX,
        [Input("moment of the mass about the center line, positive to the right", "kg m", Measure = AxleBalance.HowMomentY)] MassMoment MomentY,
        [Input("wheelbase", "m", MoreThan = 0, Low = 1.2, High = 8, Measure = AxleBalance.HowWheelbase)] Length Wheelbase,
        [Input("track of the axle", "m", MoreThan = 0, Low = 0.8, High = 2.6, Measure = AxleBalance.HowTrack)] Length Track,
        [Input("axle", OneOf = [AxleBalance.FrontAxle, AxleBalance.RearAxle])] string Axle,
        [Input("side", OneOf = [AxleBalance.LeftSide, AxleBalance.RightSide])] string Side);

    public sealed record Result([Output("load on the wheel; unknown where a wheel would leave the ground", "kg")] UnitsNet.Mass? Load);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double M = x.Total.Kilograms, Mx = x.MomentX.KilogramMeters, My = x.MomentY.KilogramMeters, L = x.Wheelbase.Meters; // kg, kg m, m
        var T = x.Track.Meters; // m
        var balance = new AxleBalance(M, Mx, L);
        double axle = balance.On(x.Axle), y = My / M, share = AxleBalance.Share(x.Side, y, T);
        var load = axle * share;
        w.Line("rear", "Mx / L", $"{Mx} / {L}", balance.Rear, "kg");
        if (x.Axle == AxleBalance.FrontAxle) w.Line("front", "M - Mx / L", $"{M} - {balance.Rear}", balance.Front, "kg");
        w.Line("y", "My / M", $"{My} / {M}", y, "m");
        var sign = x.Side == AxleBalance.RightSide ? "+" : "-";
        w.Line("share", $"1/2 {sign} y / T", $"1/2 {sign} {y} / {T}", share, "1");
        w.Line("load", "axle x share", $"{axle} x {share}", load, "kg");
        // The smallest of all: a wheel that gains load because its neighbour would lift is no answer either.
        var least = Math.Min(Math.Min(balance.Front, balance.Rear), axle * (0.5 - (Math.Abs(y) / T)));
        w.AtLeast("on-ground", least, 0, "kg", least < 0
            ? "By these figures a wheel would lift off level ground: check the readings, the places of the parts, wheelbase and track."
            : $"The center of gravity lies between the wheels: {1000 * Mx / M:0} mm behind the front axle, "
                + $"{1000 * Math.Abs(y):0} mm {(y < 0 ? "left" : "right")} of the middle.");
        return new(least < 0 ? null : UnitsNet.Mass.FromKilograms(load));
    }
}
