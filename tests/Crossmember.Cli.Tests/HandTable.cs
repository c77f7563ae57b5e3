using System.Text.Json;
using System.Text.Json.Nodes;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Cli.Tests;

/// <summary>The tables that the outside author made by hand, and how a number in them is compared with one of ours: in SI, to 1e-6 of itself.</summary>
internal static class HandTable
{
    public static string Folder { get; } = Path.Combine(AppContext.BaseDirectory, "Outside");

    public static string Build { get; } = Path.Combine(Folder, "ostler.json");

    public static JsonNode Expected { get; } = JsonNode.Parse(File.ReadAllText(Path.Combine(Folder, "expected.json")))!;

    /// <summary>One side of a row: present on both, the same verdict and the same number.</summary>
    public static void Same(JsonNode? want, JsonNode? got, JsonNode row)
    {
        Assert.True(want is null == got is null, row.ToJsonString());
        if (want is null) return;
        if ((string?)want["verdict"] is { } verdict) Assert.Equal(verdict, (string?)got!["verdict"]);
        Quantity(want, got, row.ToJsonString());
    }

    /// <summary>Value with unit, whatever unit either is told in; a text or a curve is not a number and is left alone.</summary>
    public static void Quantity(JsonNode? want, JsonNode? got, string what)
    {
        Assert.True(got is not null, $"{what} is not there");
        if (want!["value"] is null) Assert.Null(got["value"]);
        else if (IsNumber(want["value"])) Close(Si(want), Si(got), what);
    }

    public static void Number(JsonNode? want, JsonNode? got, string what)
    {
        if (want is not JsonValue) Assert.True(got is null, $"{what}: {got}");
        else Assert.True(got is not null && Math.Abs((double)want - (double)got) <= 1e-6 * Math.Max(1, Math.Abs((double)want)), $"{what}: {want} against {got}");
    }

    public static bool IsNumber(JsonNode? value) => value is JsonValue v && v.GetValueKind() == JsonValueKind.Number;

    // The table's own names for two units.
    private static string? Code(JsonNode side) => (string?)side["unit"] switch { "1/mi" => "rev/mile", "hour" => "h", var u => u };

    private static double Si(JsonNode side) => Code(side) is { } u && Units.Find(u) is { } unit ? unit.ToSi((double)side["value"]!) : (double)side["value"]!;

    private static void Close(double want, double got, string what) =>
        Assert.True(Math.Abs(want - got) <= (1e-6 * Math.Abs(want)) + 1e-12, $"{what}: {want} against {got} in SI");
}
