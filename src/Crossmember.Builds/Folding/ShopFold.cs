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
            "person.named" => Named(r, name),
            "rounding.set" => _shop with { Rounding = Step(r) },
            "stock.listed" => StockReader.Read(r, name) is { } part ? _shop with { Stock = _shop.Stock.SetItem(name, part) } : _shop,
            "tax.set" => r.Element("fraction") is { } f && CostReader.Fraction(f, r.At("fraction"), faults) is { } tax ? _shop with { Tax = _shop.Tax.SetItem(name, tax) } : _shop,
            _ => _shop,
        };
        // Before it had a shape of its own, anything could stand in a part of the shelf: old entries keep what they hold.
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
            if (_shop.Rounding is { } step && !IsWhole(step, text)) r.Faults.Add(r.At("currency"), $"books in {text}", $"lines are rounded to {step}, which no coins of {text} make");
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

    private ShopFacts Named(ObjectReader r, string id)
    {
        var name = r.Text("name").Trim();
        if (name.Length is 0 or > 80) r.Faults.Add(r.At("name"), name.Length == 0 ? "a person without a name" : "a name of more than 80 characters", "the name people call them by");
        return _shop with { People = _shop.People.SetItem(id, new(id, name, r.OptionalText("role"), r.OptionalFlag("away") == true)) };
    }

    private decimal? Step(ObjectReader r)
    {
        if (r.Element("step") is not { } e)
        {
            r.Missing("step");
            return null;
        }
        if (e.ValueKind == JsonValueKind.Null) return null;
        if (e.ValueKind == JsonValueKind.String && decimal.TryParse(e.GetString(), System.Globalization.NumberStyles.AllowDecimalPoint, System.Globalization.CultureInfo.InvariantCulture, out var step) && step is > 0 and <= 1000)
        {
            if (_shop.Books is { } books && !IsWhole(step, books)) r.Faults.Add(r.At("step"), $"a step of {step} {books}", $"a multiple of the smallest coin, {Money.SmallestCoin(books)}");
            return step;
        }
        r.Faults.Add(r.At("step"), $"{e.GetRawText()} is no step of a bill", "a text such as \"0.05\" or \"1\", at most 1000; null for the smallest coin");
        return null;
    }

    /// <summary>A step that no coins make would be rounded again to the coin, and then be none.</summary>
    private static bool IsWhole(decimal step, string currency) => step % Money.SmallestCoin(currency).Amount == 0;

    /// <summary>One currency per shop: rates that differ would not add up.</summary>
    private Money? Rate(ObjectReader r)
    {
        if (r.OptionalText("rate") is not { } text || CostReader.Amount(text, r.At("rate"), r.Faults) is not { } rate) return null;
        if (rate.Amount < 0) r.Faults.Add(r.At("rate"), $"a rate of {text}", "zero or more");
        if (_shop.Books is { } books && rate.Currency != books) r.Faults.Add(r.At("rate"), $"a rate in {rate.Currency}", $"the shop keeps its books in {books}");
        return rate;
    }
}
