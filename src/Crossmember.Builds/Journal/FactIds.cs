using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;

namespace Crossmember.Builds.Journal;

/// <summary>How facts get their ids (RFC 9562): by time where a person speaks, by content where a file or a decision does.</summary>
public static class FactIds
{
    /// <summary>UUIDv7: a new id for what a person says now.</summary>
    public static Guid New(TimeProvider clock) => Guid.CreateVersion7(clock.GetUtcNow());

    /// <summary>UUIDv8 of SHA-256(build id, kind, subject, canonical payload, each ended by a line feed): importing the same sheet twice changes nothing.</summary>
    public static Guid OfContent(string build, string kind, string subject, JsonNode? payload) =>
        OfText($"{build}\n{kind}\n{subject}\n{CanonicalJson.Of(payload)}\n");

    /// <summary>The id of the fact that releases a held one: always the same, so that releasing twice cannot append twice.</summary>
    public static Guid OfRelease(Guid held) => OfText($"release\n{held:D}\n");

    /// <summary>UUIDv8 from a hash: its first 128 bits with version and variant put in (RFC 9562, section 5.8 and appendix B.2).</summary>
    public static Guid Version8(ReadOnlySpan<byte> hash)
    {
        Span<byte> id = stackalloc byte[16];
        hash[..16].CopyTo(id);
        id[6] = (byte)((id[6] & 0x0F) | 0x80);
        id[8] = (byte)((id[8] & 0x3F) | 0x80);
        return new Guid(id, bigEndian: true);
    }

    private static Guid OfText(string text) => Version8(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
}
