namespace Crossmember.Engineering.Brakes.Wheels;

/// <summary>How the two shoes of a drum brake stand.</summary>
public enum DrumKind { LeadingTrailing, TwoLeading, DuoServo }

/// <summary>A drum brake: torque per newton of one piston over the drum's radius, and the friction at which it holds itself on.</summary>
/// <remarks>
/// Formula:  factor = (T1 + T2) / (F r); one shoe leading and one trailing, both leading, or one handing its force on to the other
/// Valid:    both shoes alike; a cylinder that presses both with the same force
/// Source:   docs/derivations/drum-brakes.md
/// </remarks>
/// <param name="Radius">m.</param>
/// <param name="Arm">Of a cylinder's force about the shoe's own pivot, m.</param>
/// <param name="Anchor">From the drum's center to the pivot, m; only for <see cref="DrumKind.DuoServo"/>.</param>
public readonly record struct Drum(DrumKind Kind, double Radius, double Arm, double Anchor, PivotedShoe Shoe, LinkedShoe First)
{
    private const double Step = 1e-4;

    private const int MostSteps = 60;

    /// <summary>Not a number from <see cref="Locks"/> on.</summary>
    public double Factor(double friction) => Kind switch
    {
        DrumKind.LeadingTrailing => (Shoe.Leading(Arm, friction) + Shoe.Trailing(Arm, friction)) / Radius,
        DrumKind.TwoLeading => 2 * Shoe.Leading(Arm, friction) / Radius,
        _ => Servo(friction).Factor,
    };

    /// <summary>Rolling backward two leading shoes trail; the others only swap roles.</summary>
    /// <param name="forward">The factor rolling forward.</param>
    public double Reverse(double friction, double forward) => Kind == DrumKind.TwoLeading ? 2 * Shoe.Trailing(Arm, friction) / Radius : forward;

    /// <summary>How many percent of torque a percent of friction moves.</summary>
    /// <param name="here">The factor at that friction.</param>
    public double Sensitivity(double friction, double here)
    {
        double up = Factor(friction * (1 + Step)), down = Factor(friction * (1 - Step));
        return double.IsNaN(up) ? Math.Log(here / down) / -Math.Log(1 - Step) : Math.Log(up / down) / Math.Log((1 + Step) / (1 - Step));
    }

    /// <summary>Friction from which on it does not let go again.</summary>
    public double Locks()
    {
        if (Kind != DrumKind.DuoServo) return Shoe.Locks;
        // The first shoe's own limit, or the second's if that comes first; by false position, since what is left falls almost straight.
        double low = First.Catches, high = Math.Min(Shoe.Locks, First.Slides), atLow = First.Left(low), atHigh = First.Left(high);
        if (atHigh > 0) return high;
        if (double.IsNaN(atHigh)) atHigh = -atLow;
        var (at, side) = (high, 0);
        for (var i = 0; i < MostSteps && high - low > 1e-10 * high; i++)
        {
            at = ((low * atHigh) - (high * atLow)) / (atHigh - atLow);
            if (!(at > low && at < high)) at = (low + high) / 2;
            var left = First.Left(at);
            if (Math.Abs(left) < 1e-11 * First.Radius) break;
            if (left > 0) (low, atLow, atHigh, side) = (at, left, side > 0 ? atHigh / 2 : atHigh, 1);
            else (high, atHigh, atLow, side) = (at, double.IsNaN(left) ? -atLow : left, side < 0 ? atLow / 2 : atLow, -1);
        }
        return at;
    }

    /// <summary>Factor of a duo-servo brake and its parts, per newton of the cylinder: torque of the first shoe, force in the link, torque of the second shoe, N m and N.</summary>
    public (double Factor, double First, double Link, double Second) Servo(double friction)
    {
        var (first, link) = First.Under(friction);
        // The cylinder's other piston presses the second shoe too, by as much as its line lies beside the anchor.
        var second = Shoe.Leading((link * (Anchor + First.Link)) + Anchor - First.Opening, friction);
        return ((first + second) / Radius, first, link, second);
    }
}
