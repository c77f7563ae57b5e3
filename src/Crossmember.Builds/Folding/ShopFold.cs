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
        var before = faults.Count;
        var r = new ObjectReader(payload, pointer, faults);
        if (!r.IsObject) return;
        var name = subject[(subject.IndexOf('/', StringComparison.Ordinal) + 1)..];
        var changed = kind switch
        {
            "shop.opened" => _shop with { Currency = Currency(r) },
            "trade.rated" => _shop with { Rates = _shop.Rates.SetItem(name, Rate(r)) },
            "milestone.named" => Titled(r),
            "tax.set" => r.Element("fraction") is { } f && CostReader.Fraction(f, r.At("fraction"), faults) is { } tax ? _shop with { Tax = _shop.Tax.SetItem(name, tax) } : _shop,
            _ => _shop,
        };
        if (EntryKind.Find(kind) != EntryKind.StockListed) r.Done();
        if (faults.Count == before) _shop = changed;
    }

    public ShopFacts ToShop() => _shop;

    private string? Currency(ObjectReader r)
    {
        var text = r.Text("currency");
        if (text.Length == 3 && text.All(char.IsAsciiLetterUpper))
        {
            if (_shop with { Currency = null } is { Books: { } books } && books != text) r.Faults.Add(r.At("currency"), $"books in {text}", $"there are rates in {books}");
            return text;
        }
        r.Faults.Add(r.At("currency"), $"'{text}' is no currency code", "three capital letters, such as USD");
        return null;
    }

    private ShopFacts Titled(ObjectReader r)
    {
        _ = r.OptionalText("title");
        return _shop;
    }

    /// <summary>One currency per shop: rates that differ would not add up.</summary>
    private Money? Rate(ObjectReader r)
    {
        if (r.OptionalText("rate") is not { } text || CostReader.Amount(text, r.At("rate"), r.Faults) is not { } rate) return null;
        if (rate.Amount < 0) r.Faults.Add(r.At("rate"), $"a rate of {text}", "zero or more");
        if (_shop.Books is { } books && rate.Currency != books) r.Faults.Add(r.At("rate"), $"a rate in {rate.Currency}", $"the shop keeps its books in {books}");
        return rate;
    }
}
