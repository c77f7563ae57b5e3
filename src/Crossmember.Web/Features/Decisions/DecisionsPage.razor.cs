using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Reading;
using Crossmember.Web.Features.Layout;
using Microsoft.AspNetCore.Components;

namespace Crossmember.Web.Features.Decisions;

/// <summary>The items of a build, their options side by side, and what each would change before it is chosen.</summary>
public sealed partial class DecisionsPage
{
    private DecisionView? _view;
    private string _scenario = Option.AsFound, _from = Option.AsFound, _to = Option.AsFound;
    private Slot? _slot;
    private string? _lookedAt, _inEffect, _against;
    private ItemMarks _marks = null!;
    private List<SheetFinding> _trouble = [];
    private List<(OptionFacts Facts, InOneBreath? Breath)> _cards = [];
    private IReadOnlyList<HeldFact> _held = [];
    private bool _newer, _writing, _pinned, _comparing;
    private string _said = "", _heard = "";
    private Fault? _refused;
    private Clash? _clash;

    [Parameter] public string Id { get; set; } = "";

    [SupplyParameterFromQuery(Name = "item")] public string? Item { get; set; }

    [SupplyParameterFromQuery(Name = "in")] public string? In { get; set; }

    [CascadingParameter] public Viewer Viewer { get; set; } = Viewer.Unknown;

    [Inject] private ShopDesk Desk { get; set; } = null!;

    [Inject] private NavigationManager Nav { get; set; } = null!;

    [Inject] private TimeProvider Clock { get; set; } = null!;

    private Sheet Sheet => _view!.Sheet(_scenario);

    private Sheet? Looked => _slot is { } slot && _lookedAt is { } option && option != _inEffect ? _view!.Preview(_scenario, slot.Id, option) : null;

    private bool Locked => _view!.Open.IsReadOnly || !_view.Build.Scenarios.ContainsKey(_scenario);

    /// <summary>What a look is held against unless somebody says otherwise: what the customer has said yes to, else the what-if as it stands.</summary>
    private string Before => _view!.Open.Approval is null ? _scenario : Option.Approved;

    /// <summary>Only what is said here, not what the base says, can be taken back to the base.</summary>
    private bool CanGoBack => !Locked && _slot is { } slot && _view!.Build.Scenarios[_scenario].Choices.ContainsKey(slot.Id);

    private IReadOnlyList<(string, string)> Tried =>
        [.. Choices.WhatIf(_view!.Build, _view.Build.Scenarios.GetValueOrDefault(_scenario)).Select(w => (w.Key, w.Value.Typed.Length > 0 ? w.Value.Typed : Words.DontKnow))];

    private string? Obstacle => _view!.Build.Scenarios.ContainsKey(_scenario)
        ? Tried.Count == 0 ? null : $"{Words.Count(Tried.Count, "tried value is", "tried values are")} still in it. Drop them under “Try a value”, or measure them and note them on the option."
        : $"there is no {Words.WhatIf} yet; make one first.";

    /// <summary>The last decision of this person on this device that still stands.</summary>
    private Fact? Own => _view!.Entries is var entries && Corrections.Effective(entries) is var standing
        ? standing.Where(s => s.Source.Fact.Person == Viewer.Person && s.Source.Fact.Device == Viewer.Device && EntryWords.IsDeciding(s.Fact)).Select(s => s.Source.Fact).LastOrDefault() : null;

    protected override void OnInitialized() => Desk.Changed += Heard;

    protected override void OnParametersSet()
    {
        if (_view?.Build.Id != Id) Reload();
        else Arrange();
    }

    public void Dispose() => Desk.Changed -= Heard;

    private void Reload() => Show(DecisionView.Of(Desk, Id));

    private void Show(DecisionView? view)
    {
        (_view, _newer, _heard) = (view, false, "");
        if (_view is null) return;
        _held = Desk.Held(Id);
        Arrange();
    }

