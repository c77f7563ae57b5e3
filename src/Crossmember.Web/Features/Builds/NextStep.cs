using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Workshop;
using Crossmember.Web.Features.Decisions;

namespace Crossmember.Web.Features.Builds;

/// <summary>What to do next on a vehicle, in one sentence.</summary>
/// <param name="Item">The item where that can be done; null: anywhere.</param>
public sealed record NextStep(string Says, string? Item = null)
{
    public static NextStep Of(OpenBuild open, SheetFinding? worst, ItemMarks marks, int fails, Sheet sheet)
    {
        if (open.IsReadOnly) return new($"Open for reading only: {open.State.Unreadable[0]}.");
        if (open.Build.Stopped is { } why) return new($"Work is stopped: {why}.");
        if (fails > 0 && worst is not null) return Settling(open, worst, marks, fails, sheet);
        if (open.Build.Phase == "delivered") return AfterDelivery(open);
        if (Unsettled.Of(sheet) is [var missing, ..]) return new($"Find out {missing.Meaning}: {missing.Measure} ({Words.Count(missing.Checks, "check waits", "checks wait")} for it).");
        if (OpenQuestion.Of(sheet, marks) is [var first, ..] undecided)
            return new($"Decide {Words.Within(first.Item.Title)}{(undecided.Count > 1 ? $" and {undecided.Count - 1} more" : "")}.", first.Item.Id);
        if (open.Build.Slots.Length <= 1) return new("Name the items that there is something to decide about.");
        return new(open.Approval is { } yes ? $"Approved{(yes.By.Length > 0 ? $" by {yes.By}" : "")}: keep to it, or try another {Words.WhatIf}." : "Ask the customer for the yes.");
    }

    private static NextStep Settling(OpenBuild open, SheetFinding worst, ItemMarks marks, int fails, Sheet sheet)
    {
        var where = Remedy.For(sheet, open.Build.Scenarios.GetValueOrDefault(sheet.Scenario), [worst]).GetValueOrDefault(worst.Id) is [var best, ..] ? best.Item.Id : marks.WhereToSettle(worst);
        var look = where is null ? "Look what would settle it" : $"Look at the options for {Words.Within(open.Build.Find(where)!.Title)}";
        return new($"{look}; {Words.Count(fails, "check says", "checks say")} {Words.Of(Engineering.Calculations.Verdict.Fail)}.", where);
    }

    private static NextStep AfterDelivery(OpenBuild open) =>
        open.Build.Slots.Where(s => s.Findings.Length > 0).OrderByDescending(s => s.Grade, StringComparer.Ordinal).FirstOrDefault() is { } found
            ? new($"Look at {Words.Within(found.Title)}: {string.Join("; ", found.Findings)}.", found.Id) : new("Delivered; nothing has come back.");
}
