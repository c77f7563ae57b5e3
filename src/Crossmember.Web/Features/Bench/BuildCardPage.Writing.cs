using Crossmember.Engineering.Calculations;
using Microsoft.JSInterop;

namespace Crossmember.Web.Features.Bench;

/// <summary>What is tried becomes a what-if of the build: one fact, made from what the person saw.</summary>
public sealed partial class BuildCardPage
{
    /// <summary>Why nothing can be written here, or null.</summary>
    private string? WhyLocked => !Locked ? null : IsReadOnly ? $"Open for reading only: {View!.Open.State.Unreadable[0]}. Use the program that wrote it."
        : $"Values can be tried here, but “{Words.Scenario(Scenario, Build)}” cannot be edited: choose a {Words.WhatIf} above to keep one.";

    private async Task Use((SheetInput Input, SheetReading Reading) used)
    {
        if (Locked || used.Reading.Key is not { } key) return;
        var spec = used.Input.Spec;
        _work.Typed.Complete(spec, _work.Units(spec, _measure));
        var member = used.Input.IsMap ? _work.Typed.Member(spec.Name, used.Reading.Member) : null;
        var typed = (member?.Text ?? _work.Typed[spec.Name]).Trim();
        var subject = $"scenarios/{Scenario}/what-ifs/{key}";
        if (!Write(Desk.Deciding.TryOut(Id, Scenario, key, typed, View!.Seen(subject), Viewer.Person, Viewer.Device))) return;
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

    /// <summary>What this person is trying must not change under their hand.</summary>
    protected override bool IsInHand(string subject) => _state is not null
        && _inputs.Where(i => _work.Typed.Has(i.Spec.Name)).SelectMany(i => i.Readings).Any(r => subject == $"scenarios/{Scenario}/what-ifs/{r.Key}");
}
