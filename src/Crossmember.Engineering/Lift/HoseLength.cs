using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Lift;

/// <summary>How long a brake hose must be at full droop and full lock.</summary>
/// <remarks>
/// Formula:  straight = sqrt((kx + ex')^2 + (ky + ey')^2 + drop^2), e' = e turned by the lock either way; drop = zf + h - za at full droop; hose at least straight + slack
/// Valid:    ends as points; the hose's bends, twist and clamps ask for the slack
/// Source:   docs/derivations/lift.md; slack of an inch or a tenth, whichever is more: common practice, no source
/// Example:  bracket 100 mm ahead and 150 mm inboard, 200 mm above: 269.3 mm straight, 296.2 mm wanted
/// </remarks>
public sealed class HoseLength() : Calculation<HoseLength.Inputs, HoseLength.Result>(new()
{
    Id = "lift.hose-length",
    Version = 1,
    Title = "Brake hose at droop and lock",
    Purpose = "A hose that was right before the lift is torn out when the wheel hangs at full lock: how long it must be, with slack.",
    Formula = "straight = sqrt((kx + ex')^2 + (ky + ey')^2 + (zf + h - za)^2) at droop, e' = e turned by the lock either way; wanted = straight + the larger of 1 in and a tenth",
    Validity = "Both ends as points, axle level in droop. One wheel hanging by itself drops its side farther. Whether the hose rubs, kinks or is pinched at bump and at the other lock is seen on the vehicle only.",
    Sources = ["Geometry, derived (docs/derivations/lift.md)", "Slack of an inch or a tenth, whichever is more: common practice, no source"],
    Checks = [new("length", Sense.AtLeast, "Is the hose long enough at full droop and lock?", "length")],
    Trends = [new("droopTravel", "straight", '+', 60, 200), new("frameHeight", "straight", '+', 0, 200), new("axleHeight", "straight", '-', 0, 100), new("rideHeights", "straight", '+', 150, 400)],
    NoTrends =
    [
        new("along", "its sign tells the side"), new("across", "its sign tells the side"), new("knuckleAlong", "its sign tells the side"), new("knuckleAcross", "its sign tells the side"),
        new("lock", "brings the end nearer or farther by the side it lies on"), new("length", "only compared with the result"),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["rideHeights"] = """{"empty":"150 mm"}""", ["droopTravel"] = """{"empty":"100 mm"}""", ["frameHeight"] = "0 mm", ["axleHeight"] = "50 mm", ["along"] = "100 mm", ["across"] = "150 mm",
                ["length"] = "300 mm",
            },
            new Dictionary<string, double> { ["straight"] = 269.258, ["wanted"] = 296.184 }, 0.0001, "sqrt(100^2 + 150^2 + 200^2) and a tenth more, by hand", Provenance.Derived),
    ],
    Cautions =
    [
        "Brakes hold lives: hoses are bought ready-made and marked to a road standard, never made up from fuel or air hose, never spliced, never used to hang a caliper on. New hoses, bled and pressure-tested, "
            + "are looked over by somebody qualified before the first drive.",
        "Turn the wheels from lock to lock at full droop, at ride height and at bump, and look that nothing pulls, rubs or is pinched.",
    ],
})
{
    public sealed record Inputs(
        [Input("ride heights in each condition", "mm", Measure = HowToMeasureLift.RideHeight)] Members<Length> RideHeights,
        [Input("travel to full droop in each condition", "mm", Measure = HowToMeasureLift.Droop)] Members<Length> DroopTravel,
        [Input("end on the frame over the frame datum", "mm", Measure = "tape it; negative beneath the datum")] Length FrameHeight,
        [Input("end on the axle or brake over the axle center", "mm", Measure = "tape it; negative beneath the center")] Length AxleHeight,
        [Input("way to the rear from the end on the frame to the kingpin, or to the end on the axle where nothing steers", "mm", Measure = "plumb both points to the floor and tape; negative to the front")] Length Along,
        [Input("way to the outside from the end on the frame to the same point", "mm", Measure = "plumb both points to the floor and tape; negative to the inside")] Length Across,
        [Input("way to the rear from the kingpin to the hose's end at the brake, wheels straight", "mm", Measure = "tape it; leave out where nothing steers")] Length? KnuckleAlong,
        [Input("way to the outside from the kingpin to the hose's end at the brake, wheels straight", "mm", Measure = "tape it; leave out where nothing steers")] Length? KnuckleAcross,
        [Input("largest lock of the wheel", "deg", AtLeast = 0, High = 60, Measure = "put a board against the wheel and an angle finder on the floor lines")] Angle? Lock,
        [Input("length of the hose between its fittings", "mm", MoreThan = 0, Measure = "tape it off the vehicle, straight, fitting to fitting")] Length? Length);

    public sealed record Result(
        [Output("straight between both ends at full droop and the worse lock", "mm")] Length Straight,
        [Output("hose wanted, with slack", "mm")] Length Wanted);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        var h = TravelHeights.Of(x.RideHeights, null, x.DroopTravel).Highest; // m
        double drop = x.FrameHeight.Meters + h - x.AxleHeight.Meters, kx = x.Along.Meters, ky = x.Across.Meters; // m
        double ex = x.KnuckleAlong?.Meters ?? 0, ey = x.KnuckleAcross?.Meters ?? 0, lock_ = x.Lock?.Radians ?? 0; // m, rad
        double At(double turn)
        {
            double along = kx + (ex * Math.Cos(turn)) - (ey * Math.Sin(turn)), across = ky + (ex * Math.Sin(turn)) + (ey * Math.Cos(turn));
            return Math.Sqrt((along * along) + (across * across) + (drop * drop));
        }
        double out_ = At(lock_), in_ = At(-lock_), straight = Math.Max(out_, in_), wanted = straight + Math.Max(0.0254, 0.1 * straight); // m
        w.Line("drop", "zf + h - za", $"{x.FrameHeight.Meters} + {h} - {x.AxleHeight.Meters}", drop, "m");
        w.Line("one lock", "sqrt((kx + ex')^2 + (ky + ey')^2 + drop^2)", $"k ({kx}, {ky}), e ({ex}, {ey}) turned {lock_ * 180 / Math.PI} deg, drop {drop}", out_, "m");
        w.Line("other lock", "the same turned the other way", $"turned {-lock_ * 180 / Math.PI} deg", in_, "m");
        w.Line("wanted", "straight + larger of 1 in and a tenth", $"{straight} + larger of 0.0254 and 0.1 x {straight}", wanted, "m");
        if (x.Length is { } fitted)
            w.AtLeast("length", fitted.Millimeters, 1000 * straight, "mm", fitted.Meters < straight
                ? $"At full droop{(lock_ > 0 ? " and lock" : "")} the ends are {1000 * straight:0} mm apart and the hose is {fitted.Millimeters:0} mm: it is torn out. {1000 * wanted:0} mm or more."
                : $"At full droop{(lock_ > 0 ? " and lock" : "")} the ends are {1000 * straight:0} mm apart; the hose is {fitted.Millimeters:0} mm, {1000 * wanted:0} mm are wanted with slack.",
                "slack: common practice, no source", watch: 1000 * wanted);
        return new(Length.FromMeters(straight), Length.FromMeters(wanted));
    }
}
