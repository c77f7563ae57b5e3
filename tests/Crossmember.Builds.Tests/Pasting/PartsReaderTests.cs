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
    [InlineData("Weight (g)", "450 g")]
    [InlineData("Weight in grams", "450 g")]
    [InlineData("Weight (kilos)", "450 kg")]
    [InlineData("Gewicht [kg]", "450 kg")]
    [InlineData("Weight (oz each)", "450 oz")]
    [InlineData("Wt, pounds", "450 lb")]
    [InlineData("Weight (t)", "450 t")]
    [InlineData("Weight (each)", "450 lb")]
    public void The_unit_over_the_weights_counts(string header, string mass) => Assert.Equal(mass, Parts($"Part;{header}\nHose;450")[0].Mass);

    [Theory]
    [InlineData("Weight (stone)", "450", "stone")]
    [InlineData("Weight (kg / lb)", "450", "kg / lb")]
    public void A_unit_nobody_knows_is_asked_about_and_none_is_assumed(string header, string weight, string named)
    {
        var part = Assert.Single(Parts($"Part;{header}\nHose;{weight}"));
        Assert.Null(part.Mass);
        Assert.Contains(named, Assert.Single(part.Faults).Wrong, StringComparison.Ordinal);
        Assert.Equal("3 kg", Assert.Single(Parts($"Part;{header}\nHose;3 kg")).Mass);
    }

    [Theory]
    [InlineData("Part;Weight\nHose;1.200 kg\nPipe;12,5 kg", "1200 kg", "12.5 kg")]
    [InlineData("Part;Weight\nHose;1.200,5 lbs\nPipe;1/2 lb", "1200.5 lbs", "1/2 lb")]
    [InlineData("Part;Weight\nHose;1,200.5 lb\nPipe;12 lb 8.5 oz", "1200.5 lb", "12 lb 8.5 oz")]
    public void A_weight_with_its_unit_is_read_by_the_mark_of_its_column(string text, params string[] masses) => Assert.Equal(masses, Parts(text).Select(p => p.Mass));

    [Theory]
    [InlineData("Price (EUR)", "12.50", "EUR")]
    [InlineData("EUR", "12,50", "EUR")]
    [InlineData("Price in euros", "12.50", "EUR")]
    [InlineData("Price £", "12.50", "GBP")]
    [InlineData("Price (SEK)", "12.50", "SEK")]
    [InlineData("Price (EUR / USD)", "12.50", "EUR / USD")]
    public void The_currency_over_the_prices_counts(string header, string price, string named)
    {
        var part = Assert.Single(Parts($"Part;{header}\nHose;{price}"));
        Assert.Null(part.Each);
        Assert.Contains(named, Assert.Single(part.Faults).Wrong, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Price (EUR)", "EUR", "12.50 EUR")]
    [InlineData("Price (USD)", "USD", "12.50 USD")]
    [InlineData("Price $", "CAD", "12.50 CAD")]
    [InlineData("Price (net)", "USD", "12.50 USD")]
    [InlineData("PRICE (NET)", "USD", "12.50 USD")]
    public void A_currency_over_the_prices_that_is_the_shops_is_no_trouble(string header, string books, string each) => Assert.Equal(each, Parts($"Part;{header}\nHose;12.50", books)[0].Each.ToString());

    [Fact]
    public void A_currency_in_the_cell_outdoes_that_of_the_header() => Assert.Equal("12.50 USD", Parts("Part;Price (EUR)\nHose;$12.50")[0].Each.ToString());

    [Theory]
    [InlineData("Lead (weeks)", "3", "3 weeks")]
    [InlineData("Weeks", "2-3", "2-3 weeks")]
    [InlineData("Lieferzeit (Tage)", "10", "10 days")]
    [InlineData("Lead (weeks)", "4 days", "4 days")]
    [InlineData("Lead time", "3", "3")]
    public void The_unit_over_the_lead_times_counts(string header, string lead, string read) => Assert.Equal(read, Parts($"Part;{header}\nHose;{lead}")[0].Lead);

    [Theory]
    [InlineData("1.250 x 4", "1250.00 USD", 4)]
    [InlineData("4 x 1.250", "1250.00 USD", 4)]
    [InlineData("12,50 each, 4", "12.50 USD", 4)]
    public void How_many_stands_beside_a_price_with_a_comma_too(string price, string each, int count)
    {
        var part = Parts($"Part;Price\nHose;{price}\nPipe;8,25\nClip;3,75")[0];
        Assert.Equal((each, (decimal)count), (part.Each.ToString(), part.Count));
    }

    [Theory]
    [InlineData("1 000", 1000)]
    [InlineData("1 000 pcs", 1000)]
    [InlineData("12 Stück", 12)]
    [InlineData("3 off", 3)]
    [InlineData("x 4", 4)]
    [InlineData("2 ea.", 2)]
    public void A_quantity_is_read_whole(string quantity, int count)
    {
        var part = Parts($"Part;Qty;Price\nHose;{quantity};18")[0];
        Assert.True(part.IsReady);
        Assert.Equal(count, part.Count);
    }

    [Theory]
    [InlineData("2 1/2")]
    [InlineData("2 pairs")]
    [InlineData("4 or 5")]
    public void What_is_only_in_part_a_quantity_needs_a_look(string quantity) => Assert.Contains($"'{quantity}' is no number of parts", Assert.Single(Parts($"Part;Qty;Price\nHose;{quantity};18")[0].Faults).Wrong, StringComparison.Ordinal);

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
