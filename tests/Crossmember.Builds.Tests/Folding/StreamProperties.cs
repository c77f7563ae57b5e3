using System.Text.Json;
using System.Text.Json.Nodes;
using Crossmember.Builds.Files;
using Crossmember.Builds.Folding;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;
using Crossmember.Builds.Tests.Journal;
using Crossmember.Engineering.Reading;
using CsCheck;

namespace Crossmember.Builds.Tests.Folding;

/// <summary>Folding what is left standing gives what folding everything gives, compared in every depth: order of lists, titles, weights, weighings, position.</summary>
public sealed class StreamProperties
{
    private static readonly ParameterTable s_table = ParameterTable.Shipped;
    private static readonly StreamFold s_fold = new(s_table, Lifts.Current);
    private static readonly string[] s_slots = ["tires", "springs", "axle.rear"], s_options = ["as-found", "a", "b", "c"], s_scenarios = ["s", "t"];

    /// <summary>What one step of a stream says; a negative target corrects nothing.</summary>
    private readonly record struct Step(int What, int Where, int Which, int Target);

    private static readonly Gen<Step[]> s_streams =
        Gen.Select(Gen.Int[0, 15], Gen.Int[0, 2], Gen.Int[0, 3], Gen.Int[-6, 30], (a, b, c, d) => new Step(a, b, c, d)).Array[1, 60];

    [Fact]
    public void Folding_what_still_matters_gives_what_folding_everything_gives() =>
        s_streams.Sample(steps => Same(Naive(Entries(steps)), s_fold.Build("b1", Entries(steps)).Build), iter: 3000);

    [Fact]
    public void Going_on_from_an_earlier_fold_gives_what_folding_the_whole_gives() =>
        Gen.Select(s_streams, Gen.Int[0, 60]).Sample((steps, cut) =>
        {
            var entries = Entries(steps);
            // Only the later part must correct nothing; the earlier part may.
            var at = Math.Max(Math.Min(cut, entries.Count), 1 + entries.FindLastIndex(e => e.Fact.Corrects is not null));
            var early = s_fold.Build("b1", entries[..at]).Build;
            Same(s_fold.Build("b1", entries).Build, s_fold.Continue(early, entries[at..]).Build);
        }, iter: 2000);

    [Fact]
    public void A_journal_written_read_and_written_again_is_the_same_bytes() =>
        s_streams.Sample(steps =>
        {
            List<Fact> facts = [Fact(0, "build.opened", "build", """{"title":"Wagon \"é\" — 3/16"}"""), Fact(1, "slot.defined", "slots/vehicle", """{"parent":null}"""), .. Entries(steps).Select(e => e.Fact)];
            var entries = Streams.Stamped(facts);
            List<Entry> shop = Streams.Stamped([Fact(5000, "trade.rated", "trades/technician", """{"rate":"95.00 USD"}""") with { Stream = "shop" }]);
            var written = JournalForm.Write("b1", "Wagon", entries, shop);
            var faults = new Faults();
            var read = BuildFile.Read(written, Builds.Evaluation.Catalogue.Shipped, faults);
            // A random stream may break a rule across subjects; then it is no file, and says where.
            if (read is null) Assert.All(faults.List, f => Assert.StartsWith("/", f.Path, StringComparison.Ordinal));
            else Assert.Equal(written, JournalForm.Write("b1", "Wagon", read.Journal!.Entries, Streams.Stamped(read.Journal.ShopFacts)));
        }, iter: 500);

    private static void Same(Build expected, Build actual) => Assert.Equal(Deep.Text(expected), Deep.Text(actual));

    /// <summary>All effective entries, one after the other.</summary>
    private static Build Naive(IReadOnlyList<Entry> entries)
    {
        var fold = new BuildFold("b1", s_table);
        foreach (var s in Corrections.Effective(entries))
            fold.Apply(s.Fact.Kind, s.Fact.Subject, JsonSerializer.SerializeToElement(s.Payload), "", s.Source.Sequence, new());
        return fold.ToBuild() with { Position = entries[^1].Sequence };
    }

    private static List<Entry> Entries(Step[] steps)
    {
        var facts = new List<Fact>();
        foreach (var step in steps)
        {
            var n = facts.Count + 10;
            // A target among what was said before: corrected with the new words of that kind, or voided.
            if (step.Target >= 0 && step.Target < facts.Count && step.What > 11)
            {
                var target = facts[step.Target];
                facts.Add(Facts.Corrected(target, n, step.Which == 0 ? null : Said(n, step, target.Kind, target.Subject).Payload));
            }
            else facts.Add(Said(n, step));
        }
        return Streams.Stamped(facts);
    }

    private static Fact Said(int n, Step step, string? kind = null, string? subject = null)
    {
        var (slot, option, scenario) = (s_slots[step.Where], s_options[step.Which], s_scenarios[step.Where % 2]);
        var (k, s) = step.What switch
        {
            0 or 1 => ("slot.defined", $"slots/{slot}"),
            2 or 3 => ("option.stated", $"slots/{slot}/options/{option}"),
            4 => ("value.noted", $"slots/{slot}/options/{option}/values/axle.rear.{(step.Target % 2 == 0 ? "ratio" : "rating")}"),
            5 or 6 => ("scenario.opened", $"scenarios/{scenario}"),
            7 => ("scenario.dropped", $"scenarios/{scenario}"),
            8 or 12 => ("choice.made", $"scenarios/{scenario}/choices/{slot}"),
            9 or 13 => ("what-if.set", $"scenarios/{scenario}/what-ifs/{(step.Which < 2 ? "axle.rear.ratio" : "engine.redline")}"),
            10 => ("note.written", $"slots/{slot}/notes"),
            11 => ("weighing.taken", "weighings/2026-03-04"),
            14 => ("slot.graded", $"slots/{slot}/grade"),
            _ => ("build.opened", "build"),
        };
        return Fact(n, kind ?? k, subject ?? s, Words(n, kind ?? k, subject ?? s, option));
    }

    private static string Words(int n, string kind, string subject, string option) => kind switch
    {
        "slot.defined" => $$"""{"parent":"vehicle","title":"slot {{n}}","weight":{{n % 7}}}""",
        "option.stated" => $$"""{"title":"option {{n}}","class":"upgrade","originality":0.5,"parameters":{"axle.rear.ratio":{{n}} } }""",
        "value.noted" => subject.EndsWith("ratio", StringComparison.Ordinal) ? $$"""{"value":{{n}},"basis":"measured"}""" : $$"""{"value":"{{n}} kg"}""",
        "scenario.opened" => $$"""{"base":null,"title":"scenario {{n}}"}""",
        "scenario.dropped" => "{}",
        "choice.made" => n % 5 == 0 ? """{"option":null}""" : $$"""{"option":"{{option}}"}""",
        "what-if.set" => n % 4 == 0 ? """{"value":null}""" : subject.EndsWith("ratio", StringComparison.Ordinal) ? $$"""{"value":{{n}}}""" : $$"""{"value":"{{n}} rpm"}""",
        "note.written" => """{"text":"worn"}""",
        "weighing.taken" => $$"""{"date":"2026-03-04","axles":{"front":"{{n}} kg","rear":"800 kg"},"wheelbase":"2 m"}""",
        "slot.graded" => $$"""{"grade":"{{n}}"}""",
        _ => $$"""{"title":"build {{n}}"}""",
    };

    private static Fact Fact(int n, string kind, string subject, string payload) => Facts.Of(n, EntryKind.Find(kind)!, subject, JsonNode.Parse(payload), null);
}
