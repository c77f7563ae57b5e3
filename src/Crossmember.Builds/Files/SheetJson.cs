using System.Text.Json.Nodes;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Ripples;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Files;

/// <summary>Writes a sheet as <c>crossmember.check/1</c>.</summary>
public static class SheetJson
{
    /// <param name="position">Where the build's and the shop's streams stand; 0 and 0 for a file.</param>
    /// <param name="texts">Without texts it is the form whose hash an approval keeps: wording may improve, numbers may not move.</param>
    public static JsonObject Of(Sheet sheet, (long Build, long Shop) position, bool texts = true) => new()
    {
        ["format"] = "crossmember.check/1",
        ["scenario"] = sheet.Scenario,
        ["position"] = new JsonObject { ["build"] = position.Build, ["shop"] = position.Shop },
        ["results"] = Results(sheet),
        ["totals"] = Totals(sheet.Totals),
        ["parameters"] = Parameters(sheet),
        ["findings"] = new JsonArray([.. sheet.Findings().Select(f => Finding(f, texts))]),
        ["pending"] = new JsonArray(),
    };

    private static JsonObject Results(Sheet sheet) => new(
        sheet.Instances.OfType<InstanceState>().OrderBy(i => i.Instance.Id, StringComparer.Ordinal).Select(i => KeyValuePair.Create(i.Instance.Id, (JsonNode?)new JsonObject(
            i.Instance.Calculation.OutputSpecs.Select((o, n) => KeyValuePair.Create(o.Name, (JsonNode?)Quantity(ResultRows.SideOf(i.Outcome.Outputs[n], o))))))));

    private static JsonObject Quantity(Side side) => new() { ["value"] = ValueOf(side), ["unit"] = side.Unit };

    internal static JsonNode? ValueOf(Side side) => side.Number is { } n ? Json.Number(n) : side.Text;

    private static JsonObject Totals(Totals t)
    {
        var totals = new JsonObject
        {
            ["mass"] = new JsonObject { ["value"] = t.Mass.Kilograms is { } kg ? Json.Number(kg) : null, ["unit"] = "kg", ["missing"] = Json.Texts(t.Mass.Missing) },
            ["cost"] = new JsonObject([.. t.Cost.Select(c => KeyValuePair.Create(c.Key, (JsonNode?)c.Value.ToString())), KeyValuePair.Create("total", (JsonNode?)t.CostTotal.ToString())]),
            ["hours"] = new JsonObject([.. t.Hours.Select(h => KeyValuePair.Create(h.Key, (JsonNode?)Json.Number(h.Value))), KeyValuePair.Create("total", (JsonNode?)Json.Number(t.HoursTotal))]),
            ["originality"] = t.Originality is { } r ? Json.Number(r) : null,
        };
        if (t.Labour.Count > 0)
            totals["labour"] = new JsonObject([.. t.Labour.Select(l => KeyValuePair.Create(l.Key, (JsonNode?)l.Value.ToString())),
                KeyValuePair.Create("total", (JsonNode?)t.Labour.Values.Aggregate((a, b) => a + b).ToString())]);
        return totals;
    }

    private static JsonObject Parameters(Sheet sheet)
    {
        var space = sheet.Plan.Space;
        var made = new JsonObject();
        foreach (var k in Enumerable.Range(0, space.KeyCount).Where(k => sheet.Keys[k].Exists).OrderBy(space.KeyName, StringComparer.Ordinal))
            made[space.KeyName(k)] = Parameter(sheet, k);
        return made;
    }

    private static JsonObject Parameter(Sheet sheet, int key)
    {
        var state = sheet.Keys[key];
        var side = KeyRows.SideOf(state, sheet.Plan.Space.PatternOf(key));
        var known = !state.Value.IsAbsent;
        return new()
        {
            ["value"] = state.Value.Curve is { } curve ? Points(curve, sheet.Plan.Space.PatternOf(key)) : ValueOf(side),
            ["unit"] = side.Unit,
            ["basis"] = known ? state.Basis.ToString().ToLowerInvariant() : null,
            ["source"] = known ? Source(state.Source) : null,
            ["restsOn"] = Json.Texts(state.RestsOn is { } deeper ? sheet.Names(deeper) : sheet.Names(Own(sheet, key))),
        };
    }

    private static Bits Own(Sheet sheet, int key)
    {
        var own = new Bits(sheet.Plan.LeafCount);
        own.Add(key);
        return own;
    }

    private static JsonArray Points(Curve curve, Parameters.ParameterPattern pattern) =>
        new([.. curve.Points.Select(p => new JsonArray(Json.Number(pattern.Told(p.X)), Json.Number(pattern.CurveUnit!.FromSi(p.Y))))]);

    private static string Source(Source source) => source switch
    {
        Evaluation.Source.WhatIf => "what-if",
        var s => s.ToString().ToLowerInvariant(),
    };

    private static JsonObject Finding(SheetFinding f, bool texts)
    {
        var made = ResultJson.Finding(f.Id, f.Finding);
        if (!texts)
        {
            made.Remove("text");
            made.Remove("source");
        }
        return made;
    }
}
