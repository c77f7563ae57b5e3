using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;

namespace Crossmember.Engineering.Calculations;

/// <summary>The pieces that all result formats share.</summary>
public static class Json
{
    // Plain + and ' in texts: this JSON is for files and terminals, never inside a page.
    private static readonly JsonSerializerOptions s_options = new()
    {
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, WriteIndented = true, NewLine = "\n", TypeInfoResolver = new DefaultJsonTypeInfoResolver(),
    };

    /// <summary>The same on one line.</summary>
    public static JsonSerializerOptions Plain { get; } = new(s_options) { WriteIndented = false };

    public static string Text(JsonNode node) => node.ToJsonString(s_options);

    /// <summary>JSON has no NaN and no infinity: they are null.</summary>
    public static JsonNode? Number(double value) => double.IsFinite(value) ? JsonValue.Create(value) : null;

    public static JsonObject Quantity(double value, string? unit) => new() { ["value"] = Number(value), ["unit"] = unit };

    public static JsonNode? Sense(Sense? sense) => sense switch { Calculations.Sense.AtMost => "at-most", Calculations.Sense.AtLeast => "at-least", _ => null };

    public static JsonArray List<T>(IEnumerable<T> items, Func<T, JsonNode?> write) => new([.. items.Select(write)]);

    public static JsonArray Texts(IEnumerable<string> texts) => List(texts, t => t);
}
