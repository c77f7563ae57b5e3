using System.Text.Json;
using System.Text.Json.Nodes;
using Crossmember.Builds.Folding;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;
using CsCheck;

namespace Crossmember.Builds.Tests.Folding;

/// <summary>Folding what still stands gives what folding everything gives: on random streams with values said again, scenarios dropped and opened anew, corrections and voids.</summary>
public sealed class LivingEntriesTests
{
    private static readonly ParameterTable s_table = ParameterTable.Shipped;
    private static readonly string[] s_slots = ["tires", "axle.rear"], s_options = ["as-found", "a", "b"], s_scenarios = ["one", "two"];

    private static readonly Gen<IReadOnlyList<Entry>> s_streams = Gen.Int[0, 1_000_000].Array[1, 60].Select(Stream);

    [Fact]
    public void What_still_stands_tells_the_whole_story() =>
        s_streams.Sample(entries => Assert.Equal(Told(Naive(entries)), Told(new StreamFold(s_table, Lifts.Current).Build("b", entries).Build)), iter: 600);

    [Fact]
    public void A_snapshot_and_the_tail_after_it_tell_the_whole_story() =>
        Gen.Select(s_streams, Gen.Double[0, 1]).Sample(
            (entries, share) =>
            {
                var cut = (int)(entries.Count * share);
                var fold = new StreamFold(s_table, Lifts.Current);
                List<Entry> head = [.. entries.Take(cut)], tail = [.. entries.Skip(cut)];
                if (tail.Exists(e => e.Fact.Corrects is not null)) return;
                var living = fold.Build("b", head).Living.ToHashSet();
                Assert.Equal(Told(Naive(entries)), Told(fold.Build("b", [.. head.Where(e => living.Contains(e.Sequence)), .. tail]).Build));
                Assert.Equal(Told(Naive(entries)), Told(fold.Continue(fold.Build("b", head).Build, tail).Build));
            }, iter: 600);

    [Fact]
    public void Values_said_a_thousand_times_leave_few_entries()
    {
        var entries = Stream([.. Enumerable.Range(0, 1000).Select(i => i * 7)]);
        Assert.True(new StreamFold(s_table, Lifts.Current).Build("b", entries).Living.Count < entries.Count / 2);
    }

    private static Build Naive(IReadOnlyList<Entry> entries)
    {
        var fold = new BuildFold("b", s_table);
        foreach (var s in Corrections.Effective(entries)) fold.Apply(s.Fact.Kind, s.Fact.Subject, JsonSerializer.SerializeToElement(s.Payload), "", s.Source.Sequence, new());
        return fold.ToBuild();
    }

    /// <summary>Each number says one thing; what it refers to may not be there, as in any real stream of people talking past each other.</summary>
    private static IReadOnlyList<Entry> Stream(int[] numbers)
    {
        var entries = new List<Entry>();
        var head = Head.Empty;
        foreach (var n in numbers)
        {
            var (kind, subject, payload) = Said(n);
            Guid? corrects = null;
            if (n % 9 == 0 && entries.Count > 0)
            {
                var target = entries[n / 9 % entries.Count].Fact;
                (kind, subject, corrects) = (target.Kind, target.Subject, target.Id);
                payload = n % 2 == 0 ? null : Again(target, n);
            }
            var fact = new Fact(Guid.CreateVersion7(), "b", kind, 1, DateTimeOffset.UnixEpoch, "lead", "test", subject, null, corrects, null, payload);
            entries.Add(Stamp.On(head, fact, FactText.Write(fact), DateTimeOffset.UnixEpoch));
            head = new(entries[^1].Sequence, entries[^1].Hash);
        }
        return entries;
    }

    private static JsonNode? Again(Fact target, int n) => target.Kind switch
    {
        "value.noted" => new JsonObject { ["value"] = 1 + (n % 5), ["basis"] = "measured" },
        "choice.made" => new JsonObject { ["option"] = s_options[n % 3] },
        _ => target.Payload?.DeepClone(),
    };

    private static (string Kind, string Subject, JsonNode? Payload) Said(int n)
    {
        string slot = s_slots[n / 11 % 2], option = s_options[n / 22 % 3], scenario = s_scenarios[n / 66 % 2];
        return (n % 11) switch
        {
            0 or 1 => ("slot.defined", $"slots/{slot}", new JsonObject { ["parent"] = null, ["title"] = $"t{n % 4}" }),
            2 => ("option.stated", $"slots/{slot}/options/{option}", new JsonObject { ["class"] = "replace", ["title"] = $"o{n % 3}" }),
            3 or 4 => ("value.noted", $"slots/{slot}/options/{option}/values/axle.rear.ratio", new JsonObject { ["value"] = 2 + (n % 7), ["basis"] = "measured" }),
            5 => ("scenario.opened", $"scenarios/{scenario}", new JsonObject { ["base"] = n % 3 == 0 ? s_scenarios[(n / 66 + 1) % 2] : null }),
            6 => ("scenario.dropped", $"scenarios/{scenario}", new JsonObject()),
            7 => ("choice.made", $"scenarios/{scenario}/choices/{slot}", new JsonObject { ["option"] = n % 4 == 0 ? null : option }),
            8 => ("what-if.set", $"scenarios/{scenario}/what-ifs/axle.rear.ratio", new JsonObject { ["value"] = n % 4 == 0 ? null : 3 + (n % 3) }),
            9 => ("slot.graded", $"slots/{slot}/grade", new JsonObject { ["grade"] = $"{n % 4}" }),
            _ => ("hours.logged", $"slots/{slot}/hours", new JsonObject { ["trade"] = "technician", ["hours"] = 1 }),
        };
    }

    private static string Told(Build build) => JsonSerializer.Serialize(new
    {
        Slots = build.Slots.Select(s => new { s.Id, s.Title, s.Grade, Options = s.Options.Select(o => o.Id + o.Title), Noted = s.Noted.Select(v => $"{v.Option} {v.Pattern} {v.Stated.Value}") }),
        Scenarios = build.Scenarios.Values.Select(s => new { s.Id, s.Base, s.Choices, WhatIf = s.WhatIf.Select(w => $"{w.Key} {w.Value?.Value}") }),
    });
}
