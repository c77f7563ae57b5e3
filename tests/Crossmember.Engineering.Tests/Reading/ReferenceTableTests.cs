using Crossmember.Engineering.Reading;

namespace Crossmember.Engineering.Tests.Reading;

/// <summary>Every table of reference values says, row by row, where it is from and how it was checked.</summary>
public class ReferenceTableTests
{
    // Spellings of units are our own notation: there is no source to name.
    private static readonly string[] s_notation = ["unit-spellings.csv"];

    public static TheoryData<string> Tables =>
        [.. typeof(ReferenceTable).Assembly.GetManifestResourceNames().Where(n => n.EndsWith(".csv", StringComparison.Ordinal) && !s_notation.Contains(n))];

    [Theory]
    [MemberData(nameof(Tables))]
    public void Each_row_has_source_provenance_and_check(string name)
    {
        var table = ReferenceTable.Load(name);
        Assert.NotEmpty(table.Rows);
        foreach (var row in table.Rows)
        {
            Assert.NotEmpty(table.Text(row, "source"));
            Assert.Contains(table.Text(row, "provenance"), new[] { "published", "handbook-memory", "derived", "trade" });
            Assert.NotEmpty(table.Text(row, "checked"));
        }
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void No_row_stands_twice(string name)
    {
        var table = ReferenceTable.Load(name);
        Assert.Equal(table.Rows.Count, table.Rows.Select(r => string.Join('|', r)).Distinct().Count());
    }

    [Fact]
    public void Numbers_come_in_si_by_the_unit_row()
    {
        var table = ReferenceTable.Load("speed-symbol.csv");
        Assert.Equal(160 / 3.6, table.Number(table.Rows.Single(r => table.Text(r, "symbol") == "Q"), "speed"), 1e-12);
    }

    [Fact]
    public void A_table_or_column_that_is_not_there_is_a_mistake_of_the_program()
    {
        Assert.Throws<ArgumentException>(() => ReferenceTable.Load("none.csv"));
        var table = ReferenceTable.Load("load-index.csv");
        Assert.Throws<InvalidDataException>(() => table.Text(table.Rows[0], "color"));
    }
}
