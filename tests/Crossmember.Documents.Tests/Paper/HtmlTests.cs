using System.Text;
using System.Text.RegularExpressions;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using Crossmember.Documents.Curves;
using Crossmember.Documents.Paper;
using Crossmember.Documents.Tests.Curves;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Documents.Tests.Paper;

/// <summary>The page form, read by a parser that is not ours (AngleSharp, the HTML Living Standard).</summary>
public sealed class HtmlTests
{
    internal static IHtmlDocument Parse(Document document, PageSize? size = null) => new HtmlParser().ParseDocument(Encoding.UTF8.GetString(ReadBack.Html(document, size)));

    private static Document Everything => ReadBack.Of(
        new Block.Heading(1, "Everything"), new Block.Facts([new("Mass", "6330 lb")]), new Block.Paragraph(new("Plain ", Run.Strong("bold"), Run.Hint(" quiet"), "\nnext line")),
        new Block.Bullets(["one", "two"]), new Block.Notice("Caution", ["Look twice."]),
        new Block.Table("Checks", [new("verdict"), new("check"), new("value", true)],
            [Row.Over("Axles"), .. Enum.GetValues<Verdict>().Select(v => new Row([Run.Of(v), "Does it hold?", "12"])), new(["deep", "er", "1"], 2)]),
        new Block.Figure("Curves", new Picture.Curves(Gears.Compared())), new Block.Together(new Block.Paragraph("together")), new Block.NewPage(),
        new Block.TrueScale("Bracket", new(50, 20, "a bracket", [Shape.Box(0, 0, 50, 20, Ink.Text)])));

    [Fact]
    public void It_fetches_nothing_and_runs_nothing()
    {
        var html = Encoding.UTF8.GetString(ReadBack.Html(Everything, PageSize.A4));
        var page = Parse(Everything);
        Assert.Empty(page.QuerySelectorAll("script, link, img, iframe, object, base, form"));
        Assert.DoesNotContain(page.All.SelectMany(e => e.Attributes), a => a.Name is "href" or "src" or "xlink:href" || a.Name.StartsWith("on", StringComparison.Ordinal));
        Assert.All(Regex.Matches(html, @"url\([^)]{0,16}").Select(m => m.Value), u => Assert.StartsWith("url(\"data:font/", u, StringComparison.Ordinal));
        Assert.DoesNotContain("@import", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Both_faces_of_the_desk_are_within_it()
    {
        var style = Parse(Everything).QuerySelector("style")!.TextContent;
        var faces = Regex.Matches(style, @"base64,([A-Za-z0-9+/=]+)").Select(m => Convert.FromBase64String(m.Groups[1].Value)).ToList();
        Assert.Equal(2, faces.Count);
        Assert.All(faces, f => Assert.Equal("wOF2"u8.ToArray(), f[..4])); // W3C WOFF File Format 2.0, 4.1: the signature
    }

    /// <summary>WCAG 2.2, 1.3.1: what is seen as a table, a heading or a list is one.</summary>
    [Fact]
    public void Its_parts_are_what_they_look_like()
    {
        var page = Parse(Everything);
        Assert.Equal("Everything", page.QuerySelector("h1")!.TextContent);
        Assert.Equal("A document", page.Title);
        Assert.Equal("en", page.DocumentElement.GetAttribute("lang"));
        var table = page.QuerySelector("table")!;
        Assert.Equal("Checks", table.QuerySelector("caption")!.TextContent);
        Assert.Equal(3, table.QuerySelectorAll("thead th[scope=col]").Length);
        Assert.Equal(5, table.QuerySelectorAll("tbody th[scope=row]").Length);
        Assert.Single(table.QuerySelectorAll("th[scope=rowgroup][colspan='3']"));
        Assert.Equal(["one", "two"], page.QuerySelectorAll("ul li").Select(l => l.TextContent));
        Assert.Equal("Mass", page.QuerySelector("dl dt")!.TextContent);
        Assert.Single(page.QuerySelectorAll("aside.notice"));
        Assert.All(page.QuerySelectorAll("figure > svg, figure div > svg"), s => Assert.NotEqual("", s.GetAttribute("aria-label") ?? ""));
        Assert.All(page.QuerySelectorAll("main .scroll"), s => Assert.Equal("0", s.GetAttribute("tabindex")));
    }

    /// <summary>WCAG 2.2, 1.4.1: the verdict is told by word and by shape beside the colour.</summary>
    [Fact]
    public void A_verdict_has_its_word_and_a_shape_of_its_own()
    {
        var verdicts = Parse(Everything).QuerySelectorAll(".verdict").ToList();
        Assert.Equal(["good", "watch", "don't know", "no"], verdicts.Select(v => v.TextContent));
        var shapes = verdicts.Select(v => v.QuerySelector("svg")!.Children[0]).Select(s => s.LocalName + (s.GetAttribute("d")?.Count(c => c == 'L').ToString(null, null) ?? s.GetAttribute("style")!.Contains("fill:none", StringComparison.Ordinal).ToString())).ToList();
        Assert.Equal(4, shapes.Distinct().Count());
        Assert.All(verdicts, v => Assert.Equal("true", v.QuerySelector("svg")!.GetAttribute("aria-hidden")));
    }

    [Fact]
    public void What_people_typed_is_text_and_nothing_else()
    {
        const string typed = "</style><script>alert(1)</script>\"'&<b>\uD800\u0001";
        var page = Parse(new Document(typed, typed, typed, ReadBack.Instant,
            [new Block.Heading(1, typed), new Block.Paragraph(typed), new Block.Table(typed, [new(typed)], [new([typed])]), new Block.Figure(typed, new Picture.Drawn(new(10, 10, typed, [new Shape.Label(new(1, 1), typed, 3, Ink.Text)])))]));
        Assert.Empty(page.QuerySelectorAll("script, b"));
        Assert.Equal("</style><script>alert(1)</script>\"'&<b>", page.QuerySelector("h1")!.TextContent);
    }

    [Fact]
    public void A_drawing_at_true_size_is_given_in_millimetres_with_the_bar_beside_it()
    {
        var svgs = Parse(Everything).QuerySelectorAll("figure.true-scale svg").Select(s => s.GetAttribute("style")!).ToList();
        Assert.Equal(2, svgs.Count);
        Assert.Contains("width:100mm;height:4mm", svgs[0], StringComparison.Ordinal);
        Assert.Contains("width:50mm;height:20mm", svgs[1], StringComparison.Ordinal);
        Assert.Contains("Print at 100 %", Parse(Everything).QuerySelector("figure.true-scale figcaption")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_document_is_the_same_page_and_prints_on_the_paper_chosen()
    {
        Assert.Equal(ReadBack.Html(Everything, PageSize.A4), ReadBack.Html(Everything, PageSize.A4));
        Assert.Contains("@page { size: letter;", Parse(Everything, PageSize.Letter).QuerySelector("style")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("@page { size: A4;", Parse(Everything).QuerySelector("style")!.TextContent, StringComparison.Ordinal);
    }
}
