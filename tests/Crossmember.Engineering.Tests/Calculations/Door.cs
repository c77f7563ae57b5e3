using System.Text;
using System.Text.Json.Nodes;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Reading;

namespace Crossmember.Engineering.Tests.Calculations;

/// <summary>The way <c>calc run</c> goes: JSON in, JSON out.</summary>
internal static class Door
{
    public static JsonObject Run(string id, string input) => Run(CalculationList.Find(id)!, input);

    public static JsonObject Run(Calculation calculation, string input)
    {
        var faults = new Faults();
        var arguments = ArgumentReader.Read(calculation, Encoding.UTF8.GetBytes(input), faults);
        Assert.True(arguments is not null, $"{calculation.Id} {input}: {string.Join("; ", faults.List)}");
        return ResultJson.Of(calculation, calculation.Run(arguments, true));
    }

    public static IReadOnlyList<Fault> Faults(string id, string input)
    {
        var faults = new Faults();
        Assert.Null(ArgumentReader.Read(CalculationList.Find(id)!, Encoding.UTF8.GetBytes(input), faults));
        Assert.NotEmpty(faults.List);
        return faults.List;
    }

    /// <summary>An output in the unit the calculation tells it in; null where unknown.</summary>
    public static double? Number(this JsonObject result, string output) => result["outputs"]![output]!["value"]?.GetValue<double>();

    public static string Verdict(this JsonObject result, string check) => result.Finding(check)["verdict"]!.GetValue<string>();

    public static JsonObject Finding(this JsonObject result, string check) =>
        Assert.Single(result["findings"]!.AsArray(), f => f!["id"]!.GetValue<string>() == $"{result["id"]}/{check}")!.AsObject();

    /// <summary>Holds an output against an expected number within an absolute tolerance: half a unit of the source's last decimal, as a rule.</summary>
    public static void Gives(this JsonObject result, string output, double expected, double tolerance)
    {
        var actual = result.Number(output);
        Assert.True(actual is { } a && Math.Abs(a - expected) <= tolerance,
            $"{result["id"]} {output}: {actual?.ToString() ?? "unknown"} where {expected} +- {tolerance} is right");
    }
}
