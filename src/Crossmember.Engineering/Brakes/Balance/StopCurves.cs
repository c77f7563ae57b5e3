using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Engineering.Brakes.Balance;

/// <summary>Deceleration over pedal force: all working, and with one thing lost at a time.</summary>
internal static class StopCurves
{
    private const int Points = 29;
    private const double MostForce = 700;

    public static void Draw(Worksheet w, in Rig rig, in Loading load, in PedalLine pedal, double mu)
    {
        var all = LockUp.On(mu, rig, load).Deceleration;
        Rig front = rig with { Rear = AxleForce.None }, rear = rig with { Front = AxleForce.None };
        Line(w, "all working", rig, load, pedal, false, all);
        if (pedal.Boosted) Line(w, "booster dead", rig, load, pedal, true, all);
        Line(w, "front circuit lost", rear, load, pedal, false, load.RearOnly(mu));
        Line(w, "rear circuit lost", front, load, pedal, false, load.FrontOnly(mu));
    }

    private static void Line(Worksheet w, string name, in Rig rig, in Loading load, in PedalLine pedal, bool dead, double cap)
    {
        double[] x = new double[Points], y = new double[Points];
        for (var i = 0; i < Points; i++)
        {
            x[i] = MostForce * i / (Points - 1);
            y[i] = Reached.Of(rig.TotalAt(dead ? pedal.DeadPressure(x[i]) : pedal.Pressure(x[i])) / load.Weight, cap).Z;
        }
        w.Curve(new(name, "pedal force", "N", x, "deceleration in g", "1", y));
    }
}
