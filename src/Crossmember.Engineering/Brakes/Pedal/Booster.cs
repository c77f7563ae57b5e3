namespace Crossmember.Engineering.Brakes.Pedal;

/// <summary>A brake booster: force on the master cylinder over force on its push rod, in three straight pieces.</summary>
/// <remarks>
/// Formula:  nothing up to the cut-in; then the jump-in and B for every newton; from the run-out the driver's own force and the whole assist. Dead: the rod's force less the return spring
/// Valid:    B &gt; 1, pressed slowly, no hysteresis. Assist = pressure difference x area x efficiency
/// Source:   terms as in SAE J1808, from memory; pieces derived in docs/derivations/brake-pedal.md
/// </remarks>
/// <param name="CutIn">Push-rod force at which it begins, N.</param>
/// <param name="JumpIn">Output just above it, N.</param>
/// <param name="Gain">Output gained for each newton of input.</param>
/// <param name="Assist">The most that it adds, N.</param>
/// <param name="ReturnSpring">What its return spring takes when it is dead, N.</param>
internal readonly record struct Booster(double CutIn, double JumpIn, double Gain, double Assist, double ReturnSpring)
{
    /// <summary>Without vacuum or pressure nothing works in it but its spring.</summary>
    public bool Dead => Assist <= 0;

    /// <summary>Push-rod force at the run-out, N. With so little assist that the jump-in is out of reach it runs out as it begins.</summary>
    public double Knee => Dead ? ReturnSpring : Math.Max(CutIn, (Assist - JumpIn + (Gain * CutIn)) / (Gain - 1));

    public double KneeOutput => Dead ? 0 : Knee + Assist;

    /// <summary>Where it begins and what it gives there.</summary>
    public (double Input, double Output) Start => Dead ? (ReturnSpring, 0) : (CutIn, Math.Min(JumpIn, CutIn + Assist));

    public double Output(double input) =>
        Dead ? DeadOutput(input) : input <= CutIn ? 0 : Math.Min(JumpIn + (Gain * (input - CutIn)), input + Assist);

    public double DeadOutput(double input) => Math.Max(0, input - ReturnSpring);

    /// <summary>Effective area in m2 of one or two diaphragms, each less the tube that passes through it (diameters in m).</summary>
    public static double Area(double diaphragm, double second, double rod) =>
        Math.PI / 4 * (Ring(diaphragm, rod) + (second > 0 ? Ring(second, rod) : 0));

    private static double Ring(double outer, double inner) => Math.Max(0, (outer * outer) - (inner * inner));
}
