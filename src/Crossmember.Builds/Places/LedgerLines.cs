using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Places;

/// <summary>
/// Everything that makes up the mass of a loading condition, line by line: what the scale said, less who was aboard then, less what came off since,
/// plus what was put on, plus who and what is aboard. Its sums are the sheet's <c>mass.{condition}.*</c>.
/// </summary>
public sealed class LedgerLines
{
    private LedgerLines(Sheet sheet, string condition)
    {
        Weighing = sheet.Ledger.Weighings is [.., var latest] ? latest : null;
        Missing = [.. sheet.Ledger.BareMass().Missing.Select(id => sheet.Build.Find(id)!)];
        var entries = sheet.Ledger.EntriesIn(condition).ToLookup(e => e.Part == LedgerPart.Weighed);
        // Without a weighing the whole is not known, but who is aboard is.
        var aboard = Weighing is null ? OnBoard.Of(sheet.Build, condition).Select(i => LedgerEntry.Of(LedgerPart.Aboard, i.Owner, null, i.Item)) : [];
        All =
        [
            .. Weighing is null ? [] : new[] { OfScale([.. entries[true]]) },
            .. entries[false].Concat(aboard).Select(e => Of(sheet, e)),
            .. Missing.Select(slot => new LedgerLine(LedgerPart.PutOn, null, slot, "", double.NaN, double.NaN, double.NaN, double.NaN, null, Basis.Assumed, null)),
        ];
    }

    public static LedgerLines Of(Sheet sheet, string condition) => new(sheet, condition);

    /// <summary>What the rest is counted from; null: it has not been on a scale yet, and nothing is known of the whole.</summary>
    public Weighing? Weighing { get; }

    public IReadOnlyList<LedgerLine> All { get; }

    /// <summary>Items whose change has no mass on one side: the whole is unknown until somebody says it.</summary>
    public IReadOnlyList<Slot> Missing { get; }

    /// <summary>kg; NaN where the whole is not known.</summary>
    public double Kilograms => Sum(e => e.Kilograms);

    public double MomentX => Sum(e => e.MomentX);

    public double MomentY => Sum(e => e.MomentY);

    public double MomentZ => Sum(e => e.MomentZ);

    private double Sum(Func<LedgerLine, double> what) => Weighing is null ? double.NaN : All.Sum(what);

    private static LedgerLine OfScale(IReadOnlyList<LedgerEntry> readings)
    {
        double kg = readings.Sum(e => e.Kilograms), x = readings.Sum(e => e.MomentX), y = readings.Sum(e => e.MomentY), z = readings.Sum(e => e.MomentZ);
        return new(LedgerPart.Weighed, null, null, "", kg, x, y, z, kg > 0 && !double.IsNaN(x) ? new(x / kg, y / kg, z / kg) : null, Basis.Measured, Math.Sqrt(readings.Sum(e => e.MassError * e.MassError)));
    }

    private static LedgerLine Of(Sheet sheet, LedgerEntry e)
    {
        var slot = e.Option is null ? null : sheet.Build.Find(e.Owner);
        var item = e.IsBelow ? null : e.Option is { } option ? MassRef.Of(e.Owner, option, e.Item) : sheet.Build.Conditions.ContainsKey(e.Owner) ? MassRef.Aboard(e.Owner, e.Item) : null;
        return new(e.Part, item, slot, e.IsBelow ? "" : e.Item, e.Kilograms, e.MomentX, e.MomentY, e.MomentZ, double.IsNaN(e.X) ? null : new(e.X, e.Y, e.Z), e.Basis, double.IsNaN(e.MassError) ? null : e.MassError);
    }
}
