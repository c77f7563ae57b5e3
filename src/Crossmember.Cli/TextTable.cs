namespace Crossmember.Cli;

/// <summary>Columns of text, each as wide as its widest cell; the last one runs free.</summary>
internal sealed class TextTable
{
    private readonly List<string[]> _rows = [];

    public void Add(params string[] cells) => _rows.Add(cells);

    public void Write(TextWriter output, string indent = "  ")
    {
        if (_rows.Count == 0) return;
        var widths = Enumerable.Range(0, _rows.Max(r => r.Length)).Select(c => _rows.Max(r => c < r.Length - 1 ? r[c].Length : 0)).ToArray();
        foreach (var row in _rows)
            output.WriteLine(indent + string.Join("  ", row.Select((cell, c) => c < row.Length - 1 ? cell.PadRight(widths[c]) : cell)).TrimEnd());
    }
}
