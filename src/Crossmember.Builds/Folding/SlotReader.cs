using System.Text.Json;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Folding;

/// <summary>Reads what is said of a slot itself.</summary>
public static class SlotReader
{
    public static Slot Definition(ObjectReader r, string id, ParameterTable table)
    {
        var slot = new Slot
        {
            Id = id,
            Parent = r.OptionalText("parent"),
            Title = r.OptionalText("title") ?? id,
            Weight = r.OptionalNumber("weight") ?? 1,
            Governs = r.Element("governs") is { ValueKind: not JsonValueKind.Null } g ? GovernsReader.Read(g, r.At("governs"), table, r.Faults) : [],
        };
        if (slot.Weight is < 0 or > 1e6) r.Faults.Add(r.At("weight"), $"a weight of {slot.Weight}", "zero to a million");
        r.Done();
        return slot;
    }

    /// <summary>The grade is text or a number as the shop grades; findings are texts or objects with a text.</summary>
    public static (string? Grade, IReadOnlyList<string> Findings) Grade(ObjectReader r)
    {
        var grade = r.Element("grade") is { } g ? g.ValueKind switch
        {
            JsonValueKind.String => g.GetString(),
            JsonValueKind.Number => g.GetRawText(),
            JsonValueKind.Null => null,
            _ => Refuse(r, g),
        } : null;
        var findings = new List<string>();
        foreach (var (item, pointer) in r.List("findings"))
        {
            if (item.ValueKind == JsonValueKind.Object)
            {
                var inner = new ObjectReader(item, pointer, r.Faults);
                findings.Add(inner.Text("text"));
                _ = inner.OptionalText("id");
                inner.Done();
            }
            else if (r.TextOf(item, pointer) is { } text) findings.Add(text);
        }
        r.Done();
        return (grade, findings);
    }

    private static string? Refuse(ObjectReader r, JsonElement g)
    {
        r.Faults.Add(r.At("grade"), $"{ObjectReader.Named(g)} where a grade is needed", "a short text, such as \"B\"");
        return null;
    }
}
