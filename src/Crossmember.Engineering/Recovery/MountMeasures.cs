using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Recovery;

/// <summary>Reading a bolted bracket off its inputs, with what is asked for each: recovery points and winch mounts alike.</summary>
internal static class MountMeasures
{
    public const string Diameter = "caliper the thread";

    public const string Pitch = "lay a thread gauge on it; 25.4 mm over the threads to the inch";

    public const string Grade = "read the head: numbers such as 8.8 or 10.9; 3 strokes are SAE grade 5, 6 strokes grade 8; no marks: unmarked";

    public const string Rows = "tape along the pull from the bracket's edge to the bolt centers";

    public const string Height = "tape square from the bolted face to the middle of the line or shackle pin";

    public const string Ahead = "tape along the pull from the bracket's edge to where the rope or shackle bears";

    public const string Wall = "caliper the wall at a hole; with a backing plate both together";

    public const string Yield = "220 MPa for the mild steel of old frames; ask the maker of a newer one; never guess higher";

    public const string Up = "take 15 deg; more where it is pulled out of a ditch";

    public const string Side = "take 30 deg: recoveries are seldom straight";

    /// <summary>Null with a caution where the readings make no bracket.</summary>
    public static Bracket? Bracket(Worksheet w, Ratio count, Length diameter, Length? pitch, string grade, Length near, Length far, Length gauge, Length height, Length ahead,
        Length wall, Pressure yield)
    {
        var n = Math.Round(count.DecimalFractions);
        var trouble = n > Recovery.Bracket.MostBolts ? $"More than {Recovery.Bracket.MostBolts} bolts: count them again."
            : far < near ? "The farther row lies nearer than the nearer one: measure both from the same edge."
            : BoltGrade.Proof(grade, diameter.Meters) is null ? $"No bolt of {grade} is made {diameter.Millimeters:0.#} mm thick by the standards known here."
            : pitch is { } p && p.Meters * 0.9382 >= diameter.Meters ? "The pitch is coarser than the bolt is thick: measure both again." : null;
        if (trouble is null)
            return new(new((int)n, near.Meters, far.Meters, gauge.Meters), diameter.Meters, pitch?.Meters, BoltGrade.Proof(grade, diameter.Meters)!.Value, wall.Meters, yield.Pascals,
                height.Meters, ahead.Meters);
        w.Caution(trouble);
        return null;
    }
}
