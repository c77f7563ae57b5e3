using System.Collections.Immutable;
using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Evaluation;

/// <summary>
/// Everything that makes up the mass of a loading condition, line by line: what the scale said, less who was aboard then, less what came off since,
/// plus what was put on, plus who and what is aboard. Its sums are the sheet's <c>mass.{condition}.*</c>.
/// </summary>
public sealed class LedgerEntries
{
    private readonly Sheet _sheet;
    private readonly List<LedgerEntry> _entries = [];
    private readonly List<Slot> _missing = [];
    private Moments _weighed = new(double.NaN, double.NaN, double.NaN, double.NaN);

    private LedgerEntries(Sheet sheet, string condition)
    {
        (_sheet, Condition) = (sheet, condition);
        // The latest by date; of one day, the one taken last.
        Weighing = sheet.Build.Weighings.OrderBy(w => w.Date, StringComparer.Ordinal).LastOrDefault();
        if (Weighing is not null) SinceThen(Weighing);
        foreach (var item in ItemsOf(condition)) Add(LedgerPart.Aboard, MassRef.Aboard(condition, item.Id), null, item, 1);
    }

    public static LedgerEntries Of(Sheet sheet, string condition) => new(sheet, condition);

    public string Condition { get; }

    /// <summary>What the rest is counted from; null: it has not been on a scale yet, and nothing is known of the whole.</summary>
    public Weighing? Weighing { get; }

    public IReadOnlyList<LedgerEntry> All => _entries;

    /// <summary>Items whose change has no mass on one side: the whole is unknown until somebody says it.</summary>
    public IReadOnlyList<Slot> Missing => _missing;

    /// <summary>kg; NaN where the whole is not known.</summary>
    public double Kilograms => Sum(e => e.Kilograms);

    public double MomentX => Sum(e => e.MomentX);

    public double MomentY => Sum(e => e.MomentY);

    public double MomentZ => Sum(e => e.MomentZ);

    private double Sum(Func<LedgerEntry, double> what) => Weighing is null ? double.NaN : _entries.Sum(what);

    private ImmutableArray<MassItem> ItemsOf(string? condition) =>
        condition is not null && _sheet.Build.Conditions.TryGetValue(condition, out var c) ? c.Items : [];

    private void SinceThen(Weighing weighing)
    {
        var (plan, build) = (_sheet.Plan, _sheet.Build);
        var fitted = Choices.Of(build, weighing.Fitted);
        _weighed = WeighedState.Of(plan, build, weighing, fitted);
        _entries.Add(new(LedgerPart.Weighed, null, null, "", _weighed.Mass, _weighed.X, _weighed.Y, _weighed.Z, Center(_weighed), Basis.Measured));
        foreach (var item in ItemsOf(weighing.Condition)) Add(LedgerPart.WasAboard, MassRef.Aboard(weighing.Condition!, item.Id), null, item, -1);
        foreach (var slot in build.Slots.OrderBy(s => s.Id, StringComparer.Ordinal)) Change(slot, plan.Compiled(build, slot, fitted[slot.Id]), _sheet.InEffect[plan.SlotId(slot.Id)]!);
    }

    private void Change(Slot slot, CompiledOption fitted, CompiledOption chosen)
    {
        if (SameParts(fitted, chosen)) return;
        // "Surely below" speaks of the change: it excuses the other side from being weighed.
        var excused = chosen.Body.MassBelow is not null || fitted.Body.MassBelow is not null;
        if (!excused && (chosen.Body.Masses is null || fitted.Body.Masses is null))
        {
            _missing.Add(slot);
            _entries.Add(new(LedgerPart.PutOn, null, slot, "", double.NaN, double.NaN, double.NaN, double.NaN, null, Basis.Assumed));
            return;
        }
        Side(LedgerPart.CameOff, slot, fitted.Body, -1);
        Side(LedgerPart.PutOn, slot, chosen.Body, 1);
    }

    private void Side(LedgerPart part, Slot slot, Option body, int sign)
    {
        foreach (var item in (body.Masses ?? []).OrderBy(i => i.Id, StringComparer.Ordinal)) Add(part, MassRef.Of(slot.Id, body.Id, item.Id), slot, item, sign);
        if (body.MassBelow is not { } below) return;
        var share = sign * below / 2 / _weighed.Mass;
        _entries.Add(new(part, null, slot, "", sign * below / 2, share * _weighed.X, share * _weighed.Y, share * _weighed.Z, Center(_weighed), Basis.Assumed));
    }

    private void Add(LedgerPart part, MassRef item, Slot? slot, MassItem mass, int sign)
    {
        var m = Moments.Of(sign * (mass.Kilograms ?? double.NaN), mass.At);
        _entries.Add(new(part, item, slot, mass.Id, m.Mass, m.X, m.Y, m.Z, mass.At, mass.Basis));
    }

    private static Place? Center(in Moments m) => m.Mass > 0 && !double.IsNaN(m.X) ? new(m.X / m.Mass, m.Y / m.Mass, m.Z / m.Mass) : null;

    /// <summary>No change: the same option, the same items, or nothing said on either side of what is one part at root.</summary>
    private static bool SameParts(CompiledOption fitted, CompiledOption chosen)
    {
        if (ReferenceEquals(fitted, chosen)) return true;
        Option a = fitted.Body, b = chosen.Body;
        if (a.Masses is { } x && b.Masses is { } y) return a.MassBelow == b.MassBelow && Ledger.SameItems(x, y);
        return a.Masses is null && b.Masses is null && a.MassBelow is null && b.MassBelow is null && fitted.Resolved.Root == chosen.Resolved.Root;
    }
}
