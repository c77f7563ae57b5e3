using System.Text.Json.Nodes;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Engineering.Calculations;

/// <summary>Writes what a calculation gave as <c>crossmember.result/1</c>.</summary>
public static class ResultJson
{
    public static JsonObject Of(Calculation calculation, Outcome outcome) => new()
    {
        ["format"] = "crossmember.result/1",
        ["id"] = calculation.Id,
        ["version"] = calculation.About.Version,
        ["outputs"] = new JsonObject(calculation.OutputSpecs.Zip(outcome.Outputs, (spec, value) => KeyValuePair.Create(spec.Name, (JsonNode?)Output(spec, value)))),
        ["findings"] = Json.List(outcome.Findings, f => Finding($"{calculation.Id}/{f.Check}", f)),
        ["working"] = Json.List(outcome.Working, l => new JsonObject
        {
            ["symbol"] = l.Symbol, ["formula"] = l.Formula, ["substituted"] = l.Substituted, ["value"] = Json.Quantity(l.Value, l.Unit),
        }),
        ["curves"] = Json.List(outcome.Curves, c => new JsonObject
        {
            ["name"] = c.Name, ["x"] = Axis(c.XLabel, c.XUnit, c.X), ["y"] = Axis(c.YLabel, c.YUnit, c.Y),
        }),
        ["missing"] = Json.List(outcome.Missing, m => new JsonObject { ["input"] = m.Input, ["measure"] = m.Measure }),
        ["cautions"] = Json.Texts(outcome.Cautions),
        ["sources"] = Json.Texts(calculation.About.Sources),
    };

    /// <summary>A finding as every format of the project writes it.</summary>
    /// <param name="id">Instance (or calculation) id, slash, check id.</param>
    public static JsonObject Finding(string id, Finding finding) => new()
    {
        ["id"] = id,
        ["verdict"] = finding.Verdict.ToString().ToLowerInvariant(),
        ["text"] = finding.Text,
        ["value"] = finding.Value is { } value ? Json.Quantity(value, finding.Unit) : null,
        ["limit"] = finding.Limit is { } limit ? Json.Quantity(limit, finding.Unit) : null,
        ["sense"] = Json.Sense(finding.Sense),
        ["margin"] = finding.Margin is { } margin ? Json.Number(margin) : null,
        ["source"] = finding.Source,
    };

    private static JsonObject Output(OutputSpec spec, Value value) => new() { ["value"] = Node(spec.Unit, value), ["unit"] = spec.Unit?.Code };

    private static JsonNode? Node(Unit? unit, Value value) =>
        value.IsNumber ? Json.Number(unit!.FromSi(value.Number))
        : value.Members is { } members ? new JsonObject(members.Items.Select(i => KeyValuePair.Create(i.Name, Node(unit, i.Value))))
        : value.Text;

    private static JsonObject Axis(string label, string unit, IEnumerable<double> values) =>
        new() { ["label"] = label, ["unit"] = unit, ["values"] = Json.List(values, v => Json.Number(v)) };
}
