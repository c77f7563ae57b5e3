using System.Collections.Immutable;

namespace Crossmember.Builds.Slots;

/// <summary>Scale readings of one day, with what was fitted and on board.</summary>
/// <param name="Readings">kg by axle, or by axle and side (<c>front.left</c>), never both.</param>
/// <param name="Wheelbase">m.</param>
/// <param name="Height">Center of gravity over the ground, m; null: not stated.</param>
/// <param name="DatumHeight">Frame datum plane over the ground that day, m.</param>
/// <param name="Fitted">What differed from as found.</param>
public sealed record Weighing(
    string Date, ImmutableSortedDictionary<string, double> Readings, bool ByWheel, double Wheelbase, double? Height, double? DatumHeight,
    string? Condition, ImmutableSortedDictionary<string, string> Fitted)
{
    /// <summary>Who and what its condition had on board when it was taken: what is said of the condition later was not on the scale. Null: nothing had been said of it by then.</summary>
    public ImmutableArray<MassItem>? ConditionThen { get; init; }

    /// <summary>Who and what was on board besides the condition.</summary>
    public ImmutableArray<MassItem> OnBoard { get; init; } = [];

    /// <summary>One standard uncertainty of a reading, kg; null: nobody said.</summary>
    public double? ReadingError { get; init; }

    public RaisedReading? Raised { get; init; }

    /// <summary>By day; of one day, in the order taken.</summary>
    public static IEnumerable<Weighing> InOrder(IEnumerable<Weighing> weighings) => weighings.OrderBy(w => w.Date, StringComparer.Ordinal);
}

/// <summary>One axle lifted while the other stayed on the scale.</summary>
/// <param name="Lifted"><c>front</c> or <c>rear</c>.</param>
/// <param name="By">Lift of its wheel centers, m.</param>
/// <param name="Reading">What the other axle then weighed, kg.</param>
/// <param name="RadiusFront">Front wheel centers over the ground, level, m.</param>
/// <param name="RadiusRear">The same at the rear, m.</param>
public sealed record RaisedReading(string Lifted, double By, double Reading, double RadiusFront, double RadiusRear);
