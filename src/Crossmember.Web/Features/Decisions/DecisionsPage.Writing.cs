namespace Crossmember.Web.Features.Decisions;

/// <summary>What a person decides on the page: each is one fact, made from what they saw.</summary>
public sealed partial class DecisionsPage
{
    private void Choose(string? option)
    {
        if (Locked || _slot is not { } slot) return;
        var subject = $"scenarios/{Scenario}/choices/{slot.Id}";
        Write(Desk.Deciding.Choose(Id, Scenario, slot.Id, option, View!.Seen(subject), Viewer.Person, Viewer.Device));
    }

    private void Try((string Key, string? Typed) tried)
    {
        var subject = $"scenarios/{Scenario}/what-ifs/{tried.Key}";
        Write(Desk.Deciding.TryOut(Id, Scenario, tried.Key, tried.Typed, View!.Seen(subject), Viewer.Person, Viewer.Device));
    }

    private void Make((string Id, string Title, string? Base) made)
    {
        if (Write(Desk.Deciding.OpenScenario(Id, made.Id, made.Title, made.Base, View!.Seen($"scenarios/{made.Id}"), Viewer.Person, Viewer.Device)))
            Nav.NavigateTo(AddressIn(_slot?.Id, made.Id));
    }

    private void ApproveBy((string By, string How) yes)
    {
        if (Obstacle is null) Write(Desk.Deciding.Approve(View!.Open, Sheet, yes.By, View.Seen("approved"), Viewer.Person, Viewer.Device, yes.How));
    }

    private void EnterPhase(string phase)
    {
        if (phase.Length > 0) Write(Desk.Deciding.Enter(Id, phase, View!.Seen("phase"), Viewer.Person, Viewer.Device));
    }

    protected override void AfterWriting() => Unlook();
}
