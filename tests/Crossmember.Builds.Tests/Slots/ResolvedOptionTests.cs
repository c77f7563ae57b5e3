using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;
using Crossmember.Builds.Tests.Folding;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Tests.Slots;

/// <summary>What <c>like</c> brings and what it does not, by small cases worked out by hand from the definition.</summary>
public sealed class ResolvedOptionTests
{
    private const string First = """
        ,"masses":[{"id":"case","mass":"60 kg"},{"id":"oil","mass":"2 kg"}],"prices":[{"id":"unit","each":"10 USD","category":"parts"}],
        "hours":[{"trade":"technician","distribution":{"kind":"fixed","value":3}}],"takes":["tires"],"parameters":{"gearbox.*.ratio":2,"gearbox.1.ratio":5}}
        """;

    private static ResolvedOption Second(string says)
    {
        var slot = Sheets.Read(Sheets.Text(four: $"{First},{{\"id\":\"second\",\"like\":\"four\"{says}")).Build.Find("gearbox")!;
        return ResolvedOption.Of(slot, slot.Find("second")!);
    }

    [Fact]
    public void Everything_not_said_is_copied()
    {
        var body = Second("").Body;
        Assert.Equal((OptionClass.Replace, 0.0, 2, 1, 1, 1), (body.Class, body.Originality, body.Masses!.Value.Length, body.Prices!.Value.Length, body.Hours!.Value.Length, body.Takes!.Value.Length));
    }

    [Fact]
    public void Lists_replace_by_id_in_place_and_drop_by_id()
    {
        var body = Second(""","masses":[{"id":"oil","mass":"3 kg"},{"id":"case","drop":true},{"id":"new","mass":"1 kg"}],"hours":[{"trade":"technician","drop":true}]""").Body;
        Assert.Equal([("oil", 3.0), ("new", 1.0)], body.Masses!.Value.Select(m => (m.Id, m.Kilograms!.Value)));
        Assert.Empty(body.Hours!.Value);
    }

    [Fact]
    public void Null_takes_away_and_an_empty_list_without_ids_replaces()
    {
        var body = Second(""","masses":null,"prices":null,"takes":[]""").Body;
        Assert.Null(body.Masses);
        Assert.Null(body.Prices);
        Assert.Empty(body.Takes!.Value);
    }

    [Fact]
    public void Own_statements_lie_over_the_sources_whatever_the_stars()
    {
        var layers = Second(""","parameters":{"gearbox.*.ratio":9}""").Layers;
        var strongest = layers.First(l => l.Length > 0);
        Assert.Equal("gearbox.*.ratio", Assert.Single(strongest).Key);
        Assert.Equal("four", Second("").Root);
    }

    [Theory]
    [InlineData("refurbish", true)]
    [InlineData("upgrade", false)]
    [InlineData("replace", false)]
    public void A_measurement_noted_on_the_part_passes_only_to_the_same_part_refurbished(string kind, bool passes)
    {
        var slot = Sheets.Read(Sheets.Text(four: $"}},{{\"id\":\"second\",\"like\":\"four\",\"class\":\"{kind}\"")).Build.Find("gearbox")!;
        slot = slot with { Noted = [new("four", "gearbox.1.ratio", new(Value.Of(4.5), "4.5", Basis.Measured, null)), new("four", "gearbox.2.ratio", new(Value.Of(2), "2", Basis.Vendor, null))] };
        var keys = ResolvedOption.Of(slot, slot.Find("second")!).Layers.SelectMany(l => l).Select(p => p.Key).ToList();
        Assert.Equal(passes, keys.Contains("gearbox.1.ratio"));
        Assert.Contains("gearbox.2.ratio", keys);
    }

    [Theory]
    [InlineData("", "at33", "four")]
    [InlineData(""","takes":["tires"]""", "none", "four")]
    public void What_an_option_takes_is_left_off_whatever_is_chosen_there(string says, string tires, string gearbox)
    {
        var build = Sheets.Read(Sheets.Text(four: says, scenarios: """{"id":"base","choices":{"tires":"at33"}},{"id":"working","base":"base","choices":{"gearbox":"four"}}""")).Build;
        var choices = Choices.Of(build, build.Scenarios["working"]);
        Assert.Equal((tires, gearbox, "as-found"), (choices["tires"].Id, choices["gearbox"].Id, choices["vehicle"].Id));
        Assert.Equal(tires == "none", choices.TakenBy.ContainsKey("tires"));
    }

    [Fact]
    public void Nothing_stays_beneath_an_item_left_off()
    {
        var text = Sheets.Text(scenarios: """{"id":"working","choices":{"gearbox":"none","tires":"at33"}}""").Replace("\"id\":\"tires\",\"parent\":\"vehicle\"", "\"id\":\"tires\",\"parent\":\"gearbox\"", StringComparison.Ordinal);
        var build = Sheets.Read(text).Build;
        Assert.Equal("none", Choices.Of(build, build.Scenarios["working"])["tires"].Id);
    }

    [Fact]
    public void Choices_and_what_ifs_come_from_the_base_unless_said_otherwise()
    {
        var build = Sheets.Read(Sheets.Text(scenarios: """
            {"id":"base","choices":{"tires":"at33","gearbox":"four"},"whatIf":{"engine.redline":"4000 rpm","gearbox.1.ratio":6}},
            {"id":"working","base":"base","choices":{"tires":"as-found"},"whatIf":{"engine.redline":null}}
            """)).Build;
        var choices = Choices.Of(build, build.Scenarios["working"]);
        Assert.Equal(("as-found", "four"), (choices["tires"].Id, choices["gearbox"].Id));
        Assert.Equal(["gearbox.1.ratio"], Choices.WhatIf(build, build.Scenarios["working"]).Select(w => w.Key));
    }
}
