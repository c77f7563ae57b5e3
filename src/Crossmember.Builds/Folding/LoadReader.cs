using Crossmember.Builds.Slots;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Folding;

/// <summary>Reads an electrical load without its nodes: a harness record, kept whole for the harness, with its headline rating.</summary>
public static class LoadReader
{
    private static readonly string[] s_models = ["resistance", "power", "current", "lamp", "motor"];

    public static LoadItem? Read(ObjectReader r)
    {
        var id = r.Text("id");
        if (r.OptionalFlag("drop") == true) return new(id, null, "W", "", true);
        var model = r.OptionalText("model") ?? "power";
        if (!s_models.Contains(model)) r.Faults.Add(r.At("model"), $"'{model}' is no load model", string.Join(", ", s_models));
        var (rating, unit) = RatingOf(r);
        foreach (var (key, dimension) in new[] { ("at", Dimension.Voltage), ("minimum", Dimension.Voltage), ("cutoff", Dimension.Voltage), ("backEmf", Dimension.Voltage), ("resistance", Dimension.Resistance) })
            if (r.Element(key) is { } e)
                ValueReader.Quantity(e, r.At(key), dimension, r.Faults);
        _ = r.OptionalNumber("exponent");
        _ = r.OptionalText("title");
        _ = r.Element("on") is not null ? r.Texts("on") : null;
        return new(id, rating, unit, model);
    }

    private static (double? Rating, string Unit) RatingOf(ObjectReader r)
    {
        if (r.OptionalText("rating") is not { } text) return (null, "W");
        if (ShopNotation.Read(text, Dimension.Current).Value is { } amperes) return (amperes.Si, "A");
        return (ValueReader.Quantity(text, r.At("rating"), Dimension.Power, r.Faults), "W");
    }
}
