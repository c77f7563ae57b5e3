using Crossmember.Documents.Curves;
using Crossmember.Documents.Paper;
using UglyToad.PdfPig.Content;
using PageSize = Crossmember.Documents.Paper.PageSize;
using UglyToad.PdfPig.Core;

namespace Crossmember.Documents.Tests.Paper;

/// <summary>Drawings that are cut out and laid on metal: lengths are measured from the paths in the file. 1 point = 1/72 in (ISO 32000-1, 8.3.2.3), 1 in = 25.4 mm exactly.</summary>
public sealed class TrueScaleTests
{
    private static readonly Drawing s_bracket = new(120, 60, "a bracket",
    [
        Shape.Box(0, 0, 120, 60, Ink.Text), new Shape.Circle(new(30, 30), 6.5, Ink.Text), new Shape.Label(new(60, 55), "top", 4, Ink.Text, Documents.Paper.Side.Middle),
    ]);

    private static double Millimetres(double points) => points / 72 * 25.4;

    private static List<(double Width, double Height)> Sizes(Page page) =>
        [.. page.Paths.Where(p => !p.IsClipping && p.IsStroked).Select(p => p.GetBoundingRectangle()).OfType<PdfRectangle>().Select(r => (Millimetres(r.Width), Millimetres(r.Height)))];

    private static IEnumerable<(double Width, double Height)> Bars(Page page) => Sizes(page).Where(s => s.Height < 0.5 && Math.Abs(s.Width - 100) < 0.5);

    [Theory]
    [InlineData("a4")]
    [InlineData("letter")]
    public void The_bar_is_100_mm_and_the_page_says_to_print_at_100_percent(string paper)
    {
        using var read = ReadBack.Written(ReadBack.Of(new Block.TrueScale("Bracket", s_bracket)), PageSize.Find(paper));
        var page = Assert.Single(read.Pages);
        Assert.Equal(100, Assert.Single(Bars(page)).Width, 0.01);
        Assert.Contains("Print at 100 %", string.Join(' ', read.Words), StringComparison.Ordinal);
        Assert.Contains("100 mm", string.Join(' ', read.Words), StringComparison.Ordinal);
    }

    [Fact]
    public void A_drawing_has_its_true_size()
    {
        using var read = ReadBack.Written(new Block.TrueScale("Bracket", s_bracket));
        var sizes = Sizes(Assert.Single(read.Pages));
        Assert.Contains(sizes, s => Math.Abs(s.Width - 120) < 0.01 && Math.Abs(s.Height - 60) < 0.01);
        Assert.Contains(sizes, s => Math.Abs(s.Width - 13) < 0.02 && Math.Abs(s.Height - 13) < 0.02); // the circle, drawn as curves
    }

    [Fact]
    public void An_outline_along_the_edge_of_the_drawing_is_not_cut()
    {
        using var read = ReadBack.Written(new Block.TrueScale("Bracket", s_bracket));
        var paths = Assert.Single(read.Pages).Paths;
        var outline = paths.Where(p => p.IsStroked && !p.IsClipping).Select(p => (Path: p, Box: p.GetBoundingRectangle()!.Value)).Single(p => Math.Abs(Millimetres(p.Box.Width) - 120) < 0.01);
        var half = 0.25 / 2 / 25.4 * 72; // lines of a drawing are 0.25 mm
        var window = paths.Where(p => p.IsClipping).Select(p => p.GetBoundingRectangle()!.Value).Where(w => Math.Abs(Millimetres(w.Width) - 120) < 2).ToList();
        Assert.NotEmpty(window);
        Assert.All(window, w => Assert.True(w.Left <= outline.Box.Left - half && w.Right >= outline.Box.Right + half && w.Bottom <= outline.Box.Bottom - half && w.Top >= outline.Box.Top + half));
    }

    [Fact]
    public void What_is_larger_than_the_page_goes_onto_several_that_overlap_each_with_its_bar()
    {
        using var read = ReadBack.Written(new Block.TrueScale("Wrap", new(400, 100, "a tube's end unrolled", [Shape.Line(0, 50, 400, 50, Ink.Text)])));
        Assert.Equal(3, read.Pages.Count); // 182 mm between the margins, 10 mm of it shared: 182 + 172 + 46
        Assert.All(read.Pages, p =>
        {
            Assert.Single(Bars(p));
            Assert.Contains("overlap", ReadBack.Body(p));
        });
    }

    [Fact]
    public void A_figure_that_is_not_to_scale_is_made_to_fit()
    {
        using var read = ReadBack.Written(new Block.Figure("Wide", new Picture.Drawn(new(400, 100, "wide", [Shape.Box(0, 0, 400, 100, Ink.Text)]))));
        var (width, height) = Assert.Single(Sizes(Assert.Single(read.Pages)));
        Assert.Equal(182, width, 0.01);
        Assert.Equal(45.5, height, 0.01);
    }
}
