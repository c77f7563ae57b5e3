using System.Text.Json.Nodes;
using Crossmember.Builds.Ripples;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Files;

/// <summary>Writes a ripple as <c>crossmember.ripple/1</c>.</summary>
public static class RippleJson
{
    public static JsonObject Of(Ripple ripple) => new()
    {
        ["format"] = "crossmember.ripple/1",
        ["from"] = ripple.From,
        ["to"] = ripple.To,
        ["rows"] = new JsonArray([.. ripple.Rows.Select(Row)]),
        ["pending"] = new JsonArray(),
    };

    private static JsonObject Row(RippleRow row) => new()
    {
        ["kind"] = row.Kind.ToString().ToLowerInvariant(),
        ["id"] = row.Id,
        ["state"] = row.State.ToString().ToLowerInvariant(),
        ["from"] = SideOf(row.From),
        ["to"] = SideOf(row.To),
        ["because"] = Json.Texts(row.Because),
    };

    private static JsonObject? SideOf(Side? side) => side is null ? null : new()
    {
        ["value"] = SheetJson.ValueOf(side),
        ["unit"] = side.Unit,
        ["verdict"] = side.Verdict?.ToString().ToLowerInvariant(),
    };
}
