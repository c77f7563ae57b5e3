using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Evaluation;

/// <summary>Who and what is on board, and by whose word: a loading condition, or the day of a weighing.</summary>
internal static class OnBoard
{
    public static IEnumerable<(string Owner, MassItem Item)> Of(Build build, string? condition) =>
        condition is not null && build.Conditions.TryGetValue(condition, out var c) ? c.Items.Select(i => (condition, i)) : [];

    public static IEnumerable<(string Owner, MassItem Item)> Of(Build build, Weighing weighing) =>
        Of(build, weighing.Condition).Concat(weighing.OnBoard.Select(i => (weighing.Date, i)));
}
