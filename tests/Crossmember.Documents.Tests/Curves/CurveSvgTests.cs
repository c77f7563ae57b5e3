using System.Globalization;
using System.Text;
using System.Xml.Linq;
using Crossmember.Documents.Curves;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Documents.Tests.Curves;

/// <summary>What stands in a drawing (Scalable Vector Graphics 1.1, Second Edition), read back as XML.</summary>
public sealed class CurveSvgTests
{
    private static readonly XNamespace s_svg = "http://www.w3.org/2000/svg";

    private static XElement File(CurveChart chart, PictureSize? size = null) => XElement.Parse(Encoding.UTF8.GetString(CurveSvg.Write(chart, size ?? PictureSize.Wide(chart))));

    private static XElement Page(CurveChart chart, PictureSize? size = null) => XElement.Parse(CurveSvg.ForPage(chart, size ?? PictureSize.Wide(chart)));

    private static List<string> Texts(XElement svg) => [.. svg.Descendants(s_svg + "text").Select(t => t.Value)];

    /// <summary>The drawn curves: open lines of two pixels and more than the two points of a key's sample.</summary>
    private static List<XElement> Curves(XElement svg) =>
        [.. svg.Descendants(s_svg + "path").Where(p => (string?)p.Attribute("stroke-width") == "2" && ((string)p.Attribute("d")!).Count(c => c == 'L') > 2)];

    [Theory]
    [InlineData(MeasureSystem.UsCustomary, "road speed (mph)")]
    [InlineData(MeasureSystem.Metric, "road speed (km/h)")]
    public void Axes_bear_quantity_and_unit_and_every_curve_its_name(MeasureSystem system, string x)
    {
        var texts = Texts(File(Gears.Compared(system)));
        Assert.Contains(x, texts);
        Assert.Contains("engine speed (rpm)", texts);
        foreach (var gear in (string[])["gear 1", "gear 2", "gear 3", "gear 4"]) Assert.Equal(2, texts.Count(t => t == gear)); // beside the curve and in the key
        Assert.Contains("working", texts);
        Assert.Contains("as found", texts);
    }

    [Fact]
    public void A_name_that_would_lie_on_another_stands_further_back_or_in_the_key_alone()
    {
        var twins = new Side("working", [Gears.Gear(1, 45), Gears.Gear(1, 45) with { Name = "the same" }]);
        var names = File(CurveChart.Of("Twins", twins, null, MeasureSystem.UsCustomary)[0]).Descendants(s_svg + "text").Where(t => t.Value is "gear 1" or "the same")
            .Select(t => (string)t.Attribute("transform")!).ToList();
        Assert.InRange(names.Count, 2, 4);
        Assert.Equal(names.Count, names.Distinct().Count());
    }

    [Fact]
    public void Then_is_dashed_and_now_is_solid()
    {
        var curves = Curves(File(Gears.Compared()));
        Assert.Equal(8, curves.Count);
        Assert.Equal([true, true, true, true, false, false, false, false], curves.Select(c => c.Attribute("stroke-dasharray") is not null));
        Assert.All(Curves(File(Gears.Alone())), c => Assert.Null(c.Attribute("stroke-dasharray")));
    }

    /// <summary>WCAG 2.2, success criterion 1.4.1 Use of Color: with every colour the same the curves still differ by the shape of their marks.</summary>
    [Fact]
    public void Without_colour_each_curve_has_a_mark_of_its_own_shape()
    {
        var marks = CurveMarks(File(Gears.Alone()));
        Assert.Equal(4, marks.Distinct().Count());
    }

    [Fact]
    public void The_line_runs_where_the_numbers_say()
    {
        var d = (string)Curves(File(Gears.Alone()))[^1].Attribute("d")!; // gear 4: straight from the origin to its end
        var points = d[1..].Split('L').Select(p => p.Split(' ').Select(n => double.Parse(n, CultureInfo.InvariantCulture)).ToArray()).ToList();
        var (from, to) = (points[0], points[^1]);
        Assert.All(points.Select((p, i) => (p, i)), p =>
        {
            Assert.Equal(from[0] + ((to[0] - from[0]) * p.i / (points.Count - 1)), p.p[0], 0.02);
            Assert.Equal(from[1] + ((to[1] - from[1]) * p.i / (points.Count - 1)), p.p[1], 0.02);
        });
        Assert.True(to[0] > from[0] && to[1] < from[1], d); // a drawing's y runs downward
    }

