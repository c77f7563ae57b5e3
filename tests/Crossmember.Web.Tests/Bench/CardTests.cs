using System.Globalization;
using System.Text.Json.Nodes;
using Bunit;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;

namespace Crossmember.Web.Tests.Bench;

/// <summary>Every calculation of the project on its card, drawn from its description: what comes next month is in here too.</summary>
public sealed class CardTests : BenchShop
{
    /// <summary>The door of <c>calc run</c>.</summary>
    private static JsonObject Run(Calculation calculation, JsonObject input)
    {
        var faults = new Faults();
        return ResultJson.Of(calculation, calculation.Run(ArgumentReader.Read(calculation, System.Text.Encoding.UTF8.GetBytes(input.ToJsonString()), faults)!, true));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void An_example_typed_into_the_form_gives_the_numbers_of_the_command_line(string id)
    {
        var calculation = CalculationList.Find(id)!;
        foreach (var measure in Enum.GetValues<MeasureSystem>())
            foreach (var input in calculation.About.Examples.Select(CatalogueJson.InputOf))
            {
                using var card = Card(id, measure: measure);
                FillIn(card, calculation, input);
                Assert.Empty(card.FindAll(".error p"));
                var result = Run(calculation, input);
                foreach (var spec in calculation.OutputSpecs) Holds(spec, Output(card, spec.Name), result["outputs"]![spec.Name]!["value"]);
                Assert.Equal(
                    result["findings"]!.AsArray().Select(f => $"{f!["id"]}: {f["verdict"]}").Order(StringComparer.Ordinal),
                    card.FindAll("[data-check]").Select(f => $"{id}/{f.GetAttribute("data-check")}: {f.GetAttribute("data-verdict")}").Order(StringComparer.Ordinal));
                Assert.Equal(result["working"]!.AsArray().Select(l => (string)l!["substituted"]!), card.FindAll(".put-in").Select(l => l.TextContent));
                Assert.Equal(result["curves"]!.AsArray().Count > 0, card.FindAll("figure.curves").Count > 0);
            }
    }

    /// <summary>The machine's value to the last bit, the reader's to the five figures that are shown, in whatever unit.</summary>
    private static void Holds(OutputSpec spec, AngleSharp.Dom.IElement shown, JsonNode? expected)
    {
        if (expected is JsonObject members)
        {
            foreach (var (name, one) in members)
            {
                var said = shown.ParentElement!.ParentElement!.QuerySelectorAll("li").Single(li => li.TextContent.StartsWith(name + " ", StringComparison.Ordinal)).QuerySelector("data")!;
                Assert.Equal(one!.GetValue<double>().ToString("R", CultureInfo.InvariantCulture), said.GetAttribute("value"));
            }
            return;
        }
        if (expected is null || spec.Unit is not { } unit)
        {
            Assert.Equal(((string?)expected ?? "", (string?)expected ?? "don't know"), (shown.GetAttribute("value"), shown.TextContent));
            return;
        }
        var exact = expected.GetValue<double>();
        Assert.Equal(exact.ToString("R", CultureInfo.InvariantCulture), shown.GetAttribute("value"));
        Assert.Equal(unit.Code, shown.GetAttribute("data-unit"));
        var read = unit.Code == "%" ? double.Parse(shown.TextContent.TrimEnd('%'), CultureInfo.InvariantCulture) / 100 : ShopNotation.Read(shown.TextContent, unit.Dimension).Value!.Si;
        Assert.Equal(unit.ToSi(exact), read, 6e-5 * Math.Abs(unit.ToSi(exact)));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_field_is_named_and_keeps_a_draft_of_its_own(string id)
    {
        var calculation = CalculationList.Find(id)!;
        using var card = Card(id);
        var fields = card.FindAll("form input, form select, form textarea");
        Assert.True(fields.Count >= calculation.InputSpecs.Count);
        Assert.All(fields, f => Assert.True(f.GetAttribute("aria-label") is { Length: > 0 } || card.FindAll($"label[for='{f.Id}']") is [{ TextContent.Length: > 0 }], f.OuterHtml));
        var drafts = fields.Select(f => f.GetAttribute("data-draft")).OfType<string>().ToList();
        Assert.Equal(drafts.Distinct(), drafts);
        Assert.All(calculation.InputSpecs, s => Assert.Single(card.FindAll($"[data-input='{s.Name}']")));
        Assert.All(calculation.InputSpecs.Where(s => s.DefaultSi is not null), s => Assert.StartsWith("assumed", card.Find($"#in-{s.Name}").GetAttribute("placeholder")!, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Nothing_typed_says_what_is_needed_and_how_to_get_it(string id)
    {
        var calculation = CalculationList.Find(id)!;
        using var card = Card(id);
        Assert.All(card.FindAll("[data-output] data"), d => Assert.Equal("don't know", d.TextContent));
        var missing = card.FindAll(".missing li").Select(Words).ToList();
        Assert.All(calculation.InputSpecs.Where(s => s.Required), s => Assert.Contains(missing, m => m.Contains(s.About.Measure, StringComparison.Ordinal) && m.EndsWith("Nothing comes out without it.", StringComparison.Ordinal)));
        Assert.Contains(calculation.About.Formula, card.Find(".grounds").TextContent, StringComparison.Ordinal);
        Assert.All(calculation.About.Sources, s => Assert.Contains(s, card.Find(".grounds").TextContent, StringComparison.Ordinal));
        Assert.Equal(calculation.About.Trends.Count, card.FindAll(".moves li").Count);
        Assert.All(calculation.About.Cautions, c => Assert.Contains(c.TrimEnd('.'), card.Markup.Replace("&amp;", "&", StringComparison.Ordinal), StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void An_example_can_be_put_into_the_form_and_is_then_in_the_address(string id)
    {
        var calculation = CalculationList.Find(id)!;
        using var card = Card(id);
        card.FindAll(".examples button")[0].Click();
        var expected = CatalogueJson.InputOf(calculation.About.Examples[0]);
        Assert.True(JsonNode.DeepEquals(expected, JsonNode.Parse(Sent!)), Sent);
        foreach (var (name, number) in calculation.About.Examples[0].Outputs)
            Assert.Equal(number, double.Parse(Output(card, name).GetAttribute("value")!, CultureInfo.InvariantCulture), calculation.About.Examples[0].Tolerance * Math.Abs(number));
    }
}
