using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Places;

/// <summary>One line of what a condition weighs, as people read it: all readings of the scale are one line.</summary>
/// <param name="Item">The mass item; null for the weighing itself, for "surely below" and for a change that nobody weighed.</param>
/// <param name="Slot">The item of the vehicle; null for the weighing and what is on board.</param>
/// <param name="Name">What the item is called in its list; empty where there is none.</param>
/// <param name="Kilograms">With its sign: what came off counts below zero. NaN where unknown.</param>
/// <param name="MomentX">kg m about the front axle, with its sign; NaN where the place is not known.</param>
/// <param name="At">Where it sits; null where nobody has said.</param>
/// <param name="PlusMinus">One standard uncertainty of the mass, kg; null where it is not known.</param>
public sealed record LedgerLine(
    LedgerPart Part, MassRef? Item, Slot? Slot, string Name, double Kilograms, double MomentX, double MomentY, double MomentZ, Place? At, Basis Basis, double? PlusMinus)
{
    public bool IsKnown => !double.IsNaN(Kilograms);

    /// <summary>Half of "surely less than" counts, at the weighed center of gravity.</summary>
    public bool IsBelow => Item is null && Slot is not null && IsKnown;

    /// <summary>What it puts on the rear axle, kg; the rest of it goes to the front one.</summary>
    public double Rear(double wheelbase) => MomentX / wheelbase;

    public double Front(double wheelbase) => Kilograms - Rear(wheelbase);

    /// <summary>The larger of what it moves on either axle, kg; its mass where its place is not known.</summary>
    public double Moves(double wheelbase) => double.IsNaN(MomentX) || !(wheelbase > 0) ? Math.Abs(Kilograms) : Math.Max(Math.Abs(Front(wheelbase)), Math.Abs(Rear(wheelbase)));
}
