using System.Text.Json.Nodes;
using Crossmember.Builds.Slots;

namespace Crossmember.Web.Features.Decisions;

/// <summary>Items and options that a person adds or says otherwise.</summary>
public sealed partial class DecisionsPage
{
    /// <summary>The option in the form; empty: a new one; null: none.</summary>
    private string? _form;

    /// <summary>The trades of the shop, those this build has hours of, and where there are none the usual ones.</summary>
    private IReadOnlyList<string> Trades =>
        [.. Sheet.Shop.Rates.Keys.Concat(Build.Slots.SelectMany(s => s.Options).SelectMany(o => o.Hours ?? []).Select(h => h.Trade)).Distinct().DefaultIfEmpty("technician")];

    private string? Books => BooksCurrency.Of(Desk, Sheet.Shop, Build);

    /// <summary>An id is never used for something else, even if what it was for was taken back.</summary>
    private IEnumerable<string> TakenItems => Build.Slots.Select(s => s.Id).Concat(View!.Entries.Select(e => e.Fact.Subject.Split('/')).Where(s => s is ["slots", _]).Select(s => s[1]));

    /// <summary>Nobody has said or chosen anything here yet.</summary>
    private bool IsNew => !IsReadOnly && Build.Scenarios.Values.All(s => s.Choices.IsEmpty) && Build.Slots.All(s => s.Options.Length < 2 && s.Findings.IsEmpty && s.Options[0].Parameters.IsEmpty);

    private bool AddItem((string Id, string Title, string Parent) added)
    {
        if (!Write(Desk.Stating.Define(Id, added.Id, added.Parent, added.Title, 1, View!.Seen($"slots/{added.Id}"), Speaker))) return false;
        Nav.NavigateTo(Address(added.Id));
        return true;
    }

    private bool StateOption((string Option, JsonObject Body, Guid? Seen) said)
    {
        if (_slot is not { } slot) return false;
        var kept = Write(Desk.Stating.State(Id, slot.Id, said.Option, said.Body, said.Seen, Speaker));
        if (!kept) StateHasChanged();
        return kept;
    }
}
