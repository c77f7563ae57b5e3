using System.Globalization;
using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Brakes.Limits;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Engineering.Brakes.Balance;

/// <summary>What is said about the first axle to lock, and its picture.</summary>
internal static class LockFindings
{
    /// <summary>Wet ice, snow, wet, damp, dry.</summary>
    private static readonly double[] s_roads = [0.1, 0.2, 0.4, 0.6, 0.8];

    /// <summary>Least grip for which rules ask how much of it is used; the order of locking counts on less too.</summary>
    private const double AskedFrom = 0.2;

    /// <summary>Slope of the demand that stands in for good practice where no rule asks.</summary>
    private const double UsualSlope = 0.85;

    /// <summary>Of the demand z >= 0.1 + slope (mu - 0.2), over mu.</summary>
    public static double EfficiencyAsked(double mu, double slope = UsualSlope) => (0.1 + (slope * (Math.Clamp(mu, AskedFrom, 0.8) - AskedFrom))) / Math.Clamp(mu, AskedFrom, 0.8);

    public static string Name(LocksFirst axle) => axle switch { LocksFirst.Front => "front", LocksFirst.Rear => "rear", LocksFirst.Both => "both", _ => "neither" };

    /// <returns>Least efficiency of all roads looked at.</returns>
    public static double Answer(Worksheet w, double mu, string? rule, in LockPoint given, double? pedal, in Rig rig, in Loading load)
    {
        var ruled = rule is null ? null : AdhesionRule.DemandSlope(rule);
        var slope = ruled ?? UsualSlope;
        double least = given.Efficiency(mu), on = mu, lowest = double.NaN, highest = double.NaN;
        var margin = least - EfficiencyAsked(mu, slope);
        if (given.Axle == LocksFirst.Rear) (lowest, highest) = (mu, mu);
        foreach (var road in s_roads)
        {
            var at = LockUp.On(road, rig, load);
            if (at.Axle == LocksFirst.Neither) continue;
            if (at.Axle == LocksFirst.Rear) (lowest, highest) = (Math.Min(road, double.IsNaN(lowest) ? road : lowest), Math.Max(road, double.IsNaN(highest) ? road : highest));
            if (road < AskedFrom) continue;
            least = Math.Min(least, at.Efficiency(road));
            if (at.Efficiency(road) - EfficiencyAsked(road, slope) is var m && m < margin) (margin, on) = (m, road);
        }
        var leg = pedal is { } f ? $", with {f:0} N on the pedal" : "";
        var here = string.Create(CultureInfo.InvariantCulture, $"On a road with grip {mu:0.0#} the {(given.Axle == LocksFirst.Both ? "front and rear wheels lock together" : $"{Name(given.Axle)} wheels lock first")}, at {given.Deceleration:0.00} g and {given.Pressure / 1e6:0.0#} MPa{leg}");
        var roads = lowest == highest ? $"with grip {lowest:0.0#}" : $"with grip from {lowest:0.0#} to {highest:0.0#}";
        w.Answer("front-first", double.IsNaN(lowest) ? Verdict.Pass : Verdict.Caution,
            double.IsNaN(lowest) ? $"{here}; on no road looked at are the rear ones first."
            : given.Axle == LocksFirst.Rear ? $"{here}: a vehicle whose rear wheels lock first swaps ends. It does so on roads {roads}."
            : $"{here}; but on roads {roads} the rear ones do: a vehicle whose rear wheels lock first swaps ends.", given.Pressure / 1e6, "MPa", "common practice, no source");
        var asked = EfficiencyAsked(on, slope);
        w.AtLeast("efficiency", asked + margin, asked, "1", $"On a road with grip {on:0.0#} {100 * (asked + margin):0} % of it is used when the first axle locks; {(ruled is null ? $"{100 * asked:0} % is good practice." : $"the rule asks {100 * asked:0} %. {BrakeRule.LocalLaw}")}",
            ruled is null ? "common practice after the line of UN Regulation 13 Annex 10, from memory" : rule == BrakeRule.Car13H ? AdhesionRule.From13H : $"{AdhesionRule.From71320}; the line from memory", beyond: Verdict.Caution);
        return least;
    }

    /// <summary>Efficiency over grip, a line for each axle that locks first there.</summary>
    public static void Draw(Worksheet w, in Rig rig, in Loading load)
    {
        const int Points = 46;
        List<double> x = [], y = [];
        var axle = LocksFirst.Neither;
        for (var i = 0; i < Points; i++)
        {
            var mu = 0.1 + (0.02 * i);
            var at = LockUp.On(mu, rig, load);
            if (at.Axle == LocksFirst.Neither || at.Deceleration <= 0) continue;
            if (at.Axle != axle && x.Count > 0)
            {
                Close(w, axle, x, y);
                (x, y) = ([x[^1]], [y[^1]]);
            }
            axle = at.Axle;
            x.Add(mu);
            y.Add(at.Efficiency(mu));
        }
        Close(w, axle, x, y);
    }

    private static void Close(Worksheet w, LocksFirst axle, List<double> x, List<double> y)
    {
        if (x.Count > 1) w.Curve(new($"{Name(axle)} locks first", "grip of the road", "1", x, "share of the grip used", "1", y));
    }
}
