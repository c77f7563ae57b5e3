using System.Net;
using System.Text;
using System.Xml;

namespace Crossmember.Documents.Paper.Html;

/// <summary>Text and runs as markup: what people typed is never anything but text.</summary>
internal static class Markup
{
    public static StringBuilder Escaped(this StringBuilder html, string words) => html.Append(WebUtility.HtmlEncode(Clean(words)));

    public static StringBuilder Runs(this StringBuilder html, Text text)
    {
        foreach (var run in text.Runs)
        {
            if (run.Mark is { } verdict)
                html.Append($"<span class=\"verdict {verdict.ToString().ToLowerInvariant()}\">").Append(DrawingSvg.Mark(VerdictShape.Of(verdict))).Escaped(run.Words).Append("</span>");
            else if (run.Bold) html.Append("<strong>").Lines(run.Words).Append("</strong>");
            else if (run.Quiet) html.Append("<span class=\"hint\">").Lines(run.Words).Append("</span>");
            else html.Lines(run.Words);
        }
        return html;
    }

    private static StringBuilder Lines(this StringBuilder html, string words)
    {
        var parts = words.Split('\n');
        for (var i = 0; i < parts.Length; i++) (i > 0 ? html.Append("<br>") : html).Escaped(parts[i]);
        return html;
    }

    /// <summary>Half characters and control characters have no place in a page.</summary>
    private static string Clean(string words)
    {
        if (words.All(c => !char.IsSurrogate(c) && XmlConvert.IsXmlChar(c))) return words;
        return string.Concat(words.EnumerateRunes().Where(r => r != Rune.ReplacementChar && !Rune.IsControl(r)).Select(r => r.ToString()));
    }
}
