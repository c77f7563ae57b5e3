using System.Text.Json;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;
using Crossmember.Documents.Wording;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;

namespace Crossmember.Documents.Reports;

/// <summary>One calculation, worked out once: its inputs with where they are from, and what came of them.</summary>
/// <param name="Id">Of the instance, or of the calculation where it stands alone.</param>
/// <param name="Where">For which gear, axle or load; empty where there is only one.</param>
/// <param name="Outcome">With working and curves.</param>
/// <param name="Spread">One standard uncertainty per output in SI, where the inputs have one.</param>
public sealed record Case(Calculation Calculation, string Id, string Where, IReadOnlyList<CaseInput> Inputs, Outcome Outcome, IReadOnlyList<double>? Spread = null)
{
    /// <summary>An instance of a sheet.</summary>
    public static Case Of(Sheet sheet, InstanceState state, MeasureSystem measure) => new(state.Instance.Calculation, state.Instance.Id,
        new RowNames(sheet.Plan, sheet.Build).Finding(state.Instance.Id + "/").Where, new SheetInputs(sheet, measure).Of(state), state.Shown(), state.PlusMinus)
    {
        Findings = [.. Sheet.FindingsOf(state with { Outcome = state.Shown() }).Select(f => f.Finding)],
    };

    /// <summary>What its checks say: all of them, or those that it raises in its sheet.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = Outcome.Findings;

    /// <summary>What is missing where something waits for it: what the arithmetic or an open check needs.</summary>
    public IEnumerable<MissingInput> Lacking => Outcome.Missing.Where(m => m.Measure.Length > 0 && (!Calculation.InputSpecs[Calculation.InputIndex(m.Input)].Optional
        || Outcome.Outputs.Any(o => o.IsAbsent) || Calculation.About.Checks.Any(c => c.Needs.Contains(m.Input) && Findings.Any(f => f.Check == c.Id && f.Verdict == Verdict.Unknown))));

    /// <summary>From the input of <c>calc run</c>; null with faults.</summary>
    public static Case? Given(Calculation calculation, ReadOnlyMemory<byte> input, MeasureSystem measure, Faults faults)
    {
        if (ArgumentReader.Read(calculation, input, faults) is not { } arguments) return null;
        using var document = JsonDocument.Parse(input);
        var given = document.RootElement;
        return new(calculation, calculation.Id, "", [.. calculation.InputSpecs.Select((spec, i) => One(spec, given, arguments[i], measure))], calculation.Run(arguments, working: true));
    }

    private static CaseInput One(InputSpec spec, JsonElement given, Value value, MeasureSystem measure)
    {
        if (!given.TryGetProperty(spec.Name, out var e) || e.ValueKind == JsonValueKind.Null)
            return new(spec, Values.Tell(spec, value, measure), value.IsAbsent ? "not given" : $"{ShopWords.Of(Basis.Assumed)}: {Origins.OfCalculation}");
        var stated = e.ValueKind == JsonValueKind.Object && spec.Form != Form.Members;
        var basis = stated && e.TryGetProperty("basis", out var b) ? b.GetString() : null;
        var typed = stated && e.TryGetProperty("value", out var v) ? v : e;
        var told = typed.ValueKind == JsonValueKind.String && spec.Dimension is { } dimension && ShopNotation.Read(typed.GetString()!, dimension).Value is { } q
            ? Display.Show(q, measure) : Values.Tell(spec, value, measure);
        return new(spec, told, basis ?? "given, nobody said where from");
    }
}
