using System.Text.Json;
using Crossmember.Builds.Folding;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Parameters;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Files;

/// <summary>Reads the sheet form of <c>crossmember.build/1</c>: what it states becomes journal facts with ids made from their content.</summary>
public sealed class SheetForm
{
    private readonly ParameterTable _table;
    private readonly Faults _faults;
    private readonly List<Draft> _drafts = [];
    private readonly HashSet<string> _subjects = new(StringComparer.Ordinal);
    private readonly List<Draft> _shop = [];
    private readonly List<(string Hash, byte[] Content)> _documents = [];

    private SheetForm(ParameterTable table, Faults faults) => (_table, _faults) = (table, faults);

    /// <summary>The build a file states, or null with faults.</summary>
    public static SheetImport? Read(ObjectReader r, ParameterTable table)
    {
        var form = new SheetForm(table, r.Faults);
        form.Top(r);
        form.Subjects();
        return r.Faults.Any ? null : form.Build(r);
    }

    private string _id = "";
    private DateTimeOffset _created = DateTimeOffset.UnixEpoch;

    private void Top(ObjectReader r)
    {
        _id = BuildFile.IdOf(r);
        _created = CreatedReader.Read(r) ?? DateTimeOffset.UnixEpoch;
        Add("build.opened", "build", Draft.Object(Keep(r, "title", "created", "sets", "note")), "");
        if (r.Element("phase") is { } phase) Add("phase.entered", "phase", Draft.Object(("phase", phase)), "", "phase");
        foreach (var (slot, pointer) in r.List("slots")) Slot(new(slot, pointer, _faults));
        if (!r.Has("slots")) r.Missing("slots");
        foreach (var (condition, items, pointer) in r.Map("conditions"))
            Add("condition.stated", "conditions/" + condition, Draft.Object(("items", items)), pointer, "items");
        Weighings(r);
        foreach (var (scenario, pointer) in r.List("scenarios")) Scenario(new(scenario, pointer, _faults));
        foreach (var (document, body, pointer) in r.Map("documents")) Document(document, body, pointer);
        if (r.Object("shop") is { } shop) ShopSection.Read(shop, _shop);
        foreach (var (part, pointer) in r.List("stock")) ShopSection.Stock(new(part, pointer, _faults), _shop);
        r.Done();
    }

    /// <summary>A name becomes part of a subject: one that would lead elsewhere (<c>tires/at33</c>) is no name.</summary>
    private void Subjects()
    {
        // A weighing is named by its date, and its own reader says where a date is wrong.
        foreach (var d in _drafts.Where(d => d.Kind != EntryKind.WeighingTaken.Name).Concat(_shop))
            if (!Subject.Fits(d.Subject, EntryKind.Find(d.Kind)!.Subject) && !_faults.List.Any(f => f.Path.StartsWith(d.Pointer, StringComparison.Ordinal)))
                _faults.Add(d.Pointer, $"'{d.Subject}' cannot be kept", $"names without slashes and outer blanks, as in {EntryKind.Find(d.Kind)!.Subject}");
        foreach (var twice in _shop.GroupBy(d => d.Subject).Where(g => g.Count() > 1)) _faults.Add(twice.Last().Pointer, $"there are two '{twice.Key}'", "keep one of the two");
    }

    private static IEnumerable<(string, JsonElement?)> Keep(ObjectReader r, params string[] keys) => [.. keys.Select(k => (k, r.Element(k)))];

    private void Add(string kind, string subject, JsonElement payload, string pointer, string? wrapped = null)
    {
        _drafts.Add(new(kind, subject, payload, pointer, wrapped));
        _subjects.Add(subject);
    }

    private void Slot(ObjectReader r)
    {
        if (!r.IsObject) return;
        var id = r.Text("id");
        var subject = "slots/" + id;
        if (!id.Split('.').All(Sets.IsMemberName)) _faults.Add(r.At("id"), $"'{id}' is no id of an item", "lower-case words joined by dots and dashes");
        // In a map of choices "note" is a remark.
        if (id == "note") _faults.Add(r.At("id"), "'note' is kept for remarks", "another id");
        if (_subjects.Contains(subject)) _faults.Add(r.At("id"), $"there are two items '{id}'", "ids are unique");
        Add("slot.defined", subject, Draft.Object(Keep(r, "parent", "title", "weight", "governs", "note")), r.Pointer);
        if (r.Has("grade") || r.Has("findings")) Add("slot.graded", subject + "/grade", Draft.Object(Keep(r, "grade", "findings")), r.Pointer);
        foreach (var (option, pointer) in r.List("options")) Option(new(option, pointer, _faults), subject);
        r.Done();
    }

    private void Option(ObjectReader r, string slot)
    {
        if (!r.IsObject) return;
        var id = r.Text("id");
        var subject = $"{slot}/options/{id}";
        if (!BuildRules.IsId(id)) _faults.Add(r.At("id"), $"'{id}' is no id", "letters, digits, dots and dashes");
        else if (_subjects.Contains(subject)) _faults.Add(r.At("id"), $"there are two options '{id}'", "option ids are unique within their item");
        Add("option.stated", subject, Draft.Object(r.Names.Where(n => n != "id").Select(n => (n, r.Element(n)))), r.Pointer);
    }

