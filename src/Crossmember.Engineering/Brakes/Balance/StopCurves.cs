using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Engineering.Brakes.Balance;

/// <summary>Deceleration over pedal force: all working, and with one thing lost at a time, as the circuits are split; nothing is drawn of circuits that nobody has described.</summary>
internal static class StopCurves
{
    private const int Points = 29;
    private const double MostForce = 700;

    public static void Draw(Worksheet w, in Rig rig, in Loading load, in PedalLine pedal, double mu, Stop.Inputs given)
    {
        var circuits = given.MasterKind == Failure.SingleMaster ? Failure.One : given.Circuits;
        double frontCap = given.FrontLostPressure?.Pascals / given.RearShare.DecimalFractions ?? double.PositiveInfinity, rearCap = given.RearLostPressure?.Pascals ?? double.PositiveInfinity;
        var all = LockUp.On(mu, rig, load).Deceleration;
        double[] x = new double[Points], working = new double[Points], dead = new double[Points], front = new double[Points], rear = new double[Points];
        for (var i = 0; i < Points; i++)
        {
            x[i] = MostForce * i / (Points - 1);
            working[i] = Reached.Of(rig.TotalAt(pedal.Pressure(x[i])) / load.Weight, all).Z;
            var left = Left.Of(rig, load, pedal, x[i], x[i], mu, circuits ?? Failure.One, given.Bypass == "yes", frontCap, rearCap);
            (dead[i], front[i], rear[i]) = (left.BoosterDead.Z, left.FrontLost.Z, left.RearLost.Z);
        }
        void Line(string name, double[] y) => w.Curve(new(name, "pedal force", "N", x, "deceleration in g", "1", y));
        Line("all working", working);
        if (pedal.Boosted) Line("booster dead", dead);
        if (circuits == Failure.Diagonal) Line("one half lost", [.. front.Zip(rear, Math.Min)]);
        if (circuits != Failure.FrontRear) return;
        Line("front circuit lost", front);
        Line("rear circuit lost", rear);
    }
}
