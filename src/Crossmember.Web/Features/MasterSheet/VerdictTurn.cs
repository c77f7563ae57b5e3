using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Web.Features.MasterSheet;

/// <summary>A check that says something else after a word than before it. Null: there was, or is, no such check.</summary>
public sealed record VerdictTurn(string Title, string Where, Verdict? From, Verdict? To, string Text)
{
    /// <summary>What turned between two sheets of one build, the worst first.</summary>
    public static IReadOnlyList<VerdictTurn> Between(Sheet before, Sheet after)
    {
        var (then, now) = (before.Findings().ToDictionary(f => f.Id, StringComparer.Ordinal), after.Findings().ToDictionary(f => f.Id, StringComparer.Ordinal));
        RowNames old = new(before.Plan, before.Build), names = new(after.Plan, after.Build);
        var turned = now.Values.Where(f => !then.TryGetValue(f.Id, out var past) ? f.Finding.Verdict != Verdict.Pass : past.Finding.Verdict != f.Finding.Verdict)
            .Select(f => Turn(names.Finding(f.Id), then.GetValueOrDefault(f.Id), f));
        var gone = then.Values.Where(f => !now.ContainsKey(f.Id) && f.Finding.Verdict != Verdict.Pass).Select(f => Turn(old.Finding(f.Id), f, null));
        return [.. turned.Concat(gone).OrderByDescending(t => t.To)];
    }

    private static VerdictTurn Turn(RowName name, SheetFinding? from, SheetFinding? to) =>
        new(name.Title, name.Where, from?.Finding.Verdict, to?.Finding.Verdict, to?.Finding.Text ?? "");
}
