namespace Crossmember.Engineering.Brakes.Pedal;

/// <summary>Air in a booster and its reservoir when the engine is dead: what each stroke of the pedal lets in.</summary>
/// <remarks>
/// Formula:  pressed: vacuum side p Vf / (Vf - A s), air side up to the air's pressure as far as the stroke needs it; let go: p' (Vf + Vr) = p Vf + pr (Vr + A s)
/// Valid:    isothermal, tight check valve, pressed and let go all the way
/// Source:   balance of air, derived in docs/derivations/brake-pedal.md
/// </remarks>
/// <param name="Front">Vacuum side with the pedal up, reservoir included, m3.</param>
/// <param name="Rear">Air side with the pedal up, m3.</param>
/// <param name="Swept">What a stroke sweeps, m3.</param>
/// <param name="Area">m2.</param>
/// <param name="Air">Pressure of the air, Pa.</param>
internal readonly record struct VacuumStore(double Front, double Rear, double Swept, double Area, double Efficiency, double Air)
{
    /// <summary>One stroke from an absolute pressure in Pa: what the booster adds in N, and the pressure after it.</summary>
    /// <param name="input">Force on the push rod, N.</param>
    public (double Assist, double After) Stroke(double pressure, in Booster booster, double input)
    {
        var pressed = pressure * Front / (Front - Swept);
        var force = Math.Max(0, Air - pressed) * Area * Efficiency;
        var assist = Math.Max(0, (booster with { Assist = force }).Output(input) - input);
        var rear = Math.Min(Air, pressed + (assist / (Area * Efficiency)));
        return (assist, Math.Min(Air, ((pressure * Front) + (rear * (Rear + Swept))) / (Front + Rear)));
    }
}
