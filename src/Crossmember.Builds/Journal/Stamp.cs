using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace Crossmember.Builds.Journal;

/// <summary>The stamp of the store on a fact: its place in the stream and the chain of hashes from the first entry on.</summary>
public static class Stamp
{
    /// <summary>SHA-256(previous (32 bytes) + sequence (int64 big-endian) + recorded (24 ASCII characters) + fact (UTF-8)).</summary>
    public static byte[] Hash(ReadOnlySpan<byte> previous, long sequence, string recorded, string factText)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(previous);
        Span<byte> number = stackalloc byte[8];
        BinaryPrimitives.WriteInt64BigEndian(number, sequence);
        hash.AppendData(number);
        hash.AppendData(Encoding.UTF8.GetBytes(recorded));
        hash.AppendData(Encoding.UTF8.GetBytes(factText));
        return hash.GetHashAndReset();
    }

    /// <summary>The entry that follows a head.</summary>
    public static Entry On(Head head, Fact fact, string factText, DateTimeOffset recorded)
    {
        var sequence = head.Sequence + 1;
        var instant = Instants.Whole(recorded);
        return new(fact, factText, sequence, instant, head.Hash, Hash(head.Hash.Span, sequence, Instants.Text(instant), factText));
    }

    /// <summary>Whether an entry is the one that follows a head, whole and unaltered.</summary>
    public static bool Follows(this Entry entry, Head head) =>
        entry.Sequence == head.Sequence + 1
        && entry.Previous.Span.SequenceEqual(head.Hash.Span)
        && entry.Hash.Span.SequenceEqual(Hash(head.Hash.Span, entry.Sequence, Instants.Text(entry.Recorded), entry.FactText));
}
