using Crossmember.Documents.Paper;
using CsCheck;

namespace Crossmember.Documents.Tests.Paper;

public sealed class TableTests
{
    private static Block.Table Table(int rows, int columns, Func<int, int, string> cell) => new("Named",
        [.. Enumerable.Range(0, columns).Select(c => new Column($"head{c}", c % 2 == 1))],
        [.. Enumerable.Range(0, rows).Select(r => new Row([.. Enumerable.Range(0, columns).Select(c => (Text)cell(r, c))]))]);

    [Fact]
    public void The_head_stands_again_on_every_page_the_rows_go_on_to()
    {
        using var read = ReadBack.Written(Table(150, 3, (r, c) => $"r{r}c{c}"));
        Assert.True(read.Pages.Count > 2);
        Assert.All(read.Pages, p => Assert.Equal(["head0", "head1", "head2"], ReadBack.Body(p).SkipWhile(w => w == "Named").Take(3)));
        Assert.Equal(150, read.Words.Count(w => w.EndsWith("c2", StringComparison.Ordinal)));
    }

    /// <summary>Random tables of every shape: each cell's words come out once, rows in order, each row on one page.</summary>
    [Fact]
    public void No_cell_is_lost_and_no_row_is_parted() => Gen.Select(Gen.Int[1, 60], Gen.Int[1, 6], Gen.Int[0, 10_000]).Sample((rows, columns, seed) =>
    {
        var length = new Random(seed);
        var words = Enumerable.Range(0, rows * columns).Select(_ => length.Next(1, length.Next(2, 25))).ToList();
        string Cell(int r, int c) => string.Join(' ', Enumerable.Range(0, words[(r * columns) + c]).Select(w => $"r{r}c{c}w{w}"));
        using var read = ReadBack.Written(Table(rows, columns, Cell));
        var told = read.Words.Where(w => w.StartsWith('r')).ToList();
        Assert.Equal(words.Sum(), told.Count);
        Assert.Equal(told.Count, told.Distinct().Count());
        var pages = read.Pages.SelectMany(p => ReadBack.Body(p).Where(w => w.StartsWith('r')).Select(w => (Row: int.Parse(w[1..w.IndexOf('c', StringComparison.Ordinal)], null), p.Number))).Distinct().ToList();
        Assert.Equal(rows, pages.Count);
        Assert.Equal(pages.OrderBy(p => p.Row).Select(p => p.Number), pages.Select(p => p.Number).Order());
    }, iter: 60);

    [Fact]
    public void A_row_taller_than_a_page_is_parted_and_loses_nothing()
    {
        using var read = ReadBack.Written(Table(3, 2, (r, c) => c == 0 ? $"row{r}" : string.Join(' ', Enumerable.Range(0, r == 1 ? 2500 : 2).Select(w => $"r{r}w{w}"))));
        Assert.True(read.Pages.Count > 1);
        Assert.Equal(2504, read.Words.Count(w => w.Contains('w', StringComparison.Ordinal) && w[0] == 'r' && char.IsAsciiDigit(w[1])));
        Assert.All(read.Pages, p => Assert.Contains("head0", ReadBack.Body(p)));
    }

    [Fact]
    public void A_word_that_no_column_holds_goes_on_in_the_next_line()
    {
        var id = "driveline.engine-speed[gear=4,range=high]" + new string('x', 300);
        using var read = ReadBack.Written(Table(1, 3, (_, c) => c == 1 ? id : "short"));
        Assert.Contains(id, string.Concat(read.Words.Where(w => w is not "short")), StringComparison.Ordinal);
    }

    [Fact]
    public void Digits_stand_under_digits()
    {
        using var read = ReadBack.Written(Table(2, 2, (r, c) => c == 0 ? "one" : r == 0 ? "1111.1" : "8888.8"));
        var figures = Assert.Single(read.Pages).GetWords().Where(w => w.Text is "1111.1" or "8888.8").ToList();
        Assert.Equal(2, figures.Count);
        var centers = figures.Select(f => f.Letters.Select(l => (l.StartBaseLine.X + l.EndBaseLine.X) / 2).ToList()).ToList();
        Assert.All(centers[0].Zip(centers[1]), p => Assert.Equal(p.First, p.Second, 0.05));
    }

    [Fact]
    public void A_name_over_rows_goes_with_the_first_of_them()
    {
        var rows = Enumerable.Range(0, 90).SelectMany(i => (Row[])[Row.Over($"over{i}"), new([$"row{i}", "1"])]).ToList();
        using var read = ReadBack.Written(new Block.Table("", [new("item"), new("number", true)], rows));
        Assert.All(read.Pages, p => Assert.StartsWith("1", ReadBack.Body(p)[^1], StringComparison.Ordinal));
        Assert.Equal(90, read.Words.Count(w => w.StartsWith("over", StringComparison.Ordinal)));
    }

    [Fact]
    public void What_belongs_together_stays_on_one_page()
    {
        var blocks = Enumerable.Range(0, 30).Select(i => (Block)new Block.Together(Enumerable.Range(0, 7).Select(l => (Block)new Block.Paragraph($"group{i} line{l}")).ToArray())).ToArray();
        using var read = ReadBack.Written(blocks);
        Assert.True(read.Pages.Count > 2);
        for (var i = 0; i < 30; i++) Assert.Single(read.Pages, p => ReadBack.Body(p).Contains($"group{i}"));
        Assert.Equal(210, read.Words.Count(w => w.StartsWith("line", StringComparison.Ordinal)));
    }
}
