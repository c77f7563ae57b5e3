using System.Globalization;
using Crossmember.Documents.Paper;
using Crossmember.Documents.Tests.Curves;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Tokens;

namespace Crossmember.Documents.Tests.Paper;

/// <summary>What every page of every document holds to.</summary>
public sealed class PageTests
{
    private static Document Long() => ReadBack.Of(
    [
        new Block.Heading(1, "Long"),
        .. Enumerable.Range(1, 60).SelectMany(i => (Block[])[new Block.Heading(2, $"Part {i}"), new Block.Paragraph($"In part {i} " + string.Join(' ', Enumerable.Repeat("words follow words", 20)) + ".")]),
        new Block.Facts([new("Mass", "6330 lb"), new("Hours", "422 h")]),
        new Block.Notice("Caution", ["Chock the wheels.", "Look twice."]),
        new Block.Figure("Curves", new Picture.Curves(Gears.Compared())),
        new Block.Paragraph(new(Run.Of(Verdict.Fail), " ", Run.Of(Verdict.Unknown), " ", Run.Of(Verdict.Caution), " ", Run.Of(Verdict.Pass))),
    ]);

    /// <summary>ISO 216: A4 is 210 by 297 mm; ANSI/ASME Y14.1: size A is 8.5 by 11 inches; a point is 1/72 inch (ISO 32000-1, 8.3.2.3).</summary>
    [Theory]
    [InlineData("a4", 595.276, 841.890)]
    [InlineData("letter", 612, 792)]
    public void Paper_has_its_size_to_a_thousandth_of_a_point(string name, double width, double height)
    {
        using var read = ReadBack.Written(Long(), PageSize.Find(name));
        Assert.All(read.Pages, p => Assert.Equal((width, height), (Math.Round(p.Width, 3), Math.Round(p.Height, 3))));
    }

    [Fact]
    public void The_paper_follows_the_measures()
    {
        Assert.Same(PageSize.Letter, PageSize.For(MeasureSystem.UsCustomary));
        Assert.Same(PageSize.A4, PageSize.For(MeasureSystem.Metric));
        Assert.Null(PageSize.Find("foolscap"));
    }

