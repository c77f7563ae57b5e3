using Crossmember.Builds.Slots;
using Crossmember.Engineering.Mass;

namespace Crossmember.Builds.Evaluation;

/// <summary>How an entry came into the ledger.</summary>
public enum LedgerPart { Weighed, WasAboard, CameOff, PutOn, Aboard }

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

    /// <summary>Half of "surely less than", which stands for parts that nobody weighed.</summary>
    public bool IsBelow { get; private init; }

    public double MomentX => Kilograms * X;

    public double MomentY => Kilograms * Y;

    public double MomentZ => Kilograms * Z;

    internal static LedgerEntry Of(LedgerPart part, string owner, string? option, MassItem item)
    {
        var spread = s_spreads[(int)item.Basis];
        var kg = item.Kilograms ?? double.NaN;
        var sign = part is LedgerPart.CameOff or LedgerPart.WasAboard ? -1 : 1;
        var (x, y, z) = item.At is { } at ? (at.X, at.Y, at.Z) : (double.NaN, double.NaN, double.NaN);
        return new(part, owner, option, item.Id, sign * kg, x, y, z, item.Basis, spread.Share * kg, spread.Place);
    }

    /// <summary>Half of "surely less than", at the weighed center of gravity: builders weigh only what moves the scale.</summary>
    internal static LedgerEntry Below(LedgerPart part, string owner, string option, double below, in Moments weighed)
    {
        var sign = part is LedgerPart.CameOff ? -1 : 1;
        // Anything from nothing to the limit is equally likely: a rectangle's standard uncertainty is its width over the root of twelve.
        return new(part, owner, option, "surely below", sign * below / 2, weighed.X / weighed.Mass, weighed.Y / weighed.Mass, weighed.Z / weighed.Mass, Basis.Assumed,
            below / Math.Sqrt(12), s_spreads[(int)Basis.Assumed].Place)
        { IsBelow = true };
    }
}
