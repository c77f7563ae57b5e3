using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Crossmember.Storage;

namespace Crossmember.Web.Features.Customers;

/// <summary>Everything kept about a customer as one file that can be handed out: for a program, or to read.</summary>
public static class HandOut
{
    private static readonly JsonSerializerOptions s_indented = new() { WriteIndented = true };

    public static byte[] Json(KeptAbout kept, DateTimeOffset now)
    {
        var json = new JsonObject
        {
            ["format"] = "crossmember.customer-kept/1",
            ["written"] = Instants.Text(now),
            ["vehicle"] = kept.Vehicle,
            ["card"] = kept.Card?.ToJson(),
            ["approvals"] = new JsonArray([.. kept.Approvals.Select(a => new JsonObject { ["recorded"] = Instants.Text(a.When), ["by"] = a.By, ["how"] = a.How })]),
            ["entries"] = new JsonArray([.. kept.Mentions.Select(m => new JsonObject { ["recorded"] = Instants.Text(m.When), ["person"] = m.Person, ["says"] = m.Says })]),
            ["files"] = kept.Files,
        };
        return Encoding.UTF8.GetBytes(json.ToJsonString(s_indented));
    }

    /// <summary>A page that needs nothing beside it.</summary>
    public static byte[] Html(KeptAbout kept, DateTimeOffset now)
    {
        var text = new StringBuilder();
        text.Append("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><title>What is kept</title>")
            .Append("<style>body{font:1rem/1.5 sans-serif;max-width:44rem;margin:2rem auto;padding:0 1rem}dt{font-weight:bold}dd{margin:0 0 .6rem;white-space:pre-line}</style></head><body>\n")
            .Append($"<h1>What is kept about the customer of {Safe(kept.Vehicle)}</h1>\n<p>Written on {Safe(Writing.EntryList.When(now))}.</p>\n<h2>The card</h2>\n");
        if (kept.Card is { } card) Card(text, card);
        else text.Append("<p>No card is kept.</p>\n");
        List(text, "Where a yes was given", "No yes is on record.", kept.Approvals.Select(a => $"{Writing.EntryList.When(a.When)}: “{a.By}”{(a.How is { } how ? $", {how}" : "")}"));
        List(text, "Entries of the journal that name the customer", "No entry does.", kept.Mentions.Select(m => $"{Writing.EntryList.When(m.When)}: {m.Person} {m.Says}"));
        text.Append($"<h2>Photos and files</h2>\n<p>{(kept.Files == 0 ? "None of the vehicle." : $"{kept.Files} of the vehicle, kept with its record.")}</p>\n")
            .Append("<p>The card can be erased on request. What stands in the journal of the vehicle stays with it.</p>\n</body></html>\n");
        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static void Card(StringBuilder text, CustomerCard card)
    {
        text.Append("<dl>\n");
        foreach (var (name, value) in new[] { ("Name", card.Name), ("Phone", card.Phone), ("Mail", card.Mail), ("Address", card.Address), ("Notes", card.Notes) })
            text.Append($"<dt>{name}</dt><dd>{(value.Length > 0 ? Safe(value) : "nothing")}</dd>\n");
        text.Append("</dl>\n");
    }

    private static void List(StringBuilder text, string title, string none, IEnumerable<string> rows)
    {
        var list = rows.ToList();
        text.Append($"<h2>{Safe(title)}</h2>\n");
        if (list.Count == 0) text.Append($"<p>{Safe(none)}</p>\n");
        else text.Append("<ul>\n").AppendJoin("", list.Select(r => $"<li>{Safe(r)}</li>\n")).Append("</ul>\n");
    }

    private static string Safe(string text) => WebUtility.HtmlEncode(text);
}
