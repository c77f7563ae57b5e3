using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Crossmember.Builds.Folding;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Pasting;
using Crossmember.Builds.Slots;
using Crossmember.Builds.Workshop;
using Crossmember.Engineering.Reading;
using Crossmember.Planning;

namespace Crossmember.Builds.Drafting;

/// <summary>Makes the body of an option out of a form. What the form does not show stays as it was.</summary>
/// <param name="books">The currency of the shop; null: nobody has said it.</param>
public sealed class DraftWriter(ParameterTable table, Slot slot, string option, string? books)
{
    private const double MostHours = 100_000;

    /// <summary>The body, or null with faults whose paths name the field: <c>title</c>, <c>price</c>, <c>hours/0</c>, <c>values/1</c>.</summary>
    /// <param name="was">The body that is restated; null: the option is new.</param>
    public JsonObject? Write(OptionDraft draft, JsonObject? was, Faults faults)
    {
        var body = was?.DeepClone() as JsonObject ?? [];
        if (draft.Title.Trim().Length == 0 && option != Option.AsFound) faults.Add("title", "the option has no name", "what people call it, such as rebuilt here");
        Put(body, "title", draft.Title);
        Put(body, "class", draft.Class);
        Put(body, "like", draft.Like);
        Put(body, "lead", draft.Lead);
        Put(body, "massBelow", draft.MassBelow);
        Originality(draft, body, faults);
        Price(draft, body, faults);
        Hours(draft, body, faults);
        new DraftMasses(slot).Write(draft, body, faults);
        Values(draft, body, faults);
        if (!faults.Any) Check(draft, body, faults);
        return faults.Any ? null : body;
    }

    private static void Put(JsonObject body, string key, string typed)
    {
        if (typed.Trim() is { Length: > 0 } text) body[key] = text;
        // A null is a statement: it takes away what the source brings. An empty field says nothing of it.
        else if (body[key] is not null) body.Remove(key);
    }

    private void Originality(OptionDraft draft, JsonObject body, Faults faults)
    {
        var typed = draft.Originality.Trim();
        Note(body, false);
        if (typed.Length > 0)
        {
            var words = OriginalityWords.All.FirstOrDefault(w => w.Words == typed);
            if (words.Words is not null) body["originality"] = words.Share;
            else if (double.TryParse(typed, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var share) && share is >= 0 and <= 1) body["originality"] = share;
            else faults.Add("originality", $"'{typed}' is no share", $"{string.Join(", ", OriginalityWords.All.Select(w => w.Words))}, or a number from 0 to 1");
            return;
        }
        body.Remove("originality");
        // What it starts from has a share already, and what was found is what it is.
        if (option == Option.AsFound || draft.Like is not ("" or Option.AsFound)) return;
        body["originality"] = OriginalityWords.Usual(Enum.TryParse<OptionClass>(draft.Class, true, out var kind) ? kind : OptionClass.Replace);
        Note(body, true);
    }

    private static void Note(JsonObject body, bool assumed)
    {
        var said = DraftReader.Text(body["note"]).Split("; ").Where(n => n.Length > 0 && n != OriginalityWords.Assumed);
        Put(body, "note", string.Join("; ", assumed ? said.Prepend(OriginalityWords.Assumed) : said));
    }

    private void Price(OptionDraft draft, JsonObject body, Faults faults)
    {
        var typed = draft.Price.Trim();
        if (typed.Length == 0)
        {
            if (draft.PriceKept is null && body["prices"] is JsonArray { Count: > 0 }) body.Remove("prices");
            return;
        }
        var (each, count) = EachAndCount.Split(typed);
        if (WrittenMoney.Read(each, books, DecimalMark.Point, "price", faults) is not { } money) return;
        var line = body["prices"] is JsonArray { Count: 1 } lines && lines[0] is JsonObject only ? (JsonObject)only.DeepClone() : new JsonObject { ["id"] = "price" };
        (line["count"], line["each"], line["category"]) = ((double)count, money.ToString(), draft.Category);
        body["prices"] = new JsonArray(line);
    }

