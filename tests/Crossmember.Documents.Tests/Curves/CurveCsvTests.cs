using System.Globalization;
using System.Text;
using CsCheck;
using Crossmember.Documents.Curves;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Documents.Tests.Curves;

/// <summary>RFC 4180, Common Format and MIME Type for CSV Files: a header, lines that end with CR LF, quotes doubled within quotes.</summary>
public sealed class CurveCsvTests
{
    private static string Text(CurveChart chart) => new UTF8Encoding(false, true).GetString(CurveCsv.Write(chart)).TrimStart('\uFEFF');

    private static string[][] Rows(CurveChart chart) => [.. Text(chart).Split("\r\n")[..^1].Select(l => l.Split(','))];

    [Theory]
    [InlineData(MeasureSystem.UsCustomary, "road speed (mph)")]
    [InlineData(MeasureSystem.Metric, "road speed (km/h)")]
    public void Both_axes_stand_in_the_header_with_their_units(MeasureSystem system, string x) =>
        Assert.Equal(["curve", "build", x, "engine speed (rpm)"], Rows(Gears.Compared(system))[0]);

    [Fact]
    public void Every_point_of_both_sides_is_in_it_bit_for_bit()
    {
        var chart = Gears.Compared(MeasureSystem.Metric);
        var expected = chart.Lines.OrderBy(l => l.Then).SelectMany(l => l.X.Zip(l.Y, (x, y) => (l.Name, l.Then ? "as found" : "working", x, y)));
        var read = Rows(chart).Skip(1).Select(r => (r[0], r[1], double.Parse(r[2], CultureInfo.InvariantCulture), double.Parse(r[3], CultureInfo.InvariantCulture)));
        Assert.Equal(expected, read);
    }

    [Fact]
    public void Whatever_the_numbers_are_they_come_back() =>
        Gen.Double.Where(double.IsFinite).Array[2].Sample(y =>
        {
            var chart = CurveChart.Of("Pull", new("now", [Gears.Pull with { X = [1, 2], Y = y }]), null, MeasureSystem.UsCustomary)[0];
            Assert.Equal(y, Rows(chart).Skip(1).Select(r => double.Parse(r[3], CultureInfo.InvariantCulture)));
        });

    [Fact]
    public void A_name_with_commas_and_quotes_is_one_field() =>
        Assert.Contains("gear 1,\"the \"\"good\"\" one, with 4.10\",5,4000\r\n", Text(CurveChart.Of("Pull", new("the \"good\" one, with 4.10", [Gears.Pull]), null, MeasureSystem.UsCustomary)[0]), StringComparison.Ordinal);

    /// <summary>A table program works out what begins with one of = + - @ (OWASP, CSV Injection); a name is no formula.</summary>
    [Theory]
    [InlineData("=1+2")]
    [InlineData("@sum")]
    [InlineData("-x")]
    public void A_name_is_never_a_formula(string name) =>
        Assert.Equal("'" + name, Rows(CurveChart.Of("Pull", new(name, [Gears.Pull]), null, MeasureSystem.UsCustomary)[0])[1][1]);
}
