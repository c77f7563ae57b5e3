using System.Text.Json;
using System.Text.Json.Nodes;

namespace Crossmember.Builds.Journal;

/// <summary>Reads a fact back from the canonical text it was kept in. Nothing is checked beyond syntax: that was done when it came in, and verification does it again.</summary>
/// <remarks>A long stream is read at every opening; the checking reader costs several times as much. A test holds the two together.</remarks>
public static class KeptFact
{
    /// <exception cref="JsonException">The text is not what was kept.</exception>
    public static Fact Read(ReadOnlySpan<byte> utf8)
    {
        var fields = new Fields();
        var reader = new Utf8JsonReader(utf8);
        try
        {
            reader.Read();
            while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName) fields.Take(ref reader);
        }
        // A value of another type: the text was altered.
        catch (Exception e) when (e is InvalidOperationException or FormatException)
        {
            throw new JsonException("a kept fact was altered", e);
        }
        return fields.Fact();
    }

    private struct Fields
    {
        private Guid _id;
        private Guid? _after, _batch, _corrects, _releases;
        private string? _stream, _kind, _person, _device, _subject;
        private int _schema;
        private DateTimeOffset? _occurred;
        private JsonNode? _payload;

        public void Take(ref Utf8JsonReader reader)
        {
            if (Value(ref reader, "id"u8)) _id = reader.GetGuid();
            else if (Value(ref reader, "stream"u8)) _stream = reader.GetString();
            else if (Value(ref reader, "kind"u8)) _kind = reader.GetString();
            else if (Value(ref reader, "schema"u8)) _schema = reader.GetInt32();
            else if (Value(ref reader, "occurred"u8)) _occurred = Instants.Read(reader.ValueSpan);
            else if (Value(ref reader, "person"u8)) _person = reader.GetString();
            else if (Value(ref reader, "device"u8)) _device = reader.GetString();
            else if (Value(ref reader, "subject"u8)) _subject = reader.GetString();
            else if (Value(ref reader, "after"u8)) _after = reader.GetGuid();
            else if (Value(ref reader, "batch"u8)) _batch = reader.GetGuid();
            else if (Value(ref reader, "corrects"u8)) _corrects = reader.GetGuid();
            else if (Value(ref reader, "releases"u8)) _releases = reader.GetGuid();
            else if (Value(ref reader, "payload"u8)) _payload = JsonNode.Parse(ref reader);
            else throw new JsonException($"'{reader.GetString()}' is no key of a kept fact");
        }

        public readonly Fact Fact() =>
            _stream is null || _kind is null || _person is null || _device is null || _subject is null || _occurred is null
                ? throw new JsonException("a kept fact is not whole")
                : new(_id, _stream, _kind, _schema, _occurred.Value, _person, _device, _subject, _after, _corrects, _batch, _payload, _releases);

        /// <summary>Whether this is the key; if so, moves on to its value.</summary>
        private static bool Value(ref Utf8JsonReader reader, ReadOnlySpan<byte> key) => reader.ValueTextEquals(key) && reader.Read();
    }
}
