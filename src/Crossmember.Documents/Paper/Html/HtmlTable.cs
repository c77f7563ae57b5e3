using System.Text;

namespace Crossmember.Documents.Paper.Html;

/// <summary>A table as markup, with what a screen reader needs to say where a cell stands.</summary>
internal static class HtmlTable
{
    public static void Write(StringBuilder html, Block.Table table)
    {
        // By keyboard too: a table wider than a phone is scrolled within its own frame.
        html.Append("<div class=\"scroll\" tabindex=\"0\" role=\"region\" aria-label=\"").Escaped(NameOf(table)).Append("\">\n<table>\n");
        if (table.Caption.Length > 0) html.Append("<caption>").Escaped(table.Caption).Append("</caption>\n");
        html.Append("<thead><tr>");
        foreach (var column in table.Columns) html.Append(column.Figures ? "<th scope=\"col\" class=\"figure\">" : "<th scope=\"col\">").Escaped(column.Title).Append("</th>");
        html.Append("</tr></thead>\n<tbody>\n");
        foreach (var row in table.Rows)
        {
            if (row.Group) html.Append($"</tbody>\n<tbody>\n<tr class=\"group\"><th scope=\"rowgroup\" colspan=\"{table.Columns.Count}\">").Runs(row.Cells[0]).Append("</th></tr>\n");
            else One(html, table, row);
        }
        html.Append("</tbody>\n</table>\n</div>\n");
    }

    private static void One(StringBuilder html, Block.Table table, Row row)
    {
        html.Append("<tr>");
        for (var c = 0; c < table.Columns.Count; c++)
        {
            var tag = c == 0 ? "th" : "td";
            html.Append($"<{tag}{(c == 0 ? " scope=\"row\"" : "")}{(table.Columns[c].Figures ? " class=\"figure\"" : c == 0 && row.Depth > 0 ? $" style=\"padding-left:{row.Depth}em\"" : "")}>")
                .Runs(c < row.Cells.Count ? row.Cells[c] : "").Append($"</{tag}>");
        }
        html.Append("</tr>\n");
    }

    private static string NameOf(Block.Table table) => table.Caption.Length > 0 ? table.Caption : string.Join(", ", table.Columns.Select(c => c.Title));
}
