using System.Text.Json.Nodes;

namespace Crossmember.Engineering.Calculations;

/// <summary>Writes the list of calculations (<c>crossmember.catalogue/1</c>) and the description of one (<c>crossmember.calculation/1</c>).</summary>
public static class CatalogueJson
{
    public static JsonObject Of(IEnumerable<Calculation> calculations) => new()
    {
        ["format"] = "crossmember.catalogue/1",
        ["calculations"] = Json.List(calculations, c => new JsonObject
        {
            ["id"] = c.Id, ["version"] = c.About.Version, ["title"] = c.About.Title, ["area"] = c.About.Area,
        }),
    };

    /// <param name="parameterOf">The key of the sheet that an input reads, or null; the bindings live where the sheet does.</param>
    public static JsonObject Of(Calculation calculation, Func<string, string?> parameterOf)
    {
        var about = calculation.About;
        return new()
        {
            ["format"] = "crossmember.calculation/1",
            ["id"] = about.Id,
            ["version"] = about.Version,
            ["title"] = about.Title,
            ["purpose"] = about.Purpose,
            ["formula"] = about.Formula,
            ["validity"] = about.Validity,
            ["inputs"] = Json.List(calculation.InputSpecs, i => Input(i, parameterOf(i.Name))),
            ["outputs"] = Json.List(calculation.OutputSpecs, o => new JsonObject { ["name"] = o.Name, ["meaning"] = o.About.Meaning, ["unit"] = o.Unit?.Code }),
            ["checks"] = Json.List(about.Checks, c => new JsonObject { ["id"] = c.Id, ["sense"] = Json.Sense(c.Sense) }),
            ["trends"] = Json.List(about.Trends, t => new JsonObject
            {
                ["input"] = t.Input, ["output"] = t.Output, ["sign"] = t.Sign.ToString(), ["range"] = new JsonArray(t.Low, t.High),
            }),
            ["sources"] = Json.Texts(about.Sources),
            ["examples"] = Json.List(about.Examples, e => Example(calculation, e)),
        };
    }

    /// <summary>What to hand to <c>calc run</c> to see an example come out.</summary>
    public static JsonObject InputOf(Example example) =>
        new(example.Inputs.Select(i => KeyValuePair.Create(i.Key, i.Value is ['{' or '[', ..] ? JsonNode.Parse(i.Value) : JsonValue.Create(i.Value))));

    private static JsonObject Input(InputSpec spec, string? parameter)
    {
        var input = new JsonObject { ["name"] = spec.Name, ["meaning"] = spec.About.Meaning, ["parameter"] = parameter, ["unit"] = spec.Unit?.Code };
        if (spec.CurveUnit is { } curveUnit) input["curveUnit"] = curveUnit.Code;
        input["required"] = spec.Required;
        input["default"] = spec.DefaultSi is { } si ? new JsonObject { ["value"] = spec.Unit!.FromSi(si), ["unit"] = spec.Unit.Code, ["basis"] = "assumed" } : null;
        input["range"] = new JsonArray(Json.Number(spec.About.Low), Json.Number(spec.About.High));
        return input;
    }

    private static JsonObject Example(Calculation calculation, Example example) => new()
    {
        ["input"] = InputOf(example),
        ["outputs"] = new JsonObject(example.Outputs.Select(o =>
            KeyValuePair.Create(o.Key, (JsonNode?)Json.Quantity(o.Value, calculation.OutputSpecs[calculation.OutputIndex(o.Key)].Unit!.Code)))),
        ["tolerance"] = example.Tolerance,
        ["source"] = example.Source,
        ["provenance"] = example.Provenance switch { Provenance.HandbookMemory => "handbook-memory", var p => p.ToString().ToLowerInvariant() },
    };
}
