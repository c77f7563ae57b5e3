using Crossmember.Documents.Curves;
using SkiaSharp;

namespace Crossmember.Documents.Paper.Pdf;

/// <summary>Writes a document as PDF: its fonts within it, the same bytes for the same document.</summary>
public static class PdfWriter
{
    private const double HeadRoom = 24, FootRoom = 22, SmallPrint = 7.5;

    /// <summary>Two passes: how many pages there are is known only when all of them are laid out.</summary>
    public static Printed Write(Document document, PageSize size, IProgress<Step>? progress = null, CancellationToken cancel = default)
    {
        using var type = new Typesetter();
        var room = new Room(size.BodyWidth, size.Height - (2 * PageSize.Margin) - HeadRoom - FootRoom);
        var layout = new BlockLayout(type, room);
        var strips = new List<Strip>();
        for (var i = 0; i < document.Blocks.Count; i++)
        {
            cancel.ThrowIfCancellationRequested();
            progress?.Report(new("laying out", 0.5 * i / document.Blocks.Count));
            strips.AddRange(layout.Of(document.Blocks[i]));
        }
        var pages = Paginator.Pages(strips, room.Height);
        using var stream = new MemoryStream();
        using (var pdf = SKDocument.CreatePdf(stream, Told(document)))
        {
            for (var n = 0; n < pages.Count; n++)
            {
                cancel.ThrowIfCancellationRequested();
                progress?.Report(new($"page {n + 1} of {pages.Count}", 0.5 + (0.5 * n / pages.Count)));
                var canvas = pdf.BeginPage((float)size.Width, (float)size.Height);
                canvas.Translate((float)PageSize.Margin, (float)PageSize.Margin);
                var pencil = new Pencil(canvas, type);
                Edges(pencil, document, room, $"page {n + 1} of {pages.Count}");
                foreach (var (strip, y) in pages[n]) strip.Draw(pencil, HeadRoom + y);
                pdf.EndPage();
            }
            pdf.Close();
        }
        progress?.Report(new("done", 1));
        return new(stream.ToArray(), pages.Count);
    }

    private static void Edges(Pencil pencil, Document document, Room room, string page)
    {
        var style = new Style(SmallPrint, Ink.Quiet);
        double foot = HeadRoom + room.Height + FootRoom, number = pencil.Type.Width(page, style);
        void Say(string words, double baseLine, double width) => pencil.Line(Shortened(pencil.Type, words, style, width), 0, baseLine);
        Say(document.Running, style.Ascent, room.Width);
        pencil.Rule(0, style.Leading + 1, room.Width, Ink.Rule);
        pencil.Rule(0, foot - style.Leading - 2, room.Width, Ink.Rule);
        Say(document.Foot, foot - 2, room.Width - number - 12);
        pencil.Type.Draw(pencil.Canvas, page, room.Width - number, foot - 2, style);
    }

    /// <summary>On one line, whatever people call their vehicles.</summary>
    private static TextLine Shortened(Typesetter type, string words, Style style, double width)
    {
        var fit = Typesetter.Printable(words).ReplaceLineEndings(" ");
        if (type.Width(fit, style) > width)
        {
            while (fit.Length > 1 && type.Width(fit + "…", style) > width) fit = fit[..^1].TrimEnd();
            fit += "…";
        }
        return new([new(fit, style, 0, null)], 0);
    }

    private static SKDocumentPdfMetadata Told(Document document) => new()
    {
        Title = document.Title, Subject = document.Running, Creator = "Crossmember", Creation = document.Made.UtcDateTime, Modified = document.Made.UtcDateTime, EncodingQuality = 101,
        // The page itself is rounded to it: at ten to the millimetre both papers come out whole.
        RasterDpi = 254,
    };
}

/// <summary>What a page holds between its head and its foot, in points.</summary>
internal sealed record Room(double Width, double Height);
