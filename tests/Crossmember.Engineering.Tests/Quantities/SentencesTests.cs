using System.Globalization;
using System.Text.RegularExpressions;
using Crossmember.Engineering.Quantities;
using CsCheck;

namespace Crossmember.Engineering.Tests.Quantities;

/// <summary>Findings are worded once and read in two systems. Factors: 1 lb = 0.45359237 kg, 1 mile = 1609.344 m, 1 lbf = 4.4482216152605 N, F = 1.8 C + 32 (NIST SP 811, 2008, appendix B).</summary>
public class SentencesTests
{
    [Theory]
    [InlineData("The rear axle carries 1564 kg of 1497 kg.", "The rear axle carries 3448 lb of 3300 lb.")]
    [InlineData("It pulls 14.592 kN.", "It pulls 3280.4 lbf.")]
    [InlineData("front +2 kg, rear -18 kg (give or take 11 kg)", "front +4.41 lb, rear -39.7 lb (give or take 24.3 lb)")]
    [InlineData("20-30 kg stay as they are written", "20-30 kg stay as they are written")]
    [InlineData("Top speed 162 km/h, asked 65 mph.", "Top speed 101 mph, asked 65 mph.")]
    [InlineData("330 N m at the shaft.", "243 lbf ft at the shaft.")]
    [InlineData("The springs give 35.0 N/mm.", "The springs give 200 lbf/in.")]
    [InlineData("It gets to 465 C at 20.4 km from here, -40 C at night, -10 C by day.", "It gets to 869 F at 12.7 mile from here, -40 F at night, 14 F by day.")]
    [InlineData("It stands after 79 m of 80.5 m allowed, at 5.1 m/s2.", "It stands after 259 ft of 264 ft allowed, at 5.1 m/s2.")]
    [InlineData("2714 rpm at 4.27:1, 6.79 % apart.", "2714 rpm at 4.27:1, 6.79 % apart.")]
    public void American_readers_read_their_own(string worded, string read) => Assert.Equal(read, Sentences.InMeasures(worded, MeasureSystem.UsCustomary));

    [Theory]
    [InlineData("3300 lb on 33 in tires at 65 mph.", "1497 kg on 33 in tires at 105 km/h.")]
    [InlineData("1564 kg of 1497 kg.", "1564 kg of 1497 kg.")]
    [InlineData("gear 3 in low range", "gear 3 in low range")]
    [InlineData("A 5,200 lb axle, LT235 lb", "A 5,200 lb axle, LT235 lb")]
    [InlineData("120 lbf ft in the stall", "163 N m in the stall")]
    public void Metric_readers_read_theirs_and_inches_stay(string worded, string read) => Assert.Equal(read, Sentences.InMeasures(worded, MeasureSystem.Metric));

    [Fact]
    public void Whatever_is_turned_agrees_to_the_figures_shown() => Gen.Double[0.5, 50000].Sample(kg =>
    {
        var written = kg.ToString("0.0", CultureInfo.InvariantCulture);
        var read = Regex.Match(Sentences.InMeasures($"It weighs {written} kg.", MeasureSystem.UsCustomary), @"([\d.]+) lb").Groups[1].Value;
        var pounds = double.Parse(written, CultureInfo.InvariantCulture) / 0.45359237;
        Assert.Equal(pounds, double.Parse(read, CultureInfo.InvariantCulture), Math.Max(0.006 * pounds, 1e-9));
    });

    [Fact]
    public void A_sentence_without_quantities_is_left_alone() => Assert.Equal("It feeds nothing.", Sentences.InMeasures("It feeds nothing.", MeasureSystem.Metric));

    /// <summary>1563.554 kg are 3447.04 lb (0.45359237 kg each, NIST SP 811, appendix B.8); 1564 kg, as the sentence has it, would be 3448.</summary>
    [Fact]
    public void A_figure_that_was_rounded_for_the_sentence_is_turned_from_the_exact_number()
    {
        Assert.Equal("The axle carries 3447 lb of 3300 lb.", Sentences.InMeasures("The axle carries 1564 kg of 1497 kg.", MeasureSystem.UsCustomary, [(1563.554, "kg"), (1496.855, "kg")]));
        Assert.Equal("The axle carries 3448 lb of 3300 lb.", Sentences.InMeasures("The axle carries 1564 kg of 1497 kg.", MeasureSystem.UsCustomary));
        Assert.Equal("It is 3448 lb.", Sentences.InMeasures("It is 1564 kg.", MeasureSystem.UsCustomary, [(1570.0, "kg"), (null, null), (1564.2, "lb")]));
    }
}
