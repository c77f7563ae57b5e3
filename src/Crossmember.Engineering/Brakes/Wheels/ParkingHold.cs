using Crossmember.Engineering.Brakes.Chain;

namespace Crossmember.Engineering.Brakes.Wheels;

/// <summary>Standing on a grade with one axle held: what it must hold, the grip that takes, and the steepest grade that grip holds.</summary>
/// <remarks>
/// Formula:  F = W sin th; use = F / N of the braked axle; steepest tan th = mu x / (L -+ mu h), x from the other axle to the center of gravity, less where the braked axle is the lower one; never beyond tipping
/// Valid:    straight up or down an even slope, rigid springs
/// Source:   docs/derivations/drum-brakes.md
/// </remarks>
internal readonly record struct ParkingHold(Loading Load, bool FrontAxle)
{
    /// <summary>N along the slope.</summary>
    public double Force(double grade) => Load.Weight * grade / Math.Sqrt(1 + (grade * grade));

    /// <summary>Share of its load that the braked axle holds with; infinite where it carries nothing.</summary>
    /// <param name="up">Facing up the grade.</param>
    public double Use(double grade, bool up)
    {
        // Braking at z g moves as much load forward as facing down a grade z does, but for the cosine.
        var z = up ? -grade : grade;
        var on = (FrontAxle ? Load.Front(z) : Load.Rear(z)) / Math.Sqrt(1 + (grade * grade));
        return on > 0 ? Force(grade) / on : double.PositiveInfinity;
    }

    /// <summary>Rise over run at which it slides, or tips if that comes first.</summary>
    public double Steepest(double grip, bool up)
    {
        double behind = Load.Wheelbase - Load.Behind, own = FrontAxle ? behind : Load.Behind;
        // The lower axle carries more on a slope: the rear one facing up, the front one facing down.
        var arm = Load.Wheelbase - (FrontAxle != up ? grip * Load.Height : -grip * Load.Height);
        var slides = arm > 0 ? grip * own / arm : double.PositiveInfinity;
        return Math.Min(slides, (up ? behind : Load.Behind) / Load.Height);
    }
}
