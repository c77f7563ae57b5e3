using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;
using Crossmember.Builds.Workshop;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Reading;

namespace Crossmember.Web.Features.Builds;

/// <summary>A vehicle at a glance: is it in trouble, why, and what is next.</summary>
/// <param name="Worst">The finding that weighs most; null where nothing is checked.</param>
/// <param name="Next">What to do next, in one sentence.</param>
/// <param name="Item">The item where that can be done; null: anywhere.</param>
public sealed record BuildGlance(string Id, string Title, string Scenario, SheetFinding? Worst, int Fails, int Unknowns, int Cautions, string Next, string? Item, string? Phase, int Checks)
{
    public Verdict State => Worst?.Finding.Verdict ?? Verdict.Unknown;

    public static BuildGlance Of(OpenBuild open, ShopFacts shop)
    {
        var scenario = Usual(open, shop);
        var sheet = open.Sheet(scenario, shop)!;
        var findings = sheet.Findings().ToList();
        int Count(Verdict v) => findings.Count(f => f.Finding.Verdict == v);
        var marks = ItemMarks.Of(sheet, open.Build.Scenarios.GetValueOrDefault(scenario));
        var worst = findings.Count > 0 ? findings[0] : null;
        var (next, item) = NextStep(open, worst, marks, Count(Verdict.Fail), sheet);
        var title = open.Build.Title.Length > 0 ? open.Build.Title : open.Build.Id;
        return new(open.Build.Id, title, scenario, worst, Count(Verdict.Fail), Count(Verdict.Unknown), Count(Verdict.Caution), next, item, open.Build.Phase, findings.Count);
    }

    /// <summary>The scenario people work in: the one a check would take, else the first.</summary>
    public static string Usual(OpenBuild open, ShopFacts shop) =>
        new Comparing(open, shop, _ => throw new InvalidOperationException("nothing is compared here")).Default(new Faults()) ?? open.Build.Scenarios.Keys.First();

    private static (string Next, string? Item) NextStep(OpenBuild open, SheetFinding? worst, ItemMarks marks, int fails, Sheet sheet)
    {
        if (open.IsReadOnly) return ($"Open for reading only: {open.State.Unreadable[0]}.", null);
        if (open.Build.Stopped is { } why) return ($"Work is stopped: {why}.", null);
        var undecided = open.Build.Slots.Where(s => marks.IsUndecided(s.Id)).ToList();
        if (fails > 0 && worst is not null)
        {
            var where = Remedy.For(sheet, open.Build.Scenarios.GetValueOrDefault(sheet.Scenario), [worst]).GetValueOrDefault(worst.Id) is [var best, ..] ? best.Item.Id : marks.WhereToSettle(worst);
            var look = where is null ? "Look what would settle it" : $"Look at the options for {Words.Within(open.Build.Find(where)!.Title)}";
            return ($"{look}; {Words.Count(fails, "check says", "checks say")} {Words.Of(Verdict.Fail)}.", where);
        }
        if (open.Build.Phase == "delivered")
            return open.Build.Slots.Where(s => s.Findings.Length > 0).OrderByDescending(s => s.Grade, StringComparer.Ordinal).FirstOrDefault() is { } found ? ($"Look at {Words.Within(found.Title)}: {string.Join("; ", found.Findings)}.", found.Id) : ("Delivered; nothing has come back.", null);
        if (Unsettled.Of(sheet) is [var missing, ..]) return ($"Find out {missing.Meaning}: {missing.Measure} ({Words.Count(missing.Checks, "check waits", "checks wait")} for it).", null);
        if (undecided.Count > 0) return ($"Decide {Words.Within(undecided[0].Title)}{(undecided.Count > 1 ? $" and {undecided.Count - 1} more" : "")}.", undecided[0].Id);
        return open.Approval is { } yes ? ($"Approved{(yes.By.Length > 0 ? $" by {yes.By}" : "")}: keep to it, or try another {Words.WhatIf}.", null) : ("Ask the customer for the yes.", null);
    }
}
