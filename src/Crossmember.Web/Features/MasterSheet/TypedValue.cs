using System.Text.Json;
using System.Text.Json.Nodes;
using Crossmember.Builds.Folding;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;
using Crossmember.Builds.Workshop;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Reading;

namespace Crossmember.Web.Features.MasterSheet;

/// <summary>A value as somebody writes it into the form.</summary>
/// <param name="PlusMinus">Empty where nobody said.</param>
public sealed record TypedValue(string Key, string Text, Basis Basis, string PlusMinus)
{
    /// <summary>Which field of the form a fault belongs to.</summary>
    public const string ValueField = "/value", SpreadField = "/plusMinus";

    /// <summary>As the journal keeps it, or null with a fault that names the field.</summary>
    public JsonObject? Payload(ParameterTable table, Faults faults)
    {
        if (KeyChecks.Known(Key, "", table, faults) is not { } pattern) return null;
        if (Text.Trim().Length == 0)
        {
            faults.Add(ValueField, "nothing is written", $"{pattern.Meaning}: {pattern.Measure}");
            return null;
        }
        var payload = Stating.Noted(pattern.Form == Form.Curve ? Pairs(Text) : Text.Trim(), Basis, PlusMinus.Trim() is { Length: > 0 } spread ? spread : null);
        return ValueReader.Stated(JsonSerializer.SerializeToElement(payload), "", pattern, faults) is not null && !faults.Any ? payload : null;
    }

    /// <summary>What a payload says, as it would be written into the form again.</summary>
    public static TypedValue Of(string key, JsonNode? payload)
    {
        var said = payload as JsonObject;
        var value = said?["value"];
        var text = value is JsonArray pairs ? CurveText.Of(JsonSerializer.SerializeToElement(pairs)) : Plain(value);
        return new(key, text, Enum.TryParse<Basis>(Plain(said?["basis"]), true, out var basis) ? basis : Basis.Assumed, Plain(said?["plusMinus"]));
    }

    private static string Plain(JsonNode? node) => node is JsonValue v && v.TryGetValue<string>(out var text) ? text : node?.ToJsonString() ?? "";

    /// <summary>A line for each point: x, y.</summary>
    private static JsonArray Pairs(string text) =>
        new([.. CurveText.Pairs(text).Select(pair => (JsonNode?)new JsonArray([.. pair.Select(p => (JsonNode?)p)]))]);
}
