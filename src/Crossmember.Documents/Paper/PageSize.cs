using Crossmember.Engineering.Quantities;

namespace Crossmember.Documents.Paper;

/// <summary>A size of paper, in points of 1/72 inch.</summary>
public sealed record PageSize(string Name, double Width, double Height)
{
    public const double PointsOfMillimetre = 72 / 25.4;

    /// <summary>Kept free on every side: most printers reach no further, and a binder needs it.</summary>
    public const double Margin = 14 * PointsOfMillimetre;

    /// <summary>ISO 216: 210 by 297 mm.</summary>
    public static readonly PageSize A4 = new("A4", 210 * PointsOfMillimetre, 297 * PointsOfMillimetre);

    /// <summary>ANSI/ASME Y14.1, size A: 8.5 by 11 inches.</summary>
    public static readonly PageSize Letter = new("letter", 8.5 * 72, 11 * 72);

    /// <summary>What lies in the printer of a shop that reads in these measures.</summary>
    public static PageSize For(MeasureSystem system) => system == MeasureSystem.Metric ? A4 : Letter;

    /// <summary>By the name people type, or null.</summary>
    public static PageSize? Find(string name) => name switch { "a4" => A4, "letter" => Letter, _ => null };

    /// <summary>Between the margins.</summary>
    public double BodyWidth => Width - (2 * Margin);
}
