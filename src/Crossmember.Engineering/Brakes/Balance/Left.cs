using Crossmember.Engineering.Brakes.Chain;

namespace Crossmember.Engineering.Brakes.Balance;

/// <summary>What is left with one thing lost, each alone.</summary>
public readonly record struct Left(Reached BoosterDead, Reached FrontLost, Reached RearLost)
{
    /// <param name="deadForce">Pedal force in N with a dead booster.</param>
    /// <param name="circuitForce">Pedal force in N with a lost circuit.</param>
    /// <param name="bypass">Whether the rear valve opens when the front circuit is lost.</param>
    public static Left Of(in Rig rig, in Loading load, in PedalLine pedal, double deadForce, double circuitForce, double mu, string circuits, bool bypass)
    {
        var dead = Reached.Of(rig.TotalAt(pedal.DeadPressure(deadForce)) / load.Weight, LockUp.On(mu, rig, load).Deceleration);
        var line = pedal.Pressure(circuitForce);
        if (circuits == Failure.One) return new(dead, default, default);
        if (circuits == Failure.Diagonal)
        {
            // Half of both axles against the whole weight: as both whole ones against twice the weight on half the grip.
            var half = Reached.Of(rig.TotalAt(line) / load.Weight / 2, LockUp.On(mu / 2, rig, load with { Weight = 2 * load.Weight }).Deceleration);
            return new(dead, half, half);
        }
        var valves = bypass ? rig.Valves.Bypassed() : rig.Valves;
        return new(dead, Reached.Of(rig.Rear.At(valves.Rear(line)) / load.Weight, load.RearOnly(mu)), Reached.Of(rig.FrontAt(line) / load.Weight, load.FrontOnly(mu)));
    }
}
