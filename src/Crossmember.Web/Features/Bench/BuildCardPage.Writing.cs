using Crossmember.Builds.Journal;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Reading;
using Crossmember.Web.Features.Decisions;
using Microsoft.JSInterop;

namespace Crossmember.Web.Features.Bench;

/// <summary>What is tried becomes a what-if of the build: one fact, made from what the person saw.</summary>
public sealed partial class BuildCardPage
{
    private string _said = "";
    private Fact? _own;
    private Fault? _refused;
    private Clash? _clash;
    private bool _writing, _newer;

    /// <summary>Why nothing can be written here, or null.</summary>
    private string? Locked => _view!.Open.IsReadOnly ? $"Open for reading only: {_view.Open.State.Unreadable[0]}. Use the program that wrote it."
        : _view.Build.Scenarios.ContainsKey(_sheet.Scenario) ? null
        : $"Values can be tried here, but “{Words.Scenario(_sheet.Scenario, _view.Build)}” cannot be edited: choose a {Words.WhatIf} above to keep one.";

    private async Task Use((SheetInput Input, SheetReading Reading) used)
    {
        if (Locked is not null || used.Reading.Key is not { } key) return;
        var spec = used.Input.Spec;
        _work.Typed.Complete(spec, _work.Units(spec, _measure));
        var member = used.Input.IsMap ? _work.Typed.Member(spec.Name, used.Reading.Member) : null;
        var typed = (member?.Text ?? _work.Typed[spec.Name]).Trim();
        var subject = $"scenarios/{_sheet.Scenario}/what-ifs/{key}";
        if (!Write(Desk.Deciding.TryOut(Id, _sheet.Scenario, key, typed, _view!.Seen(subject), Viewer.Person, Viewer.Device))) return;
        await Settled(spec, member);
    }

    /// <summary>What has become the build's own is not tried any more.</summary>
    private async Task Settled(InputSpec spec, TypedMember? member)
    {
        if (member is null) _work.Typed.Clear(spec.Name);
        else member.Text = "";
        Submit();
        await Js.InvokeVoidAsync("desk.forgetAll", $"{DraftOf}.{spec.Name}.");
    }

    private void Undo()
    {
        if (_own is not { } own) return;
        Write(Desk.Deciding.Undo(own, _view!.Seen(own.Subject), Viewer.Person, Viewer.Device));
        _own = null;
    }

    private void KeepTheirs() => _clash = null;

    private void UseMine()
    {
        if (_clash is { } clash) Write(clash.Insisted(Clock));
    }

    /// <summary>Appends one fact; what cannot be written stays in the field with the reason.</summary>
    private bool Write(Fact fact)
    {
        (_said, _own, _refused, _clash) = ("", null, null, null);
        _writing = true;
        var outcome = Desk.Append([fact], Arrival.Online)[0];
        _writing = false;
        if (outcome is AppendOutcome.Refused { Fault: var fault }) _refused = fault;
        if (outcome is AppendOutcome.Conflict { Last: var last }) _clash = new(fact, last);
        Reload();
        if (outcome is not AppendOutcome.Appended) return false;
        (_said, _own) = (Words.Stopped($"Kept: {fact.Person} {EntryWords.Say(fact, _view!.Build, Find)}"), fact.Corrects is null ? fact : null);
        return true;
    }

    private void Reload()
    {
        _newer = false;
        _view = DecisionView.Of(Desk, Id);
        if (_view is not null && Find(_view)) Describe();
    }

    /// <summary>What somebody else adds shows at once, unless it is what this person is trying: that must not change under their hand.</summary>
    private void Heard(string build)
    {
        if (build != Id || _writing || _view is null) return;
        _ = InvokeAsync(() =>
        {
            var news = Desk.Shop.Store.Journal.Store.Read(Id, _view.Build.Position, long.MaxValue);
            var mine = _state is null ? [] : _inputs.Where(i => _work.Typed.Has(i.Spec.Name)).SelectMany(i => i.Readings).Select(r => $"scenarios/{_sheet.Scenario}/what-ifs/{r.Key}").ToHashSet(StringComparer.Ordinal);
            if (news.Any(e => mine.Contains(e.Fact.Subject))) _newer = true;
            else Reload();
            StateHasChanged();
        });
    }
}
