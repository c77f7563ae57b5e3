using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Crossmember.Storage;

namespace Crossmember.Web.Features.Customers;

/// <summary>A yes as it stands in the journal, with the words typed there.</summary>
public sealed record YesGiven(DateTimeOffset When, string By, string? How);

/// <summary>An entry of the journal in which something of the card stands.</summary>
public sealed record Mention(DateTimeOffset When, string Person, string Says);

/// <summary>Everything that is kept about the customer of one build: the card, and what of them stands in the journal, which cannot be erased.</summary>
public sealed class KeptAbout
{
    /// <summary>A shorter word would be found in half of all entries.</summary>
    private const int ShortestWord = 4;

    private KeptAbout(BuildView view, CustomerCard? card)
    {
        (Vehicle, Card) = (view.Build.Title.Length > 0 ? view.Build.Title : view.Build.Id, card);
        Approvals = [.. view.Entries.Where(e => e.Fact.Kind == EntryKind.ScenarioApproved.Name && e.Fact.Payload is not null)
            .Select(e => new YesGiven(e.Recorded, Text(e.Fact.Payload!, "by") ?? "", Text(e.Fact.Payload!, "how")))];
        Mentions = [.. view.Entries.Where(e => Words(card).Any(w => Holds(e.Fact.Payload, w))).Select(e => new Mention(e.Recorded, e.Fact.Person, view.Say(e.Fact)))];
        Files = view.Entries.Select(e => e.Fact.Payload is JsonObject p ? Text(p, "attachment") : null).OfType<string>().Distinct(StringComparer.Ordinal).Count();
    }

    public string Vehicle { get; }

    /// <summary>Null where none is kept, or none can be read.</summary>
    public CustomerCard? Card { get; }

    public IReadOnlyList<YesGiven> Approvals { get; }

    public IReadOnlyList<Mention> Mentions { get; }

    /// <summary>Photos and other files of the vehicle.</summary>
    public int Files { get; }

    public static KeptAbout Of(BuildView view, CustomerCard? card) => new(view, card);

    /// <summary>What of a card would tell who it is: the name, its longer parts, the phone, the mail.</summary>
    private static IEnumerable<string> Words(CustomerCard? card) => card is null ? []
        : new[] { card.Name, card.Phone, card.Mail }.Concat(card.Name.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).Where(w => w.Length >= ShortestWord).Distinct(StringComparer.OrdinalIgnoreCase);

    private static bool Holds(JsonNode? node, string word) => node switch
    {
        JsonObject o => o.Any(p => Holds(p.Value, word)),
        JsonArray a => a.Any(n => Holds(n, word)),
        JsonValue v => v.TryGetValue<string>(out var text) && text.Contains(word, StringComparison.OrdinalIgnoreCase),
        _ => false,
    };

    private static string? Text(JsonNode payload, string key) => payload[key] is JsonValue v && v.TryGetValue<string>(out var text) ? text : null;
}
