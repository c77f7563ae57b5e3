using Crossmember.Documents.Curves;

namespace Crossmember.Documents.Paper.Pdf;

/// <summary>Names with their values beneath, up to four side by side.</summary>
internal sealed class FactsLayout(Lines lines, Room room)
{
    private const int Across = 4;
    private const double Gutter = 12, Between = 5;

    private static readonly Style s_name = new(7.5, Ink.Quiet), s_value = new(10, Ink.Text, true);

    public IEnumerable<Strip> Of(Block.Facts facts)
    {
        var across = Math.Min(Across, Math.Max(1, facts.Items.Count));
        var width = ((room.Width + Gutter) / across) - Gutter;
        foreach (var row in facts.Items.Chunk(across))
        {
            var cells = row.Select(f => (Name: lines.Wrap(f.Name, s_name, width), Value: lines.Wrap(f.Value, s_value, width))).ToList();
            double names = cells.Max(c => c.Name.Count) * s_name.Leading, height = names + (cells.Max(c => c.Value.Count) * s_value.Leading) + Between;
            yield return new(height, (pencil, y) =>
            {
                for (var i = 0; i < cells.Count; i++)
                {
                    var x = i * (width + Gutter);
                    pencil.Lines(cells[i].Name, x, y, s_name);
                    pencil.Lines(cells[i].Value, x, y + names, s_value);
                }
            });
        }
    }
}
