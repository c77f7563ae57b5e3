using System.Text.Json;
using System.Text.Json.Nodes;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Journal;

/// <summary>A fact as text: RFC 8785 JSON, the form in which it is sent, hashed and kept. Described in docs/formats/journal.md.</summary>
public static class FactText
{
    /// <summary>The canonical text, or null with a fault where a text in the fact has none.</summary>
    public static string? Write(Fact fact, Faults faults)
    {
        var text = new JsonObject
        {
            ["id"] = Id(fact.Id), ["stream"] = fact.Stream, ["kind"] = fact.Kind, ["schema"] = fact.Schema,
            ["occurred"] = Instants.Text(fact.Occurred), ["person"] = fact.Person, ["device"] = fact.Device, ["subject"] = fact.Subject,
        };
        if (fact.After is { } after) text["after"] = Id(after);
        if (fact.Corrects is { } corrects) text["corrects"] = Id(corrects);
        if (fact.Batch is { } batch) text["batch"] = Id(batch);
        if (fact.Releases is { } releases) text["releases"] = Id(releases);
        // A node has one parent; the payload stays the fact's own.
        text["payload"] = fact.Payload?.DeepClone();
        return CanonicalJson.Text(text, faults, fact.Subject);
    }

    /// <summary>The canonical text of a fact this program made itself.</summary>
    public static string Write(Fact fact)
    {
        var faults = new Faults();
        return Write(fact, faults) ?? throw new ArgumentException(faults.List[0].ToString(), nameof(fact));
    }

    /// <summary>Reads a fact, or answers null with located faults. The text need not be canonical: compare with <see cref="Write(Fact)"/> where bytes matter.</summary>
    public static Fact? Read(JsonElement element, Faults faults, string pointer = "")
    {
        var before = faults.Count;
        var reader = new ObjectReader(element, pointer, faults);
        if (!reader.IsObject) return null;
        var fact = new Fact(
            RequiredId(reader, "id"), NotEmpty(reader, "stream"), NotEmpty(reader, "kind"), Schema(reader), Occurred(reader),
            NotEmpty(reader, "person"), reader.Text("device"), NotEmpty(reader, "subject"),
            OptionalId(reader, "after"), OptionalId(reader, "corrects"), OptionalId(reader, "batch"), Payload(reader), OptionalId(reader, "releases"));
        // A note would be lost in the canonical text, and with it the byte-exact copy.
        if (reader.Has("note")) faults.Add(reader.At("note"), "a fact has no note", "put the note into its payload");
        reader.Done();
        if (reader.Has("payload") && fact is { Payload: null, Corrects: null })
            faults.Add(reader.At("payload"), "an empty payload voids an entry, but none is named", "name the entry in 'corrects', or give the payload");
        return faults.Count == before ? fact : null;
    }

    /// <summary>Reads a fact from its text, or answers null with located faults.</summary>
    public static Fact? Read(string text, Faults faults)
    {
        try { return Read(JsonElement.Parse(text), faults); }
        catch (JsonException e)
        {
            faults.Add("", $"not JSON at byte {e.BytePositionInLine + 1}", "a fact is one JSON object");
            return null;
        }
    }

    public static string Id(Guid id) => id.ToString("D");

    private static Guid RequiredId(ObjectReader reader, string key)
    {
        if (!reader.Has(key)) reader.Missing(key);
        return OptionalId(reader, key) ?? Guid.Empty;
    }

    private static Guid? OptionalId(ObjectReader reader, string key)
    {
        if (reader.Element(key) is not { } element) return null;
        var text = element.ValueKind == JsonValueKind.Null ? "null" : reader.TextOf(element, reader.At(key));
        if (text is null) return null;
        if (Guid.TryParseExact(text, "D", out var id) && Id(id) == text) return id;
        reader.Faults.Add(reader.At(key), $"'{text}' is no id", "write a UUID in lower case with hyphens, or leave the key out");
        return null;
    }

    private static string NotEmpty(ObjectReader reader, string key)
    {
        var text = reader.Text(key);
        if (text.Length == 0 && reader.Has(key)) reader.Faults.Add(reader.At(key), $"'{key}' is empty", "it is required here");
        return text;
    }

    private static int Schema(ObjectReader reader)
    {
        var schema = reader.Number("schema");
        if (schema >= 1 && schema <= 1000 && schema == Math.Floor(schema)) return (int)schema;
        if (reader.Has("schema")) reader.Faults.Add(reader.At("schema"), "not a schema number", "write a whole number from 1");
        return 1;
    }

    private static DateTimeOffset Occurred(ObjectReader reader)
    {
        var text = reader.Text("occurred");
        if (Instants.Read(text) is { } instant) return instant;
        if (reader.Has("occurred")) reader.Faults.Add(reader.At("occurred"), $"'{text}' is no instant", "write UTC to the millisecond, as 2026-01-31T08:05:00.000Z");
        return default;
    }

    private static JsonNode? Payload(ObjectReader reader)
    {
        if (reader.Element("payload") is not { } payload)
        {
            reader.Missing("payload");
            return null;
        }
        return CanonicalJson.Text(payload, reader.Faults, reader.At("payload")) is null ? null : Node(payload);
    }

    private static JsonNode? Node(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Null => null,
        JsonValueKind.Object => JsonObject.Create(element),
        JsonValueKind.Array => JsonArray.Create(element),
        _ => JsonValue.Create(element),
    };
}
