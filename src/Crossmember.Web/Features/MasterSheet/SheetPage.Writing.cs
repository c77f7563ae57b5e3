using System.Text.Json.Nodes;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;

namespace Crossmember.Web.Features.MasterSheet;

/// <summary>What a person states on the page: each is one fact, made from what they saw.</summary>
public sealed partial class SheetPage
{
    /// <summary>Notes a value on the option in effect, or puts an earlier note right; answers the fault that stands in the way.</summary>
    private Fault? Note(TypedValue typed)
    {
        var faults = new Faults();
        if (typed.Payload(ParameterTable.Shipped, faults) is not { } payload) return faults.List[0];
        if (_slot is not { } slot) return new("", "No item is in hand", "open one");
        var subject = $"slots/{slot.Id}/options/{Sheet.Choices[slot.Id].Id}/values/{typed.Key}";
        var fault = Kept(_wrong is { } wrong
            ? Desk.Stating.PutRight(wrong.Fact, payload, _wrongSeen, Speaker)
            : Desk.Stating.Say(Id, EntryKind.ValueNoted, subject, payload, View!.Seen(subject), Speaker));
        // What stands on the part is recorded whether or not anything can read it, but nobody should wait for a check that cannot.
        if (fault is null && ParameterTable.Shipped.Of(typed.Key) is { } pattern && TextReaders.Refuse(Sheet.Plan.Catalogue, pattern, typed.Text) is { } why)
            Pen.Say($"{Pen.Said} It is kept as written, but no calculation can read it: it {why}.");
        return fault;
    }

    private Fault? Grade((string? Grade, IReadOnlyList<string> Findings, Guid? Seen) said) =>
        _slot is { } slot ? Kept(Desk.Stating.Grade(Id, slot.Id, said.Grade, said.Findings, said.Seen, Speaker)) : null;

    private Fault? Weigh(string date, JsonObject readings) =>
        Kept(Desk.Stating.Say(Id, EntryKind.WeighingTaken, $"weighings/{date}", readings, null, Speaker));

    /// <summary>Opens the form on an entry, to put it right.</summary>
    private void TakeForWrong(Entry entry) => (_wrong, _wrongSeen, _seeking) = (entry, View!.Seen(entry.Fact.Subject), false);

    /// <summary>Takes a noted value away, whoever noted it; it stays on record.</summary>
    private void Drop(Entry entry) => Kept(Desk.Stating.Undo(entry.Fact, View!.Seen(entry.Fact.Subject), Speaker));

    /// <summary>Says that what the option says of itself is not known after all.</summary>
    private void SayUnknown(SheetLine line)
    {
        var (slot, option) = (line.Item.Id, Sheet.Choices[line.Item.Id].Id);
        Kept(Desk.Stating.Note(Id, slot, option, line.Noting, null, Basis.Assumed, null, View!.Seen($"slots/{slot}/options/{option}/values/{line.Noting}"), Speaker));
    }

    private void EnterPhase(string phase)
    {
        if (phase.Length > 0) Write(Desk.Deciding.Enter(Id, phase, View!.Seen("phase"), Viewer.Person, Viewer.Device));
    }

    private Fault? Kept(Fact fact)
    {
        Write(fact);
        StateHasChanged();
        return Pen.Refused ?? (Pen.Clash is null ? null : new("", "Somebody else was faster", "see above, and pick"));
    }

    protected override void AfterWriting()
    {
        _wrong = null;
        _turns = _past is { } before && before.Scenario == Sheet.Scenario ? VerdictTurn.Between(before, Sheet) : [];
    }
}
