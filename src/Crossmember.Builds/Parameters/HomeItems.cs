using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Parameters;

/// <summary>Which item of a vehicle a key is looked for at: where it is stated, else where an option could state it, else by <c>data/item-keys.csv</c>.</summary>
/// <remarks>Only for showing and for offering. What counts in a sheet is what options state, wherever they do.</remarks>
public sealed class HomeItems
{
    private static readonly IReadOnlyList<(string[] Key, string[] Items)> s_usual = Read();

    private readonly Sheet _sheet;
    private readonly Dictionary<int, List<Slot>> _stating = [];
    private readonly Dictionary<int, Slot> _inEffect = [];

    public HomeItems(Sheet sheet)
    {
        _sheet = sheet;
        foreach (var slot in sheet.Build.Slots)
        {
            foreach (var (key, _) in sheet.InEffect[sheet.Plan.SlotId(slot.Id)]?.Values ?? []) _inEffect.TryAdd(key, slot);
            var said = slot.Options.SelectMany(o => o.Parameters.Select(p => p.Key)).Concat(slot.Noted.Select(n => n.Pattern)).Distinct();
            foreach (var key in said.SelectMany(sheet.Plan.Space.Expand).Distinct())
                (_stating.TryGetValue(key, out var list) ? list : _stating[key] = []).Add(slot);
        }
    }

    /// <summary>The item of a key of the sheet's plan; the vehicle itself where no other offers itself.</summary>
    public Slot Of(int key)
    {
        if (_inEffect.TryGetValue(key, out var stating)) return stating;
        var usual = Usual(_sheet.Plan.Space.KeyName(key)).Select(_sheet.Build.Find).OfType<Slot>().Where(IsThere).ToList();
        var could = _stating.GetValueOrDefault(key, []).Where(IsThere).ToList();
        return usual.Find(could.Contains) ?? could.FirstOrDefault() ?? usual.FirstOrDefault() ?? _sheet.Build.Find(Slot.Root) ?? _sheet.Build.Slots[0];
    }

    /// <summary>Ids of items that usually hold a key, the likeliest first: of all rows that fit it the one that says most.</summary>
    public static IEnumerable<string> Usual(string key)
    {
        var words = key.Split('.');
        var most = s_usual.Where(u => Begins(u.Key, words)).Select(u => u.Key.Length).DefaultIfEmpty().Max();
        return s_usual.Where(u => u.Key.Length == most && Begins(u.Key, words)).SelectMany(u => u.Items.Select(i => i.Replace("{axle}", words.Length > 1 ? words[1] : "", StringComparison.Ordinal))).Distinct();
    }

    private bool IsThere(Slot slot) => _sheet.Choices[slot.Id].Id != Option.None;

    private static bool Begins(string[] beginning, string[] key) =>
        beginning.Length <= key.Length && beginning.Zip(key).All(p => p.First[0] == '{' || p.First == p.Second);

    private static List<(string[], string[])> Read()
    {
        using var reader = new StreamReader(typeof(HomeItems).Assembly.GetManifestResourceStream("item-keys.csv")!);
        return [.. reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(1).Select(r => r.TrimEnd('\r').Split(',')).Select(c => (c[0].Split('.'), c[1].Split(' ')))];
    }
}
