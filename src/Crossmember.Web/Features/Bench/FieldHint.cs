using Crossmember.Engineering.Calculations;

namespace Crossmember.Web.Features.Bench;

/// <summary>What is said of an input beside its field.</summary>
public static class FieldHint
{
    /// <summary>What stands in an empty field: what is assumed, else how such a thing is written.</summary>
    public static string? Of(Calculation calculation, InputSpec spec) =>
        spec.DefaultSi is { } standIn ? $"assumed {Engineering.Quantities.Figures.Short(spec.Unit!.FromSi(standIn))}{(spec.Unit.Code == "1" ? "" : " " + spec.Unit.Code)}"
        : calculation.About.Examples.Select(e => e.Inputs.GetValueOrDefault(spec.Name)).FirstOrDefault(e => e is not null) is not { } example ? null
        : spec.Form switch
        {
            Form.Members => null,
            Form.Curve => CurveText.Of(System.Text.Json.JsonDocument.Parse(example).RootElement),
            _ => $"like {example}",
        };

    /// <summary>Whether it must be given, and where the formula holds.</summary>
    public static IEnumerable<string> Notes(InputSpec spec, FieldUnits units)
    {
        yield return spec.Required ? "needed" : spec.DefaultSi is null ? "if known" : "assumed unless you say otherwise";
        if (units.Range(spec) is { } range) yield return range;
    }
}