    private void Weighings(ObjectReader r)
    {
        var taken = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (weighing, pointer) in r.List("weighings"))
        {
            var date = new ObjectReader(weighing, pointer, _faults).OptionalText("date") ?? "";
            if (!taken.Add(CanonicalJson.Text(weighing, _faults, pointer) ?? ""))
                _faults.Add(pointer, "the same weighing stands twice", "keep one of the two");
            Add("weighing.taken", "weighings/" + date, weighing, pointer);
        }
    }

    private void Scenario(ObjectReader r)
    {
        if (!r.IsObject) return;
        var id = r.Text("id");
        var subject = "scenarios/" + id;
        if (!BuildRules.IsId(id)) _faults.Add(r.At("id"), $"'{id}' is no id", "letters, digits, dots and dashes");
        if (_subjects.Contains(subject)) _faults.Add(r.At("id"), $"there are two scenarios '{id}'", "ids are unique");
        Add("scenario.opened", subject, Draft.Object(Keep(r, "base", "title", "note")), r.Pointer);
        foreach (var (slot, option, pointer) in r.Map("choices"))
            Add("choice.made", $"{subject}/choices/{slot}", Draft.Object(("option", option)), pointer, "option");
        foreach (var (key, value, pointer) in r.Map("whatIf"))
            if (value.ValueKind == JsonValueKind.Object) Add("what-if.set", $"{subject}/what-ifs/{key}", value, pointer);
            else Add("what-if.set", $"{subject}/what-ifs/{key}", Draft.Object(("value", value)), pointer, "value");
        r.Done();
    }

    private void Document(string document, JsonElement body, string pointer)
    {
        if (CanonicalJson.Text(body, _faults, pointer) is not { } text) return;
        var content = System.Text.Encoding.UTF8.GetBytes(text);
        var hash = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(content));
        _documents.Add((hash, content));
        Add("document.revised", "documents/" + document, JsonSerializer.SerializeToElement(new { hash }), pointer);
    }

    private SheetImport? Build(ObjectReader r)
    {
        var fold = new BuildFold(_id, _table);
        var sequence = 0L;
        foreach (var draft in _drafts) Apply(draft, f => fold.Apply(draft.Kind, draft.Subject, draft.Payload, draft.Pointer, ++sequence, f));
        var shop = new ShopFold();
        foreach (var draft in _shop) Apply(draft, f => shop.Apply(draft.Kind, draft.Subject, draft.Payload, draft.Pointer, 0, f));
        if (_faults.Any) return null;
        var build = fold.ToBuild() with { Position = 0 };
        foreach (var broken in BuildRules.Check(build, _table, shop.ToShop().Books)) _faults.Add(Locate(broken), broken.Wrong, broken.Right);
        if (_faults.Any) return null;
        return new(_id, build, shop.ToShop(), FactsOf(_id, _id, _drafts), FactsOf(Fact.Shop, _id, _shop), _documents,
            id => FactsOf(id, id, _drafts));
    }

    private void Apply(Draft draft, Action<Faults> apply)
    {
        var found = new Faults();
        apply(found);
        foreach (var f in found.List) _faults.Add(draft.InFile(f.Path), f.Wrong, f.Right);
    }

    private string Locate(RuleBroken broken)
    {
        if (broken.Subject == "build") return "/slots";
        if (broken.Subject.StartsWith("weighings/", StringComparison.Ordinal)) return $"/{broken.Subject}{broken.Inner}";
        return (_drafts.FirstOrDefault(d => d.Subject == broken.Subject)?.Pointer ?? "") + broken.Inner;
    }

    /// <summary>Facts in the order of the file, each naming the last one before it on its subject.</summary>
    private List<Fact> FactsOf(string stream, string build, List<Draft> drafts)
    {
        var facts = new List<Fact>(drafts.Count);
        var seen = new LastOnSubject();
        foreach (var d in drafts)
        {
            var kind = EntryKind.Find(d.Kind)!;
            var payload = Draft.Node(d.Payload);
            var id = FactIds.OfContent(build, d.Kind, d.Subject, payload);
            var after = kind.Nature == EntryNature.Log ? null : seen.On(d.Subject);
            facts.Add(new(id, stream, d.Kind, kind.Schema, _created, "import", "file", d.Subject, after, null, null, payload));
            seen.Add(d.Subject, id);
        }
        return facts;
    }
}

/// <summary>A sheet form understood.</summary>
/// <param name="Build">Folded, at position 0 as every file is.</param>
/// <param name="Documents">Bodies of documents by content hash.</param>
/// <param name="FactsAs">The same facts for another build id.</param>
public sealed record SheetImport(
    string Id, Slots.Build Build, Slots.ShopFacts Shop, IReadOnlyList<Fact> Facts, IReadOnlyList<Fact> ShopFacts,
    IReadOnlyList<(string Hash, byte[] Content)> Documents, Func<string, IReadOnlyList<Fact>> FactsAs);
