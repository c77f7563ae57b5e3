using Crossmember.Documents.Curves;
using SkiaSharp;

namespace Crossmember.Documents.Paper.Pdf;

/// <summary>Draws on a page, in points from the corner where its body begins.</summary>
internal sealed class Pencil(SKCanvas canvas, Typesetter type)
{
    public SKCanvas Canvas => canvas;

    public Typesetter Type => type;

    public void Lines(IEnumerable<TextLine> lines, double x, double y, Style style)
    {
        foreach (var line in lines)
        {
            Line(line, x, y + style.Ascent);
            y += style.Leading;
        }
    }

    /// <summary>A line of words, from the start of its base line.</summary>
    public void Line(TextLine line, double x, double baseLine)
    {
        foreach (var word in line.Words)
        {
            double at = x + word.X, size = word.Style.Size;
            if (word.Mark is { } verdict)
            {
                Shape(VerdictShape.Of(verdict), at, baseLine - (size * 0.74), size * 0.78 / VerdictShape.Grid);
                at += VerdictShape.Room(size);
            }
            type.Draw(canvas, word.Letters, at, baseLine, word.Style);
        }
    }

    public void Rule(double x, double y, double width, Ink ink, double thickness = 0.5)
    {
        using var paint = Fill(ink);
        canvas.DrawRect((float)x, (float)y, (float)width, (float)thickness, paint);
    }

    public void Box(double x, double y, double width, double height, Ink ink)
    {
        using var paint = Fill(ink);
        canvas.DrawRect((float)x, (float)y, (float)width, (float)height, paint);
    }

    /// <summary>A shape whose coordinates are multiplied by a scale and moved to a place.</summary>
    public void Shape(Shape shape, double x, double y, double scale)
    {
        SKPoint At(Spot p) => new((float)(x + (p.X * scale)), (float)(y + (p.Y * scale)));
        switch (shape)
        {
            case Shape.Path path:
                using (var way = new SKPathBuilder())
                {
                    way.AddPoly([.. path.Points.Select(At)], path.Closed);
                    using var made = way.Detach();
                    Both(path.Fill, path.Pen, path.Width * scale, paint => canvas.DrawPath(made, paint));
                }
                break;
            case Shape.Circle circle:
                Both(circle.Fill, circle.Pen, circle.Width * scale, paint => canvas.DrawCircle(At(circle.Center), (float)(circle.Radius * scale), paint));
                break;
            case Shape.Label label:
                var style = new Style(label.Size * scale, label.Ink, label.Bold);
                var words = Typesetter.Printable(label.Words);
                var from = At(label.At);
                type.Draw(canvas, words, from.X - (label.Anchor switch { Side.Start => 0, Side.Middle => type.Width(words, style) / 2, _ => type.Width(words, style) }), from.Y, style);
                break;
        }
    }

    private static void Both(Ink? fill, Ink? pen, double width, Action<SKPaint> draw)
    {
        if (fill is not null)
        {
            using var paint = Fill(fill);
            draw(paint);
        }
        if (pen is not null)
        {
            using var paint = new SKPaint { Color = SKColor.Parse(pen.Light), IsAntialias = true, IsStroke = true, StrokeWidth = (float)width, StrokeJoin = SKStrokeJoin.Miter };
            draw(paint);
        }
    }

    private static SKPaint Fill(Ink ink) => new() { Color = SKColor.Parse(ink.Light), IsAntialias = true };
}
