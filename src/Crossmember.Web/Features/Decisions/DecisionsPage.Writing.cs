using Crossmember.Builds.Journal;
using Crossmember.Engineering.Reading;

namespace Crossmember.Web.Features.Decisions;

/// <summary>What a person does on the page: each is one fact, made from what they saw.</summary>
public sealed partial class DecisionsPage
{
    private void Choose(string? option)
    {
        if (Locked || _slot is not { } slot) return;
        var subject = $"scenarios/{_scenario}/choices/{slot.Id}";
        Write(Desk.Deciding.Choose(Id, _scenario, slot.Id, option, _view!.Seen(subject), Viewer.Person, Viewer.Device));
    }

    private void Try((string Key, string? Typed) tried)
    {
        var subject = $"scenarios/{_scenario}/what-ifs/{tried.Key}";
        Write(Desk.Deciding.TryOut(Id, _scenario, tried.Key, tried.Typed, _view!.Seen(subject), Viewer.Person, Viewer.Device));
    }

    private void Make((string Id, string Title, string? Base) made)
    {
        if (Write(Desk.Deciding.OpenScenario(Id, made.Id, made.Title, made.Base, _view!.Seen($"scenarios/{made.Id}"), Viewer.Person, Viewer.Device)))
            Nav.NavigateTo(AddressIn(_slot?.Id, made.Id));
    }

    private void ApproveBy((string By, string How) yes)
    {
        if (Obstacle is null) Write(Desk.Deciding.Approve(_view!.Open, Sheet, yes.By, _view.Seen("approved"), Viewer.Person, Viewer.Device, yes.How));
    }

    private void EnterPhase(string phase)
    {
        if (phase.Length > 0) Write(Desk.Deciding.Enter(Id, phase, _view!.Seen("phase"), Viewer.Person, Viewer.Device));
    }

    private void Undo()
    {
        if (Own is { } own) Write(Desk.Deciding.Undo(own, _view!.Seen(own.Subject), Viewer.Person, Viewer.Device));
    }

    private void KeepTheirs() => _clash = null;

    private void UseMine()
    {
        if (_clash is { } clash) Write(clash.Insisted(Clock));
    }

    private void Release(Guid held) => Settle(() =>
    {
        var outcomes = Desk.Release(Id, held, Viewer.Person, "taken in at the desk", _view!.Build.Position);
        return outcomes.OfType<AppendOutcome.Refused>().FirstOrDefault()?.Fault
            ?? (outcomes.Any(o => o is AppendOutcome.Conflict) ? new Fault("", "Somebody was faster once more", "look at the present state and decide again") : null);
    });

    private void SetAside(Guid held) => Settle(() => Desk.SetAside(Id, held, Viewer.Person, "set aside at the desk"));

    private void Settle(Func<Fault?> decide)
    {
        _writing = true;
        _refused = decide();
        _writing = false;
        Reload();
    }

    /// <summary>Appends one fact; what cannot be written stays on the screen with the reason.</summary>
    private bool Write(Fact fact)
    {
        (_said, _heard, _refused, _clash) = ("", "", null, null);
        _writing = true;
        var outcome = Desk.Append([fact], Arrival.Online)[0];
        _writing = false;
        if (outcome is AppendOutcome.Refused { Fault: var fault }) _refused = fault;
        if (outcome is AppendOutcome.Conflict { Last: var last }) _clash = new(fact, last);
        Reload();
        if (outcome is not AppendOutcome.Appended) return false;
        _said = $"Kept: {fact.Person} {EntryWords.Say(fact, _view!.Build, Find)}.";
        Unlook();
        return true;
    }
}
