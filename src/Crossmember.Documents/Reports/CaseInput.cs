using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;
using Crossmember.Documents.Wording;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Documents.Reports;

/// <summary>One input of a case: what went in, and where it is from.</summary>
public sealed record CaseInput(InputSpec Spec, string Value, string WhereFrom);

/// <summary>Finds out where the inputs of an instance are from.</summary>
internal sealed class SheetInputs(Sheet sheet, MeasureSystem measure)
{
    private readonly Dictionary<int, InstanceState> _publisher = sheet.Instances.OfType<InstanceState>()
        .SelectMany(i => i.Instance.Publishes.Where(k => k >= 0).Select(k => (Key: k, Instance: i))).GroupBy(p => p.Key).ToDictionary(g => g.Key, g => g.First().Instance);

    public IReadOnlyList<CaseInput> Of(InstanceState state) => [.. state.Instance.Inputs.Select((source, i) => One(source, state.Inputs[i]))];

    private CaseInput One(InputSource source, Value value)
    {
        if (!source.Constant.IsAbsent) return new(source.Spec, value.Text ?? "", "the place itself");
        if (source.Map is { } map) return Many(source.Spec, value, map);
        if (source.Key < 0) return new(source.Spec, Values.Tell(source.Spec, value, measure), value.IsAbsent ? "not given" : $"{ShopWords.Of(Basis.Assumed)}: {Origins.OfCalculation}");
        var key = sheet.Keys[source.Key];
        var told = key.Typed is not null && !value.IsAbsent ? Shown.Value(value, sheet.Plan.Space.PatternOf(source.Key), key.Typed, measure) : Values.Tell(source.Spec, value, measure);
        if (value.Curve is not null) told = Values.Tell(source.Spec, value, measure);
        return new(source.Spec, told + Spread(key, source.Spec), value.IsAbsent ? "not known" : WhereFrom(source.Key));
    }

    private CaseInput Many(InputSpec spec, Value value, (int Key, string Name)[] map)
    {
        var living = map.Where(m => sheet.Keys[m.Key].Exists).Select(m => (m.Name, From: sheet.Keys[m.Key].Value.IsAbsent ? "not known" : WhereFrom(m.Key))).ToList();
        var from = living.Select(l => l.From).Distinct().Count() == 1 ? living[0].From : string.Join("\n", living.GroupBy(l => l.From).Select(g => $"{string.Join(", ", g.Select(l => l.Name))}: {g.Key}"));
        return new(spec, Values.Tell(spec, value, measure), living.Count == 0 ? "not known" : from);
    }

    public string WhereFrom(int key)
    {
        var state = sheet.Keys[key];
        return state.Source switch
        {
            Source.Option => Origins.Stating(sheet, key) is { Count: > 0 } by ? $"{ShopWords.Of(state.Basis)}: {string.Join("; ", by.Select(Origins.Of))}" : ShopWords.Of(state.Basis),
            Source.WhatIf => $"{ShopWords.Of(state.Basis)}: {Origins.Tried}",
            Source.Calculated => $"{(_publisher.TryGetValue(key, out var by) ? Origins.Of(by) : Origins.Ledger)}, weakest basis {ShopWords.Of(state.Basis)}",
            Source.Default => $"{ShopWords.Of(Basis.Assumed)}: {Origins.Usual}",
            Source.Conflict => Origins.TwoItems,
            _ => "not known",
        };
    }

    private string Spread(KeyState key, InputSpec spec) =>
        double.IsNaN(key.PlusMinus) || key.PlusMinus <= 0 || key.Value.IsAbsent || spec.Dimension is null || spec.Dimension == Dimension.Temperature ? ""
            : $" ± {Values.Spread(key.PlusMinus, spec.Dimension, measure)}";
}
