using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;
using Crossmember.Builds.Workshop;
using Crossmember.Engineering.Calculations;
using Crossmember.Web.Features.Decisions;

namespace Crossmember.Web.Features.Builds;

/// <summary>What the lists show of a sheet, part by part.</summary>
internal sealed class GlanceParts(OpenBuild open, Sheet sheet, ItemMarks marks)
{
    /// <summary>More than this of one kind nobody reads in a list of vehicles: the vehicle's own pages have them all.</summary>
    private const int Most = 5;

    private readonly RowNames _names = new(sheet.Plan, open.Build);

    public GlanceFinding Told(SheetFinding finding, int alike = 0)
    {
        var name = _names.Finding(finding.Id);
        return new(finding.Id, finding.Finding.Verdict, finding.Finding.Text, name.Title, name.Where, marks.WhereToSettle(finding), alike) { Value = finding.Finding.Value, Limit = finding.Finding.Limit, Unit = finding.Finding.Unit };
    }

    public IReadOnlyList<GlanceFinding> Trouble(IReadOnlyList<SheetFinding> findings) =>
        [.. findings.Where(f => f.Finding.Verdict == Verdict.Fail).GroupBy(f => _names.Finding(f.Id).Family).Take(Most).Select(g => Told(g.First(), g.Count() - 1))];

    public IReadOnlyList<GlanceMeasurement> FindOut() => [.. Unsettled.Of(sheet).Take(Most).Select(u => new GlanceMeasurement(u.What, u.Meaning, u.Measure, u.Checks))];

    public IReadOnlyList<GlanceItem> Undecided() => [.. OpenQuestion.Of(sheet, marks).Select(q => new GlanceItem(q.Item.Id, q.Item.Title, string.Join("; ", q.Why)))];

    public Consent Consent()
    {
        if (open.Approval is not { } yes) return new(null, 0);
        var then = open.Build.Slots.Select(s => yes.Choices.GetValueOrDefault(s.Id, Option.AsFound));
        var now = open.Build.Slots.Select(s => sheet.Choices.Chosen.GetValueOrDefault(s.Id, Option.AsFound));
        return new(yes.By, then.Zip(now).Count(p => p.First != p.Second));
    }

    public IReadOnlyList<GlancePrice> Prices() =>
    [
        .. from option in sheet.InEffect.OfType<CompiledOption>()
           from price in option.Body.Prices ?? []
           where price.Until is { Length: > 0 }
           orderby price.Until, option.Slot.Id, price.Id
           select new GlancePrice(option.Slot.Id, option.Slot.Title, price.What ?? price.Id, price.Until!),
    ];
}
