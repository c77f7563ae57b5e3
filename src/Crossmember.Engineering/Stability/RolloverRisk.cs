using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Stability;

/// <summary>Share of single-vehicle crashes that ended in a rollover among road vehicles of this static stability factor.</summary>
/// <remarks>
/// Formula:  2001 fit R = 13.25 exp(-3.3760 SSF); 2003 fit R = 1 / (1 + exp(c + 1.1686 ln(SSF - 0.90))), c = 2.8891 not tipped up in test, 2.6968 tipped up
/// Valid:    fits to stock passenger vehicles, vans and trucks in crashes on the road, SSF about 1.0 to 1.6; the 2003 fit has no answer at or below 0.90
/// Source:   66 FR 3388 (2001) and 68 FR 59250 (2003), both from memory
/// Example:  SSF 1.021 -> 42.2 % and 39.7 %
/// </remarks>
public sealed class RolloverRisk() : Calculation<RolloverRisk.Inputs, RolloverRisk.Result>(new()
{
    Id = "stability.rollover-risk",
    Version = 1,
    Title = "Rollover in a crash, by the published relation",
    Purpose = "What the road authority's statistics say of vehicles that stand as wide for their height: an estimate to talk over with the customer.",
    Formula = "2001: R = 13.25 exp(-3.3760 SSF); 2003: R = 1 / (1 + exp(c + 1.1686 ln(SSF - 0.90))), c = 2.8891 or 2.6968",
    Validity = "Single-vehicle crashes of stock vehicles on the road. It says nothing of driving off the road, of a lifted vehicle beyond the data, or of the chance to crash at all.",
    Sources = ["NHTSA, 66 FR 3388 (2001 fit), from memory", "NHTSA, 68 FR 59250 (2003 fit), from memory, lower confidence", "NHTSA rollover resistance ratings: risk bands of the stars"],
    Checks = [new("band", null, "In which band of risk does it fall?")],
    Trends = [new("factor", "risk", '-', 1, 1.6), new("factor", "laterRisk", '-', 1, 1.6)],
    Examples =
    [
        new(new Dictionary<string, string> { ["factor"] = "1.0208333" }, new Dictionary<string, double> { ["risk"] = 42.2, ["laterRisk"] = 39.7 }, 0.003,
            "Both fits by hand to 0.1 %", Provenance.Derived),
        new(new Dictionary<string, string> { ["factor"] = "1.45" }, new Dictionary<string, double> { ["risk"] = 9.9 }, 0.006,
            "The 2001 fit at the edge of five stars, consistent with the published band of less than 10 %", Provenance.HandbookMemory),
        new(new Dictionary<string, string> { ["factor"] = "1.13" }, new Dictionary<string, double> { ["risk"] = 29.2 }, 0.003,
            "The 2001 fit at the edge of three stars, consistent with the published band of 20 to 30 %", Provenance.HandbookMemory),
    ],
    Cautions = ["An estimate for a crowd of stock vehicles, not a property of this one.", HowToMeasureStability.NotForPeople],
})
{
    /// <summary>Upper risk of five to two stars, % (published by NHTSA).</summary>
    private static readonly double[] s_risks = [10, 20, 30, 40];

    /// <summary>Lowest factor that stock vehicles of that time had. Common practice, no source.</summary>
    private const double Lowest = 0.95;

    /// <summary>Under it the later relation climbs to its asymptote and says nothing worth telling.</summary>
    private const double Fitted = 1.0;

    public sealed record Inputs([Input("static stability factor", MoreThan = 0, Low = 0.95, High = 1.7, Measure = "half the mean track over the height of the center of gravity")] Ratio Factor);

    public sealed record Result(
        [Output("rollovers per single-vehicle crash, 2001 fit; unknown where no stock vehicle stands so", "%")] Ratio? Risk,
        [Output("the same by the 2003 fit, no tip-up in the moving test; unknown at or below a factor of 0.90", "%")] Ratio? LaterRisk,
        [Output("the same by the 2003 fit, tip-up in the moving test", "%")] Ratio? LaterRiskTipped);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        var f = x.Factor.DecimalFractions;
        var risk = Math.Min(1, 13.25 * Math.Exp(-3.3760 * f));
        w.Line("R", "13.25 exp(-3.3760 SSF)", $"13.25 exp(-3.3760 x {f})", 100 * risk, "%");
        double? kept = Later(f, 2.8891), tipped = Later(f, 2.6968);
        if (kept is { } k) w.Line("R", "1 / (1 + exp(2.8891 + 1.1686 ln(SSF - 0.90)))", $"1 / (1 + exp(2.8891 + 1.1686 ln({f} - 0.90)))", 100 * k, "%");
        else w.Caution("The 2003 relation has no answer at or below a factor of 0.90.");
        var stars = 5 - s_risks.Count(limit => 100 * risk >= limit);
        if (f < Lowest)
        {
            w.Answer("band", Verdict.Caution, $"No stock road vehicle stands so narrow for its height: the relations were never fitted there, and drawn on they say {100 * risk:0} % and more.", 100 * risk, "%", "NHTSA risk bands; fits from memory");
            return new(null, null, null);
        }
        w.Answer("band", stars == 1 ? Verdict.Caution : Verdict.Pass,
            $"Of stock road vehicles standing so, about {100 * risk:0} % of single-vehicle crashes were rollovers{(kept is { } later && f >= Fitted ? $" ({100 * later:0} % by the later relation)" : "")}: the band of {stars} of 5 stars.",
            100 * risk, "%", "NHTSA risk bands; fits from memory");
        return new(Ratio.FromDecimalFractions(risk), Told(kept), Told(tipped));
    }

    private static double? Later(double f, double c) => f > 0.90 ? 1 / (1 + Math.Exp(c + (1.1686 * Math.Log(f - 0.90)))) : null;

    private static Ratio? Told(double? r) => r is { } v ? Ratio.FromDecimalFractions(v) : null;
}
