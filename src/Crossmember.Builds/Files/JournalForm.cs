using System.Text.Json;
using System.Text.Json.Nodes;
using Crossmember.Builds.Folding;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;
using Crossmember.Builds.Workshop;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Files;

/// <summary>The journal form of <c>crossmember.build/1</c>: every entry with its stamp, and the shop's facts that the build names.</summary>
public static class JournalForm
{
    /// <summary>The chain is checked entry by entry; a break, an unknown kind or a fact that does not fold is a located fault.</summary>
    public static JournalImport? Read(ObjectReader r, ParameterTable table)
    {
        var id = BuildFile.IdOf(r);
        _ = r.OptionalText("title");
        // A sheet beside a journal is for readers that have no fold; here the journal is the truth.
        _ = r.Element("sheet");
        var entries = Entries(r, id);
        var shop = ShopFactsOf(r);
        r.Done();
        if (r.Faults.Any) return null;
        var fold = new StreamFold(table, Lifts.Current);
        var state = fold.Build(id, entries, e => $"/journal/{e.Sequence - 1}/fact/payload");
        var place = new Dictionary<string, string>(StringComparer.Ordinal);
        for (var i = 0; i < entries.Count; i++) place[entries[i].Fact.Subject] = $"/journal/{i}/fact/payload";
        string At(string subject, string inner) => place.TryGetValue(subject, out var p) ? p + inner : "/journal";
        foreach (var u in state.Unreadable) r.Faults.Add("/journal", u.ToString(), "open it with the program that wrote it");
        foreach (var f in state.Faults) r.Faults.Add(f);
        if (r.Faults.Any) return null;
        var facts = ShopOf(shop, r.Faults);
        foreach (var b in BuildRules.Check(state.Build, table, facts.Books)) r.Faults.Add(At(b.Subject, b.Inner), b.Wrong, b.Right);
        return r.Faults.Any ? null : new(id, state.Build with { Position = 0 }, facts with { Position = 0 }, entries, shop);
    }

