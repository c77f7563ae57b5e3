using Crossmember.Documents.Curves;

namespace Crossmember.Documents.Paper.Pdf;

/// <summary>A table: a strip for each row, each bearing the head in case it begins a page.</summary>
internal sealed class TableLayout(Lines lines, Room room)
{
    private const double Gutter = 10, Padding = 2.6, Indent = 9, After = 10;

    private static readonly Style s_cell = new(8.5, Ink.Text), s_head = new(7.5, Ink.Quiet, true), s_caption = new(9.5, Ink.Text, true);

    private sealed record Laid(IReadOnlyList<IReadOnlyList<TextLine>> Cells, IReadOnlyList<double> X, Style Style)
    {
        public int Lines => Cells.Max(c => c.Count);
    }

    public IEnumerable<Strip> Of(Block.Table table)
    {
        var widths = Widths(table);
        var head = Head(table, widths);
        if (table.Caption.Length > 0)
        {
            var caption = lines.Wrap(table.Caption, s_caption, room.Width);
            yield return new((caption.Count * s_caption.Leading) + 2, (pencil, y) => pencil.Lines(caption, 0, y, s_caption)) { WithNext = true, Before = 4 };
        }
        yield return head with { WithNext = true };
        for (var i = 0; i < table.Rows.Count; i++)
        {
            var strips = RowOf(table, table.Rows[i], widths, head).ToList();
            // The last row does not go to a new page alone, nor what stands over rows without one of them.
            if (table.Rows[i].Group || (i == table.Rows.Count - 2 && i > 0)) strips[^1] = strips[^1] with { WithNext = true };
            foreach (var strip in strips) yield return strip;
        }
        yield return Strip.Gap(After);
    }

    /// <summary>As wide as what stands in them where that fits; else the widest give way first, down to their widest word.</summary>
    private double[] Widths(Block.Table table)
    {
        var columns = table.Columns.Count;
        double[] least = new double[columns], most = new double[columns];
        for (var c = 0; c < columns; c++)
        {
            least[c] = lines.Narrowest(table.Columns[c].Title, s_head);
            most[c] = lines.Widest(table.Columns[c].Title, s_head);
            foreach (var row in table.Rows.Where(r => !r.Group && c < r.Cells.Count))
            {
                var indent = c == 0 ? row.Depth * Indent : 0;
                least[c] = Math.Max(least[c], indent + lines.Narrowest(row.Cells[c], s_cell));
                most[c] = Math.Max(most[c], indent + lines.Widest(row.Cells[c], s_cell));
            }
        }
        var free = room.Width - (Gutter * (columns - 1));
        if (most.Sum() <= free) return most;
        // A single word wider than its share of the page is parted.
        for (var c = 0; c < columns; c++) least[c] = Math.Min(least[c], Math.Max(free / columns, free - least.Sum() + least[c]));
        return Level(least, most, [.. table.Columns.Select(c => c.Share)], free);
    }

    /// <summary>To each the same by its share, but no column below its least nor above its most.</summary>
    private static double[] Level(double[] least, double[] most, double[] shares, double free)
    {
        double low = 0, high = free;
        double[] At(double level) => [.. least.Select((l, c) => Math.Max(l, Math.Min(level * shares[c], most[c])))];
        for (var i = 0; i < 50; i++)
        {
            var middle = (low + high) / 2;
            if (At(middle).Sum() > free) high = middle;
            else low = middle;
        }
        var found = At(low);
        var sum = found.Sum();
        return sum <= free ? found : [.. found.Select(w => w * free / sum)];
    }

    private Strip Head(Block.Table table, double[] widths)
    {
        var laid = Lay([.. table.Columns.Select(c => (Text)c.Title)], table, widths, 0, s_head);
        double all = All(widths), height = (laid.Lines * s_head.Leading) + Padding;
        return new(height + 1, (pencil, y) =>
        {
            Draw(pencil, laid, y, 0, laid.Lines);
            pencil.Rule(0, y + height, all, Ink.Quiet, 0.8);
        }) { WithNext = true };
    }

    private IEnumerable<Strip> RowOf(Block.Table table, Row row, double[] widths, Strip head)
    {
        var laid = row.Group
            ? new([lines.Wrap(row.Cells[0], s_cell, All(widths))], [0], s_cell)
            : Lay(row.Cells, table, widths, row.Depth * Indent, s_cell);
        // Only a row that no page can hold is parted.
        var most = Math.Max(1, (int)((room.Height - head.Height - (2 * Padding)) / s_cell.Leading) - 1);
        for (var from = 0; from < laid.Lines; from += most)
        {
            var (first, count) = (from, Math.Min(most, laid.Lines - from));
            var last = from + count == laid.Lines;
            var height = (count * s_cell.Leading) + (2 * Padding);
            var all = All(widths);
            yield return new(height, (pencil, y) =>
            {
                Draw(pencil, laid, y + Padding, first, count);
                if (last) pencil.Rule(0, y + height - 0.5, all, Ink.Rule);
            }) { Head = head };
        }
    }

    private Laid Lay(IReadOnlyList<Text> cells, Block.Table table, double[] widths, double indent, Style style)
    {
        var made = new List<IReadOnlyList<TextLine>>();
        var x = new List<double>();
        double left = 0;
        for (var c = 0; c < widths.Length; c++)
        {
            var own = c == 0 ? indent : 0;
            var wrapped = lines.Wrap(c < cells.Count ? cells[c] : "", style, widths[c] - own);
            // Numbers and their title end at the right edge, line by line.
            made.Add(!table.Columns[c].Figures ? wrapped
                : [.. wrapped.Select(l => l with { Words = [.. l.Words.Select(w => w with { X = w.X + widths[c] - own - l.Width })] })]);
            x.Add(left + own);
            left += widths[c] + Gutter;
        }
        return new(made, x, style);
    }

    private static void Draw(Pencil pencil, Laid laid, double y, int from, int count)
    {
        for (var c = 0; c < laid.Cells.Count; c++) pencil.Lines(laid.Cells[c].Skip(from).Take(count), laid.X[c], y, laid.Style);
    }

    private static double All(double[] widths) => widths.Sum() + (Gutter * (widths.Length - 1));
}
