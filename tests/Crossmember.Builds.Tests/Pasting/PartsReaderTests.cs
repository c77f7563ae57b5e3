using Crossmember.Builds.Pasting;
using Crossmember.Builds.Tests.Folding;
using CsCheck;

namespace Crossmember.Builds.Tests.Pasting;

/// <summary>Rows of a parts list: every one is there, ready or with what it needs.</summary>
public sealed class PartsReaderTests
{
    private static List<PastedPart> Parts(string text, string books = "USD")
    {
        var table = CellReader.Read(text);
        var guess = ColumnGuessing.Of(table);
        return [.. table.Rows.Skip(guess.HasHeader ? 1 : 0).Select(new PartsReader(guess, books, "lb").Read)];
    }

    [Fact]
    public void A_row_is_understood()
    {
        var part = Assert.Single(Parts("Part,Number,Qty,Price,Vendor,Lead time,Weight,For,Category\nBrake hose,BH-22,2,$18.50,Coast,2 weeks,0.5 lb,Front brakes,parts"));
        Assert.True(part.IsReady);
        Assert.Equal(("Brake hose", "BH-22", 2m, "18.50 USD"), (part.Title, part.Number, part.Count, part.Each.ToString()));
        Assert.Equal(("Coast", "2 weeks", "0.5 lb", "Front brakes", "parts"), (part.Vendor, part.Lead, part.Mass, part.Place, part.Category));
    }

    [Theory]
    [InlineData("Part;Menge;Preis\nSchlauch;2;1.018,50", "1018.50 EUR")]
    [InlineData("Part;Qty;Price\nHose;2;EUR 18.50", "18.50 EUR")]
    public void The_decimal_mark_of_the_column_counts(string text, string each) => Assert.Equal(each, Parts(text, "EUR")[0].Each.ToString());

    [Theory]
    [InlineData("Part,Price\nHose,\"310 each, 5\"", 5)]
    [InlineData("Part,Qty,Price\nHose,4 pcs,18", 4)]
    [InlineData("Part,Qty,Price\nHose,2x,18", 2)]
    [InlineData("Part,Qty,Price\nHose,,18", 1)]
    public void How_many_is_read_as_people_write_it(string text, int count) => Assert.Equal(count, Parts(text)[0].Count);

    [Fact]
    public void A_weight_without_a_unit_takes_that_of_its_header_or_the_readers()
    {
        Assert.Equal("12.5 kg", Parts("Part,Weight (kg)\nHose,12.5")[0].Mass);
        Assert.Equal("12.5 lb", Parts("Part,Weight\nHose,12.5")[0].Mass);
    }

    [Theory]
    [InlineData("Part,Qty,Price\n,2,18.50", "line 2, “Part”", "no name", "a name")]
    [InlineData("Part,Qty,Price\nPipe,1,9\nHose,two,18.50", "line 3, “Qty”", "'two'", "a number")]
    [InlineData("Part,Qty,Price\nHose,2,on request", "line 2, “Price”", "no amount", "310.00")]
    [InlineData("Part,Qty,Price\nHose,2,EUR 18.50", "line 2, “Price”", "EUR", "USD")]
    [InlineData("Part,Weight\nHose,heavy", "line 2, “Weight”", "no weight", "31 kg")]
    public void What_needs_a_look_says_where_what_and_what_would_be_right(string text, string where, string wrong, string right)
    {
        var fault = Assert.Single(Parts(text)[^1].Faults);
        Assert.Equal(where, fault.Path);
        Assert.Contains(wrong, fault.Wrong, StringComparison.Ordinal);
        Assert.Contains(right, fault.Right, StringComparison.Ordinal);
    }

    /// <summary>Each row has a serial number in it, so that a lost or doubled one would show.</summary>
    [Fact]
    public void No_row_is_lost_or_doubled() => Gen.Select(Gen.Int[1, 300], Gen.Char[",;\t"], Gen.Bool).Sample((count, separator, header) =>
    {
        var rows = Enumerable.Range(1, count).Select(n => string.Join(separator, $"part serial-{n}", n % 7, $"{n}.50"));
        var parts = Parts(string.Join('\n', header ? rows.Prepend(string.Join(separator, "Part", "Qty", "Price")) : rows));
        Assert.Equal(Enumerable.Range(1, count).Select(n => $"part serial-{n}"), parts.Select(p => p.Title));
        Assert.Equal(Enumerable.Range(1, count).Select(n => n + 0.5m), parts.Select(p => p.Each!.Value.Amount));
    }, iter: 50);

    [Theory]
    [InlineData(null, "Brake hoses, front", "front-brakes")]
    [InlineData(null, "Brake shoe set, REAR", "rear-brakes")]
    [InlineData("front brakes", "Hose", "front-brakes")]
    [InlineData("rear-brakes", "Hose", "rear-brakes")]
    [InlineData(null, "Gearbox gasket kit", "gearbox")]
    [InlineData(null, "Brake fluid", null)] // front or rear: nobody knows
    [InlineData(null, "Front something", null)]
    [InlineData(null, "Washers", null)]
    [InlineData("somewhere", "33 in tires", "tires")]
    public void A_part_finds_its_item_by_the_words_of_its_title(string? place, string title, string? item) => Assert.Equal(item, new ItemMatch(Sheets.Read("""
        {"format":"crossmember.build/1","id":"b","slots":[{"id":"vehicle","parent":null,"title":"Van"},{"id":"front-brakes","parent":"vehicle","title":"Front brakes"},{"id":"rear-brakes","parent":"vehicle","title":"Rear brakes"},
         {"id":"gearbox","parent":"vehicle","title":"Gearbox"},{"id":"tires","parent":"vehicle","title":"Tires"}],"scenarios":[{"id":"working"}]}
        """).Sheet!.Build).Of(place, title)?.Id);
}
