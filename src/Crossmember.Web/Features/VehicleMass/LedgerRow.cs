using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Places;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Web.Features.VehicleMass;

/// <summary>A line of the ledger as it is read, with what it does to each axle.</summary>
/// <param name="Front">kg that it puts on the front axle; null where its place or the wheelbase is not known.</param>
/// <param name="Share">Of the whole moment about the front axle; null where that is not known.</param>
public sealed record LedgerRow(LedgerLine Entry, string Title, string Kind, double? Front, double? Rear, double? Share)
{
    /// <summary>What moves the axles most first.</summary>
    public static IReadOnlyList<LedgerRow> Of(MassView view)
    {
        var (ledger, wheelbase) = (view.Ledger, view.Wheelbase ?? 0);
        return [.. ledger.All.OrderByDescending(e => e.IsKnown ? e.Moves(wheelbase) : double.MaxValue).ThenBy(e => Name(e, ledger), StringComparer.Ordinal).Select(e => Row(e, ledger, wheelbase))];
    }

    /// <summary>Whether every typed word stands somewhere in the row.</summary>
    public bool Finds(string typed) =>
        typed.Split(' ', StringSplitOptions.RemoveEmptyEntries).All(w => $"{Title} {Kind} {Words.Of(Entry.Basis)}".Contains(w, StringComparison.OrdinalIgnoreCase));

    public string Where(MeasureSystem measure) => Entry.At is not { } at ? "" : string.Join(", ", new[] { at.X, at.Y, at.Z }.Select(l => double.IsNaN(l) ? "?" : Bare(l, measure)));

    internal static string Bare(double meters, MeasureSystem measure) =>
        MassText.Number(Display.Customary(Dimension.Length, measure).FromSi(meters), measure == MeasureSystem.Metric ? 0 : 1);

    private static LedgerRow Row(LedgerLine e, LedgerLines ledger, double wheelbase)
    {
        var placed = wheelbase > 0 && !double.IsNaN(e.MomentX);
        var share = e.MomentX / ledger.MomentX;
        return new(e, Name(e, ledger), Kinds(e), placed ? e.Front(wheelbase) : null, placed ? e.Rear(wheelbase) : null, double.IsFinite(share) ? share : null);
    }

    private static string Name(LedgerLine e, LedgerLines ledger) => e switch
    {
        { Part: LedgerPart.Weighed } => $"On the scale, {ledger.Weighing?.Date}",
        { Slot: null } => e.Name,
        { IsKnown: false, Item: null } => $"{e.Slot.Title}: nobody has said what the change weighs",
        { IsBelow: true } => $"{e.Slot.Title}: surely under {(e.Part == LedgerPart.CameOff ? "that" : "this")}, half counts",
        _ => $"{e.Slot.Title}: {e.Name}",
    };

    private static string Kinds(LedgerLine e) => e.Part switch
    {
        LedgerPart.Weighed => "weighed",
        LedgerPart.WasAboard => "was aboard then",
        LedgerPart.CameOff => "came off",
        LedgerPart.PutOn => "put on",
        _ => "on board",
    };
}
