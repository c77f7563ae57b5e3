using Crossmember.Builds.Drafting;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Places;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Crossmember.Web.Features.VehicleMass;

/// <summary>A mass is taken in hand, moved, looked at, and kept or put back. Nothing is written before it is kept.</summary>
public sealed partial class VehiclePage
{
    private MassRef? _picked;
    private PlaceDraft _draft = new(null, default);
    private IReadOnlyList<Fault> _faults = [];

    /// <summary>What was said of the owner when the place began to change: a later word of somebody else is a conflict, not overwritten.</summary>
    private Guid? _seen;

    [Inject] private IJSRuntime Js { get; set; } = null!;

    private PlacedMass? Picked => _base?.Find(_picked);

    /// <summary>What somebody says of the part in hand waits to be asked for.</summary>
    protected override bool IsInHand(string subject) => _picked is { } picked && _draft.IsChanged && subject == picked.Subject;

    private void Pick(MassRef? which)
    {
        if (which == _picked) return;
        (_picked, _faults, _now) = (which, [], _base);
        Begin();
    }

    private void Begin() => (_draft, _seen) = (new(Picked?.At, Viewer.Measure), _picked is { } picked ? View!.Seen(picked.Subject) : null);

    /// <summary>After the build was read anew: what is typed stays, over the newer state.</summary>
    private void Resume()
    {
        if (_picked is null) return;
        if (Picked is null) Pick(null);
        else if (_draft.IsChanged) Look();
        else Begin();
    }

    private Task Hear(DrawingWord word)
    {
        switch (word.Act)
        {
            case DrawnAct.Pick when MassRef.FromKey(word.Key) is { } which && _base?.Find(which) is not null:
                Pick(which);
                break;
            case DrawnAct.Drag or DrawnAct.Drop when !IsReadOnly && MassRef.FromKey(word.Key) is { } which && _base?.Find(which) is not null:
                Pick(which);
                _draft.Set(word.View, word.A, word.B);
                Look();
                break;
            // A mass without a place is put where the drawing is pressed.
            case DrawnAct.Spot when !IsReadOnly && Picked is { At: null }:
                _draft.Set(word.View, word.A, word.B);
                Look();
                break;
            case DrawnAct.Nudge when !IsReadOnly && Picked is not null:
                _draft.Nudge(word.Axis, (int)word.A);
                Look();
                break;
            case DrawnAct.Keep: return KeepPlace();
            case DrawnAct.Back: return PutBack();
        }
        return Task.CompletedTask;
    }

    /// <summary>The loads with the mass where it is typed or dragged to.</summary>
    private void Look()
    {
        var faults = new Faults();
        var at = _draft.Read(faults);
        _faults = faults.List;
        if (_picked is not { } picked || _base is null) return;
        _now = !_draft.IsChanged || at is not { } place ? _base : new(View!.Look(Scenario, Moving.With(Build, picked, place)), _base.Condition);
    }

    private async Task KeepPlace()
    {
        if (Picked is not { } mass || IsReadOnly || !_draft.IsChanged) return;
        var faults = new Faults();
        if (_draft.Read(faults) is null)
        {
            _faults = faults.List;
            return;
        }
        var (owner, kind) = (mass.Ref.Subject, mass.Ref.Condition is null ? EntryKind.OptionStated : EntryKind.ConditionStated);
        if (PlacedBody.Of(Build, View!.Entries, mass.Ref, _draft.Said()) is not { } body)
        {
            _faults = [new("x", $"nobody has stated {mass.Title} as it is shown", "state it anew on its option")];
            return;
        }
        var fact = Desk.Stating.Say(Id, kind, owner, body, _seen, Speaker);
        if (Write(fact)) await Forget(mass.Ref);
        // Theirs is on the screen now, beside mine.
        else if (Pen.Clash is not null) _seen = View!.Seen(owner);
    }

    private async Task PutBack()
    {
        if (Picked is not { } mass) return;
        _draft.Reset();
        Look();
        _seen = View!.Seen(mass.Ref.Subject);
        await Forget(mass.Ref);
    }

    private ValueTask Forget(MassRef which) => Js.InvokeVoidAsync("desk.forgetAll", $"place.{Id}.{which.Key}.");

    /// <summary>What was kept is what stands: the form begins anew from it.</summary>
    protected override void AfterWriting()
    {
        Begin();
        _now = _base;
        _faults = [];
    }
}
