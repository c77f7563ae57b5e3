using System.Text.Json.Nodes;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Searching;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Cli.Commands.Brakes;

/// <summary>Writes what a search found as <c>crossmember.search/1</c>.</summary>
internal static class SearchJson
{
    public static JsonObject Of(SearchResult result, Sheet sheet, int rejected)
    {
        var currency = sheet.Totals.CostTotal.Currency;
        var json = new JsonObject
        {
            ["format"] = "crossmember.search/1",
            ["scenario"] = sheet.Scenario,
            ["combinations"] = result.Offered,
            ["passed"] = result.Passed,
            ["best"] = new JsonArray([.. result.Best.Select(one => (JsonNode)new JsonObject
            {
                ["choices"] = Choices(result.Search, one.Chosen),
                ["pedalForce"] = double.IsNaN(one.Effort) ? null : new JsonObject { ["value"] = Json.Number(one.Effort), ["unit"] = "N" },
                ["margin"] = one.Margin is { } m ? Json.Number(m) : null,
                ["cost"] = one.Cost is { } cost ? new Planning.Money(cost, currency).ToString() : null,
                ["unsprungMass"] = one.UnsprungMass is { } kg ? new JsonObject { ["value"] = Json.Number(kg), ["unit"] = "kg" } : null,
                ["cautions"] = one.Watch,
            })]),
            ["refused"] = new JsonArray([.. result.Reasons.Select(r => (JsonNode)new JsonObject
            {
                ["finding"] = r.Finding, ["count"] = r.Count, ["text"] = r.Text, ["example"] = Choices(result.Search, r.Example),
            })]),
            ["standing"] = new JsonArray([.. result.Standing.Select(f => (JsonNode)new JsonObject { ["finding"] = f.Id, ["text"] = f.Finding.Text })]),
        };
        if (rejected > 0)
            json["rejected"] = new JsonArray([.. result.Rejected().Take(rejected).Select(r => (JsonNode)new JsonObject { ["choices"] = Choices(result.Search, r.Chosen), ["finding"] = r.Finding })]);
        return json;
    }

    /// <summary>Option by item, and the parts of the stock list.</summary>
    private static JsonObject Choices(PartsSearch search, IReadOnlyList<Candidate> chosen) => new(
        chosen.Select((c, p) => (Candidate: c, Place: search.Places[p])).Where(x => !x.Place.IsStock).Select(x => KeyValuePair.Create(x.Place.Slot, (JsonNode?)x.Candidate.Option))
            .Append(KeyValuePair.Create("stock", (JsonNode?)new JsonArray([.. chosen.Where(c => c.Stock is not null).Select(c => (JsonNode?)c.Stock)]))));
}
