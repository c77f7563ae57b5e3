using System.Globalization;
using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Steering;

/// <summary>What is left around the front tires and the linkage with another tire, at full lock and full bump.</summary>
/// <remarks>
/// Formula:  lock gap - (dW / 2 + dET) cos d - dR sin d; fender gap - travel - dR; linkage gap - share x travel, to where the stop is squeezed solid
/// Valid:    the places measured with the tire of the survey stay the nearest ones; rigid tire and axle
/// Source:   geometry, docs/derivations/turning.md; 19 mm to be left: common practice, no source
/// Example:  40 mm at 35 deg, 1 in more radius, 1/2 in more half width -> 15.0 mm
/// </remarks>
public sealed class TireClearance() : Calculation<TireClearance.Inputs, TireClearance.Result>(new()
{
    Id = "steering.clearance",
    Version = 1,
    Title = "Tire and linkage clearance",
    Purpose = "Whether another tire still clears frame, springs and fenders at full lock and full bump, and the drag link and tie rod clear what is above them.",
    Formula = "at lock: gap - (dW / 2 + dET) cos d - dR sin d; under the fender: gap - s - dR; linkage: gap - share x s, s the rise until the stop is squeezed solid",
    Validity = "Counts from gaps measured with one tire to another by half the change of width (dW), the change of wheel offset (dET, inboard positive) and of radius (dR). The places nearest at the "
        + "survey are taken to stay the nearest: a much wider tire may touch elsewhere first. Full bump is the gap to the stop and what the stop squeezes; where that is not known it is told to where "
        + "the stop touches, and passes nothing. Tires grow with speed and lean with load; nominal sizes differ from real ones by half an inch.",
    Sources = ["Geometry, derived (docs/derivations/turning.md)", "19 mm (3/4 in) to be left: common practice, no source"],
    Checks =
    [
        new("lock", Sense.AtLeast, "Does the tire clear frame and spring at full lock?", "lockGap"),
        new("fender", Sense.AtLeast, "Does the tire clear the fender at full bump?", "fenderGap", "surveyRideHeight", "rideHeights", "bumpTravels"),
        new("linkage", Sense.AtLeast, "Do drag link and tie rod clear spring and frame at full bump?", "linkageGap", "surveyRideHeight", "rideHeights", "bumpTravels"),
    ],
    Trends =
    [
        new("lockGap", "atLock", '+', 0, 100), new("fenderGap", "underFender", '+', 50, 250), new("linkageGap", "atLinkage", '+', 50, 250), new("bumpTravels", "underFender", '-', 20, 150),
        new("surveyDiameter", "underFender", '+', 27, 36), new("surveyWidth", "atLock", '+', 6, 14), new("surveyOffset", "atLock", '+', -50, 50), new("offsets", "atLock", '-', -50, 50),
        new("fittedDiameter", "underFender", '-', 27, 36), new("widths", "atLock", '-', 6, 14), new("linkageShare", "atLinkage", '-', 0.3, 1), new("rideHeights", "underFender", '+', 150, 300),
        new("surveyRideHeight", "underFender", '-', 150, 300),
    ],
    NoTrends =
    [
        new("innerAngles", "turns width into radius: either may be the one that changed"), new("fullBumpTravels", "takes the place of the travel until the stop touches"),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["surveyDiameter"] = "31 in", ["surveyWidth"] = "10 in", ["surveyOffset"] = "0 mm", ["fittedDiameter"] = "33 in", ["widths"] = """{"left":"11 in","right":"11 in"}""",
                ["offsets"] = """{"left":"0 mm","right":"0 mm"}""", ["innerAngles"] = """{"left":"35 deg","right":"33 deg"}""", ["lockGap"] = "40 mm", ["fenderGap"] = "140 mm", ["linkageGap"] = "95 mm",
                ["surveyRideHeight"] = "180 mm", ["rideHeights"] = """{"touring":"180 mm"}""", ["bumpTravels"] = """{"touring":"80 mm"}""", ["linkageShare"] = "1",
            },
            new Dictionary<string, double> { ["atLock"] = 15.028, ["underFender"] = 34.6, ["atLinkage"] = 15, ["least"] = 15 }, 0.0002,
            "40 - 12.7 cos 35 - 25.4 sin 35 = 40 - 10.403 - 14.569; 140 - 80 - 25.4; 95 - 80; by hand", Provenance.Derived),
    ],
    Cautions =
    [
        "Figures choose a tire; only turning and flexing passes it: lock to lock at full bump and full droop, on each wheel alone, before the vehicle is driven. A tire that catches takes the steering.",
        "Larger tires and other offsets load hubs, kingpins, steering and brakes harder, and may need an approval: local rules and the axle's maker come first.",
    ],
})
{
    private const double Left = 19.05; // mm, 3/4 in: common practice, no source

    public sealed record Inputs(
        [Input("diameter of the tire fitted at the survey", "in", MoreThan = 0, Low = 24, High = 50, Measure = "tape once around the tread and divide by 3.1416")] Length SurveyDiameter,
        [Input("width of the tire fitted at the survey", "in", MoreThan = 0, Low = 4, High = 20, Measure = "caliper from sidewall to sidewall at hub height")] Length SurveyWidth,
        [Input("wheel offset at the survey: rim center inboard of the mounting face is positive", "mm", Low = -120, High = 120,
            Measure = "back space less half the width over the rim's flanges: lay a straightedge over the inner flange and measure to the mounting face")] Length SurveyOffset,
        [Input("diameter of the front tires fitted", "in", MoreThan = 0, Low = 24, High = 50, Measure = "comes from the tire size")] Length FittedDiameter,
        [Input("width of the front tires fitted", "in", MoreThan = 0, Low = 4, High = 20, Measure = "comes from the tire size")] Members<Length> Widths,
        [Input("wheel offset of the front wheels fitted", "mm", Low = -120, High = 120, Measure = "as at the survey, on the wheels to be fitted")] Members<Length>? Offsets,
        [Input("angle of the inner wheel at the stop, turning to each side", "deg", MoreThan = 0, Low = 5, High = 50, Measure = HowToMeasureSteering.InnerAngle)] Members<Angle> InnerAngles,
        [Input("least gap between tire and frame, spring or arm at full lock, at the survey", "mm", AtLeast = 0, High = 300, Measure = "turn lock to lock and measure the nearest place on both sides")]
        Length? LockGap,
        [Input("gap over the tire to fender or inner fender at ride height, at the survey", "mm", AtLeast = 0, High = 500, Measure = "measure straight up from the tread, weight on the wheels")] Length? FenderGap,
        [Input("least gap over drag link and tie rod at ride height, at the survey", "mm", AtLeast = 0, High = 500, Measure = "measure straight up from drag link and tie rod to spring, pan and frame")] Length? LinkageGap,
        [Input("share of the axle's travel by which that gap closes", MoreThan = 0, High = 1, Default = 1, Measure = "1 for a tie rod at the axle, about 0.5 for the middle of a drag link")] Ratio LinkageShare,
        [Input("frame datum over axle center at the survey", "mm", Low = 50, High = 600, Measure = HowToMeasureSteering.PointsRideHeight)] Length? SurveyRideHeight,
        [Input("frame datum over axle center in each condition", "mm", Low = 50, High = 600, Measure = HowToMeasureSteering.RideHeight)] Members<Length>? RideHeights,
        [Input("travel from ride height until the bump stop touches, in each condition", "mm", AtLeast = 0, High = 300, Measure = HowToMeasureSteering.BumpTravel)] Members<Length>? BumpTravels,
        [Input("travel from ride height until the bump stop is squeezed solid, in each condition", "mm", AtLeast = 0, High = 300, Measure = HowToMeasureSteering.FullBumpTravel)] Members<Length>? FullBumpTravels);

    public sealed record Result(
        [Output("left between tire and frame or spring at full lock", "mm")] Length? AtLock,
        [Output("left over the tire at full bump", "mm")] Length? UnderFender,
        [Output("left over drag link and tie rod at full bump", "mm")] Length? AtLinkage,
        [Output("least of these", "mm")] Length? Least);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        var d = x.InnerAngles.Items.Max(i => i.Value.Degrees); // deg
        if (d >= 90)
        {
            w.Caution("No front wheel turns through a right angle: read the turn plates again.");
            return null;
        }
        double dR = (x.FittedDiameter - x.SurveyDiameter).Millimeters / 2, dW = x.Widths.Items.Max(i => i.Value.Millimeters) - x.SurveyWidth.Millimeters; // mm
        var dET = x.Offsets is { } offsets ? offsets.Items.Max(i => i.Value.Millimeters) - x.SurveyOffset.Millimeters : 0; // mm
        if (x.Offsets is null && x.LockGap is not null) w.Caution("The offset of the wheels fitted is not known: it is taken as at the survey. Wheels set farther out clear the spring and lean on the kingpins.");
        double? lockLeft = x.LockGap?.Millimeters - (((dW / 2) + dET) * Math.Cos(d * Math.PI / 180)) - (dR * Math.Sin(d * Math.PI / 180)); // mm
        if (lockLeft is { } l) w.Line("lock", "gap - (dW / 2 + dET) cos d - dR sin d", $"{x.LockGap!.Value.Millimeters} - ({dW} / 2 + {dET}) cos {d} - {dR} sin {d}", l, "mm");
        double? rise = Rise(x, w), under = x.FenderGap?.Millimeters - rise - dR; // mm
        if (under is { } u) w.Line("fender", "gap - s - dR", $"{x.FenderGap!.Value.Millimeters} - {rise!.Value} - {dR}", u, "mm");
        var linkage = x.LinkageGap?.Millimeters - (rise * x.LinkageShare.DecimalFractions); // mm
        if (linkage is { } g) w.Line("linkage", "gap - share x s", $"{x.LinkageGap!.Value.Millimeters} - {x.LinkageShare.DecimalFractions} x {rise!.Value}", g, "mm");
        Judge(w, "lock", lockLeft, "between tire and frame or spring at full lock");
        var touching = x.FullBumpTravels is null;
        var at = touching ? "when the stop touches" : "at full bump";
        Judge(w, "fender", under, "over the tire " + at, touching);
        Judge(w, "linkage", linkage, "over drag link and tie rod " + at, touching);
        var all = new[] { lockLeft, under, linkage }.OfType<double>().ToList();
        return new(Of(lockLeft), Of(under), Of(linkage), all.Count > 0 ? Of(all.Min()) : null);
    }

    /// <summary>How far the axle rises from where it stood at the survey until its stop is solid, else until it touches, mm: the farthest of the conditions.</summary>
    private static double? Rise(Inputs x, Worksheet w)
    {
        if (x is not { SurveyRideHeight: { } survey, RideHeights: { } heights, } || (x.FullBumpTravels ?? x.BumpTravels) is not { } travels) return null;
        double? farthest = null;
        foreach (var (condition, height) in heights.Items)
        {
            var (named, travel) = travels.Items.FirstOrDefault(t => t.Name == condition);
            if (named is null) return null;
            var s = (survey - height + travel).Millimeters;
            w.Line($"s {condition}", "ride height at the survey - ride height + bump travel", $"{survey.Millimeters} - {height.Millimeters} + {travel.Millimeters}", s, "mm");
            farthest = Math.Max(farthest ?? s, s);
        }
        return farthest;
    }

    private static void Judge(Worksheet w, string check, double? left, string where, bool touching = false)
    {
        if (left is not { } mm) return;
        var told = Math.Abs(mm).ToString("0", CultureInfo.InvariantCulture);
        if (mm <= 0) w.AtLeast(check, mm, Left, "mm", $"It touches: {told} mm are lacking {where}.", "what is left by the measured gaps");
        else w.AtLeast(check, mm, Left, "mm", (mm < Left ? $"Only {told} mm are left {where}; {Left:0} mm is held to be enough." : $"{told} mm are left {where}.")
            + (touching ? " How far the stop squeezes from there is not known, and takes as much more." : ""),
            "common practice, no source", watch: touching ? double.PositiveInfinity : null, beyond: Verdict.Caution);
    }

    private static Length? Of(double? mm) => mm is { } m ? Length.FromMillimeters(m) : null;
}
