using System.Globalization;
using System.Text.RegularExpressions;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;

namespace Crossmember.Engineering.Tests.Quantities;

/// <summary>docs/units.md is what other programs rely on: page, table and spellings must be one.</summary>
public partial class UnitsPageTests
{
    private sealed record Row(string Dimension, string Code, string Factor, string Source, string[] Spellings);

    private static readonly Row[] s_page = [.. Page()];

    [Fact]
    public void Every_code_stands_on_the_page_under_its_dimension_and_no_other()
    {
        Assert.Equal(Units.All.Select(u => (u.Dimension.Name, u.Code)).Order(), s_page.Select(r => (r.Dimension, r.Code)).Order());
        Assert.Equal(Units.All.Count, Units.All.Select(u => u.Code).Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void Every_factor_on_the_page_is_the_factor_of_the_table()
    {
        foreach (var row in s_page)
        {
            var parts = row.Factor.Split(", then + ");
            var unit = Units.Require(row.Code);
            AssertClose(Product(parts[0]), unit.Factor, row.Code);
            AssertClose(parts.Length > 1 ? Product(parts[1]) : 0, unit.Offset, row.Code);
            Assert.False(string.IsNullOrWhiteSpace(row.Source), row.Code);
        }
    }

    [Fact]
    public void The_SI_unit_of_a_dimension_comes_first_and_has_factor_one()
    {
        foreach (var dimension in Dimension.All)
        {
            Assert.Equal(1, dimension.Si.Factor);
            Assert.Equal(0, dimension.Si.Offset);
            Assert.Equal(dimension.Si.Code, s_page.First(r => r.Dimension == dimension.Name).Code);
        }
    }

    [Fact]
    public void Every_spelling_on_the_page_means_its_code()
    {
        foreach (var row in s_page)
        {
            foreach (var spelling in row.Spellings)
            {
                var read = ShopNotation.Read("7 " + spelling, Dimension.Named(row.Dimension)!);
                Assert.True(read.Ok && read.Value!.Unit.Code == row.Code, $"{spelling} should be {row.Code} but is {read.Value?.Unit.Code ?? read.Wrong}");
            }
        }
    }

    [Fact]
    public void Page_and_spelling_table_list_the_same_spellings()
    {
        var rows = SpellingTable();
        Assert.All(rows, r => Assert.True(r.Length == 3 && r[2] is "any" or "exact", string.Join(',', r)));
        Assert.Equal(rows.Where(r => r[0] != r[1]).Select(r => (r[0], r[1])).Order(), s_page.SelectMany(r => r.Spellings.Select(s => (r.Code, s))).Order());
    }

    [Fact]
    public void No_two_units_of_a_dimension_share_a_spelling()
    {
        var clashes = s_page.SelectMany(r => r.Spellings.Append(r.Code).Select(s => (r.Dimension, Spelling: s, r.Code)))
            .GroupBy(x => (x.Dimension, x.Spelling)).Where(g => g.Select(x => x.Code).Distinct().Count() > 1).Select(g => g.Key);
        Assert.Empty(clashes);
    }

    [Fact]
    public void A_spelling_read_in_any_capitals_is_that_of_no_other_unit_of_its_dimension()
    {
        foreach (var row in SpellingTable().Where(r => r[2] == "any"))
        {
            var dimension = Units.Require(row[0]).Dimension.Name;
            var others = s_page.Where(r => r.Dimension == dimension && r.Code != row[0]).SelectMany(r => r.Spellings.Append(r.Code));
            Assert.DoesNotContain(row[1], others, StringComparer.OrdinalIgnoreCase);
        }
    }

    private static IReadOnlyList<string[]> SpellingTable() => ReferenceTable.Load("unit-spellings.csv").Rows;

    private static void AssertClose(double page, double table, string code) =>
        Assert.True(Math.Abs(page - table) <= 4e-15 * Math.Abs(page), $"{code}: page {page:R}, table {table:R}");

    private static double Product(string expression)
    {
        var value = double.NaN;
        var operation = "";
        foreach (var word in expression.Split(' '))
        {
            if (word is "x" or "/")
            {
                operation = word;
                continue;
            }
            var number = word == "pi" ? Math.PI : double.Parse(word, CultureInfo.InvariantCulture);
            value = operation switch { "x" => value * number, "/" => value / number, _ => number };
        }
        return value;
    }

    private static IEnumerable<Row> Page()
    {
        var dimension = "";
        foreach (var line in File.ReadLines(Path.Combine(Root(), "docs", "units.md")))
        {
            if (line.StartsWith("## ", StringComparison.Ordinal)) dimension = line[3..];
            if (!line.StartsWith("| `", StringComparison.Ordinal)) continue;
            var cells = line.Split('|', StringSplitOptions.TrimEntries);
            yield return new(dimension, cells[1].Trim('`'), cells[2], cells[3], [.. Quoted().Matches(cells[4]).Select(m => m.Groups[1].Value)]);
        }
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Crossmember.slnx"))) folder = folder.Parent!;
        return folder.FullName;
    }

    [GeneratedRegex("`([^`]+)`")]
    private static partial Regex Quoted();
}
