using System.Numerics;

namespace Crossmember.Builds.Evaluation;

/// <summary>A set of small numbers, for what results rest on.</summary>
public sealed class Bits(int size)
{
    private readonly ulong[] _words = new ulong[(size + 63) / 64];

    public void Add(int i) => _words[i >> 6] |= 1UL << (i & 63);

    public bool Has(int i) => (_words[i >> 6] & (1UL << (i & 63))) != 0;

    public Bits Copy()
    {
        var copy = new Bits(_words.Length * 64);
        copy.Unite(this);
        return copy;
    }

    public void Unite(Bits other)
    {
        for (var i = 0; i < _words.Length; i++) _words[i] |= other._words[i];
    }

    /// <summary>Numbers that are in a mask and in this set or another.</summary>
    public IEnumerable<int> InEither(Bits? other, Bits mask)
    {
        for (var w = 0; w < _words.Length; w++)
        {
            var word = (_words[w] | (other?._words[w] ?? 0)) & mask._words[w];
            for (; word != 0; word &= word - 1) yield return (w << 6) + BitOperations.TrailingZeroCount(word);
        }
    }

    public IEnumerable<int> Items()
    {
        for (var w = 0; w < _words.Length; w++)
            for (var word = _words[w]; word != 0; word &= word - 1)
                yield return (w << 6) + BitOperations.TrailingZeroCount(word);
    }
}
