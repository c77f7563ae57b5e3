using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Evaluation;

/// <summary>How far an entry of the ledger is likely off, from what the scale said.</summary>
/// <param name="Kilograms">What the reading says is to be added to the entry's mass, signed as the entry is.</param>
/// <param name="Share">Share of the doubt about the total that this entry alone brings.</param>
public sealed record LikelyError(LedgerEntry Entry, double Kilograms, double Share);

/// <summary>A later weighing against what the earlier one and the ledger led to expect.</summary>
/// <remarks>
/// The difference at each axle is shared out among the entries by least squares: each takes its own covariance with the difference, so the least
/// certain ones explain the most (condition adjustment with independent errors: v = Q B' (B Q B')^-1 d, any text on adjustment computations).
/// </remarks>
/// <param name="Date">Of the later weighing.</param>
/// <param name="Front">Read less expected, kg.</param>
/// <param name="Rear">Read less expected, kg.</param>
/// <param name="FrontError">One standard uncertainty of that difference, kg.</param>
/// <param name="RearError">One standard uncertainty of that difference, kg.</param>
public sealed record ScaleComparison(string Date, double Expected, double Read, double Front, double Rear, double FrontError, double RearError, IReadOnlyList<LikelyError> Likely)
{
    public bool Agrees => Math.Abs(Front) <= 2 * FrontError && Math.Abs(Rear) <= 2 * RearError;

    public string Text => $"On {Date} the scale read {Read:0} kg where the ledger expected {Expected:0} kg: front {Front:+0;-0;0} kg (give or take {FrontError:0} kg), rear {Rear:+0;-0;0} kg (give or take {RearError:0} kg)."
        + (Likely.Count > 0 && (Math.Abs(Front) >= 1 || Math.Abs(Rear) >= 1) ? $" Most likely off: {string.Join("; ", Likely.Take(3).Where(l => Math.Abs(l.Kilograms) >= 0.5).Select(Told))}." : "")
        + (Agrees ? "" : " That is more than their doubt allows: look for what nobody wrote down.");

    /// <summary>Every weighing after the first against the one before it; none where a state is not known.</summary>
    internal static IReadOnlyList<ScaleComparison> All(EvaluationPlan plan, Build build, Ledger ledger) =>
        [.. ledger.Weighings.Zip(ledger.Weighings.Skip(1), (from, to) => Between(plan, build, from, to)).OfType<ScaleComparison>()];

    private static ScaleComparison? Between(EvaluationPlan plan, Build build, Weighing from, Weighing to)
    {
        Choices then = Choices.Of(build, from.Fitted), now = Choices.Of(build, to.Fitted);
        WeighedState before = WeighedState.Of(plan, build, from, then), after = WeighedState.Of(plan, build, to, now);
        var changes = SlotChanges.Between(plan, build, before.Sum, s => plan.Compiled(build, s, then[s.Id]), s => plan.Compiled(build, s, now[s.Id]));
        if (!before.Stands || !after.Stands || changes.Missing.Count > 0) return null;
        List<LedgerEntry> entries =
        [
            .. before.Entries, .. changes.Entries,
            .. OnBoard.Of(build, from).Select(i => LedgerEntry.Of(LedgerPart.WasAboard, i.Owner, null, i.Item)),
            .. OnBoard.Of(build, to).Select(i => LedgerEntry.Of(LedgerPart.Aboard, i.Owner, null, i.Item)),
        ];
        OnBoard.TakeOutWhatStayed(entries);
        return entries.Exists(e => double.IsNaN(e.MomentX)) ? null : Compare(to, entries, after.Entries);
    }

    private static ScaleComparison Compare(Weighing to, List<LedgerEntry> expected, IReadOnlyList<LedgerEntry> read)
    {
        var L = to.Wheelbase;
        (double Front, double Rear) On(LedgerEntry e) => (1 - (e.X / L), e.X / L);
        double front = 0, rear = 0, ff = 0, fr = 0, rr = 0;
        foreach (var (e, sign) in expected.Select(e => (e, -1.0)).Concat(read.Select(e => (e, 1.0))))
        {
            var (f, r) = On(e);
            front += sign * f * e.Kilograms;
            rear += sign * r * e.Kilograms;
            double mass = e.MassError * e.MassError, place = Math.Pow(e.Kilograms * e.PlaceError / L, 2);
            ff += (f * f * mass) + place;
            rr += (r * r * mass) + place;
            fr += (f * r * mass) - place;
        }
        var det = (ff * rr) - (fr * fr);
        double vf = 0, vr = 0; // (B Q B')^-1 d
        if (det > 1e-9 * ff * rr) (vf, vr) = (((rr * front) - (fr * rear)) / det, ((ff * rear) - (fr * front)) / det);
        var doubt = expected.Sum(e => e.MassError * e.MassError);
        var likely = expected.Select(e => new LikelyError(e, e.MassError * e.MassError * ((On(e).Front * vf) + (On(e).Rear * vr)), doubt > 0 ? e.MassError * e.MassError / doubt : 0))
            .OrderByDescending(l => Math.Abs(l.Kilograms)).ToList();
        return new(to.Date, expected.Sum(e => e.Kilograms), read.Sum(e => e.Kilograms), front, rear, Math.Sqrt(ff), Math.Sqrt(rr), likely);
    }

    private static string Told(LikelyError l) => l.Entry.Part == LedgerPart.Weighed
        ? $"the earlier reading {l.Entry.Item} ({l.Kilograms:+0.0;-0.0} kg)"
        : $"{l.Entry.Item} of {l.Entry.Owner} ({(l.Entry.Kilograms < 0 ? -1 : 1) * l.Kilograms:+0.0;-0.0} kg on {Math.Abs(l.Entry.Kilograms):0} kg)";
}
