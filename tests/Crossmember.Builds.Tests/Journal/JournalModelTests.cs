using Crossmember.Builds.Journal;
using CsCheck;

namespace Crossmember.Builds.Tests.Journal;

/// <summary>Random use of the journal against the plainest model: a list of what must be in, a list of what must be held.</summary>
public class JournalModelTests
{
    private enum Seen { Nothing, TheLast, AnyEntry, AHeldOne, ASelfMadeId }

    private sealed record Step(int Kind, int Slot, Seen Seen, int Pick, Arrival Arrival, bool Resend);

    private static readonly Gen<Step> s_step =
        Gen.Select(Gen.Int[0, 2], Gen.Int[0, 1], Gen.Enum<Seen>(), Gen.Int[0, 99], Gen.Enum<Arrival>(), Gen.Int[0, 5]).Select(
            (kind, slot, seen, pick, arrival, resend) => new Step(kind, slot, seen, pick, arrival, resend == 0));

    [Fact]
    public void Whatever_is_sent_the_journal_does_what_the_model_says() =>
        s_step.Array[0, 40].Sample(steps =>
        {
            var store = new MemoryJournalStore();
            var journal = new Builds.Journal.Journal(store, new StandingClock());
            var model = new Model();
            for (var n = 0; n < steps.Length; n++)
            {
                var fact = model.Fact(steps[n], n + 1);
                var expected = model.Expect(fact, steps[n].Arrival);
                Assert.Equal(expected, journal.Append([fact], steps[n].Arrival)[0].GetType().Name);
            }
            Assert.Equal(model.In.Select(f => f.Id), store.Read("b1").Select(e => e.Fact.Id));
            Assert.Equal(model.Held.Select(f => f.Id), store.Held("b1").Select(h => h.Fact.Id));
            ChainIsWhole(store);
        });

    private static void ChainIsWhole(MemoryJournalStore store)
    {
        var head = Head.Empty;
        foreach (var entry in store.Read("b1"))
        {
            Assert.True(entry.Follows(head));
            head = new(entry.Sequence, entry.Hash);
        }
    }

    private sealed class Model
    {
        public List<Fact> In { get; } = [];
        public List<Fact> Held { get; } = [];
        private readonly List<Fact> _refused = [];

        public Fact Fact(Step step, int n)
        {
            List<Fact> sent = [.. In, .. Held, .. _refused];
            if (step.Resend && sent.Count > 0) return sent[step.Pick % sent.Count];
            var slot = step.Slot == 0 ? "tires" : "tires.spare";
            var fact = step.Kind switch { 0 => Facts.Defined(n, slot), 1 => Facts.Graded(n, slot), _ => Facts.Noted(n, slot) };
            return fact with { After = After(step, fact) };
        }

        private Guid? After(Step step, Fact fact) => step.Seen switch
        {
            Seen.TheLast => LastOn(fact)?.Id,
            Seen.AnyEntry when In.Count > 0 => In[step.Pick % In.Count].Id,
            Seen.AHeldOne when Held.Count > 0 => Held[step.Pick % Held.Count].Id,
            Seen.ASelfMadeId => Facts.Id(1000 + step.Pick),
            _ => null,
        };

        public string Expect(Fact fact, Arrival arrival)
        {
            if (In.Contains(fact)) return nameof(AppendOutcome.Acknowledged);
            if (Held.Contains(fact)) return nameof(AppendOutcome.Held);
            var queued = arrival == Arrival.Queue;
            if (queued && Held.Exists(h => h.Id == fact.After)) return Keep(Held, fact, nameof(AppendOutcome.Held));
            if (fact.Kind == EntryKind.NoteWritten.Name || LastOn(fact)?.Id == fact.After) return Keep(In, fact, nameof(AppendOutcome.Appended));
            return queued ? Keep(Held, fact, nameof(AppendOutcome.Held)) : Keep(_refused, fact, nameof(AppendOutcome.Conflict));
        }

        private string Keep(List<Fact> list, Fact fact, string outcome)
        {
            _refused.Remove(fact);
            list.Add(fact);
            return outcome;
        }

        /// <summary>In this model the only path above or beneath is that of the slot itself.</summary>
        private Fact? LastOn(Fact fact) =>
            In.FindLast(f => f.Kind != EntryKind.NoteWritten.Name && f.Subject.Split('/')[1] == fact.Subject.Split('/')[1]);
    }
}
