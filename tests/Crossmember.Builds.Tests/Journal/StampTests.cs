using Crossmember.Builds.Journal;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Tests.Journal;

public class StampTests
{
    private const string First =
        """{"device":"bench","id":"0190163d-8694-739b-aea5-966c26f8ad91","kind":"note.written","occurred":"2026-01-31T08:05:00.000Z","payload":{"text":"€ 5 – ok"},"person":"ana","schema":1,"stream":"b1","subject":"slots/tires/notes"}""";
    private const string Second =
        """{"device":"bench","id":"0190163d-8694-739b-aea5-966c26f8ad92","kind":"note.written","occurred":"2026-01-31T08:06:00.000Z","payload":{},"person":"ana","schema":1,"stream":"b1","subject":"slots/tires/notes"}""";

    // Independent: Python 3, hashlib.sha256(previous + struct.pack('>q', n) + recorded.encode('ascii') + fact.encode('utf-8')).hexdigest()
    private const string FirstHash = "47b027865191b4eb386731269cb6e9353dac21ba405dfde4a449884187becf65";
    private const string SecondHash = "09d01afcfda78ccb9f0c271f668c9951955581b894b04d216434fa78305ab438";

    [Fact]
    public void The_chain_is_the_one_computed_independently()
    {
        var one = Stamp.On(Head.Empty, Read(First), First, Instants.Read("2026-01-31T08:05:01.234Z")!.Value);
        var two = Stamp.On(new(one.Sequence, one.Hash), Read(Second), Second, Instants.Read("2026-01-31T08:06:01.234Z")!.Value);
        Assert.Equal((1, FirstHash), (one.Sequence, Convert.ToHexStringLower(one.Hash.Span)));
        Assert.Equal((2, SecondHash), (two.Sequence, Convert.ToHexStringLower(two.Hash.Span)));
        Assert.Equal(one.Hash, two.Previous);
    }

    [Fact]
    public void The_texts_of_the_vector_are_canonical()
    {
        Assert.Equal(First, FactText.Write(Read(First)));
        Assert.Equal(Second, FactText.Write(Read(Second)));
    }

    [Fact]
    public void An_entry_follows_its_head_only_unaltered()
    {
        var entry = Stamp.On(Head.Empty, Read(First), First, Facts.Morning);
        Assert.True(entry.Follows(Head.Empty));
        Assert.False((entry with { Recorded = entry.Recorded.AddMilliseconds(1) }).Follows(Head.Empty));
        Assert.False((entry with { FactText = First.Replace("ok", "ko", StringComparison.Ordinal) }).Follows(Head.Empty));
        Assert.False((entry with { Sequence = 2 }).Follows(Head.Empty));
        Assert.False(entry.Follows(new(1, entry.Hash)));
    }

    private static Fact Read(string text) => FactText.Read(text, new Faults())!;
}
