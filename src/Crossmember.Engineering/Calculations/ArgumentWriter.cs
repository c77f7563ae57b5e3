using System.Text.Json.Nodes;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Engineering.Calculations;

/// <summary>Writes arguments as the input of <c>calc run</c>: <see cref="ArgumentReader"/> reads the very same numbers back.</summary>
public static class ArgumentWriter
{
    /// <summary>What is absent is left out; so is what stands at the calculation's own default anyway.</summary>
    public static JsonObject Of(Calculation calculation, IReadOnlyList<Value> arguments)
    {
        var input = new JsonObject();
        for (var i = 0; i < arguments.Count; i++)
        {
            var spec = calculation.InputSpecs[i];
            if (!arguments[i].IsAbsent && !(spec.DefaultSi is { } standIn && arguments[i] == Value.Of(standIn))) input[spec.Name] = Node(spec, arguments[i]);
        }
        return input;
    }

    private static JsonNode? Node(InputSpec spec, Value value) =>
        value.IsNumber ? Text(value.Number, spec.Unit!)
        : value.Members is { } members ? new JsonObject(members.Items.Select(m => KeyValuePair.Create(m.Name, Node(spec, m.Value))))
        : value.Curve is { } curve ? Json.List(curve.Points, p => new JsonArray(Text(p.X, spec.Unit!), Text(p.Y, spec.CurveUnit!)))
        : value.Text;

    /// <summary>In the unit it is told in where that keeps every bit, else in SI, which always does.</summary>
    private static string Text(double si, Unit unit)
    {
        var told = Written(unit.FromSi(si), unit);
        return ShopNotation.Read(told, unit.Dimension).Value is { } back && BitConverter.DoubleToInt64Bits(back.Si) == BitConverter.DoubleToInt64Bits(si)
            ? told : Written(si, unit.Dimension.Si);
    }

    private static string Written(double number, Unit unit) => unit.Code == "1" ? $"{number:R}" : $"{number:R} {unit.Code}";
}
