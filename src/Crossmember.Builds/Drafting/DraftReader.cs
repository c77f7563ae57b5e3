using System.Globalization;
using System.Text.Json.Nodes;
using Crossmember.Builds.Folding;
using Crossmember.Builds.Pasting;
using Crossmember.Builds.Workshop;
using Crossmember.Engineering.Reading;
using Crossmember.Planning;

namespace Crossmember.Builds.Drafting;

/// <summary>Puts the body of an option into a form. What the form cannot show is told in words and stays.</summary>
public static class DraftReader
{
    /// <param name="body">As in a build file, without its id.</param>
    public static OptionDraft Of(JsonObject body)
    {
        var draft = new OptionDraft
        {
            Title = Text(body["title"]),
            Class = Text(body["class"]) is { Length: > 0 } known ? known : Text(body["like"]).Length > 0 ? "" : "keep",
            Like = Text(body["like"]),
            Lead = Text(body["lead"]),
            MassBelow = Text(body["massBelow"]),
            Originality = Originality(body),
        };
        Prices(body["prices"] as JsonArray ?? [], draft);
        Masses(body["masses"] as JsonArray ?? [], draft);
        foreach (var (line, i) in (body["hours"] as JsonArray ?? []).Select((l, i) => (l as JsonObject, i)))
            if (line is not null) draft.Hours.Add(Hours(line, i));
        foreach (var (key, stated) in body["parameters"] as JsonObject ?? [])
            if (Plain(stated) is { } typed) draft.Values.Add(new() { Key = key, Typed = typed, Basis = stated is JsonObject o && Text(o["basis"]) is { Length: > 0 } basis ? basis : "assumed" });
        return draft;
    }

    /// <summary>A value that fits a field: text or number. Curves and values taken away do not.</summary>
    internal static string? Plain(JsonNode? stated) => stated switch
    {
        JsonObject o => o["value"] is JsonObject ? null : Plain(o["value"]),
        JsonValue v => v.TryGetValue<string>(out var text) ? text : v.ToJsonString(),
        _ => null,
    };

    private static string Originality(JsonObject body) =>
        Text(body["note"]).Contains(OriginalityWords.Assumed, StringComparison.Ordinal) || Share(body) is not { } share ? ""
        : OriginalityWords.Of(share) ?? share.ToString(CultureInfo.InvariantCulture);

    private static double? Share(JsonObject body) => body["originality"] is JsonValue v && v.GetValueKind() == System.Text.Json.JsonValueKind.Number && double.TryParse(v.ToJsonString(), CultureInfo.InvariantCulture, out var share) ? share : null;

    private static void Prices(JsonArray lines, OptionDraft draft)
    {
        if (lines.Count == 0) return;
        if (lines is [JsonObject only] && Text(only["each"]) is { Length: > 0 } each)
            (draft.Price, draft.Category) = (EachAndCount.Say(each, Count(only)), Text(only["category"]) is { Length: > 0 } c ? c : "parts");
        else draft.PriceKept = lines.Count == 1 ? "one line without an amount" : $"{lines.Count} lines";
    }

    private static void Masses(JsonArray items, OptionDraft draft)
    {
        if (items.Count == 0) return;
        var said = items.Select(m => (Mass: Text(m?["mass"]), Basis: Text(m?["basis"]) is { Length: > 0 } b ? b : "assumed")).Distinct().ToList();
        if (said is [({ Length: > 0 } mass, var basis)]) (draft.Mass, draft.MassBasis) = (EachAndCount.Say(mass, items.Count), basis);
        else draft.MassKept = items.Count == 1 ? "one mass without an amount" : $"{items.Count} masses";
    }

    private static HoursDraft Hours(JsonObject line, int place)
    {
        var distribution = line["distribution"] is JsonObject d ? CostReader.DistributionOf(new(System.Text.Json.JsonSerializer.SerializeToElement(d), "", new Faults())) : null;
        var row = new HoursDraft { Trade = Text(line["trade"]), Was = place };
        if (HoursGuess.From(distribution) is { } said) (row.Figure, row.Certainty) = (said.Figure.ToString(CultureInfo.InvariantCulture), said.Certainty.ToString());
        else row.Kept = distribution is null ? "taken away" : FormattableString.Invariant($"{distribution.Mean:0.#} h in the mean, said in another way");
        return row;
    }

    private static decimal Count(JsonObject line) => decimal.TryParse(line["count"]?.ToJsonString(), NumberStyles.Float, CultureInfo.InvariantCulture, out var count) ? count : 1;

    internal static string Text(JsonNode? node) => node is JsonValue v && v.TryGetValue<string>(out var text) ? text : "";
}
