namespace Crossmember.Engineering.Calculations;

/// <summary>Every calculation of the project, found by reflection: the one list that bench, command line, paper and tests read.</summary>
public static class CalculationList
{
    private static readonly Lazy<SortedDictionary<string, Calculation>> s_all = new(() => new(
        typeof(Calculation).Assembly.GetTypes()
            .Where(t => !t.IsAbstract && t.IsSubclassOf(typeof(Calculation)))
            .Select(t => (Calculation)Activator.CreateInstance(t)!)
            .ToDictionary(c => c.Id), StringComparer.Ordinal));

    /// <summary>In the order of their ids.</summary>
    public static IReadOnlyCollection<Calculation> All => s_all.Value.Values;

    public static Calculation? Find(string id) => s_all.Value.GetValueOrDefault(id);
}
