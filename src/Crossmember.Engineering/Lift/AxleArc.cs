namespace Crossmember.Engineering.Lift;

/// <summary>Where a propeller shaft's pinion end goes as its axle rises and falls on the arc of a spring or a link. SI throughout.</summary>
/// <remarks>
/// Side view, heights from the frame datum upward. The axle's center lies a ride height beneath the datum and swings on <see cref="Radius"/> about a point at <see cref="PivotHeight"/>;
/// the pinion keeps its angle and goes along. Derived in <c>docs/derivations/lift.md</c>.
/// </remarks>
/// <param name="Run">Level distance between both joints at the height they were taped at, m.</param>
/// <param name="Taped">That ride height, m.</param>
/// <param name="Rise">Joint at the case over the datum less the pinion's over the axle center, m: the shaft's drop is this and the ride height.</param>
/// <param name="Radius">Of the axle's arc, m.</param>
/// <param name="PivotHeight">Of the arc's middle over the frame datum, m.</param>
/// <param name="Toward">1 where the middle lies toward the transfer case, -1 where it lies away from it.</param>
internal readonly record struct AxleArc(double Run, double Taped, double Rise, double Radius, double PivotHeight, int Toward)
{
    /// <summary>Level distance between both joints at a ride height; null where the arc does not reach.</summary>
    public double? RunAt(double height) => Reach(height) is { } now && Reach(Taped) is { } then && Run + (Toward * (now - then)) is > 0 and var run ? run : null;

    public double Drop(double height) => Rise + height;

    /// <summary>From cross to cross.</summary>
    public double? Length(double height) => RunAt(height) is { } run ? Math.Sqrt((run * run) + (Drop(height) * Drop(height))) : null;

    /// <summary>Slope of the shaft, rad, positive down toward the axle.</summary>
    public double? Slope(double height) => RunAt(height) is { } run ? Math.Atan(Drop(height) / run) : null;

    private double? Reach(double height)
    {
        var d = PivotHeight + height;
        return Math.Abs(d) <= Radius ? Math.Sqrt((Radius - d) * (Radius + d)) : null;
    }
}
