using Crossmember.Documents.Curves;

namespace Crossmember.Documents.Paper.Pdf;

/// <summary>A drawing at its true size. One that is larger than the page goes onto several, which overlap to be put together.</summary>
internal sealed class TrueScaleLayout(Lines lines, Room room)
{
    private const double Overlap = 10 * PageSize.PointsOfMillimetre, Scale = PageSize.PointsOfMillimetre, Gap = 8, Line = 0.5;

    private static readonly Style s_words = new(8.5, Ink.Text, true), s_title = new(13, Ink.Text, true);

    public IEnumerable<Strip> Of(Block.TrueScale block)
    {
        var bar = CheckBar.Drawing;
        var barHeight = s_words.Leading + (bar.Height * Scale) + Gap;
        var titleHeight = s_title.Leading + Gap;
        double width = block.Drawing.Width * Scale, height = block.Drawing.Height * Scale, free = room.Height - barHeight - titleHeight;
        var (across, down) = (Sheets(width, room.Width), Sheets(height, free));
        for (var row = 0; row < down; row++)
            for (var column = 0; column < across; column++)
            {
                var title = across * down == 1 ? block.Title : $"{block.Title}: row {row + 1} of {down}, column {column + 1} of {across}, edges overlap by 10 mm";
                var said = lines.Wrap(title, s_title, room.Width).Take(1).ToList();
                yield return new(titleHeight, (pencil, y) => pencil.Lines(said, 0, y, s_title)) { NewPage = across * down > 1, WithNext = true, Before = Gap };
                var words = lines.Wrap(CheckBar.Words, s_words, room.Width);
                yield return new(barHeight, (pencil, y) =>
                {
                    pencil.Lines(words, 0, y, s_words);
                    foreach (var shape in bar.Shapes) pencil.Shape(shape, 0, y + s_words.Leading, Scale);
                }) { WithNext = true };
                yield return Part(block.Drawing, column * (room.Width - Overlap), row * (free - Overlap), Math.Min(room.Width, width - (column * (room.Width - Overlap))), Math.Min(free, height - (row * (free - Overlap))));
            }
        yield return Strip.Gap(Gap);
    }

    /// <summary>What lies within a window on the drawing. A line along its edge is as thick outside as inside and is not cut.</summary>
    private static Strip Part(Drawing drawing, double left, double top, double width, double height) => new(height, (pencil, y) =>
    {
        pencil.Canvas.Save();
        pencil.Canvas.ClipRect(new((float)-Line, (float)(y - Line), (float)(width + Line), (float)(y + height + Line)));
        foreach (var shape in drawing.Shapes) pencil.Shape(shape, -left, y - top, Scale);
        pencil.Canvas.Restore();
    });

    private static int Sheets(double length, double page) => length <= page + 0.01 ? 1 : (int)Math.Ceiling((length - Overlap) / (page - Overlap) - 1e-9);
}
