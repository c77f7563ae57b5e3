using System.Globalization;
using Crossmember.Engineering.Quantities;
using Microsoft.VisualBasic.FileIO;

namespace Crossmember.Engineering.Reading;

/// <summary>A table of <c>data/engineering</c>: a row of column names, a row of unit codes (- for words), then rows that each say their source.</summary>
/// <remarks>The tables travel inside the assembly, since Engineering opens no files. A table is the program's own text: what is wrong in it throws.</remarks>
public sealed class ReferenceTable
{
    private readonly string[] _columns;
    private readonly string[] _units;

    private ReferenceTable(string name, List<string[]> lines) => (Name, _columns, _units, Rows) = (name, lines[0], lines[1], lines[2..]);

    public string Name { get; }

    public IReadOnlyList<string> Columns => _columns;

    public IReadOnlyList<string[]> Rows { get; }

    /// <summary>The table of a file name, for example <c>load-index.csv</c>.</summary>
    public static ReferenceTable Load(string name)
    {
        using var stream = typeof(ReferenceTable).Assembly.GetManifestResourceStream(name) ?? throw new ArgumentException($"there is no table {name}", nameof(name));
        using var parser = new TextFieldParser(stream) { TextFieldType = FieldType.Delimited, Delimiters = [","], CommentTokens = ["#"] };
        var lines = new List<string[]>();
        while (parser.ReadFields() is { } fields) lines.Add(fields);
        if (lines.Exists(l => l.Length != lines[0].Length)) throw new InvalidDataException($"{name}: a row has more or fewer fields than there are columns");
        return new(name, lines);
    }

    public string Text(string[] row, string column) => row[IndexOf(column)];

    /// <summary>The number of a cell in SI.</summary>
    public double Number(string[] row, string column) =>
        Units.Require(_units[IndexOf(column)]).ToSi(double.Parse(Text(row, column), NumberStyles.Float, CultureInfo.InvariantCulture));

    private int IndexOf(string column) => Array.IndexOf(_columns, column) is var i and >= 0 ? i : throw new InvalidDataException($"{Name} has no column {column}");
}
