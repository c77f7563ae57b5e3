using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using CsCheck;

namespace Crossmember.Builds.Tests.Journal;

/// <summary>Which words stand uppermost after saying, putting right and taking back.</summary>
public sealed class WordLinesTests
{
    private readonly List<Entry> _entries = [];
    private Head _head = Head.Empty;

    private Fact Say(string subject, string? value, Fact? corrects = null)
    {
        var fact = new Fact(Guid.CreateVersion7(), "b", "value.noted", 1, DateTimeOffset.UnixEpoch, "ana", "test", subject, null, corrects?.Corrects ?? corrects?.Id, null,
            value is null ? null : new JsonObject { ["value"] = value });
        var entry = Stamp.On(_head, fact, FactText.Write(fact), DateTimeOffset.UnixEpoch);
        _head = new(entry.Sequence, entry.Hash);
        _entries.Add(entry);
        return fact;
    }

    /// <summary>As the desk undoes: the uppermost word last said gives way to what lay beneath it.</summary>
    private bool Undo()
    {
        var lines = new WordLines(_entries);
        if (lines.Uppermost.LastOrDefault()?.Fact is not { } last) return false;
        Say(last.Subject, lines.Beneath(last.Id)?["value"]?.GetValue<string>(), last);
        return true;
    }

    private string Standing => string.Join(' ', Corrections.Effective(_entries).Select(s => s.Payload["value"]!.GetValue<string>()));

    [Fact]
    public void The_last_said_goes_first_even_where_it_corrects_something_older()
    {
        var base1 = Say("x", "100");
        Say("y", "60");
        Say("x", "101", base1);
        Undo();
        Assert.Equal("100 60", Standing);
        Undo();
        Assert.Equal("100", Standing);
        Undo();
        Assert.Equal("", Standing);
        Assert.False(Undo());
    }

    [Fact]
    public void Undoing_a_drop_of_corrected_words_brings_the_last_of_them_back()
    {
        var first = Say("x", "100");
        Say("x", "101", first);
        Say("x", null, first);
        Assert.Equal("", Standing);
        Undo();
        Assert.Equal("101", Standing);
        Undo();
        Assert.Equal("100", Standing);
    }

    [Fact]
    public void However_much_was_said_undo_comes_to_an_end_and_leaves_nothing() => Gen.Int[0, 3].Array[1, 30].Sample(steps =>
    {
        // Samples run side by side: each has a stream of its own.
        var own = new WordLinesTests();
        var said = new List<Fact>();
        for (var i = 0; i < steps.Length; i++)
            said.Add(steps[i] == 0 || said.Count == 0 ? own.Say($"s{i % 3}", $"{i}") : own.Say(said[i / 2].Subject, steps[i] == 3 ? null : $"{i}", said[i / 2]));
        var presses = 0;
        while (own.Undo()) Assert.True(++presses <= steps.Length, "undo goes round in a circle");
        Assert.Equal("", own.Standing);
    });
}
