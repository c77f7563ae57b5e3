using System.Text.Json.Nodes;
using Crossmember.Builds.Files;
using Crossmember.Builds.Folding;
using Crossmember.Builds.Journal;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Workshop;

/// <summary>What came of importing a file.</summary>
/// <param name="Id">The build it is in the store; for a sheet that differs from the stored one a new id.</param>
/// <param name="Appended">Entries that were new; 0 where the store had them all.</param>
public sealed record Imported(string Id, int Appended, IReadOnlyList<string> Remarks);

/// <summary>Takes build files into the store: everything of a file or nothing.</summary>
public sealed class ImportingBuilds(Journal.Journal journal, IAttachmentStore attachments)
{
    private readonly List<string> _remarks = [];

    /// <param name="into">Another id for the sheet form; null: the file's own.</param>
    public Imported? Import(OpenedFile file, string? into, Faults faults)
    {
        _remarks.Clear();
        if (file.Currency is { } theirs && Currency() is { } ours && ours != theirs)
            faults.Add("/shop/currency", $"prices in {theirs}", $"the shop keeps its books in {ours}: convert them first");
        if (faults.Any) return null;
        return file.Sheet is { } sheet ? Sheet(sheet, file, into, faults) : Journal(file.Journal!, file, into, faults);
    }

    private string? Currency()
    {
        var fold = new ShopFold();
        foreach (var s in Corrections.Effective(journal.Store.Read(Fact.Shop)).Where(s => s.Fact.Kind == EntryKind.ShopOpened.Name || s.Fact.Kind == EntryKind.TradeRated.Name))
            fold.Apply(s.Fact.Kind, s.Fact.Subject, System.Text.Json.JsonSerializer.SerializeToElement(s.Payload), "", 0, new());
        return fold.ToShop().Books;
    }

    private void Keep(string hash, byte[] content, string name, Faults faults)
    {
        if (!attachments.Has(hash)) attachments.Keep(new MemoryStream(content), "application/octet-stream", name, faults);
    }

    private Imported? Sheet(SheetImport sheet, OpenedFile file, string? into, Faults faults)
    {
        if (into is not null && (into == Fact.Shop || !BuildRules.IsId(into)))
        {
            faults.Add("", $"'{into}' is no id of a build", "letters, digits, dots and dashes, and not 'shop'");
            return null;
        }
        // A changed sheet is another build: its id gets a number, so that nothing here is overwritten.
        for (var n = 1; n < 1000; n++)
        {
            var id = (into ?? sheet.Id) + (n == 1 ? "" : $"-{n}");
            var facts = id == sheet.Id ? sheet.Facts : sheet.FactsAs(id);
            var here = journal.Store.Read(id, 0, facts.Count);
            if (here.Count == 0) return Append(sheet, file, id, facts, n > 1, faults);
            if (here.Count == facts.Count && here.Zip(facts).All(p => p.First.Fact.Id == p.Second.Id)) return new(id, 0, [$"{id} holds this sheet already"]);
        }
        faults.Add("", $"there are a thousand builds called {into ?? sheet.Id}", "give the file another id");
        return null;
    }

    private Imported? Append(SheetImport sheet, OpenedFile file, string id, IReadOnlyList<Fact> facts, bool renamed, Faults faults)
    {
        if (Write([], [.. facts, .. ShopOf(sheet.ShopFacts, TradesOf(sheet.Build))], file, faults) is null) return null;
        if (renamed) _remarks.Add($"a build of that id with other content is here already: this one is now {id}");
        return new(id, facts.Count, [.. _remarks]);
    }

    /// <summary>Entries appended, or null with a fault. Rehearsed first: files are kept only for what will be written, and what is written has its files.</summary>
    private int? Write(IReadOnlyList<Entry> entries, IReadOnlyList<Fact> facts, OpenedFile file, Faults faults)
    {
        var outcome = journal.Import(entries, facts, rehearsal: true);
        if (outcome.Fault is null)
        {
            foreach (var (hash, content) in file.Attachments) Keep(hash, content.ToArray(), "from the file", faults);
            foreach (var (hash, content) in file.Sheet?.Documents ?? []) Keep(hash, content, "document", faults);
            if (faults.Any) return null;
            outcome = journal.Import(entries, facts);
        }
        if (outcome.Fault is { } fault) faults.Add(fault);
        return faults.Any ? null : outcome.Appended;
    }

    private Imported? Journal(JournalImport form, OpenedFile file, string? into, Faults faults)
    {
        if (into is not null && into != form.Id)
        {
            faults.Add("/id", $"a journal keeps its own id '{form.Id}'", "leave --into out, or import a sheet form");
            return null;
        }
        var here = journal.Store.Head(form.Id).Sequence;
        if (Write(form.Entries, ShopOf(form.ShopFacts, []), file, faults) is null) return null;
        var appended = (int)Math.Max(0, form.Entries.Count - here);
        if (appended == 0) _remarks.Add($"{form.Id} holds this journal already");
        return new(form.Id, appended, [.. _remarks]);
    }

    /// <summary>What to add to the shop's stream. The shop's own word stands: only what it has not said yet is added.</summary>
    private List<Fact> ShopOf(IReadOnlyList<Fact> facts, IEnumerable<string> trades)
    {
        var shop = journal.Store.Read(Fact.Shop);
        var said = shop.Select(e => e.Fact.Subject).ToHashSet(StringComparer.Ordinal);
        var ids = shop.Select(e => e.Fact.Id).ToHashSet();
        List<Fact> fresh = [.. facts.Where(f => !said.Contains(f.Subject))];
        foreach (var kept in facts.Where(f => said.Contains(f.Subject) && !ids.Contains(f.Id) && !Says(shop, f)).Select(f => f.Subject).Distinct())
            _remarks.Add($"the shop has its own {kept}: the file's was left out");
        foreach (var trade in trades.Select(t => "trades/" + t).Where(s => !said.Contains(s) && fresh.TrueForAll(f => f.Subject != s)).Distinct())
            fresh.Add(Trade(trade));
        return fresh;
    }

    private static bool Says(IReadOnlyList<Entry> shop, Fact fact) =>
        shop.Last(e => e.Fact.Subject == fact.Subject).Fact.Payload is { } payload && CanonicalJson.Of(payload) == CanonicalJson.Of(fact.Payload);

    private static IEnumerable<string> TradesOf(Slots.Build build) =>
        build.Slots.SelectMany(s => s.Options).SelectMany(o => o.Hours ?? []).Select(h => h.Trade).Distinct().Order(StringComparer.Ordinal);

    private static Fact Trade(string subject)
    {
        var payload = new JsonObject { ["rate"] = null };
        return new(FactIds.OfContent(Fact.Shop, "trade.rated", subject, payload), Fact.Shop, "trade.rated", 1, DateTimeOffset.UnixEpoch, "import", "file", subject, null, null, null, payload);
    }
}
