using System.Globalization;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Web.Features.Bench;

/// <summary>Outputs for reading, and as <c>calc run</c> writes them.</summary>
public static class OutputText
{
    public static string Of(OutputSpec spec, Value value, MeasureSystem measure) =>
        value.IsNumber ? Shown.Number(spec.Unit!.FromSi(value.Number), spec.Unit.Code, measure)
        : value.Members is { } members ? string.Join(", ", members.Items.Select(m => $"{m.Name} {Of(spec, m.Value, measure)}"))
        : value.Text ?? Words.DontKnow;

    /// <summary>In the output's own unit, to the last figure.</summary>
    public static string Exact(OutputSpec spec, Value value) =>
        value.IsNumber ? spec.Unit!.FromSi(value.Number).ToString("R", CultureInfo.InvariantCulture) : value.Text ?? "";
}
