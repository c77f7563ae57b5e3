using System.Globalization;
using System.Text.Json;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Folding;

/// <summary>Reads stated values: text with its unit, a dimensionless number, or pairs; bare or as <c>{"value","basis","plusMinus"}</c>.</summary>
public static class ValueReader
{
    public static Stated? Stated(JsonElement e, string pointer, ParameterPattern pattern, Faults faults)
    {
        if (e.ValueKind == JsonValueKind.Null) return new(default, "", Basis.Assumed, null);
        if (e.ValueKind != JsonValueKind.Object)
            return Value(e, pointer, pattern, faults) is var (bare, typedBare) && !bare.IsAbsent ? new(bare, typedBare, Basis.Assumed, null) : null;
        var r = new ObjectReader(e, pointer, faults);
        var basis = BasisOf(r);
        var spread = r.OptionalText("plusMinus") is { } s ? Spread(s, r.At("plusMinus"), pattern, faults) : null;
        if (r.Element("value") is not { } v)
        {
            r.Missing("value");
            r.Done();
            return null;
        }
        r.Done();
        if (v.ValueKind == JsonValueKind.Null) return new(default, "", basis, null);
        var (value, typed) = Value(v, r.At("value"), pattern, faults);
        return value.IsAbsent ? null : new(value, typed, basis, spread);
    }

    public static Basis BasisOf(ObjectReader r)
    {
        var text = r.OptionalText("basis");
        switch (text)
        {
            case "measured": return Basis.Measured;
            case "published": return Basis.Published;
            case "vendor": return Basis.Vendor;
            case null or "assumed": return Basis.Assumed;
            default:
                r.Faults.Add(r.At("basis"), $"'{text}' is no basis", "measured, published, vendor or assumed");
                return Basis.Assumed;
        }
    }

    /// <summary>A quantity of a dimension in SI, or null with a fault.</summary>
    public static double? Quantity(JsonElement e, string pointer, Dimension dimension, Faults faults)
    {
        if (e.ValueKind == JsonValueKind.Number && dimension == Dimension.Dimensionless && e.TryGetDouble(out var d) && double.IsFinite(d)) return d;
        if (e.ValueKind != JsonValueKind.String)
        {
            faults.Add(pointer, $"{ObjectReader.Named(e)} where a quantity is needed", $"text with its unit, such as \"1 {dimension.Si.Code}\"");
            return null;
        }
        return Quantity(e.GetString()!, pointer, dimension, faults);
    }

    public static double? Quantity(string text, string pointer, Dimension dimension, Faults faults)
    {
        var parsed = ShopNotation.Read(text, dimension);
        if (parsed.Value is { } q) return q.Si;
        faults.Add(pointer, parsed.Wrong!, parsed.WouldBeRight!);
        return null;
    }

    private static (Value Value, string Typed) Value(JsonElement e, string pointer, ParameterPattern pattern, Faults faults)
    {
        switch (pattern.Form)
        {
            case Form.Text when e.ValueKind == JsonValueKind.String && e.GetString() is { Length: > 0 } text:
                return (Engineering.Calculations.Value.Of(text), text);
            case Form.Text:
                faults.Add(pointer, $"{ObjectReader.Named(e)} where a text is needed", $"{pattern.Meaning}, in quotes");
                return default;
            case Form.Curve:
                return Curve(e, pointer, pattern, faults) is { } curve ? (Engineering.Calculations.Value.Of(curve), e.GetRawText()) : default;
            default:
                if (Quantity(e, pointer, pattern.Dimension!, faults) is not { } si) return default;
                if (pattern.Told(si) is var told && (told <= pattern.MoreThan || told < pattern.AtLeast))
                {
                    faults.Add(pointer, $"{pattern.Meaning} is {e.GetRawText().Trim('"')}", $"it must be {(pattern.MoreThan is { } least ? $"more than {least}" : $"at least {pattern.AtLeast}")} {pattern.Unit}");
                    return default;
                }
                return (Engineering.Calculations.Value.Of(si), e.ValueKind == JsonValueKind.String ? e.GetString()! : e.GetRawText());
        }
    }

    private static Curve? Curve(JsonElement e, string pointer, ParameterPattern pattern, Faults faults)
    {
        if (e.ValueKind != JsonValueKind.Array || e.GetArrayLength() < 2)
        {
            faults.Add(pointer, $"{ObjectReader.Named(e)} where a curve is needed", $"two or more pairs, such as [[\"1000 {pattern.Unit}\", \"200 {pattern.CurveUnit}\"], ...]");
            return null;
        }
        var points = new List<(double, double)>();
        var i = 0;
        foreach (var pair in e.EnumerateArray())
        {
            var at = $"{pointer}/{i++}";
            if (pair.ValueKind != JsonValueKind.Array || pair.GetArrayLength() != 2)
            {
                faults.Add(at, $"{ObjectReader.Named(pair)} where a pair is needed", "[x, y]");
                return null;
            }
            if (Quantity(pair[0], at + "/0", pattern.Unit!.Dimension, faults) is not { } x || Quantity(pair[1], at + "/1", pattern.CurveUnit!.Dimension, faults) is not { } y) return null;
            if (points.Count > 0 && x <= points[^1].Item1)
            {
                faults.Add(at + "/0", "x does not rise from point to point", "order the points by rising x");
                return null;
            }
            points.Add((x, y));
        }
        return new(points);
    }

    private static double? Spread(string text, string pointer, ParameterPattern pattern, Faults faults)
    {
        if (pattern.Form != Form.Number)
        {
            faults.Add(pointer, "only a number has an uncertainty", "leave plusMinus out");
            return null;
        }
        var parsed = ShopNotation.Read(text, pattern.Dimension!);
        if (parsed.Value is not { } q)
        {
            faults.Add(pointer, parsed.Wrong!, parsed.WouldBeRight!);
            return null;
        }
        var spread = q.Si - q.Unit.Offset;
        if (spread >= 0) return spread;
        faults.Add(pointer, $"an uncertainty of {text}", "zero or more");
        return null;
    }

    /// <summary>A number as a person would type it again.</summary>
    public static string Typed(double number) => number.ToString("R", CultureInfo.InvariantCulture);
}
