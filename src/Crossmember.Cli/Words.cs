using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Cli;

/// <summary>The words a builder reads for the exact terms of the files.</summary>
internal static class Words
{
    public static string Of(Verdict verdict) => verdict switch
    {
        Verdict.Pass => "good",
        Verdict.Caution => "watch",
        Verdict.Fail => "no",
        _ => "don't know",
    };

    public static string Number(double value, string? unit) => unit is null or "1" ? Figures.Short(value) : $"{Figures.Short(value)} {unit}";

    public static string Count(int n, string one, string many) => n == 1 ? $"1 {one}" : $"{n} {many}";
}
