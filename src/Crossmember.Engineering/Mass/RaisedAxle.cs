namespace Crossmember.Engineering.Mass;

/// <summary>A weighing with one axle lifted: what the axle that stays on the scale gains tells how high the center of gravity lies.</summary>
/// <remarks>
/// sin th = H / L; h = r + L (W2 - W1) / (W tan th), where r is the height of the wheel centers at the center of gravity,
/// r = r_down W1 / W + r_up (1 - W1 / W). Moments about the axle that stays down, derived in <c>docs/derivations/raised-axle.md</c>.
/// Springs blocked, so that the body does not turn against the axles; wheels free to roll.
/// </remarks>
/// <param name="Wheelbase">m.</param>
/// <param name="Mass">Whole vehicle, kg.</param>
/// <param name="Level">Load on the axle that stays down, level, kg.</param>
/// <param name="Raised">The same with the other axle lifted, kg.</param>
/// <param name="Raise">How far the other axle's wheel centers were lifted, m.</param>
/// <param name="RadiusDown">Wheel center over the ground at the axle that stays down, level, m.</param>
/// <param name="RadiusUp">The same at the axle to be lifted, m.</param>
public readonly record struct RaisedAxle(double Wheelbase, double Mass, double Level, double Raised, double Raise, double RadiusDown, double RadiusUp)
{
    /// <summary>One standard uncertainty of a tape in a shop, m. Common practice, no source.</summary>
    public const double Tape = 0.003;

    /// <summary>Least lift at which the answer is worth having, m: below it a scale's error is magnified too much. Common practice, no source.</summary>
    public const double LeastRaise = 0.4;

    /// <summary>How much of the mass stands on the axle that stays down, level.</summary>
    public double Share => Level / Mass;

    public double Tan => Raise / Math.Sqrt((Wheelbase * Wheelbase) - (Raise * Raise));

    /// <summary>Height of the wheel centers over the ground, carried to the center of gravity, m.</summary>
    public double RadiusAtCenter => (RadiusDown * Share) + (RadiusUp * (1 - Share));

    /// <summary>Center of gravity over the ground, m.</summary>
    public double Height => RadiusAtCenter + (Sensitivity * (Raised - Level));

    /// <summary>What one kilogram more on the raised reading adds to the height, m/kg.</summary>
    public double Sensitivity => Wheelbase / (Mass * Tan);

    /// <summary>Which reading cannot be, or null.</summary>
    public string? Impossible() =>
        Raise >= Wheelbase ? "the axle cannot be lifted by as much as the wheelbase: measure the lift again"
        : Level >= Mass ? "the level reading is as much as the whole vehicle: read the scale of that axle again"
        : Raised >= Mass ? "the raised reading is as much as the whole vehicle: read the scale again, wheels free to roll"
        : Height <= 0 ? "the raised reading fell so far below the level one that the center of gravity would lie underground: read both again"
        : null;

    /// <summary>One standard uncertainty of the height from those of a reading (kg) and of the tape, by stepping each once (JCGM 100:2008, 5.1.3 note 2), m.</summary>
    public double Spread(double reading)
    {
        var h = Height;
        double Moved(RaisedAxle stepped) => stepped.Height - h;
        double[] parts =
        [
            Moved(this with { Raised = Raised + reading }), Moved(this with { Level = Level + reading, Mass = Mass + reading }),
            Moved(this with { Mass = Mass + reading }), Moved(this with { Raise = Math.Max(Raise - Tape, Raise / 2) }),
            Moved(this with { RadiusDown = RadiusDown + Tape }), Moved(this with { RadiusUp = RadiusUp + Tape }), Moved(this with { Wheelbase = Wheelbase + Tape }),
        ];
        return Math.Sqrt(parts.Sum(p => p * p));
    }
}
