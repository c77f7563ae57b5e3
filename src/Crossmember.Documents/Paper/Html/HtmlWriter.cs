using System.Text;
using Crossmember.Documents.Curves;

namespace Crossmember.Documents.Paper.Html;

/// <summary>Writes a document as one page that stands by itself: nothing is fetched, nothing runs, and it prints as it reads.</summary>
public static class HtmlWriter
{
    public static byte[] Write(Document document, PageSize size, IProgress<Step>? progress = null, CancellationToken cancel = default)
    {
        var html = new StringBuilder();
        html.Append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<meta name=\"color-scheme\" content=\"light dark\">\n")
            .Append($"<meta name=\"generator\" content=\"Crossmember\">\n<meta name=\"date\" content=\"{document.Made.UtcDateTime:yyyy-MM-ddTHH:mm:ssZ}\">\n<title>").Escaped(document.Title).Append("</title>\n<style>\n")
            .Append(Stylesheet.Of(size)).Append("</style>\n</head>\n<body>\n<p class=\"running\">").Escaped(document.Running).Append("</p>\n<main>\n");
        for (var i = 0; i < document.Blocks.Count; i++)
        {
            cancel.ThrowIfCancellationRequested();
            progress?.Report(new("writing", (double)i / document.Blocks.Count));
            One(html, document.Blocks[i]);
        }
        html.Append("</main>\n<footer>").Escaped(document.Foot).Append("</footer>\n</body>\n</html>\n");
        progress?.Report(new("done", 1));
        return Encoding.UTF8.GetBytes(html.ToString());
    }

    private static void One(StringBuilder html, Block block)
    {
        switch (block)
        {
            case Block.Heading h: html.Append($"<h{h.Level}>").Escaped(h.Words).Append($"</h{h.Level}>\n"); break;
            case Block.Paragraph p: html.Append("<p>").Runs(p.Text).Append("</p>\n"); break;
            case Block.Bullets b: List(html, b.Items); break;
            case Block.Notice n:
                html.Append("<aside class=\"notice\"><p><strong>").Escaped(n.Title).Append("</strong></p>\n");
                if (n.Items.Count > 1) List(html, n.Items);
                else foreach (var item in n.Items) html.Append("<p>").Runs(item).Append("</p>\n");
                html.Append("</aside>\n");
                break;
            case Block.Facts f:
                html.Append("<dl class=\"facts\">\n");
                foreach (var item in f.Items) html.Append("<div><dt>").Escaped(item.Name).Append("</dt><dd>").Runs(item.Value).Append("</dd></div>\n");
                html.Append("</dl>\n");
                break;
            case Block.Table t: HtmlTable.Write(html, t); break;
            case Block.Figure f: Figure(html, f); break;
            case Block.TrueScale t:
                html.Append("<figure class=\"true-scale\"><figcaption>").Escaped(t.Title).Append(". ").Escaped(CheckBar.Words).Append("</figcaption>\n")
                    .Append(DrawingSvg.TrueScale(CheckBar.Drawing)).Append('\n').Append(DrawingSvg.TrueScale(t.Drawing)).Append("\n</figure>\n");
                break;
            case Block.Together t:
                html.Append("<div class=\"together\">\n");
                foreach (var inner in t.Blocks) One(html, inner);
                html.Append("</div>\n");
                break;
            case Block.NewPage: html.Append("<hr class=\"new-page\">\n"); break;
        }
    }

    private static void List(StringBuilder html, IReadOnlyList<Text> items)
    {
        html.Append("<ul>\n");
        foreach (var item in items) html.Append("<li>").Runs(item).Append("</li>\n");
        html.Append("</ul>\n");
    }

    /// <summary>Wide and narrow, of which the page shows the one that fits.</summary>
    private static void Figure(StringBuilder html, Block.Figure figure)
    {
        html.Append("<figure>\n");
        if (figure.Picture is Picture.Curves { Chart: var chart })
            html.Append("<div class=\"wide\">").Append(CurveSvg.ForPage(chart, PictureSize.Wide(chart))).Append("</div>\n<div class=\"narrow\">").Append(CurveSvg.ForPage(chart, PictureSize.Narrow(chart))).Append("</div>\n");
        else if (figure.Picture is Picture.Drawn { Drawing: var drawing }) html.Append(DrawingSvg.Fitting(drawing)).Append('\n');
        html.Append("<figcaption>").Escaped(figure.Caption).Append("</figcaption>\n</figure>\n");
    }
}
