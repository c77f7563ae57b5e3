using Crossmember.Engineering.Reading;

namespace Crossmember.Engineering.Tests.Brakes.Heat;

/// <summary>The tables of fluids, letters and linings hold together; all rows are from memory or practice and say so.</summary>
public class HeatTablesTests
{
    // 49 CFR 571.116 S5.1.1 and S5.1.2, from memory: dry and wet boiling points.
    [Theory]
    [InlineData("DOT 3", 205, 140)]
    [InlineData("DOT 4", 230, 155)]
    [InlineData("DOT 5", 260, 180)]
    [InlineData("DOT 5.1", 260, 180)]
    public void Boiling_points_as_remembered(string grade, double dry, double wet)
    {
        var table = ReferenceTable.Load("brake-fluid.csv");
        var row = table.Rows.Single(r => table.Text(r, "grade") == grade);
        Assert.Equal((dry, wet), (Math.Round(table.Number(row, "dry") - 273.15, 9), Math.Round(table.Number(row, "wet") - 273.15, 9)));
    }

    [Fact]
    public void Bands_of_letters_join_and_rise()
    {
        var table = ReferenceTable.Load("brake-friction.csv");
        Assert.Equal(["C", "D", "E", "F", "G", "H"], table.Rows.Select(r => table.Text(r, "letter")));
        Assert.All(table.Rows.Zip(table.Rows.Skip(1)), p => Assert.Equal(table.Number(p.First, "high"), table.Number(p.Second, "low"), 1e-12));
        Assert.All(table.Rows, r => Assert.Equal((table.Number(r, "low") + table.Number(r, "high")) / 2, table.Number(r, "middle"), 1e-12));
    }

    [Theory]
    [InlineData("brake-fluid.csv", "handbook-memory")]
    [InlineData("brake-friction.csv", "handbook-memory")]
    [InlineData("brake-lining.csv", "trade")]
    public void Nothing_pretends_to_have_been_read(string name, string provenance)
    {
        var table = ReferenceTable.Load(name);
        Assert.All(table.Rows, r => Assert.Equal(provenance, table.Text(r, "provenance")));
        Assert.All(table.Rows, r => Assert.NotEmpty(table.Text(r, "source")));
    }

    [Fact]
    public void Organic_lining_has_the_least_limit()
    {
        var table = ReferenceTable.Load("brake-lining.csv");
        Assert.Equal("organic", table.Text(table.Rows.MinBy(r => table.Number(r, "limit"))!, "lining"));
    }
}