    private static void Hours(OptionDraft draft, JsonObject body, Faults faults)
    {
        var old = body["hours"] as JsonArray ?? [];
        var lines = new JsonArray();
        for (var i = 0; i < draft.Hours.Count; i++)
        {
            var row = draft.Hours[i];
            var was = row.Was is { } place && place < old.Count ? old[place] as JsonObject : null;
            var typed = row.Figure.Trim();
            if (typed.Length == 0)
            {
                if (row.Kept is not null && was is not null) lines.Add(was.DeepClone());
                continue;
            }
            var trade = row.Trade.Trim();
            if (trade.Length == 0) faults.Add($"hours/{i}", "nobody is named for these hours", "a trade, such as technician");
            if (WrittenNumber.Read(typed.TrimEnd('h', ' '), DecimalMark.Point) is not { } figure || figure <= 0 || (double)figure > MostHours) faults.Add($"hours/{i}", $"'{typed}' is no number of hours", "a number above zero, such as 12 or 2.5");
            else if (!Enum.TryParse<Certainty>(row.Certainty, out var certainty)) faults.Add($"hours/{i}", $"'{row.Certainty}' says not how sure", "done it, seen it or guess");
            else lines.Add(Line(was, trade, new((double)figure, certainty)));
        }
        if (lines.Count > 0) body["hours"] = lines;
        else if (body["hours"] is JsonArray) body.Remove("hours");
    }

    private static JsonObject Line(JsonObject? was, string trade, HoursGuess said)
    {
        var line = was?.DeepClone() as JsonObject ?? [];
        line["trade"] = trade;
        line["distribution"] = new JsonObject { ["kind"] = "lognormal", ["median"] = said.Figure, ["factor"] = HoursGuess.Factor(said.Certainty) };
        return line;
    }

    private static void Values(OptionDraft draft, JsonObject body, Faults faults)
    {
        var old = body["parameters"] as JsonObject ?? [];
        // Curves and values taken away are not in the form: they stay.
        var stated = new JsonObject(old.Where(p => DraftReader.Plain(p.Value) is null).Select(p => KeyValuePair.Create(p.Key, p.Value?.DeepClone())));
        for (var i = 0; i < draft.Values.Count; i++)
        {
            var (key, typed) = (draft.Values[i].Key.Trim(), draft.Values[i].Typed.Trim());
            if (typed.Length == 0) continue;
            if (key.Length == 0) faults.Add($"values/{i}", "it is not said what this is a value of", "choose it in the list");
            else if (stated.ContainsKey(key)) faults.Add($"values/{i}", "this value is stated twice", "keep one of the two");
            else stated[key] = Value(old[key], typed, draft.Values[i].Basis);
        }
        if (stated.Count > 0) body["parameters"] = stated;
        else body.Remove("parameters");
    }

    /// <summary>A value that is as it was keeps its uncertainty.</summary>
    private static JsonObject Value(JsonNode? was, string typed, string basis)
    {
        var stated = was is JsonObject o && DraftReader.Plain(o) == typed ? (JsonObject)o.DeepClone() : new JsonObject { ["value"] = typed };
        stated["basis"] = basis;
        return stated;
    }

    /// <summary>What the reader of bodies says of it, told of the fields.</summary>
    private void Check(OptionDraft draft, JsonObject body, Faults faults)
    {
        var found = new Faults();
        new OptionReader(table).Read(new(JsonSerializer.SerializeToElement(body), "", found), option);
        foreach (var f in found.List) faults.Add(Field(f.Path, draft, body), f.Wrong, f.Right);
    }

    private static string Field(string path, OptionDraft draft, JsonObject body)
    {
        var parts = path.Split('/');
        if (parts is ["", "parameters", var key, ..] && draft.Values.FindIndex(v => v.Key.Trim() == key.Replace("~1", "/", StringComparison.Ordinal)) is var i and >= 0) return $"values/{i}";
        if (parts is ["", "hours", var line, ..] && int.TryParse(line, out var at) && body["hours"]?[at]?["trade"] is { } trade) return $"hours/{draft.Hours.FindLastIndex(h => h.Trade.Trim() == DraftReader.Text(trade))}";
        return parts is ["", { Length: > 0 } first, ..] ? first switch { "prices" => "price", "masses" => "mass", _ => first } : "title";
    }
}