    /// <summary>Everything that follows from the build, the what-if and the item.</summary>
    private void Arrange()
    {
        if (_view is not { } view) return;
        var scenario = In is { } named && view.Has(named) ? named : view.Usual;
        if (scenario != _scenario || !view.Sides.Contains(_from) || !view.Sides.Contains(_to))
            (_scenario, _from, _to) = (scenario, view.Open.Approval is null ? Option.AsFound : Option.Approved, scenario);
        var slot = Item is { } item ? view.Build.Find(item) : null;
        if (slot?.Id != _slot?.Id) Unlook();
        _slot = slot;
        _marks = ItemMarks.Of(Sheet, view.Build.Scenarios.GetValueOrDefault(_scenario));
        _trouble = [.. Sheet.Findings().Where(f => f.Finding.Verdict is Verdict.Fail or Verdict.Unknown)];
        _inEffect = slot is null ? null : Sheet.Choices[slot.Id].Id;
        _cards = slot is null ? [] : [.. slot.Options.Select(o => o.Id).Concat(slot.Id == Slot.Root ? [] : [Option.None]).Select(o => Card(view, slot, o))];
    }

    private (OptionFacts, InOneBreath?) Card(DecisionView view, Slot slot, string option)
    {
        var editable = view.Build.Scenarios.ContainsKey(_scenario);
        // Facts come from the sheet in which the option is chosen, so that "like" and noted values are in them.
        var sheet = editable ? view.Preview(_scenario, slot.Id, option) : Sheet;
        var compiled = sheet.InEffect[sheet.Plan.SlotId(slot.Id)] is { } there && there.Body.Id == option ? there : new(slot, slot.Find(option)!, sheet.Plan.Space);
        var facts = OptionFacts.Of(compiled, sheet.Plan, view.Build, Viewer.Measure);
        return (facts, editable && option != _inEffect ? InOneBreath.Of(view.KnockOn(_scenario, slot.Id, option), Sheet.Totals, sheet.Totals) : null);
    }

    private int Count(Verdict verdict) => _trouble.Count(f => f.Finding.Verdict == verdict);

    private string Address(string? item) => AddressIn(item, _scenario);

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
    private string? OnShow => _slot is null || _comparing || !_view!.Build.Scenarios.ContainsKey(_scenario) ? null
        : _lookedAt ?? (_inEffect == Option.AsFound ? null : _inEffect);

    private Fact? Find(Guid id) => _view!.Entries.FirstOrDefault(e => e.Fact.Id == id)?.Fact;

    private void Heard(string build)
    {
        if (build == Id && !_writing) _ = InvokeAsync(() => { Follow(); StateHasChanged(); });
    }

    /// <summary>What somebody else adds shows at once, unless it is about what this person is deciding: that must not change under their hand.</summary>
    private void Follow()
    {
        if (_view is not { } seen || DecisionView.Of(Desk, Id) is not { } present) return;
        var news = present.Entries.Where(e => e.Sequence > seen.Build.Position).ToList();
        if (news.Count == 0 || news.Exists(e => IsInHand(e.Fact.Subject)))
        {
            _newer = news.Count > 0;
            _held = Desk.Held(Id);
            return;
        }
        var deciding = news.Where(e => EntryWords.IsDeciding(e.Fact)).Select(e => $"{e.Fact.Person} {EntryWords.Say(e.Fact, present.Build, id => present.Entries.FirstOrDefault(x => x.Fact.Id == id)?.Fact)}").ToList();
        Show(present);
        (_heard, _said) = (deciding.Count > 0 ? string.Join("; ", deciding) : Words.Count(news.Count, "entry was added", "entries were added"), "");
    }

    private bool IsInHand(string subject) =>
        _slot is { } slot && (subject == $"scenarios/{_scenario}/choices/{slot.Id}" || subject == $"slots/{slot.Id}" || subject.StartsWith($"slots/{slot.Id}/", StringComparison.Ordinal));
}
