using System.Text.Json;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;
using Crossmember.Planning;

namespace Crossmember.Builds.Folding;

/// <summary>Folds the shop's stream, as far as sheets need it.</summary>
public sealed class ShopFold
{
    private ShopFacts _shop = new();

    public void Apply(string kind, string subject, JsonElement payload, string pointer, long sequence, Faults faults)
    {
        _shop = _shop with { Position = Math.Max(_shop.Position, sequence) };
        var before = faults.List.Count;
        var r = new ObjectReader(payload, pointer, faults);
        if (!r.IsObject) return;
        var name = subject[(subject.IndexOf('/', StringComparison.Ordinal) + 1)..];
        var changed = kind switch
        {
            "shop.opened" => _shop with { Currency = Currency(r) },
            "trade.rated" => _shop with { Rates = _shop.Rates.SetItem(name, Rate(r)) },
            "tax.set" => r.Element("fraction") is { } f && CostReader.Fraction(f, r.At("fraction"), faults) is { } tax ? _shop with { Tax = _shop.Tax.SetItem(name, tax) } : _shop,
            _ => _shop,
        };
        if (EntryKind.Find(kind) != EntryKind.StockListed) r.Done();
        if (faults.List.Count == before) _shop = changed;
    }

    public ShopFacts ToShop() => _shop;

    private static string? Currency(ObjectReader r)
    {
        var text = r.Text("currency");
        if (text.Length == 3 && text.All(char.IsAsciiLetterUpper)) return text;
        r.Faults.Add(r.At("currency"), $"'{text}' is no currency code", "three capital letters, such as USD");
        return null;
    }

    private static Money? Rate(ObjectReader r) => r.OptionalText("rate") is { } text ? CostReader.Amount(text, r.At("rate"), r.Faults) : null;
}
