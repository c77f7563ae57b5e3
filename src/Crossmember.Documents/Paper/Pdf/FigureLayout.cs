using Crossmember.Documents.Curves;
using ScottPlot;
using SkiaSharp;

namespace Crossmember.Documents.Paper.Pdf;

/// <summary>A picture with its caption beneath.</summary>
internal sealed class FigureLayout(Lines lines, Room room)
{
    private const double After = 10, MostOfAPage = 0.6;

    private static readonly Style s_caption = new(8.5, Ink.Quiet);

    public IEnumerable<Strip> Of(Block.Figure figure)
    {
        yield return figure.Picture switch
        {
            Picture.Curves curves => Chart(curves.Chart),
            Picture.Drawn drawn => Drawn(drawn.Drawing),
            _ => throw new InvalidOperationException("a picture of no known kind"),
        };
        var caption = lines.Wrap(figure.Caption, s_caption, room.Width);
        if (figure.Caption.Length > 0) yield return new(caption.Count * s_caption.Leading, (pencil, y) => pencil.Lines(caption, 0, y, s_caption)) { WithNext = true };
        yield return Strip.Gap(After);
    }

    private Strip Chart(CurveChart chart)
    {
        var size = PictureSize.Wide(chart);
        var scale = Math.Min(room.Width / size.Width, room.Height * MostOfAPage / size.Height);
        return new(size.Height * scale, (pencil, y) =>
        {
            var plot = CurvePlot.Of(chart, size, new PixelPens());
            // Clearing would lay all that is on the page already into a group behind a mask.
            plot.RenderManager.ClearCanvasBeforeEachRender = false;
            var place = new PixelRect(0, size.Width, size.Height, 0);
            // The key takes its room only once it has been drawn: the first time is thrown away.
            using (var settling = new SKPictureRecorder()) plot.Render(settling.BeginRecording(new(0, 0, size.Width, size.Height)), place);
            pencil.Canvas.Save();
            pencil.Canvas.Translate(0, (float)y);
            pencil.Canvas.Scale((float)scale);
            plot.Render(pencil.Canvas, place);
            pencil.Canvas.Restore();
        }) { WithNext = true, Before = 2 };
    }

    private Strip Drawn(Drawing drawing)
    {
        var scale = Math.Min(PageSize.PointsOfMillimetre, Math.Min(room.Width / drawing.Width, room.Height * MostOfAPage / drawing.Height));
        return new(drawing.Height * scale, (pencil, y) =>
        {
            foreach (var shape in drawing.Shapes) pencil.Shape(shape, 0, y, scale);
        }) { WithNext = true, Before = 2 };
    }
}