    /// <summary>The file of a build, byte for byte the same for the same journal.</summary>
    public static byte[] Write(string id, string title, IReadOnlyList<Entry> entries, IReadOnlyList<Entry> shop)
    {
        var stream = new MemoryStream();
        using (var w = new Utf8JsonWriter(stream, new() { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            w.WriteStartObject();
            w.WriteString("format", BuildFile.Format);
            w.WriteString("id", id);
            w.WriteString("title", title);
            w.WriteStartArray("journal");
            foreach (var e in entries)
            {
                w.WriteStartObject();
                w.WriteNumber("sequence", e.Sequence);
                w.WriteString("recorded", Instants.Text(e.Recorded));
                w.WriteString("previous", Convert.ToHexStringLower(e.Previous.Span));
                w.WriteString("hash", Convert.ToHexStringLower(e.Hash.Span));
                w.WritePropertyName("fact");
                w.WriteRawValue(e.FactText);
                w.WriteEndObject();
            }
            w.WriteEndArray();
            w.WriteStartArray("shop");
            foreach (var e in shop) w.WriteRawValue(e.FactText);
            w.WriteEndArray();
            w.WriteEndObject();
        }
        return stream.ToArray();
    }

    private static List<Entry> Entries(ObjectReader r, string id)
    {
        var entries = new List<Entry>();
        var head = Head.Empty;
        var known = new Dictionary<Guid, Fact>();
        foreach (var (item, pointer) in r.List("journal"))
        {
            var e = new ObjectReader(item, pointer, r.Faults);
            if (Entry(e, id) is not { } entry) continue;
            if (!entry.Follows(head))
            {
                r.Faults.Add(pointer, "the chain of hashes breaks here", "take the file from where it was exported");
                return entries;
            }
            head = new(entry.Sequence, entry.Hash);
            Shape(entry.Fact, e, known);
            entries.Add(entry);
        }
        if (entries.Count == 0 && !r.Faults.Any) r.Faults.Add("/journal", "the journal is empty", "at least the entry that opens the build");
        return entries;
    }

    /// <summary>What a store would have asked before it took the fact in; a kind unknown here is told apart later.</summary>
    private static void Shape(Fact fact, ObjectReader e, Dictionary<Guid, Fact> known)
    {
        if (!known.TryAdd(fact.Id, fact)) e.Faults.Add(e.At("fact") + "/id", "this id stands twice", "every fact has an id of its own");
        if (EntryKind.Find(fact.Kind) is not { } kind || fact.Schema > kind.Schema) return;
        if (!Subject.Fits(fact.Subject, kind.Subject)) e.Faults.Add(e.At("fact") + "/subject", $"not a subject of '{kind.Name}'", $"write {kind.Subject}");
        if (kind.Nature == EntryNature.Log) LogPayloads.Check(fact, e.Faults, e.At("fact") + "/payload");
        if (fact.Corrects is { } id && (!known.TryGetValue(id, out var target) || id == fact.Id || (target.Kind, target.Subject) != (fact.Kind, fact.Subject)))
            e.Faults.Add(e.At("fact") + "/corrects", "it corrects no earlier entry of its kind and subject", "a correction keeps kind and subject of what it corrects");
    }

    private static Entry? Entry(ObjectReader e, string id)
    {
        var before = e.Faults.Count;
        var sequence = e.Element("sequence") is { ValueKind: JsonValueKind.Number } n && n.TryGetInt64(out var whole) ? whole : 0;
        if (sequence < 1) e.Faults.Add(e.At("sequence"), "no sequence", "a whole number from 1");
        var recorded = Instants.Read(e.Text("recorded"));
        byte[]? previous = Hash(e, "previous"), hash = Hash(e, "hash");
        if (recorded is null && e.Has("recorded")) e.Faults.Add(e.At("recorded"), "no instant", "UTC to the millisecond, as 2026-01-31T08:05:00.000Z");
        var fact = e.Element("fact") is { } f ? FactText.Read(f, e.Faults, e.At("fact")) : null;
        if (!e.Has("fact")) e.Missing("fact");
        e.Done();
        if (fact is not null && fact.Stream != id) e.Faults.Add(e.At("fact") + "/stream", $"an entry of '{fact.Stream}'", $"entries of '{id}' only");
        return e.Faults.Count == before ? new(fact!, FactText.Write(fact!), sequence, recorded!.Value, previous!, hash!) : null;
    }

    private static byte[]? Hash(ObjectReader e, string key)
    {
        var text = e.Text(key);
        if (text.Length == 64 && text.All(char.IsAsciiHexDigitLower)) return Convert.FromHexString(text);
        if (e.Has(key)) e.Faults.Add(e.At(key), "no SHA-256", "64 lower-case hexadecimal digits");
        return null;
    }

    private static List<Fact> ShopFactsOf(ObjectReader r)
    {
        var facts = new List<Fact>();
        foreach (var (item, pointer) in r.List("shop"))
        {
            if (FactText.Read(item, r.Faults, pointer) is not { } fact) continue;
            if (fact.Stream != Fact.Shop) r.Faults.Add(pointer + "/stream", $"a fact of '{fact.Stream}'", "facts of the shop only");
            else if (EntryKind.Find(fact.Kind) is not { } kind || fact.Schema > kind.Schema)
                r.Faults.Add(pointer + "/kind", new Lifted.Unreadable(fact.Kind, fact.Schema, "this program does not know it").ToString(), "open it with the program that wrote it");
            else if (!Subject.Fits(fact.Subject, kind.Subject)) r.Faults.Add(pointer + "/subject", $"not a subject of '{kind.Name}'", $"write {kind.Subject}");
            else facts.Add(fact);
        }
        return facts;
    }

    private static ShopFacts ShopOf(List<Fact> facts, Faults faults)
    {
        var fold = new ShopFold();
        for (var i = 0; i < facts.Count; i++)
            if (facts[i].Payload is JsonNode payload)
                fold.Apply(facts[i].Kind, facts[i].Subject, JsonSerializer.SerializeToElement(payload), $"/shop/{i}/payload", 0, faults);
        return fold.ToShop();
    }
}

/// <summary>A journal form understood: its chain holds and its build folds.</summary>
public sealed record JournalImport(string Id, Build Build, ShopFacts Shop, IReadOnlyList<Entry> Entries, IReadOnlyList<Fact> ShopFacts);
