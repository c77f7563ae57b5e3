using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Tests.Evaluation;

/// <summary>Uncertainty carried through calculations: JCGM 100:2008, 5.1.2 (root of summed squares); for a quotient the relative parts add (5.1.6).</summary>
public sealed class UncertaintyTests
{
    private const string Slot = """
        ,{"id":"gears","parent":"vehicle","title":"Gears","options":[{"id":"as-found","parameters":{
          "gearbox.*.ratio":1,"transfer.*.ratio":1,"duty.cruise-speed":{"value":"60 mph","basis":"measured","plusMinus":"0.6 mph"},
          "axle.rear.ratio":{"value":4.1,"basis":"measured","plusMinus":"0.0205"},"wheel.*.*.tire.size":"33x10.50R15LT"}}]}
        """;

    [Fact]
    public void Relative_parts_of_a_product_add_as_squares()
    {
        var state = Opened.Vehicle(Slot).Sheet().Instance("driveline.engine-speed[gear=1,range=high]")!;
        var (n, u) = (state.Outcome.Outputs[0].Number, state.PlusMinus![0]);
        // 1 % of the speed and 0.5 % of the ratio.
        Assert.Equal(Math.Sqrt((0.01 * 0.01) + (0.005 * 0.005)), u / n, 1e-9);
    }

    [Theory]
    [InlineData("839 mm", null, false)] // 0.1 % from the size's 838.2 mm, neither known: within the usual 2 %
    [InlineData("810 mm", null, true)]
    [InlineData("836 mm", "1 mm", true)] // 2.2 mm apart with 1 mm: more than two standard uncertainties
    [InlineData("836.5 mm", "1 mm", false)]
    public void A_stated_value_is_held_against_the_calculated_one(string diameter, string? plusMinus, bool differs)
    {
        var spread = plusMinus is null ? "" : $",\"plusMinus\":\"{plusMinus}\"";
        var sheet = Opened.Vehicle($$$"""
            ,{"id":"tires","parent":"vehicle","title":"Tires","options":[{"id":"as-found","parameters":{"wheel.*.*.tire.size":"33x10.50R15LT",
              "wheel.rear.left.tire.diameter":{"value":"{{{diameter}}}","basis":"measured"{{{spread}}} } } } ] }
            """).Sheet();
        Assert.Equal(differs, sheet.ModelFindings.Any(f => f.Id == "model/differs[wheel.rear.left.tire.diameter]" && f.Finding.Verdict == Verdict.Caution));
        Assert.Equal(double.Parse(diameter.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture), Opened.Told(sheet, "wheel.rear.left.tire.diameter"), 6);
    }
}
