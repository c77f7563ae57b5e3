using System.Text.Json;
using System.Text.Json.Nodes;

namespace Crossmember.Builds.Files;

/// <summary>A fact as the sheet form states it, before it has an id, with the place in the file it was read from.</summary>
/// <param name="Pointer">Where the payload stands in the file.</param>
/// <param name="Wrapped">A key that the payload has and the file has not; taken out of the pointers of faults.</param>
internal sealed record Draft(string Kind, string Subject, JsonElement Payload, string Pointer, string? Wrapped = null)
{
    /// <summary>Turns a pointer into the payload into one into the file.</summary>
    public string InFile(string pointer) =>
        Wrapped is { } w && pointer.StartsWith($"{Pointer}/{w}", StringComparison.Ordinal) ? Pointer + pointer[(Pointer.Length + w.Length + 1)..] : pointer;

    public static JsonElement Object(params IEnumerable<(string Key, JsonElement? Value)> members)
    {
        var made = new JsonObject();
        foreach (var (key, value) in members)
            if (value is { } v)
                made[key] = Node(v);
        return JsonSerializer.SerializeToElement(made);
    }

    public static JsonNode? Node(JsonElement e) => e.ValueKind switch
    {
        JsonValueKind.Null => null,
        JsonValueKind.Object => JsonObject.Create(e),
        JsonValueKind.Array => JsonArray.Create(e),
        _ => JsonValue.Create(e),
    };
}
