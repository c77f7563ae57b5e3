using System.Collections.Immutable;
using System.Text.Json;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Folding;

/// <summary>Reads <c>governs</c>: <c>"gear.4"</c> (set and member, joined by a dot or =), <c>"gear.*"</c> or <c>"gear"</c> (the whole set),
/// a parameter key that names the member (<c>"gearbox.4.ratio"</c>), or the map form <c>{"gear": ["1", "2"]}</c>.</summary>
public static class GovernsReader
{
    public static ImmutableArray<Membership> Read(JsonElement e, string pointer, ParameterTable table, Faults faults)
    {
        var list = ImmutableArray.CreateBuilder<Membership>();
        if (e.ValueKind == JsonValueKind.Object)
            foreach (var (set, members, at) in new ObjectReader(e, pointer, faults).Pairs())
                AddSet(set, members, at, list, faults);
        else if (e.ValueKind == JsonValueKind.Array)
        {
            var i = 0;
            foreach (var item in e.EnumerateArray()) Add(item, $"{pointer}/{i++}", table, list, faults);
        }
        else faults.Add(pointer, $"{ObjectReader.Named(e)} where a list is needed", "[\"gear.1\", \"gear.2\"]");
        return [.. list.Distinct()];
    }

    private static void AddSet(string set, JsonElement members, string pointer, ImmutableArray<Membership>.Builder list, Faults faults)
    {
        JsonElement[] items = members.ValueKind == JsonValueKind.Array ? [.. members.EnumerateArray()] : [members];
        foreach (var m in items)
            if (m.ValueKind != JsonValueKind.String || !IsMember(set, m.GetString()!)) Fault(set, pointer, faults);
            else list.Add(new(set, m.GetString()!));
    }

    private static void Add(JsonElement item, string pointer, ParameterTable table, ImmutableArray<Membership>.Builder list, Faults faults)
    {
        var text = item.ValueKind == JsonValueKind.String ? item.GetString()! : "";
        var cut = text.IndexOfAny(['.', '=', '/', ':']);
        var (set, member) = cut < 0 ? (text, "*") : (text[..cut], text[(cut + 1)..]);
        if (IsMember(set, member)) list.Add(new(set, member));
        else if (table.Of(text) is { } pattern && pattern.Sets.Length > 0)
            list.AddRange(pattern.Sets.Select((s, i) => new Membership(s, MemberAt(pattern, text, i))).Where(m => Sets.IsGoverned(m.Set) || Sets.Open.Contains(m.Set)));
        else Fault(text, pointer, faults);
    }

    private static string MemberAt(ParameterPattern pattern, string key, int which)
    {
        var places = Enumerable.Range(0, pattern.Segments.Length).Where(i => pattern.Segments[i][0] == '{').ToList();
        return key.Split('.')[places[which]];
    }

    private static bool IsMember(string set, string member) =>
        (Sets.IsGoverned(set) || Sets.Open.Contains(set)) && (member == "*" || Sets.IsMemberName(member));

    private static void Fault(string text, string pointer, Faults faults) =>
        faults.Add(pointer, $"'{text}' names no member of a set", "a set and a member, such as gear.4 or winch.front; sets: gear, range, winch, circuit, tank, part, leaf, coil, torsion");
}
