using Crossmember.Engineering.Calculations;

namespace Crossmember.Web.Features.Bench;

/// <summary>Finds calculations by what people call things.</summary>
public static class CalculationSearch
{
    /// <summary>Whether every word that is typed is somewhere in what the calculation takes, gives or is for.</summary>
    public static bool Fits(Calculation calculation, string typed, params IEnumerable<string> also) =>
        typed.Split(' ', StringSplitOptions.RemoveEmptyEntries).All(word => Said(calculation).Concat(also).Any(text => text.Contains(word, StringComparison.OrdinalIgnoreCase)));

    private static IEnumerable<string> Said(Calculation c) =>
    [
        c.Id, c.About.Title, c.About.Purpose, .. c.About.Checks.Select(k => k.Asks),
        .. c.InputSpecs.SelectMany(i => new[] { i.About.Meaning, i.Unit?.Code ?? "" }), .. c.OutputSpecs.SelectMany(o => new[] { o.About.Meaning, o.Unit?.Code ?? "" }),
    ];
}
