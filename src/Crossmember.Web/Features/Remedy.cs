using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;
using Crossmember.Builds.Workshop;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Web.Features;

/// <summary>An option that would settle a finding.</summary>
/// <param name="Worse">Verdicts that it would spoil elsewhere.</param>
public sealed record Remedy(Slot Item, string Option, int Worse)
{
    /// <summary>Whether a sheet no longer says no, or don't know, where a finding did.</summary>
    public static bool Settles(Sheet sheet, string finding) => sheet.Findings().FirstOrDefault(f => f.Id == finding) is { Finding.Verdict: Verdict.Pass or Verdict.Caution };

    /// <summary>The first item that has an option which by itself would settle a finding, or null.</summary>
    public static string? Where(OpenBuild open, Sheet sheet, SheetFinding finding, ItemMarks marks) =>
        !open.Build.Scenarios.TryGetValue(sheet.Scenario, out var now) ? null
        : marks.Behind(finding).FirstOrDefault(item => open.Build.Find(item)!.Options.Any(o => o.Id != sheet.Choices[item].Id
            && Settles(open.Plan.Evaluate(open.Build, sheet.Shop, now with { Choices = now.Choices.SetItem(item, o.Id) }, sheet), finding.Id)));
}
