using Crossmember.Builds.Evaluation;

namespace Crossmember.Documents.Brakes;

/// <summary>One tube or hose of the brakes, as the plan of the circuits has it.</summary>
/// <param name="Length">Of a hose, m; null where nobody said, as of every tube.</param>
public sealed record BrakeLine(string Circuit, string From, string To, bool IsHose, double? Length)
{
    /// <summary>Every line that a vehicle with two axles needs; where the real one is laid otherwise, it is written in by hand.</summary>
    public static IReadOnlyList<BrakeLine> Of(Sheet sheet)
    {
        double? Hose(string axle) => sheet.Key($"axle.{axle}.hose.length") is { Value.IsNumber: true } k ? k.Value.Number : null;
        var valve = sheet.Key("brakes.valve.kind")?.Value.Text is { } kind and not "none" ? kind == "load-sensing" ? "load-sensing valve" : "rear valve" : null;
        var metering = sheet.Key("brakes.metering.pressure") is { Value: { IsNumber: true, Number: > 0 } };
        return sheet.Key("brakes.circuits")?.Value.Text switch
        {
            "diagonal" => [.. Diagonal("first", "left", "right", Hose, valve), .. Diagonal("second", "right", "left", Hose, valve)],
            "one" => [new("only", "master cylinder", "tee", false, null), .. Front("only", "tee", metering, Hose("front")), .. Rear("only", "tee", valve, Hose("rear"))],
            _ => [.. Front("front", "master cylinder", metering, Hose("front")), .. Rear("rear", "master cylinder", valve, Hose("rear"))],
        };
    }

    private static IEnumerable<BrakeLine> Front(string circuit, string from, bool metering, double? hose)
    {
        if (metering) yield return new(circuit, from, "metering valve", false, null);
        yield return new(circuit, metering ? "metering valve" : from, "front tee", false, null);
        foreach (var side in (string[])["left", "right"])
        {
            yield return new(circuit, "front tee", $"{side} front hose bracket", false, null);
            yield return new(circuit, $"{side} front hose bracket", $"{side} front brake", true, hose);
        }
    }

    private static IEnumerable<BrakeLine> Rear(string circuit, string from, string? valve, double? hose)
    {
        if (valve is not null) yield return new(circuit, from, valve, false, null);
        yield return new(circuit, valve ?? from, "rear hose bracket on the frame", false, null);
        yield return new(circuit, "rear hose bracket on the frame", "tee on the rear axle", true, hose);
        foreach (var side in (string[])["left", "right"]) yield return new(circuit, "tee on the rear axle", $"{side} rear brake", false, null);
    }

    private static IEnumerable<BrakeLine> Diagonal(string circuit, string front, string rear, Func<string, double?> hose, string? valve)
    {
        yield return new(circuit, "master cylinder", $"{front} front hose bracket", false, null);
        yield return new(circuit, $"{front} front hose bracket", $"{front} front brake", true, hose("front"));
        yield return new(circuit, "master cylinder", valve ?? $"{rear} rear hose bracket", false, null);
        if (valve is not null) yield return new(circuit, valve, $"{rear} rear hose bracket", false, null);
        yield return new(circuit, $"{rear} rear hose bracket", $"{rear} rear brake", true, hose("rear"));
    }
}
