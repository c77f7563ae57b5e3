using Crossmember.Builds.Parameters;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Folding;

/// <summary>Reads the ordered sets of a build; axles and sides are the usual ones where nothing is said.</summary>
public static class SetsReader
{
    /// <summary>Keys run over up to three sets at once: beyond this a file of a few bytes would make millions of them.</summary>
    private const int MostMembers = 64;

    public static Sets Read(ObjectReader r)
    {
        var sets = Sets.Usual.Ordered.ToBuilder();
        foreach (var (set, members, pointer) in r.Map("sets"))
        {
            if (!Sets.Closed.Contains(set))
            {
                r.Faults.Add(pointer, $"'{set}' is no ordered set", Sets.Open.Contains(set) ? "its members come from governs" : string.Join(", ", Sets.Closed));
                continue;
            }
            sets[set] = [.. Members(members, pointer, r)];
        }
        return new(sets.ToImmutable());
    }

    private static IEnumerable<string> Members(System.Text.Json.JsonElement members, string pointer, ObjectReader r)
    {
        if (members.ValueKind != System.Text.Json.JsonValueKind.Array)
        {
            r.Faults.Add(pointer, $"{ObjectReader.Named(members)} where a list is needed", "[\"front\", \"rear\"]");
            yield break;
        }
        if (members.GetArrayLength() > MostMembers)
        {
            r.Faults.Add(pointer, $"a set of {members.GetArrayLength()} members", $"at most {MostMembers}");
            yield break;
        }
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var i = 0;
        foreach (var item in members.EnumerateArray())
        {
            var at = $"{pointer}/{i++}";
            if (r.TextOf(item, at) is not { } member) continue;
            if (!Sets.IsMemberName(member)) r.Faults.Add(at, $"'{member}' is no name of a member", "lower-case letters, digits and dashes");
            else if (member == "note") r.Faults.Add(at, "'note' is kept for remarks", "another name");
            else if (!seen.Add(member)) r.Faults.Add(at, $"'{member}' stands twice", "keep one of the two");
            else yield return member;
        }
    }
}
