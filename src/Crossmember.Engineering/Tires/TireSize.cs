using Crossmember.Engineering.Quantities;
using UnitsNet;

namespace Crossmember.Engineering.Tires;

/// <summary>The system a tire size is written in.</summary>
public enum TireNotation
{
    /// <summary>Section width in mm / aspect ratio: 235/75R15.</summary>
    Metric,

    /// <summary>Overall diameter x section width in inches: 33x10.50R15LT.</summary>
    Flotation,

    /// <summary>Section width alone: 7.50R16, 205R16. The code does not tell the diameter.</summary>
    Numeric,
}

/// <summary>The service a tire is built for, as written in its size.</summary>
public enum TireService
{
    /// <summary>No letters: European metric passenger sizes and old truck sizes.</summary>
    Unmarked,
    Passenger,
    LightTruck,
}

/// <summary>How the carcass is laid.</summary>
public enum TireConstruction
{
    Radial,
    Diagonal,
    BeltedBias,
}

/// <summary>A tire size as read from a sidewall, with its nominal dimensions.</summary>
/// <remarks>
/// Formula:  W/A R r: D = 25.4 r + 2 W A/100 mm;  D x W R r: D = 25.4 D mm, W = 25.4 W mm
/// Valid:    nominal figures of a new, unloaded tire. A real tire may differ by a few per cent, flotation sizes often measure 0.2 to 0.5 in small
///           (common practice, no source). Sizes that state no aspect ratio have no diameter here: take the maker's figure or measure.
/// Source:   the meaning of the size code (ISO 4000-1, TRA Year Book; from memory); geometry
/// Example:  245/55R18 -> 726.7 mm
/// </remarks>
public sealed record TireSize
{
    internal TireSize()
    {
    }

    /// <summary>The text as it was written.</summary>
    public required string Typed { get; init; }

    public required TireNotation Notation { get; init; }

    public required TireService Service { get; init; }

    public required TireConstruction Construction { get; init; }

    /// <summary>Nominal section width.</summary>
    public required Length Width { get; init; }

    /// <summary>Nominal diameter of the rim at the bead seat.</summary>
    public required Length RimDiameter { get; init; }

    /// <summary>Nominal overall diameter, or null where the code does not tell it.</summary>
    public Length? Diameter { get; init; }

    /// <summary>Whether the code tells the overall diameter.</summary>
    public bool DiameterKnown => Diameter is not null;

    /// <summary>From rim to tread, or null where the diameter is unknown.</summary>
    public Length? SectionHeight => (Diameter - RimDiameter) / 2;

    /// <summary>Section height over width, per cent, where written.</summary>
    public double? AspectRatio { get; init; }

    /// <summary>Load index of a single tire, where written.</summary>
    public int? LoadIndex { get; init; }

    /// <summary>Load index in dual fitment, where written.</summary>
    public int? DualLoadIndex { get; init; }

    /// <summary>Speed symbol of the service description; Z where only ZR is written (above 240 km/h).</summary>
    public char? SpeedSymbol { get; init; }

    /// <summary>Load range letter, or XL.</summary>
    public string? LoadRange { get; init; }

    /// <summary>Ply rating, as in 8PR.</summary>
    public int? PlyRating { get; init; }

    /// <summary>Reads a size with or without a service description: <c>33x10.50R15LT</c>, <c>LT235/85R16 120/116Q</c>, <c>7.50-16 8PR</c>.</summary>
    public static Parsed<TireSize> Read(string text) => new TireSizeReader(text ?? "").Read();
}
