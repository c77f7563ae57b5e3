using System.Text;
using Bunit;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Pasting;
using Crossmember.Web.Features.Starting;
using Microsoft.AspNetCore.Components.Forms;

namespace Crossmember.Web.Tests.Starting;

/// <summary>A list out of a spreadsheet: seen before anything is written, one deed, taken back as one.</summary>
public sealed class PasteTests : StartingShop
{
    private const string List = "Part,Qty,Price,Weight\nTires 33 in,5,310,62 lb\nRoof rack,1,410,\nHose,two,18.50,\n";

    public PasteTests() => Import(Bracken.Json);

    private IRenderedComponent<PastePage> Pasted(string text, string name = "parts.csv")
    {
        var page = Render<PastePage>(p => p.Add(d => d.Id, "bracken").AddCascadingValue(Ana));
        page.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromBinary(Encoding.UTF8.GetBytes(text), name));
        return page;
    }

    private static IRenderedComponent<PastePage> Previewed(IRenderedComponent<PastePage> page)
    {
        page.WaitForAssertion(() => Assert.NotEmpty(page.FindAll(".preview tbody tr")), TimeSpan.FromSeconds(30));
        return page;
    }

    [Fact]
    public void Nothing_is_written_before_it_was_looked_at()
    {
        var before = Desk.Open("bracken")!.Build.Position;
        var page = Previewed(Pasted(List));
        Assert.Contains("3 rows: 2 ready, 1 needs a look", page.Markup, StringComparison.Ordinal);
        Assert.Contains("Line 4, “Qty”: 'two' is no number of parts. A number such as 4", page.Find("tr.look").TextContent, StringComparison.Ordinal);
        Assert.Equal("item:tires", page.Find(".preview tbody tr select option[selected]").GetAttribute("value"));
        Assert.Equal(before, Desk.Open("bracken")!.Build.Position);
    }

    [Fact]
    public void What_is_ready_goes_in_as_one_deed_and_the_rest_stays_in_the_field()
    {
        var page = Previewed(Pasted(List));
        page.FindAll("button").Single(b => b.TextContent.StartsWith("Take in 2 parts", StringComparison.Ordinal)).Click();
        page.WaitForAssertion(() => Assert.Contains("2 parts are in", page.Markup, StringComparison.Ordinal), TimeSpan.FromSeconds(30));
        Assert.Equal(5, Desk.Open("bracken")!.Build.Find("tires")!.Find("tires-33-in")!.Masses!.Value.Length);
        Assert.Equal("Roof rack", Assert.Single(Desk.Shop.Shelf.Shop().Stock.Values).Title);
        Assert.Equal("Part,Qty,Price,Weight\nHose,two,18.50,\n", JSInterop.Invocations["desk.write"][^1].Arguments[1]);
        page.FindAll("button").Single(b => b.TextContent == "Undo mine").Click();
        Assert.Null(Desk.Open("bracken")!.Build.Find("tires")!.Find("tires-33-in"));
        Assert.Empty(Desk.Shop.Shelf.Shop().Stock);
    }

    [Fact]
    public void A_list_that_went_in_after_a_conflict_cannot_be_taken_in_again()
    {
        var page = Previewed(Pasted("Part,Qty,Price\nTires 33 in,5,310\n"));
        Assert.All(Desk.Shop.Store.Journal.Append([Desk.Stating.State("bracken", "tires", "tires-33-in", new() { ["title"] = "Theirs", ["class"] = "replace", ["originality"] = 0.5 }, Desk.Deciding.LastOn("bracken", "slots/tires/options/tires-33-in"), new("Ben", "there"))], Arrival.Online), o => Assert.True(o is AppendOutcome.Appended, o.ToString()));
        page.FindAll("button").Single(b => b.TextContent.StartsWith("Take in 1 part", StringComparison.Ordinal)).Click();
        page.WaitForAssertion(() => Assert.Contains(page.FindAll("button"), b => b.TextContent == "Use mine"), TimeSpan.FromSeconds(30));
        page.FindAll("button").Single(b => b.TextContent == "Use mine").Click();
        page.WaitForAssertion(() => Assert.Contains("1 part is in", page.Markup, StringComparison.Ordinal), TimeSpan.FromSeconds(30));
        Assert.DoesNotContain(page.FindAll("button"), b => b.TextContent.StartsWith("Take in", StringComparison.Ordinal));
        Assert.Equal("", JSInterop.Invocations["desk.write"][^1].Arguments[1]);
    }

    [Fact]
    public void What_went_into_the_price_list_alone_can_be_taken_back()
    {
        var page = Previewed(Pasted("Part,Price\nRoof rack,410\nLadder,60\n"));
        page.FindAll("button").Single(b => b.TextContent.StartsWith("Take in 2", StringComparison.Ordinal)).Click();
        page.WaitForAssertion(() => Assert.Equal(2, Desk.Shop.Shelf.Shop().Stock.Count), TimeSpan.FromSeconds(30));
        page.WaitForElement(".paste .acts button.quiet", TimeSpan.FromSeconds(30)).Click();
        Assert.Empty(Desk.Shop.Shelf.Shop().Stock);
    }

    [Fact]
    public void Columns_and_places_can_be_said_otherwise()
    {
        var page = Previewed(Pasted("Hose,2,18.50\nPipe,3,9.00\n"));
        page.Find("#paste-column-1").Change("Number");
        page.Find("#paste-unmatched").Change("new");
        page.FindAll("button").Single(b => b.TextContent.StartsWith("Take in 2", StringComparison.Ordinal)).Click();
        page.WaitForAssertion(() => Assert.NotNull(Desk.Open("bracken")!.Build.Find("pipe")), TimeSpan.FromSeconds(30));
        Assert.Equal(1, Desk.Open("bracken")!.Build.Find("pipe")!.Find("pipe")!.Prices!.Value[0].Count);
    }

    [Theory]
    [InlineData("", "parts.csv", "nothing is in it")]
    [InlineData("PK torn", "parts.xlsx", "no workbook that can be read")]
    public void What_cannot_be_read_is_one_plain_fault(string content, string name, string says)
    {
        var page = Pasted(content, name);
        page.WaitForAssertion(() => Assert.Contains(says, page.Find(".faults").TextContent, StringComparison.Ordinal), TimeSpan.FromSeconds(30));
    }

    private static string Long(int rows) => "Part,Qty,Price\n" + string.Concat(Enumerable.Range(1, rows).Select(n => $"Bolt {n},{n % 9},1.25\n"));

    private sealed class Heard : IProgress<(int, int)>
    {
        public List<(int, int)> All { get; } = [];

        public Action? Then { get; init; }

        public void Report((int, int) value)
        {
            All.Add(value);
            Then?.Invoke();
        }
    }

    [Fact]
    public void Ten_thousand_rows_tell_how_far_they_are()
    {
        var heard = new Heard();
        var list = PastedList.Read(Long(10_000), Bracken.Build, "USD", "lb", heard, Xunit.TestContext.Current.CancellationToken)!;
        Assert.Equal(10_000, list.Parts.Count);
        Assert.Equal(10_000, list.Ready.Count);
        Assert.Equal((10_000, 10_000), heard.All[^1]);
        Assert.Equal(heard.All.Order(), heard.All);
    }

    [Fact]
    public void A_long_list_can_be_given_up()
    {
        using var cancel = new CancellationTokenSource();
        var heard = new Heard { Then = cancel.Cancel };
        Assert.Throws<OperationCanceledException>(() => PastedList.Read(Long(10_000), Bracken.Build, "USD", "lb", heard, cancel.Token));
        Assert.Single(heard.All);
    }

    [Fact]
    public void Only_one_column_is_the_price()
    {
        var list = PastedList.Read("Part,Price,Other\nHose,18,19\n", Bracken.Build, "USD", "lb", new Heard(), Xunit.TestContext.Current.CancellationToken)!;
        Assert.Equal([ColumnKind.Part, ColumnKind.Ignore, ColumnKind.Price], list.With(2, ColumnKind.Price).Columns.Select(c => c.Kind));
        list.Understand(list.With(2, ColumnKind.Price), Bracken.Build, "USD", "lb");
        Assert.Equal(19, list.Parts[0].Each!.Value.Amount);
    }
}
