using Crossmember.Builds.Evaluation;
using Crossmember.Web.Features.Areas;

namespace Crossmember.Web.Features.Brakes;

/// <summary>What one wheel's brake makes of a pressure.</summary>
/// <param name="Torque">At 1000 psi over its threshold, N m.</param>
/// <param name="Sensitivity">Percent of torque for a percent of friction.</param>
/// <param name="Threshold">Pa.</param>
public sealed record WheelBar(string Axle, string Side, string? Kind, double? Torque, double? Was, double? Factor, double? Sensitivity, double? Threshold)
{
    public static IReadOnlyList<WheelBar> Of(AreaView view) =>
    [
        .. from axle in view.Build.Sets.Of("axle")
           from side in view.Build.Sets.Of("side")
           let wheel = $"wheel.{axle}.{side}.brake."
           let bar = new WheelBar(axle, side, Text(view.Now, wheel), Number(view.Now, wheel + "torque"), Number(view.Then, wheel + "torque"), Number(view.Now, wheel + "factor"), Number(view.Now, wheel + "friction-sensitivity"), Number(view.Now, wheel + "threshold"))
           where bar.Kind is not null || bar.Torque is not null
           select bar,
    ];

    private static string? Text(Sheet sheet, string wheel) => sheet.Key(wheel + "kind")?.Value.Text is not { } kind ? null
        : kind == "drum" && sheet.Key(wheel + "drum-kind")?.Value.Text is { } shoes ? $"{kind}, {shoes}" : kind;

    private static double? Number(Sheet? sheet, string key) => sheet?.Key(key) is { Value.IsNumber: true } k ? k.Value.Number : null;
}
