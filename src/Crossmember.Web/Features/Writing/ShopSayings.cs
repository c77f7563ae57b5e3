using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;

namespace Crossmember.Web.Features.Writing;

/// <summary>Tells entries of the shop's own stream as sentences.</summary>
public static class ShopSayings
{
    private static readonly string[] s_money = [EntryKind.ShopOpened.Name, EntryKind.TradeRated.Name, EntryKind.TaxSet.Name, EntryKind.RoundingSet.Name];

    public static string Plain(Fact fact)
    {
        var name = fact.Subject[(fact.Subject.IndexOf('/', StringComparison.Ordinal) + 1)..];
        return fact.Kind switch
        {
            "shop.opened" => $"said that the books are kept in {Text(fact.Payload, "currency")}",
            "trade.rated" => Text(fact.Payload, "rate") is { } rate ? $"rated {name} at {rate} an hour" : $"named the trade {name} without a rate",
            "tax.set" => $"set the tax on {Category(name)} to {Percent(fact.Payload?["fraction"])}",
            "rounding.set" => Text(fact.Payload, "step") is { } step ? $"had lines rounded to {step}" : "had lines rounded to the smallest coin",
            "person.named" => $"wrote down {Text(fact.Payload, "name") ?? name}{(Text(fact.Payload, "role") is { Length: > 0 } role ? $", {role}" : "")}{(IsTrue(fact.Payload, "away") ? ", no longer here" : "")}",
            "stock.listed" => $"listed “{Text(fact.Payload, "title") ?? name}”{(Text(fact.Payload, "each") is { } each ? $" at {each}" : "")}",
            "milestone.named" => $"named the milestone {Text(fact.Payload, "title") ?? name}",
            _ => $"{EntryKind.Find(fact.Kind)?.Says ?? fact.Kind} ({fact.Subject})",
        };
    }

    /// <summary>What was said of rates, taxes and rounding between two positions of the shop's stream, each with its speaker.</summary>
    public static IReadOnlyList<string> OfMoney(ShopDesk desk, long after, long upTo)
    {
        if (upTo <= after) return [];
        var all = desk.Shop.Store.Journal.Store.Read(Fact.Shop, 0, upTo);
        return [.. all.Where(e => e.Sequence > after && s_money.Contains(e.Fact.Kind))
            .Select(e => $"{e.Fact.Person} {Telling.Say(e.Fact, Plain, id => all.FirstOrDefault(x => x.Fact.Id == id)?.Fact)}")];
    }

    /// <summary>A fraction as people say it: 0.0725 is 7.25 %.</summary>
    public static string Percent(decimal fraction) => $"{(fraction * 100).ToString("0.############", System.Globalization.CultureInfo.InvariantCulture)} %";

    /// <summary>A category of cost in the words of the shop.</summary>
    public static string Category(string category) => category.Replace('-', ' ');

    private static string Percent(JsonNode? fraction) =>
        fraction is JsonValue v && decimal.TryParse(v.ToJsonString(), System.Globalization.NumberStyles.Float, System.Globalization.CultureInfo.InvariantCulture, out var f) ? Percent(f) : "an unknown share";

    private static bool IsTrue(JsonNode? payload, string key) => payload?[key] is JsonValue v && v.TryGetValue<bool>(out var is1) && is1;

    private static string? Text(JsonNode? payload, string key) => payload?[key] is JsonValue v && v.TryGetValue<string>(out var text) ? text : null;
}
