using Crossmember.Engineering.Brakes.Chain;

namespace Crossmember.Engineering.Brakes.Balance;

/// <summary>What is left with one thing lost, each alone.</summary>
/// <param name="FrontFloor">Line pressure in Pa that the pedal's way lets the other circuit reach with the front one lost; null where the leg is what ends it.</param>
public readonly record struct Left(Reached BoosterDead, Reached FrontLost, Reached RearLost, double? FrontFloor = null, double? RearFloor = null)
{
    /// <param name="deadForce">Pedal force in N with a dead booster.</param>
    /// <param name="circuitForce">Pedal force in N with a lost circuit.</param>
    /// <param name="frontCap">Most line pressure in Pa with the front circuit lost, where the pedal or the cylinder comes to its end; infinite where nothing is said.</param>
    /// <param name="bypass">Whether the rear valve opens when the front circuit is lost.</param>
    public static Left Of(in Rig rig, in Loading load, in PedalLine pedal, double deadForce, double circuitForce, double mu, string circuits, bool bypass, double frontCap = double.PositiveInfinity,
        double rearCap = double.PositiveInfinity)
    {
        var dead = Reached.Of(rig.TotalAt(pedal.DeadPressure(deadForce)) / load.Weight, LockUp.On(mu, rig, load).Deceleration);
        double leg = pedal.Pressure(circuitForce), front = Math.Min(leg, frontCap), rear = Math.Min(leg, rearCap);
        double? frontFloor = frontCap < leg ? frontCap : null, rearFloor = rearCap < leg ? rearCap : null;
        if (circuits == Failure.One) return new(dead, default, default);
        if (circuits == Failure.Diagonal)
        {
            // Half of both axles against the whole weight: as both whole ones against twice the weight on half the grip.
            var cap = LockUp.On(mu / 2, rig, load with { Weight = 2 * load.Weight }).Deceleration;
            return new(dead, Reached.Of(rig.TotalAt(front) / load.Weight / 2, cap), Reached.Of(rig.TotalAt(rear) / load.Weight / 2, cap), frontFloor, rearFloor);
        }
        var valves = bypass ? rig.Valves.Bypassed() : rig.Valves;
        return new(dead, Reached.Of(rig.Rear.At(valves.Rear(front)) / load.Weight, load.RearOnly(mu)), Reached.Of(rig.FrontAt(rear) / load.Weight, load.FrontOnly(mu)), frontFloor, rearFloor);
    }
}
