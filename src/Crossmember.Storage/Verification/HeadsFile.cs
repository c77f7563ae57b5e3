using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Crossmember.Engineering.Reading;

namespace Crossmember.Storage.Verification;

/// <summary>
/// Where the streams stood at some time, kept away from the database. A chain alone cannot show that its last entries were cut off
/// together with their head; a copy of the heads elsewhere can.
/// </summary>
public sealed record HeadsFile(IReadOnlyDictionary<string, Head> Heads)
{
    private const string Format = "crossmember.heads/1";

    public string Write() => CanonicalJson.Of(new JsonObject
    {
        ["format"] = Format,
        ["heads"] = new JsonObject(Heads.Select(h => KeyValuePair.Create<string, JsonNode?>(h.Key,
            new JsonObject { ["sequence"] = h.Value.Sequence, ["hash"] = Convert.ToHexStringLower(h.Value.Hash.Span) }))),
    });

    /// <summary>Reads a heads file, or answers null with located faults.</summary>
    public static HeadsFile? Read(ReadOnlyMemory<byte> utf8, Faults faults)
    {
        using var document = JsonText.Open(utf8, faults);
        if (document is null) return null;
        var reader = new ObjectReader(document.RootElement, "", faults);
        if (reader.Text("format") is var format && format != Format) faults.Add("/format", $"'{format}' is no heads file", $"write '{Format}'");
        var heads = new Dictionary<string, Head>();
        foreach (var (stream, value, pointer) in reader.Map("heads"))
        {
            var head = new ObjectReader(value, pointer, faults);
            heads[stream] = new((long)head.Number("sequence"), Hash(head));
            head.Done();
        }
        reader.Done();
        return faults.Any ? null : new(heads);
    }

    /// <summary>Streams that no longer hold what they held when the file was written.</summary>
    internal IEnumerable<Problem> Check(Func<string, long, byte[]?> hashAt)
    {
        foreach (var (stream, head) in Heads)
            if (hashAt(stream, head.Sequence) is not { } hash)
                yield return new(stream, head.Sequence, "Sequence", "the entry is missing: it was there when the heads file was written");
            else if (!hash.AsSpan().SequenceEqual(head.Hash.Span))
                yield return new(stream, head.Sequence, "Hash", "not the hash it had when the heads file was written");
    }

    private static byte[] Hash(ObjectReader reader)
    {
        var text = reader.Text("hash");
        if (text.Length == 64 && text.All(char.IsAsciiHexDigitLower)) return Convert.FromHexString(text);
        reader.Faults.Add(reader.At("hash"), "not a hash", "write 64 lower-case hexadecimal digits");
        return [];
    }
}
