using System.Text.Json.Nodes;
using Crossmember.Builds.Drafting;
using Crossmember.Builds.Journal;

namespace Crossmember.Web.Features.VehicleMass;

/// <summary>Who and what is on board, and in which conditions the vehicle is looked at.</summary>
public sealed partial class VehiclePage
{
    private bool StateLoading((string Condition, JsonObject Body, Guid? Seen) said)
    {
        var kept = Write(Desk.Stating.Say(Id, EntryKind.ConditionStated, $"conditions/{said.Condition}", said.Body, said.Seen, Speaker));
        StateHasChanged();
        return kept;
    }

    /// <summary>
    /// The sets of a build stand in what it was opened with: that is stated anew with one condition more. It bears no batch, because what is said
    /// together with an opening counts as the opening of the build itself.
    /// </summary>
    private bool AddCondition((string Id, string From) added)
    {
        if (StatedCondition.Opened(View!.Entries, added.Id) is not { } opening) return false;
        var aboard = added.From.Length > 0 ? StatedCondition.Of(View.Entries, added.From) : null;
        var kept = Write(Desk.Stating.Say(Id, EntryKind.BuildOpened, EntryKind.BuildOpened.Subject, opening, View.Seen(EntryKind.BuildOpened.Subject), Speaker));
        var subject = $"conditions/{added.Id}";
        if (kept && aboard is not null) Write(Desk.Stating.Say(Id, EntryKind.ConditionStated, subject, aboard, View.Seen(subject), Speaker));
        if (kept) Go(load: added.Id);
        StateHasChanged();
        return kept;
    }
}
