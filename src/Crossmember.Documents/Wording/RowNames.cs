using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Ripples;
using Crossmember.Builds.Slots;

namespace Crossmember.Documents.Wording;

/// <summary>A row's family, what the family is called, and which of its members the row is about.</summary>
public sealed record RowName(string Family, string Title, string Where);

/// <summary>Puts keys and instance ids into words.</summary>
public sealed class RowNames(EvaluationPlan plan, Build build)
{
    public RowName Of(RippleRow row) => row.Kind switch
    {
        RowKind.Finding => Finding(row.Id),
        RowKind.Result => Result(row.Id),
        RowKind.Parameter => Key(row.Id),
        RowKind.Mass when plan.Catalogue.Table.Of(row.Id) is not null => Key(row.Id),
        RowKind.Mass or RowKind.Load or RowKind.Task when row.Id.Contains('/', StringComparison.Ordinal) => Element(row.Id),
        _ => new(row.Kind.ToString(), ShopWords.Of(row.Kind), row.Id),
    };

    /// <summary>What a change goes back to: keys by what they mean, items by their title; each once. That a stated value changed because it was stated needs no words.</summary>
    public IEnumerable<(string Text, string Term)> Because(RippleRow row) => row.Because.Where(leaf => leaf != row.Id).Select(leaf =>
    {
        var bare = leaf.StartsWith("default:", StringComparison.Ordinal) ? leaf["default:".Length..] : leaf;
        return leaf.StartsWith("slot:", StringComparison.Ordinal) ? (Item(leaf[5..]), leaf) : (Short(Key(bare).Title), bare);
    }).GroupBy(b => b.Item1).Select(g => (g.Key, string.Join(", ", g.Select(b => b.Item2))));

    public RowName Key(string key) => plan.Catalogue.Table.Of(key) is { } pattern
        ? new(pattern.Text, ShopWords.Sentence(pattern.Meaning), Where(ParameterTable.MembersOf(pattern, key))) : new(key, key, "");

    public RowName Finding(string id)
    {
        var cut = id.LastIndexOf('/');
        if (id.StartsWith("model/", StringComparison.Ordinal)) return Model(id);
        var (calculation, members) = Instance(id[..cut]);
        var check = id[(cut + 1)..];
        var about = plan.Catalogue.Bindings.FirstOrDefault(b => b.Calculation.Id == calculation)?.Calculation.About;
        var asks = about?.Checks.FirstOrDefault(c => c.Id == check)?.Asks;
        return new($"{calculation}/{check}", ShopWords.Sentence(asks ?? about?.Title ?? calculation), Where(members));
    }

    private RowName Model(string id)
    {
        var open = id.IndexOf('[', StringComparison.Ordinal);
        var (check, about) = open < 0 ? (id, "") : (id[..open], id[(open + 1)..^1]);
        var title = check switch
        {
            "model/conflict" => "Two items state the same value",
            "model/requires" => "An option needs another item",
            "model/takes" => "An assembly takes the item's place",
            "model/differs" => "Stated and calculated differ",
            "model/weighing" => "A scale reading cannot be",
            "model/scale" => "The scale against the ledger",
            _ => "The build itself",
        };
        return new(check, title, string.Join(", ", about.Split(',').Select(a => build.Find(a)?.Title ?? (plan.Catalogue.Table.Of(a) is null ? a : $"{Key(a).Title} {Key(a).Where}".Trim()))));
    }

    private RowName Result(string id)
    {
        var dot = id.LastIndexOf('.');
        var (calculation, members) = Instance(id[..dot]);
        var output = id[(dot + 1)..];
        var meaning = plan.Catalogue.Bindings.FirstOrDefault(b => b.Calculation.Id == calculation)?.Calculation.OutputSpecs.FirstOrDefault(o => o.Name == output)?.About.Meaning;
        return new($"{calculation}.{output}", ShopWords.Sentence(meaning ?? output), Where(members));
    }

    private RowName Element(string id)
    {
        var cut = id.IndexOf('/', StringComparison.Ordinal);
        return new("item", "What items bring", $"{Item(id[..cut])}: {id[(cut + 1)..]}");
    }

    private string Item(string slot) => build.Find(slot)?.Title ?? slot;

    private static (string Calculation, IEnumerable<(string, string)> Members) Instance(string id)
    {
        var open = id.IndexOf('[', StringComparison.Ordinal);
        if (open < 0) return (id, []);
        return (id[..open], id[(open + 1)..^1].Split(',').Select(m => m.Split('=')).Select(m => (m[0], m[1])));
    }

    /// <summary>In the order people say them: the gear and the range, the axle and the side, when.</summary>
    private static string Where(IEnumerable<(string Set, string Member)> members)
    {
        string[] order = ["gear", "range", "axle", "side", "winch", "leaf", "coil", "torsion", "condition"];
        List<(string Set, string Member)> all = [.. members];
        if (all is [("condition", var only)]) return only;
        return string.Join(" ", all.OrderBy(m => Array.IndexOf(order, m.Set) is var i && i < 0 ? 9 : i).Select(m => m.Set switch
        {
            "gear" => $"gear {m.Member},",
            "range" => $"{m.Member} range",
            "condition" => $"({m.Member})",
            "winch" => $"{m.Member} winch",
            _ => m.Member,
        })).TrimEnd(',');
    }

    private static string Short(string text) => text.Length == 0 ? text : char.ToLowerInvariant(text[0]) + text[1..];
}
