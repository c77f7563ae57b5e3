using System.Text.Json;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;

namespace Crossmember.Engineering.Calculations;

/// <summary>Reads the input of <c>calc run</c> (<c>docs/formats</c>, Calculations) into the arguments of a calculation.</summary>
/// <remarks>What is given beats the default, the default beats missing; an input given as null counts as not given.</remarks>
public static class ArgumentReader
{
    /// <summary>How a value may be known, strongest first.</summary>
    private static readonly string[] s_bases = ["measured", "published", "vendor", "assumed"];

    /// <summary>Arguments in the order of the calculation's inputs, in SI; null where there are faults.</summary>
    public static Value[]? Read(Calculation calculation, ReadOnlyMemory<byte> utf8, Faults faults)
    {
        using var document = JsonText.Open(utf8, faults);
        return document is null ? null : Read(calculation, document.RootElement, "", faults);
    }

    /// <inheritdoc cref="Read(Calculation, ReadOnlyMemory{byte}, Faults)"/>
    public static Value[]? Read(Calculation calculation, JsonElement element, string pointer, Faults faults)
    {
        var reader = new ObjectReader(element, pointer, faults);
        var arguments = new Value[calculation.InputSpecs.Count];
        for (var i = 0; i < arguments.Length; i++)
        {
            var spec = calculation.InputSpecs[i];
            arguments[i] = reader.Element(spec.Name) is { ValueKind: not JsonValueKind.Null } e ? One(spec, e, reader.At(spec.Name), reader)
                : spec.DefaultSi is { } standIn ? Value.Of(standIn) : default;
        }
        reader.Done();
        return faults.Any ? null : arguments;
    }

    private static Value One(InputSpec spec, JsonElement e, string pointer, ObjectReader reader)
    {
        if (e.ValueKind == JsonValueKind.Object && IsStated(spec, e)) return Stated(e, pointer, reader, inner => Bare(spec, inner, pointer + "/value", reader));
        return Bare(spec, e, pointer, reader);
    }

    /// <summary>Whether an object is value with basis. A map of members may have one called "value": it is told by holding no object.</summary>
    private static bool IsStated(InputSpec spec, JsonElement e) =>
        spec.Form != Form.Members || (e.TryGetProperty("value", out var value) && value.ValueKind == JsonValueKind.Object && !value.TryGetProperty("value", out _));

    private static Value Stated(JsonElement e, string pointer, ObjectReader outer, Func<JsonElement, Value> read)
    {
        var reader = new ObjectReader(e, pointer, outer.Faults);
        var value = reader.Element("value");
        if (value is null) reader.Missing("value");
        if (reader.OptionalText("basis") is { } basis && !s_bases.Contains(basis))
            outer.Faults.Add(reader.At("basis"), $"'{basis}' is no basis", $"write one of {string.Join(", ", s_bases)}");
        reader.Done();
        return value is { } inner ? read(inner) : default;
    }

    private static Value Bare(InputSpec spec, JsonElement e, string pointer, ObjectReader reader) => spec.Form switch
    {
        Form.Members => MapOf(spec, e, pointer, reader),
        Form.Curve => CurveOf(spec, e, pointer, reader),
        _ => Single(spec, e, pointer, reader),
    };

    private static Value MapOf(InputSpec spec, JsonElement e, string pointer, ObjectReader reader)
    {
        var map = new ObjectReader(e, pointer, reader.Faults);
        var items = new List<(string, Value)>();
        foreach (var (name, item, at) in map.Pairs())
            items.Add((name, item.ValueKind != JsonValueKind.Object ? Single(spec, item, at, map)
                : Stated(item, at, map, inner => Single(spec, inner, at + "/value", map))));
        if (map.IsObject && items.Count == 0)
            reader.Faults.Add(pointer, $"{spec.About.Meaning}: nothing is named", """write each by its name, for example {"1":"3.1"}""");
        return Value.Of(new Members(items));
    }

    private static Value CurveOf(InputSpec spec, JsonElement e, string pointer, ObjectReader reader)
    {
        if (e.ValueKind != JsonValueKind.Array)
        {
            reader.Faults.Add(pointer, $"{ObjectReader.Named(e)} where a curve is needed", "write a list of pairs [[x, y], ...]");
            return default;
        }
        var points = new List<(double, double)>();
        var i = 0;
        foreach (var pair in e.EnumerateArray())
        {
            var at = $"{pointer}/{i++}";
            if (pair.ValueKind != JsonValueKind.Array || pair.GetArrayLength() != 2)
                reader.Faults.Add(at, $"{ObjectReader.Named(pair)} where a pair is needed", "write [x, y]");
            else if (Number(spec.Unit!, pair[0], at + "/0", reader) is { } x && Number(spec.CurveUnit!, pair[1], at + "/1", reader) is { } y)
                points.Add((x, y));
        }
        var curve = new Curve(points);
        if (points.Count == i && curve.Outside() is { } why) reader.Faults.Add(pointer, "these points make no curve", $"it {why}");
        return Value.Of(curve);
    }

    private static Value Single(InputSpec spec, JsonElement e, string pointer, ObjectReader reader)
    {
        if (spec.Unit is null)
        {
            if (reader.TextOf(e, pointer) is not { } text) return default;
            if (spec.Outside(text) is { } refused) reader.Faults.Add(pointer, $"'{text}' is not understood as {spec.About.Meaning}", $"{spec.Name} {refused}");
            return Value.Of(text);
        }
        if (Number(spec.Unit, e, pointer, reader) is not { } si) return default;
        if (spec.Outside(si) is { } why)
            reader.Faults.Add(pointer, $"{e.GetRawText().Trim('"')} is outside the definition of {spec.About.Meaning}", $"it {why}");
        return Value.Of(si);
    }

    private static double? Number(Unit unit, JsonElement e, string pointer, ObjectReader reader)
    {
        var dimension = unit.Dimension;
        if (e.ValueKind == JsonValueKind.Number && dimension == Dimension.Dimensionless) return reader.NumberOf(e, pointer);
        if (e.ValueKind != JsonValueKind.String)
        {
            reader.Faults.Add(pointer, $"{ObjectReader.Named(e)} where a quantity is needed",
                dimension == Dimension.Dimensionless ? "write a number" : $"write it as text with its unit, for example \"1 {unit}\"");
            return null;
        }
        if (reader.TextOf(e, pointer) is not { } text) return null;
        var parsed = ShopNotation.Read(text, dimension);
        if (parsed.Ok) return parsed.Value!.Si;
        reader.Faults.Add(pointer, parsed.Wrong!, parsed.WouldBeRight!);
        return null;
    }
}
