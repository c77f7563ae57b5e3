using System.Text.Json;
using Crossmember.Builds.Folding;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Files;

/// <summary>Reads the shop's part of a sheet form into facts of the shop's stream.</summary>
internal static class ShopSection
{
    public static void Read(ObjectReader r, List<Draft> drafts)
    {
        if (r.Element("currency") is { ValueKind: not JsonValueKind.Null } currency)
            drafts.Add(new("shop.opened", "shop", Draft.Object(("currency", currency)), r.Pointer));
        foreach (var (trade, rate, pointer) in r.Map("rates"))
            drafts.Add(new("trade.rated", "trades/" + trade, Draft.Object(("rate", rate)), pointer, "rate"));
        foreach (var (category, fraction, pointer) in r.Map("tax"))
        {
            if (!CostReader.Categories.Contains(category)) r.Faults.Add(pointer, $"'{category}' is no category", string.Join(", ", CostReader.Categories));
            drafts.Add(new("tax.set", "tax/" + category, Draft.Object(("fraction", fraction)), pointer, "fraction"));
        }
        r.Done();
    }

    public static void Stock(ObjectReader r, List<Draft> drafts)
    {
        if (!r.IsObject) return;
        var id = r.Text("id");
        // What the keys hold is told when the part is folded: here only that there is no key too many.
        var strict = new ObjectReader(r.Self, r.Pointer, new());
        (_, _) = (strict.Element("id"), StockReader.Read(strict, id));
        var known = strict.Faults.Count;
        strict.Done();
        foreach (var unknown in strict.Faults.List.Skip(known)) r.Faults.Add(unknown);
        drafts.Add(new("stock.listed", "stock/" + id, Draft.Object(r.Names.Where(n => n != "id").Select(n => (n, r.Element(n)))), r.Pointer));
    }
}