    [Fact]
    public void On_a_page_every_colour_and_the_face_come_from_the_pages_tokens()
    {
        var svg = CurveSvg.ForPage(Gears.Compared(), PictureSize.Wide(Gears.Compared()));
        Assert.DoesNotMatch("#[0-9A-Fa-f]{3}", svg);
        Assert.DoesNotContain("rgb", svg, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("stroke:var(--action)", svg, StringComparison.Ordinal);
        Assert.Contains("font-family:var(--text-face)", svg, StringComparison.Ordinal);
        Assert.All(Page(Gears.Compared()).Descendants(s_svg + "text"), t => Assert.Matches(@"fill:var\(--(ink|quiet)\)", (string)t.Attribute("style")!));
    }

    [Fact]
    public void On_a_page_it_is_one_image_with_words_for_those_who_do_not_see_it()
    {
        var svg = Page(Gears.Compared());
        Assert.Equal("img", (string?)svg.Attribute("role"));
        var words = (string)svg.Attribute("aria-label")!;
        Assert.Contains("engine speed against road speed", words, StringComparison.Ordinal);
        Assert.Contains("gear 4, working: from 0 mph to 71.1 mph, highest 3,200 rpm at 71.1 mph.", words, StringComparison.Ordinal); // 3200 / 45
        Assert.Contains("gear 4, as found: from 0 mph to 59.3 mph, highest 3,200 rpm at 59.3 mph.", words, StringComparison.Ordinal); // 3200 / 54
    }

    [Fact]
    public void A_file_stands_by_itself_in_the_light_colours()
    {
        var svg = Encoding.UTF8.GetString(CurveSvg.Write(Gears.Compared(), PictureSize.Wide(Gears.Compared())));
        Assert.DoesNotContain("var(", svg, StringComparison.Ordinal);
        foreach (var ink in (Ink[])[Ink.Text, Ink.Quiet, Ink.Rule, Ink.Ground, Ink.OfCurve(0), Ink.OfCurve(3)]) Assert.Contains(ink.Light, svg, StringComparison.Ordinal);
        Assert.Equal("Engine speed, high range", (string)File(Gears.Compared()).Element(s_svg + "title")!);
    }

    /// <summary>Nothing but the names of its own language: no address to fetch from, no script, no reference.</summary>
    [Fact]
    public void It_fetches_nothing_from_outside()
    {
        foreach (var svg in (XElement[])[File(Gears.Compared()), Page(Gears.Compared())])
        {
            Assert.DoesNotContain(svg.DescendantsAndSelf().Attributes(), a => !a.IsNamespaceDeclaration && (a.Value.Contains("//", StringComparison.Ordinal) || a.Value.Contains("url(", StringComparison.Ordinal) || a.Name.LocalName == "href"));
            Assert.Empty(svg.Descendants().Select(e => e.Name.LocalName).Except(["title", "desc", "rect", "g", "path", "text", "ellipse", "circle"]));
        }
    }

    [Fact]
    public void The_same_chart_is_the_same_drawing_whatever_was_drawn_before_and_beside_it()
    {
        var first = CurveSvg.Write(Gears.Compared(), PictureSize.Wide(Gears.Compared()));
        var page = CurveSvg.ForPage(Gears.Compared(), PictureSize.Narrow(Gears.Compared()));
        CurveSvg.Write(Gears.Alone(), PictureSize.Narrow(Gears.Alone()));
        Parallel.For(0, 8, _ =>
        {
            Assert.Equal(first, CurveSvg.Write(Gears.Compared(), PictureSize.Wide(Gears.Compared())));
            Assert.Equal(page, CurveSvg.ForPage(Gears.Compared(), PictureSize.Narrow(Gears.Compared())));
        });
    }

    [Theory]
    [InlineData(4)]
    [InlineData(8)]
    [InlineData(14)]
    public void However_many_curves_the_key_of_a_phone_names_them_all(int curves)
    {
        var many = new Side("working", [.. Enumerable.Range(1, curves).Select(i => Gears.Gear(4, 40 + i) with { Name = $"a rather long name {i}" })]);
        var chart = CurveChart.Of("Many", many, new("as found", [Gears.Gear(4, 40) with { Name = "a rather long name 1" }]), MeasureSystem.UsCustomary)[0];
        foreach (var size in (PictureSize[])[PictureSize.Wide(chart), PictureSize.Narrow(chart)])
            Assert.Superset(many.Curves.Select(c => c.Name).Append("working").Append("as found").ToHashSet(), Texts(Page(chart, size)).ToHashSet());
    }

    [Fact]
    public void A_drawing_for_a_phone_has_the_whole_key_within_its_frame()
    {
        var size = PictureSize.Narrow(Gears.Compared());
        var texts = Page(Gears.Compared(), size).Descendants(s_svg + "text").Where(t => t.Value is "gear 4" or "as found").ToList();
        Assert.Equal(3, texts.Count);
        Assert.All(texts, t =>
        {
            var place = ((string)t.Attribute("transform")!)["translate(".Length..^1].Split(' ');
            Assert.InRange(double.Parse(place[0], CultureInfo.InvariantCulture), 0, size.Width);
            Assert.InRange(double.Parse(place[1], CultureInfo.InvariantCulture), 0, size.Height);
        });
    }

    [Fact]
    public void Names_that_people_typed_are_text_and_nothing_else()
    {
        var chart = CurveChart.Of("<b>&", new("\"><script>", [Gears.Pull]), new("]]>", [Gears.Pull]), MeasureSystem.UsCustomary)[0];
        Assert.Contains("\"><script>", Texts(File(chart)));
        Assert.Empty(Page(chart).Descendants(s_svg + "script"));
    }

    /// <summary>The filled or open shapes that mark a curve, by curve: kind of element and number of corners.</summary>
    private static List<string> CurveMarks(XElement svg) =>
        [.. svg.Descendants().Where(e => ((string?)e.Attribute("style"))?.StartsWith("fill:", StringComparison.Ordinal) == true && e.Name != s_svg + "text")
            .Select(e => (Colour: (string)e.Attribute("style")!, Shape: Shape(e))).GroupBy(e => e.Colour).Select(g => g.First().Shape)];

    private static string Shape(XElement e) => e.Name.LocalName + (e.Attribute("d") is { } d ? Corners(d.Value) : "");

    /// <summary>Directions from corner to corner, so that a diamond is told from a square.</summary>
    private static string Corners(string d)
    {
        var points = d.TrimEnd('Z')[1..].Split('L').Select(p => p.Split(' ').Select(n => double.Parse(n, CultureInfo.InvariantCulture)).ToArray()).ToList();
        return string.Join(' ', points.Zip(points.Skip(1), (a, b) => $"{Math.Sign(Math.Round(b[0] - a[0], 1))},{Math.Sign(Math.Round(b[1] - a[1], 1))}"));
    }
}