    [Fact]
    public void Every_page_says_which_of_how_many_it_is_and_what_it_belongs_to()
    {
        using var read = ReadBack.Written(Long());
        Assert.True(read.Pages.Count > 5);
        Assert.All(read.Pages, p =>
        {
            var text = string.Join(' ', p.GetWords().Select(w => w.Text));
            Assert.Contains($"page {p.Number} of {read.Pages.Count}", text, StringComparison.Ordinal);
            Assert.Contains("What runs along the top", text, StringComparison.Ordinal);
            Assert.Contains("What stands at the foot", text, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Text_stands_in_its_order_and_none_is_lost()
    {
        using var read = ReadBack.Written(Long());
        var words = string.Join(' ', read.Words);
        var at = 0;
        for (var i = 1; i <= 60; i++)
        {
            var next = words.IndexOf($"In part {i} words", at, StringComparison.Ordinal);
            Assert.True(next >= at, $"part {i} is missing or out of order");
            at = next;
        }
        Assert.Equal(60 * 20, read.Words.Count(w => w == "follow"));
    }

    [Fact]
    public void A_heading_never_ends_a_page()
    {
        using var read = ReadBack.Written(Long());
        Assert.All(read.Pages, p => Assert.NotEqual("Part", ReadBack.Body(p)[^2]));
    }

    [Fact]
    public void Nothing_is_drawn_outside_the_margins()
    {
        using var read = ReadBack.Written(Long());
        const double edge = PageSize.Margin - 0.6; // half the width of a thin line
        Assert.All(read.Pages, p =>
        {
            Assert.All(p.Letters, l => Assert.True(l.BoundingBox.Left >= edge && l.BoundingBox.Right <= p.Width - edge && l.BoundingBox.Bottom >= edge && l.BoundingBox.Top <= p.Height - edge, $"{l.Value} on page {p.Number}"));
            Assert.All(p.Paths.Where(x => !x.IsClipping && (x.IsFilled || x.IsStroked)).Select(x => x.GetBoundingRectangle()).OfType<PdfRectangle>(),
                r => Assert.True(r.Left >= edge && r.Right <= p.Width - edge && r.Bottom >= edge && r.Top <= p.Height - edge, $"page {p.Number}: {r}"));
        });
    }

    /// <summary>ISO 32000-1, 9.9: an embedded font has its program in its descriptor.</summary>
    [Fact]
    public void Every_font_is_in_the_file()
    {
        using var read = ReadBack.Written(Long());
        var objects = read.Pdf.Structure.CrossReferenceTable.ObjectOffsets.Keys.Select(k => read.Pdf.Structure.GetObject(k).Data).ToList();
        var descriptors = objects.OfType<DictionaryToken>().Where(d => d.TryGet(NameToken.Type, out NameToken type) && type.Data == "FontDescriptor").ToList();
        Assert.InRange(descriptors.Count, 1, 2); // regular and bold
        Assert.All(descriptors, d => Assert.True(d.ContainsKey(NameToken.FontFile2) || d.ContainsKey(NameToken.FontFile3), d.ToString()));
        Assert.All(read.Pages.SelectMany(p => p.Letters), l => Assert.Contains("AtkinsonHyperlegibleNext", l.FontName, StringComparison.Ordinal));
    }

    [Fact]
    public void The_same_document_is_the_same_bytes_in_any_culture_and_beside_others()
    {
        var first = ReadBack.Bytes(Long(), PageSize.A4);
        Parallel.For(0, 4, _ => Assert.Equal(first, ReadBack.Bytes(Long(), PageSize.A4)));
        var before = CultureInfo.CurrentCulture;
        try
        {
            // Invariant globalization knows no German; a decimal comma does as well.
            CultureInfo.CurrentCulture = new CultureInfo("") { NumberFormat = { NumberDecimalSeparator = ",", NumberGroupSeparator = "." } };
            Assert.Equal(first, ReadBack.Bytes(Long(), PageSize.A4));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void It_bears_its_title_and_the_instant_it_was_given()
    {
        using var read = ReadBack.Written(Long());
        Assert.Equal("A document", read.Pdf.Information.Title);
        Assert.Equal(ReadBack.Instant, read.Pdf.Information.GetCreatedDateTimeOffset());
        Assert.Equal(ReadBack.Instant, read.Pdf.Information.GetModifiedDateTimeOffset());
    }

    [Fact]
    public void Charts_are_lines_and_not_pictures()
    {
        using var read = ReadBack.Written(new Block.Figure("Curves", new Picture.Curves(Gears.Compared())));
        Assert.Empty(Assert.Single(read.Pages).GetImages());
        Assert.DoesNotContain("/Form", System.Text.Encoding.Latin1.GetString(read.Content), StringComparison.Ordinal); // nothing behind a mask
        var words = string.Join(' ', read.Words);
        foreach (var named in (string[])["gear 4", "working", "as found", "engine speed (rpm)", "Curves"]) Assert.Contains(named, words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("漢字 Ж", "?? ?")]
    [InlineData("in⁴ µm 30°", "in^4 μm 30°")]
    [InlineData("a → b", "a -> b")]
    public void What_the_face_lacks_is_written_otherwise_and_never_left_out(string typed, string printed)
    {
        using var read = ReadBack.Written(new Block.Paragraph(typed));
        Assert.Equal(printed, string.Join(' ', read.Words));
    }

    [Fact]
    public void Half_a_character_is_printed_as_one_that_is_not_known()
    {
        using var read = ReadBack.Written(new Block.Paragraph("half \uD800 letter"));
        Assert.Equal("half ? letter", string.Join(' ', read.Words));
    }

    [Fact]
    public void A_long_name_of_a_vehicle_does_not_run_over_the_page_number()
    {
        var document = Long() with { Running = string.Join(' ', Enumerable.Repeat("Packhorse", 40)), Foot = string.Join(' ', Enumerable.Repeat("entry", 60)) };
        using var read = ReadBack.Written(document);
        var page = read.Pages[0];
        Assert.All(page.Letters, l => Assert.True(l.BoundingBox.Right <= page.Width - PageSize.Margin + 0.6));
        Assert.Contains($"page 1 of {read.Pages.Count}", string.Join(' ', page.GetWords().Select(w => w.Text)), StringComparison.Ordinal);
    }
}
