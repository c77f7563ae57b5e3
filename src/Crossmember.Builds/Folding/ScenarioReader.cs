using System.Collections.Immutable;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Folding;

/// <summary>Reads what is said of scenarios.</summary>
public static class ScenarioReader
{
    public static Approval Approval(ObjectReader r)
    {
        var made = new Approval(
            r.Text("scenario"),
            r.Map("choices").Select(c => KeyValuePair.Create(c.Name, r.TextOf(c.Value, c.Pointer) ?? "")).ToImmutableSortedDictionary(StringComparer.Ordinal),
            (long)r.Number("build"), (long)r.Number("shop"),
            r.Map("methods").Select(m => KeyValuePair.Create(m.Name, (int)(r.NumberOf(m.Value, m.Pointer) ?? 0))).ToImmutableSortedDictionary(StringComparer.Ordinal),
            r.Text("shown"), r.OptionalText("by") ?? "", r.OptionalText("how"));
        r.Done();
        return made;
    }
}
