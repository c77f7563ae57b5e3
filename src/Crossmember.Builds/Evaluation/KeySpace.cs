using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Evaluation;

/// <summary>Every member and every key that one or more builds can have, numbered once, so that evaluating works on arrays.</summary>
public sealed class KeySpace
{
    private readonly Dictionary<string, int> _keyIds = new(StringComparer.Ordinal);
    private readonly Dictionary<(string Set, string Member), int> _memberIds = [];
    private readonly List<(string Set, string Member)> _members = [];
    private readonly List<string> _keys = [];
    private readonly List<ParameterPattern> _patterns = [];
    private readonly List<int[]> _keyMembers = [];
    private readonly Dictionary<string, int[]> _expanded = new(StringComparer.Ordinal);

    public KeySpace(ParameterTable table, IReadOnlyList<Build> builds)
    {
        Table = table;
        foreach (var set in Sets.Closed)
            foreach (var member in builds.SelectMany(b => b.Sets.Of(set)).Distinct())
                AddMember(set, member);
        foreach (var m in builds.SelectMany(Governed).Where(m => m.Member != "*" && Sets.Open.Contains(m.Set)).Distinct().OrderBy(m => m.Member, StringComparer.Ordinal))
            AddMember(m.Set, m.Member);
        foreach (var pattern in table.All)
            foreach (var members in Product(pattern.Sets)) AddKey(pattern, members);
    }

    public ParameterTable Table { get; }

    public int KeyCount => _keys.Count;

    public int MemberCount => _members.Count;

    public string KeyName(int key) => _keys[key];

    public ParameterPattern PatternOf(int key) => _patterns[key];

    /// <summary>Members that must exist for the key to exist.</summary>
    public int[] MembersOf(int key) => _keyMembers[key];

    public (string Set, string Member) Member(int member) => _members[member];

    /// <summary>The number of a key, or -1.</summary>
    public int KeyId(string key) => _keyIds.GetValueOrDefault(key, -1);

    /// <summary>The number of a member, or -1.</summary>
    public int MemberId(string set, string member) => _memberIds.GetValueOrDefault((set, member), -1);

    public IEnumerable<int> MembersIn(string set) => Enumerable.Range(0, _members.Count).Where(i => _members[i].Set == set);

    /// <summary>Every key that a pattern with stars covers.</summary>
    public int[] Expand(string pattern)
    {
        if (_expanded.TryGetValue(pattern, out var known)) return known;
        var id = KeyId(pattern);
        int[] found = id >= 0 ? [id] : pattern.Contains('*', StringComparison.Ordinal) && Table.Of(pattern) is { } family
            ? [.. Enumerable.Range(0, _keys.Count).Where(k => ReferenceEquals(_patterns[k], family) && Folding.KeyChecks.Covers(pattern, _keys[k]))]
            : [];
        return _expanded[pattern] = found;
    }

    /// <summary>Tuples of members over sets, in the sets' order.</summary>
    public IEnumerable<int[]> Product(IReadOnlyList<string> sets)
    {
        IEnumerable<int[]> tuples = [[]];
        foreach (var set in sets)
        {
            int[] members = [.. MembersIn(set)];
            tuples = tuples.SelectMany(_ => members, (t, m) => (int[])[.. t, m]);
        }
        return tuples;
    }

    private static IEnumerable<Membership> Governed(Build build) =>
        build.Slots.SelectMany(s => s.Governs.Concat(s.Options.SelectMany(o => o.Governs ?? [])));

    private void AddMember(string set, string member)
    {
        if (_memberIds.TryAdd((set, member), _members.Count)) _members.Add((set, member));
    }

    private void AddKey(ParameterPattern pattern, int[] members)
    {
        var next = 0;
        var key = string.Join('.', pattern.Segments.Select(s => s[0] == '{' ? _members[members[next++]].Member : s));
        _keyIds.Add(key, _keys.Count);
        _keys.Add(key);
        _patterns.Add(pattern);
        _keyMembers.Add(members);
    }
}
