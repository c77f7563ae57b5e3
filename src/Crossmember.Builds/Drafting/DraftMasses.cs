using System.Text.Json.Nodes;
using Crossmember.Builds.Pasting;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Drafting;

/// <summary>Makes mass items out of one field, with the places that the item's parts have already.</summary>
internal sealed class DraftMasses(Slot slot)
{
    private const int Most = 64;

    public void Write(OptionDraft draft, JsonObject body, Faults faults)
    {
        var typed = draft.Mass.Trim();
        if (typed.Length == 0)
        {
            // An empty list says that it weighs nothing: that is not in the field and stays.
            if (draft.MassKept is null && body["masses"] is JsonArray { Count: > 0 }) body.Remove("masses");
            return;
        }
        var (each, count) = EachAndCount.Split(typed);
        var read = ShopNotation.Read(each, Dimension.Mass);
        if (!read.Ok) faults.Add("mass", read.Wrong!, read.WouldBeRight!);
        else if (read.Value!.Si < 0) faults.Add("mass", $"a mass of {each}", "zero or more");
        else if (count is < 1 or > Most || count != decimal.Truncate(count)) faults.Add("mass", $"{count} parts", $"a whole number from 1 to {Most}");
        else body["masses"] = new JsonArray([.. Places(body, draft.Like, (int)count).Select(p => Item(p.Id, each, p.At, draft.MassBasis))]);
    }

    private static JsonObject Item(string id, string mass, JsonNode? at, string basis)
    {
        var item = new JsonObject { ["id"] = id, ["mass"] = mass };
        if (at is not null) item["at"] = at;
        item["basis"] = basis;
        return item;
    }

    /// <summary>As many places as there are parts: those of the option itself, of what it starts from, or of what was found; else none.</summary>
    private IEnumerable<(string Id, JsonNode? At)> Places(JsonObject body, string like, int count)
    {
        if (body["masses"] is JsonArray own && own.Count == count) return own.Select(m => (DraftReader.Text(m?["id"]), m?["at"]?.DeepClone()));
        foreach (var source in new[] { like, Option.AsFound })
            if (slot.Find(source) is { } found && ResolvedOption.Of(slot, found).Body.Masses is { } there && there.Length == count)
                return there.Select(m => (m.Id, (JsonNode?)At(m.At)));
        return Enumerable.Range(1, count).Select(n => (count == 1 ? "part" : $"part {n}", (JsonNode?)null));
    }

    private static JsonArray? At(Place? place) => place is { } p ? [Millimeters(p.X), Millimeters(p.Y), Millimeters(p.Z)] : null;

    private static string Millimeters(double metres) => FormattableString.Invariant($"{metres * 1000:0.##} mm");
}
