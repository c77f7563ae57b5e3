using System.Text.Json;
using System.Text.Json.Nodes;
using Crossmember.Builds.Folding;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Drafting;

/// <summary>Somebody or something on board, as it is written into a form.</summary>
public sealed class AboardDraft
{
    public string Name { get; set; } = "";

    public string Mass { get; set; } = "";

    public string Basis { get; set; } = "assumed";

    /// <summary>As it was stated, with its place and its remarks; null: a new one.</summary>
    public JsonObject? Was { get; init; }
}

/// <summary>Who and what is on board in one loading condition, as a form of few fields. Places are said on the drawing.</summary>
public sealed class LoadingDraft
{
    private JsonObject? _was;

    public List<AboardDraft> Rows { get; } = [];

    /// <param name="stated">The payload as it stands; null: nobody has said anything yet.</param>
    public static LoadingDraft Of(JsonObject? stated)
    {
        var draft = new LoadingDraft { _was = stated };
        foreach (var item in (stated?["items"] as JsonArray ?? []).OfType<JsonObject>())
            draft.Rows.Add(new() { Name = DraftReader.Text(item["id"]), Mass = DraftReader.Text(item["mass"]), Basis = DraftReader.Text(item["basis"]) is { Length: > 0 } basis ? basis : "assumed", Was = item });
        return draft;
    }

    /// <summary>The payload, or null with faults whose paths name the field: <c>0/name</c>, <c>0/mass</c>. A row without name and mass is passed over.</summary>
    public JsonObject? Payload(Faults faults)
    {
        var items = new JsonArray();
        for (var i = 0; i < Rows.Count; i++)
        {
            var row = Rows[i];
            var (name, mass) = (row.Name.Trim(), row.Mass.Trim());
            if (name.Length == 0 && mass.Length == 0) continue;
            if (name.Length == 0) faults.Add($"{i}/name", "it has no name", "driver, passenger, tools");
            else if (Rows.Take(i).Any(r => r.Name.Trim() == name)) faults.Add($"{i}/name", $"'{name}' stands twice", "give each its own name");
            var item = row.Was?.DeepClone() as JsonObject ?? [];
            (item["id"], item["mass"], item["basis"]) = (name, mass, row.Basis);
            var found = new Faults();
            ConditionReader.Read(new(JsonSerializer.SerializeToElement(new JsonObject { ["items"] = new JsonArray(item.DeepClone()) }), "", found));
            foreach (var f in found.List.Where(f => f.Path.EndsWith("/mass", StringComparison.Ordinal))) faults.Add($"{i}/mass", f.Wrong, f.Right);
            items.Add((JsonNode?)item);
        }
        if (faults.Any) return null;
        var payload = _was?.DeepClone() as JsonObject ?? [];
        payload["items"] = items;
        return payload;
    }
}
