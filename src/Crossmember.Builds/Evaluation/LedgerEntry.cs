using Crossmember.Builds.Slots;
using Crossmember.Engineering.Mass;

namespace Crossmember.Builds.Evaluation;

/// <summary>How an entry came into the ledger.</summary>
public enum LedgerPart { Weighed, TakenOff, PutOn, NoLongerOnBoard, OnBoard }

/// <summary>One line of the mass ledger. What was taken off counts negative.</summary>
/// <param name="Owner">The slot, the condition, or the day of the weighing.</param>
/// <param name="Option">The option that brings or brought it; null for readings and for what is on board.</param>
/// <param name="Kilograms">Signed; NaN: unknown.</param>
/// <param name="X">Behind the as-found front axle, m; NaN: unknown. Likewise <paramref name="Y"/> to the right and <paramref name="Z"/> over the frame datum.</param>
/// <param name="MassError">One standard uncertainty, kg.</param>
/// <param name="PlaceError">One standard uncertainty of each coordinate, m.</param>
public sealed record LedgerEntry(
    LedgerPart Part, string Owner, string? Option, string Item, double Kilograms, double X, double Y, double Z, Basis Basis, double MassError, double PlaceError)
{
    private static readonly MassSpread[] s_spreads = [.. Enum.GetValues<Basis>().Select(b => MassSpread.Of(b.ToString().ToLowerInvariant()))];

    public double MomentX => Kilograms * X;

    public double MomentY => Kilograms * Y;

    public double MomentZ => Kilograms * Z;

    internal static LedgerEntry Of(LedgerPart part, string owner, string? option, MassItem item)
    {
        var spread = s_spreads[(int)item.Basis];
        var kg = item.Kilograms ?? double.NaN;
        var sign = part is LedgerPart.TakenOff or LedgerPart.NoLongerOnBoard ? -1 : 1;
        var (x, y, z) = item.At is { } at ? (at.X, at.Y, at.Z) : (double.NaN, double.NaN, double.NaN);
        return new(part, owner, option, item.Id, sign * kg, x, y, z, item.Basis, spread.Share * kg, spread.Place);
    }

    /// <summary>Half of "surely less than", at the weighed center of gravity: builders weigh only what moves the scale.</summary>
    internal static LedgerEntry Below(LedgerPart part, string owner, string option, double below, in Moments weighed)
    {
        var sign = part is LedgerPart.TakenOff ? -1 : 1;
        // Anything from nothing to the limit is equally likely: a rectangle's standard uncertainty is its width over the root of twelve.
        return new(part, owner, option, "surely below", sign * below / 2, weighed.X / weighed.Mass, weighed.Y / weighed.Mass, weighed.Z / weighed.Mass, Basis.Assumed,
            below / Math.Sqrt(12), s_spreads[(int)Basis.Assumed].Place);
    }

namespace Crossmember.Builds.Evaluation;

/// <summary>Why an entry stands in the ledger of masses.</summary>
public enum LedgerPart { Weighed, WasAboard, CameOff, PutOn, Aboard }

/// <summary>One line of what a condition weighs.</summary>
/// <param name="Item">The mass item; null for the weighing itself, for "surely below" and for a change that nobody weighed.</param>
/// <param name="Slot">The item of the vehicle; null for the weighing and what is on board.</param>
/// <param name="Name">What the item is called in its list; empty where there is none.</param>
/// <param name="Kilograms">With its sign: what came off counts below zero. NaN where unknown.</param>
/// <param name="MomentX">kg m about the front axle, with its sign; NaN where the place is not known.</param>
/// <param name="At">Where it sits; null where nobody has said.</param>
/// <param name="PlusMinus">One standard uncertainty of the mass, kg; null where nobody said.</param>
public sealed record LedgerEntry(
    LedgerPart Part, MassRef? Item, Slot? Slot, string Name, double Kilograms, double MomentX, double MomentY, double MomentZ, Place? At, Basis Basis, double? PlusMinus = null)
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
