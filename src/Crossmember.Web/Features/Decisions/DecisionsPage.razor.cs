using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;
using Microsoft.AspNetCore.Components;

namespace Crossmember.Web.Features.Decisions;

/// <summary>The items of a build, their options side by side, and what each would change before it is chosen.</summary>
public sealed partial class DecisionsPage
{
    private string _seen = "", _from = Option.AsFound, _to = Option.AsFound;
    private Slot? _slot;
    private string? _lookedAt, _inEffect, _against;
    private ItemMarks _marks = null!;
    private List<SheetFinding> _trouble = [];
    private List<(OptionFacts Facts, InOneBreath? Breath)> _cards = [];
    private bool _pinned, _comparing;

    [SupplyParameterFromQuery(Name = "item")] public string? Item { get; set; }

    private Sheet? Looked => _slot is { } slot && _lookedAt is { } option && option != _inEffect ? View!.Preview(Scenario, slot.Id, option) : null;

    /// <summary>What a look is held against unless somebody says otherwise: what the customer has said yes to, else the what-if as it stands.</summary>
    private string Before => View!.Open.Approval is null ? Scenario : Option.Approved;

    /// <summary>Only what is said here, not what the base says, can be taken back to the base.</summary>
    private bool CanGoBack => !Locked && _slot is { } slot && View!.Build.Scenarios[Scenario].Choices.ContainsKey(slot.Id);

    private IReadOnlyList<(string, string)> Tried =>
        [.. Choices.WhatIf(View!.Build, View.Build.Scenarios.GetValueOrDefault(Scenario)).Select(w => (w.Key, w.Value.Typed.Length > 0 ? w.Value.Typed : Words.DontKnow))];

    private string? Obstacle => View!.Build.Scenarios.ContainsKey(Scenario)
        ? Tried.Count == 0 ? null : $"{Words.Count(Tried.Count, "tried value is", "tried values are")} still in it. Drop them under “Try a value”, or measure them and note them on the option."
        : $"there is no {Words.WhatIf} yet; make one first.";

    protected override void Arrange()
    {
        var view = View!;
        if (Scenario != _seen || !view.Sides.Contains(_from) || !view.Sides.Contains(_to))
            (_seen, _from, _to) = (Scenario, view.Open.Approval is null ? Option.AsFound : Option.Approved, Scenario);
        var slot = Item is { } item ? view.Build.Find(item) : null;
        if (slot?.Id != _slot?.Id)
        {
            Unlook();
            _form = null;
        }
        _slot = slot;
        _marks = ItemMarks.Of(Sheet, view.Build.Scenarios.GetValueOrDefault(Scenario));
        _trouble = [.. Sheet.Findings().Where(f => f.Finding.Verdict is Verdict.Fail or Verdict.Unknown)];
        _inEffect = slot is null ? null : Sheet.Choices[slot.Id].Id;
        _cards = slot is null ? [] : [.. slot.Options.Select(o => o.Id).Concat(slot.Id == Slot.Root ? [] : [Option.None]).Select(o => Card(view, slot, o))];
    }

    private (OptionFacts, InOneBreath?) Card(BuildView view, Slot slot, string option)
    {
        var editable = view.Build.Scenarios.ContainsKey(Scenario);
        // Facts come from the sheet in which the option is chosen, so that "like" and noted values are in them.
        var sheet = editable ? view.Preview(Scenario, slot.Id, option) : Sheet;
        var compiled = sheet.InEffect[sheet.Plan.SlotId(slot.Id)] is { } there && there.Body.Id == option ? there : new(slot, slot.Find(option)!, sheet.Plan.Space);
        var facts = OptionFacts.Of(compiled, sheet.Plan, view.Build, Viewer.Measure);
        return (facts, editable && option != _inEffect ? InOneBreath.Of(view.KnockOn(Scenario, slot.Id, option), Sheet.Totals, sheet.Totals) : null);
    }

    private int Count(Verdict verdict) => _trouble.Count(f => f.Finding.Verdict == verdict);

    private string Address(string? item) => AddressIn(item, Scenario);

    private string AddressIn(string? item, string scenario) =>
        $"builds/{Uri.EscapeDataString(Id)}/decisions?{(item is null ? "" : $"item={Uri.EscapeDataString(item)}&")}in={Uri.EscapeDataString(scenario)}";

    private void SwitchWhatIf(string scenario) => Nav.NavigateTo(AddressIn(_slot?.Id, scenario));

    /// <summary>A page that scrolls moves other options under the pointer: what was asked for stays.</summary>
    private void Look(string option)
    {
        if (!_pinned) (_lookedAt, _comparing) = (option, false);
    }

    private void Pin(string option) => (_lookedAt, _pinned, _comparing) = (option, true, false);

    private void Unlook() => (_lookedAt, _pinned, _comparing) = (null, false, false);

    private void CompareTwo()
    {
        Unlook();
        _comparing = true;
    }

    /// <summary>The option whose knock-on is shown: the one looked at, else what the one that is chosen has done.</summary>
    private string? OnShow => _slot is null || _comparing || !View!.Build.Scenarios.ContainsKey(Scenario) ? null
        : _lookedAt ?? (_inEffect == Option.AsFound ? null : _inEffect);

    protected override bool IsInHand(string subject) =>
        _slot is { } slot && (subject == $"scenarios/{Scenario}/choices/{slot.Id}" || subject == $"slots/{slot.Id}" || subject.StartsWith($"slots/{slot.Id}/", StringComparison.Ordinal));
}
