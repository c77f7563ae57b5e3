using Crossmember.Documents.Curves;

namespace Crossmember.Documents.Paper;

/// <summary>What a figure shows.</summary>
public abstract record Picture
{
    private Picture() { }

    /// <summary>Curves, drawn as lines and text.</summary>
    public sealed record Curves(CurveChart Chart) : Picture;

    /// <summary>A drawing of our own, as wide as it is unless the page is narrower.</summary>
    public sealed record Drawn(Drawing Drawing) : Picture;
}

/// <summary>Lines, areas and words on a plane, in millimetres: x to the right, y downward.</summary>
/// <param name="Told">What it shows, for those who do not see it.</param>
public sealed record Drawing(double Width, double Height, string Told, IReadOnlyList<Shape> Shapes);

/// <summary>A place on a drawing, mm.</summary>
public readonly record struct Spot(double X, double Y);

/// <summary>One thing in a drawing. A closed set.</summary>
public abstract record Shape
{
    private Shape() { }

    /// <param name="Pen">Colour of the line; null: none.</param>
    /// <param name="Fill">Colour of what the line encloses; null: none.</param>
    /// <param name="Width">Of the line, mm.</param>
    public sealed record Path(IReadOnlyList<Spot> Points, bool Closed, Ink? Pen, Ink? Fill = null, double Width = 0.25) : Shape;

    public sealed record Circle(Spot Center, double Radius, Ink? Pen, Ink? Fill = null, double Width = 0.25) : Shape;

    /// <param name="Size">Height of the letters' body, mm.</param>
    public sealed record Label(Spot At, string Words, double Size, Ink Ink, Side Anchor = Side.Start, bool Bold = false) : Shape;

    /// <summary>A rectangle by its corner and its size.</summary>
    public static Path Box(double x, double y, double width, double height, Ink? pen, Ink? fill = null) =>
        new([new(x, y), new(x + width, y), new(x + width, y + height), new(x, y + height)], true, pen, fill);

    public static Path Line(double x, double y, double toX, double toY, Ink pen, double width = 0.25) => new([new(x, y), new(toX, toY)], false, pen, null, width);
}

/// <summary>Which part of a label lies at its place.</summary>
public enum Side { Start, Middle, End }
