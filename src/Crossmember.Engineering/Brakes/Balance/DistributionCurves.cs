using System.Globalization;
using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Engineering.Brakes.Balance;

/// <summary>The two pictures of the balance: forces of one axle over the other, and grip used over deceleration.</summary>
internal static class DistributionCurves
{
    private const string OverX = "front braking force over weight", OverY = "rear braking force over weight", Z = "deceleration in g", Use = "grip used";
    private const int Points = 37;
    private const double From = 0.1, To = 1.0, Room = 1.15;

    /// <param name="mu">Grip of the road that the first lock is marked for.</param>
    public static void Draw(Worksheet w, in Rig rig, in Loading load, string? rule, double mu)
    {
        var top = Math.Min(To, 0.98 * load.Behind / load.Height);
        if (top <= From) return;
        Forces(w, rig, load, top, mu);
        Uses(w, rig, load, top, rule);
    }

    private static void Forces(Worksheet w, in Rig rig, in Loading load, double top, double mu)
    {
        List<double> idealX = [0], idealY = [0], x = [0], y = [0];
        for (var i = 1; i < Points; i++)
        {
            var z = top * i / (Points - 1);
            idealX.Add(load.IdealFront(z) / load.Weight);
            idealY.Add(load.IdealRear(z) / load.Weight);
            if (rig.Pressure(z * load.Weight) is not { } line) continue;
            x.Add(rig.FrontAt(line) / load.Weight);
            y.Add(rig.RearAt(line) / load.Weight);
        }
        w.Curve(new("ideal", OverX, "1", idealX, OverY, "1", idealY));
        w.Curve(new("installed", OverX, "1", x, OverY, "1", y));
        if (LockUp.On(mu, rig, load) is { Axle: not LocksFirst.Neither } first)
            w.Curve(new(string.Create(CultureInfo.InvariantCulture, $"first lock at {mu:0.0#}"), OverX, "1", [rig.FrontAt(first.Pressure) / load.Weight], OverY, "1", [rig.RearAt(first.Pressure) / load.Weight]));
        // Lines of equal deceleration only as far up as there is something to read.
        var reach = Room * Math.Max(idealY.Max(), y.DefaultIfEmpty().Max());
        for (var fifth = 1; fifth <= 5; fifth++)
        {
            double z = fifth / 5.0, up = Math.Min(z, reach);
            w.Curve(new(string.Create(CultureInfo.InvariantCulture, $"{z:0.0} g"), OverX, "1", [z - up, z], OverY, "1", [up, 0]) { IsGuide = true });
        }
    }

    private static void Uses(Worksheet w, in Rig rig, in Loading load, double top, string? rule)
    {
        List<double> at = [], front = [], rear = [];
        for (var i = 0; i < Points; i++)
        {
            var z = From + ((top - From) * i / (Points - 1));
            if (Utilization.At(z, rig, load) is not { } u) continue;
            at.Add(z);
            front.Add(u.Front);
            rear.Add(u.Rear);
        }
        if (at.Count == 0) return;
        w.Curve(new("front", Z, "1", at, Use, "1", front));
        w.Curve(new("rear", Z, "1", at, Use, "1", rear));
        w.Curve(new("both alike", Z, "1", [From, top], Use, "1", [From, top]) { IsGuide = true });
        if (rule is null) return;
        // Each limit as the rule draws it: the grip at most used over deceleration.
        if (AdhesionRule.DemandSlope(rule) is { } slope) w.Curve(new("limit, both axles", Z, "1", [0.1, 0.1 + (0.6 * slope)], Use, "1", [0.2, 0.8]));
        if (rule == Limits.BrakeRule.Car13) w.Curve(new("limit, rear in the band", Z, "1", [0.3, 0.45], Use, "1", [0.35, 0.5]));
        if (rule == Limits.BrakeRule.Van13) w.Curve(new("limit, rear instead", Z, "1", [0.15, 0.5, 0.61], Use, "1", [0.23, 0.58, 0.8]));
        if (rule == Limits.BrakeRule.Car135) w.Curve(new("limit, rear", Z, "1", [AdhesionRule.Low, AdhesionRule.High], Use, "1", [AdhesionRule.Low / 0.9, AdhesionRule.High / 0.9]));
    }
}
