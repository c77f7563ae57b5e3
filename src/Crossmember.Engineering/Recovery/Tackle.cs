namespace Crossmember.Engineering.Recovery;

/// <summary>A rope led over blocks: parts of line that pull, and what the blocks take.</summary>
/// <remarks>
/// Each block adds a share of the load (10 % as a rule) to what is pulled, and the sum is spread over the parts of line:
/// US Army recovery procedure, load + tackle resistance over mechanical advantage. Derived beside a chain of sheaves in <c>docs/derivations/winch-and-tackle.md</c>.
/// </remarks>
internal static class Tackle
{
    /// <summary>More parts than anybody rigs in the field.</summary>
    public const int MostParts = 6;

    /// <summary>Tension of the line at the winch, in the unit of <paramref name="load"/>; each part more is one more block.</summary>
    public static double FallLine(double load, int parts, double perSheave) => load * (1 + (perSheave * (parts - 1))) / parts;

    /// <summary>The fewest parts with which the fall line stays within <paramref name="capacity"/>, or null.</summary>
    public static int? Parts(double load, double capacity, double perSheave)
    {
        for (var n = 1; n <= MostParts; n++)
            if (FallLine(load, n, perSheave) <= capacity) return n;
        return null;
    }

    public static string Told(int parts) => parts switch { 1 => "a single line", 2 => "a double line over 1 block", _ => $"{parts} parts of line over {parts - 1} blocks" };
}
