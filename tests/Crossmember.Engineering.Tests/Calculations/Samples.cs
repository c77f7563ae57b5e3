using Crossmember.Engineering.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Calculations;

/// <summary>Random arguments for any calculation, drawn from nothing but its description.</summary>
internal static class Samples
{
    /// <summary>Anything physical: magnitudes from 1e-6 to 1e6 in the input's own unit, inside its definition; some inputs absent.</summary>
    public static Gen<Value[]> Of(Calculation calculation) =>
        All([.. calculation.InputSpecs.Select(s => Gen.Frequency((1, Gen.Const(default(Value))), (9, One(calculation, s))))]);

    private static Gen<Value[]> All(Gen<Value>[] gens) =>
        gens.Aggregate(Gen.Const(Array.Empty<Value>()), (all, next) => Gen.Select(all, next, (a, n) => (Value[])[.. a, n]));

    private static Gen<Value> One(Calculation calculation, InputSpec spec) => spec.Form switch
    {
        Form.Text => Text(calculation, spec),
        Form.Curve => Gen.Select(Number(spec), Number(spec), Number(spec), (x, dx, y) => Value.Of(new Curve([(x, y), (x + Math.Abs(dx), -y), (x + (2 * Math.Abs(dx)), y)]))),
        Form.Members => Gen.Select(Gen.Int[1, 5], spec.Unit is null ? Text(calculation, spec) : Number(spec).Select(n => Value.Of(n)), Number(spec),
            (n, first, rest) => Value.Of(new Members(Enumerable.Range(0, n).Select(i => ($"m{i}", i == 0 || spec.Unit is null ? first : Value.Of(rest)))))),
        _ => Number(spec).Select(n => Value.Of(n)),
    };

    private static Gen<double> Number(InputSpec spec) =>
        Gen.Select(Gen.Double[-6, 6], Gen.Bool, Gen.Int[0, 20], (power, negative, edge) =>
        {
            var x = edge == 0 ? 0 : Math.Pow(10, power) * (negative ? -1 : 1);
            if (spec.Unit is null) return 0;
            if (x <= spec.About.MoreThan) x = Math.Max(-x, Math.BitIncrement(spec.About.MoreThan) + 1e-6);
            return spec.Unit.ToSi(Math.Max(x, spec.About.AtLeast));
        });

    private static Gen<Value> Text(Calculation calculation, InputSpec spec)
    {
        var known = spec.About.OneOf.Length > 0 ? spec.About.OneOf : [.. calculation.About.Examples.Select(e => e.Inputs.GetValueOrDefault(spec.Name)).OfType<string>()];
        return Gen.Frequency((4, Gen.Int[0, known.Length - 1].Select(i => known[i])), (1, Gen.String[0, 12])).Select(t => Value.Of(t));
    }
}
