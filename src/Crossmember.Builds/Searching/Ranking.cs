namespace Crossmember.Builds.Searching;

/// <summary>Orders combinations by the sum of their places in four lists: least effort, most margin, least cost, least unsprung mass. No unit or weight decides. Without a margin, or with one below zero, it comes after all others.</summary>
internal static class Ranking
{
    public static List<Combination> Of(Combination[] found)
    {
        var sum = new double[found.Length];
        Add(found, sum, c => double.IsNaN(c.Effort) ? double.PositiveInfinity : c.Effort);
        Add(found, sum, c => -(c.Margin ?? double.NegativeInfinity));
        Add(found, sum, c => c.Cost is { } cost ? (double)cost : double.PositiveInfinity);
        Add(found, sum, c => c.UnsprungMass ?? double.PositiveInfinity);
        return [.. Enumerable.Range(0, found.Length).OrderBy(i => found[i].Margin is null or < 0).ThenBy(i => sum[i]).ThenBy(i => found[i].Effort).ThenBy(i => found[i].Cost).ThenBy(i => i).Select(i => found[i])];
    }

    /// <summary>Equals share a place: the number of those that do better.</summary>
    private static void Add(Combination[] found, double[] sum, Func<Combination, double> by)
    {
        double[] keys = [.. found.Select(by)];
        int[] order = [.. Enumerable.Range(0, found.Length)];
        Array.Sort((double[])keys.Clone(), order);
        var place = 0;
        for (var i = 0; i < order.Length; i++)
        {
            if (i > 0 && keys[order[i]] > keys[order[i - 1]]) place = i;
            sum[order[i]] += place;
        }
    }
}
