using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Evaluation;

/// <summary>Carries one standard uncertainty per input through a calculation: the root of the summed squares of what each input alone moves.</summary>
/// <remarks>First order, inputs taken as independent but for mass and moments of one condition (JCGM 100:2008, 5.1.2 and 5.2.2, with the sensitivities of 5.1.3 note 2 taken by stepping once up and once down).</remarks>
internal static class Uncertainty
{
    /// <summary>What the spreads of an instance's outputs are made of besides its inputs: where nothing of it changed, neither did they.</summary>
    public static double[] Grounds(Instance instance, Value[] inputs, KeyState[] keys, Ledger ledger)
    {
        var grounds = new List<double>(inputs.Length + 8);
        for (var i = 0; i < inputs.Length; i++)
        {
            var source = instance.Inputs[i];
            if (inputs[i].IsNumber && ledger.KeysOf.TryGetValue(source.Key, out var own) && ledger.ErrorsIn(own.Condition) is { } errors)
                for (var error = 0; error < MomentErrors.Count; error++) grounds.Add(errors.Of(own.Which, error));
            else if (source.Key >= 0) grounds.Add(keys[source.Key].PlusMinus);
            else if (source.Map is { } map)
                foreach (var (key, _) in map) grounds.Add(keys[key].PlusMinus);
        }
        return [.. grounds];
    }

    public static double[]? Of(Instance instance, Value[] inputs, Outcome outcome, KeyState[] keys, Ledger ledger)
    {
        double[]? squares = null;
        List<(int Input, MomentErrors Errors, int Which)>? ofLedger = null;
        for (var i = 0; i < inputs.Length; i++)
        {
            var (source, which) = (instance.Inputs[i], i);
            if (inputs[i].IsNumber && ledger.KeysOf.TryGetValue(source.Key, out var own) && ledger.ErrorsIn(own.Condition) is { } errors) (ofLedger ??= []).Add((i, errors, own.Which));
            else if (source.Key >= 0 && inputs[i].IsNumber && Spread(keys[source.Key]) is { } u)
                Step(instance, side => With(inputs, which, Value.Of(inputs[which].Number + (side * u))), outcome, ref squares);
            else if (source.Map is { } map && inputs[i].Members is { } members)
                foreach (var (key, name) in map)
                    if (Spread(keys[key]) is { } v)
                        Step(instance, side => With(inputs, which, Moved(members, name, side * v)), outcome, ref squares);
        }
        if (ofLedger is not null) Together(instance, inputs, ofLedger, outcome, ref squares);
        if (squares is null) return null;
        for (var o = 0; o < squares.Length; o++) squares[o] = Math.Sqrt(squares[o]);
        return squares;
    }

    /// <summary>Mass and moments are off together: each independent error of the ledger steps all of them at once.</summary>
    private static void Together(Instance instance, Value[] inputs, List<(int Input, MomentErrors Errors, int Which)> own, Outcome outcome, ref double[]? squares)
    {
        for (var error = 0; error < MomentErrors.Count; error++)
        {
            var column = error;
            if (own.TrueForAll(o => o.Errors.Of(o.Which, column) == 0)) continue;
            Step(instance, side =>
            {
                Value[] stepped = [.. inputs];
                foreach (var (input, errors, which) in own) stepped[input] = Value.Of(inputs[input].Number + (side * errors.Of(which, column)));
                return stepped;
            }, outcome, ref squares);
        }
    }

    private static double? Spread(KeyState key) => key.PlusMinus > 0 && key.Value.IsNumber ? key.PlusMinus : null;

    private static Value[] With(Value[] inputs, int which, Value moved)
    {
        Value[] stepped = [.. inputs];
        stepped[which] = moved;
        return stepped;
    }

    private static Value Moved(Members members, string name, double by) =>
        Value.Of(new Members(members.Items.Select(m => m.Name == name && m.Value.IsNumber ? (m.Name, Value.Of(m.Value.Number + by)) : m)));

    /// <summary>Up and down: where one of the two falls over an edge, such as one block more, the other tells how the answer moves on this side of it.</summary>
    private static void Step(Instance instance, Func<int, Value[]> stepped, Outcome outcome, ref double[]? squares)
    {
        Outcome up = instance.Calculation.Run(stepped(1), Told.Numbers), down = instance.Calculation.Run(stepped(-1), Told.Numbers);
        squares ??= new double[outcome.Outputs.Count];
        for (var o = 0; o < squares.Length; o++)
        {
            if (!outcome.Outputs[o].IsNumber) continue;
            var here = outcome.Outputs[o].Number;
            double above = up.Outputs[o].IsNumber ? Math.Abs(up.Outputs[o].Number - here) : double.NaN, below = down.Outputs[o].IsNumber ? Math.Abs(down.Outputs[o].Number - here) : double.NaN;
            var by = double.IsNaN(above) ? below : double.IsNaN(below) ? above : Math.Min(above, below);
            if (!double.IsNaN(by)) squares[o] += by * by;
        }
    }
}
