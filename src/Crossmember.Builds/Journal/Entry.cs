namespace Crossmember.Builds.Journal;

/// <summary>A fact with the stamp the store put on it. The fact's text is kept as it was hashed, byte for byte.</summary>
/// <param name="Sequence">Per stream, from 1, without a gap; this is the order of things, never a clock.</param>
/// <param name="FactText">The fact as RFC 8785 canonical JSON.</param>
/// <param name="Previous">Hash of the entry before, 32 zero bytes at the first.</param>
/// <param name="Hash">SHA-256(previous + sequence (int64 big-endian) + recorded (24 ASCII characters) + fact text (UTF-8)).</param>
public sealed record Entry(Fact Fact, string FactText, long Sequence, DateTimeOffset Recorded, ReadOnlyMemory<byte> Previous, ReadOnlyMemory<byte> Hash);
