using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Evaluation;

/// <summary>Who and what is on board, and by whose word: a loading condition, or the day of a weighing.</summary>
internal static class OnBoard
{
    public static IEnumerable<(string Owner, MassItem Item)> Of(Build build, string? condition) =>
        condition is not null && build.Conditions.TryGetValue(condition, out var c) ? c.Items.Select(i => (condition, i)) : [];

    public static IEnumerable<(string Owner, MassItem Item)> Of(Build build, Weighing weighing) =>
        (weighing.ConditionThen is { } then ? then.Select(i => (weighing.Condition!, i)) : Of(build, weighing.Condition)).Concat(weighing.OnBoard.Select(i => (weighing.Date, i)));

    /// <summary>Leaves out what was on board then and is still: it moves nothing and its error cancels.</summary>
    public static void TakeOutWhatStayed(List<LedgerEntry> entries)
    {
        foreach (var then in entries.FindAll(e => e.Part == LedgerPart.WasAboard))
            if (entries.Find(e => e.Part == LedgerPart.Aboard && e.Item == then.Item && e.Kilograms.Equals(-then.Kilograms) && (e.X, e.Y, e.Z).Equals((then.X, then.Y, then.Z))) is { } still)
            {
                entries.Remove(then);
                entries.Remove(still);
            }
    }
}
