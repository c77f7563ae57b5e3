using System.Text;
using Crossmember.Builds.Pasting;
using CsCheck;

namespace Crossmember.Builds.Tests.Pasting;

/// <summary>Cells come back as they were written, whatever stands in them.</summary>
public sealed class CellReaderTests
{
    private static readonly Gen<string> s_cell = Gen.Char["ab1 \"';,|\t\n\r.é$"].Array[0, 8].Select(c => new string(c));
    private static readonly Gen<string[][]> s_tables = Gen.Int[2, 5].SelectMany(columns => s_cell.Array[columns].Array[1, 12]);

    /// <summary>RFC 4180, section 2, written out by hand: every cell that could be misread stands in quotes, quotes are doubled.</summary>
    private static string Written(IEnumerable<string[]> rows, char separator) => string.Join("\r\n", rows.Select(r => string.Join(separator, r.Select(c => c.IndexOfAny(['"', '\'', ';', ',', '|', '\t', '\n', '\r', ' ']) >= 0 ? $"\"{c.Replace("\"", "\"\"")}\"" : c))));

    private static IEnumerable<string[]> Filled(IEnumerable<string[]> rows) => rows.Select(r => r.Select(c => c.Trim()).ToArray()).Where(r => r.Any(c => c.Length > 0));

    [Theory]
    [InlineData('\t')]
    [InlineData(';')]
    [InlineData('|')]
    [InlineData(',')]
    public void A_table_comes_back_cell_by_cell(char separator) => s_tables.Sample(rows =>
    {
        var table = CellReader.Read(Written(rows, separator), separator);
        Assert.Equal(Filled(rows), table.Rows.Select(r => r.Cells.ToArray()));
    });

    [Theory]
    [InlineData('\t')]
    [InlineData(';')]
    [InlineData('|')]
    [InlineData(',')]
    public void The_separator_is_found(char separator) => s_tables.Sample(rows =>
    {
        // A row without anything in it says nothing of where cells end.
        if (!Filled(rows).Any()) return;
        var table = CellReader.Read(Written(rows, separator));
        Assert.Equal(separator, table.Separator);
        Assert.Equal(Filled(rows), table.Rows.Select(r => r.Cells.ToArray()));
    });

    [Fact]
    public void What_we_write_we_read() => s_tables.Sample(rows =>
        Assert.Equal(Filled(rows), CellReader.Read(CellWriter.Write(rows, '\t'), '\t').Rows.Select(r => r.Cells.ToArray())));

    [Theory]
    [InlineData("3/8\" hose\t2\n", "3/8\" hose", "2")]
    [InlineData("\"A\" arm bush\t4", "\"A\" arm bush", "4")]
    [InlineData("\"never closed\t1\nnext\t2", "\"never closed", "1")]
    [InlineData("\uFEFFhose;2", "hose", "2")]
    [InlineData("hose\t", "hose", "")]
    public void Inch_marks_and_slips_stay_as_they_are(string text, string first, string second) => Assert.Equal([first, second], CellReader.Read(text).Rows[0].Cells);

    [Fact]
    public void Rows_know_on_which_line_they_begin()
    {
        var table = CellReader.Read("part;qty\n\n\"two\nlines\";1\r\nhose;2\rpipe;3");
        Assert.Equal([1, 3, 5, 6], table.Rows.Select(r => r.Line));
        Assert.Equal(4, table.Rows.Count);
    }

    [Fact]
    public void A_list_of_names_is_a_table_of_one_column()
    {
        var table = CellReader.Read("brake hose, front\nmaster cylinder\nwheel cylinders\n");
        Assert.Null(table.Separator);
        Assert.Equal(["brake hose, front", "master cylinder", "wheel cylinders"], table.Rows.Select(r => r.Cells[0]));
    }

    /// <summary>A thousand seeded runs of arbitrary bytes: nothing throws, and what is no blank is in exactly one cell.</summary>
    [Fact]
    public void Arbitrary_bytes_do_no_harm()
    {
        for (var seed = 1; seed <= 1000; seed++)
        {
            var bytes = new byte[seed % 400];
            new Random(seed).NextBytes(bytes);
            var text = Encoding.Latin1.GetString(bytes);
            var table = CellReader.Read(text);
            var guess = ColumnGuessing.Of(table);
            var reader = new PartsReader(guess, "USD", "lb");
            Assert.Equal(table.Rows.Count, table.Rows.Select(reader.Read).Count());
            Assert.Equal(Marks(text), table.Rows.Sum(r => r.Cells.Sum(Marks)));
        }
    }

    /// <summary>Letters and digits: no separator, quote or line end is one.</summary>
    private static int Marks(string text) => text.Count(char.IsLetterOrDigit);
}
