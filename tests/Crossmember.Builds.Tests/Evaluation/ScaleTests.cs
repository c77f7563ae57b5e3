using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Tests.Evaluation;

/// <summary>Readings that cannot be, a height from a raised axle, and a later weighing against what the ledger led to expect.</summary>
public sealed class ScaleTests
{
    private const string Lockers = """
        ,{"id":"lockers","parent":"vehicle","title":"Lockers","options":[{"id":"as-found","masses":[{"id":"lockers","mass":"80 kg","at":["2.56 m","0 m","0.5 m"],"basis":"assumed"}]},{"id":"gone","class":"none","masses":[]}]}
        ,{"id":"seat","parent":"vehicle","title":"Seat","options":[{"id":"as-found","masses":[{"id":"bench","mass":"30 kg","at":["2.56 m","0 m","0.5 m"],"basis":"measured"}]},{"id":"gone","class":"none","masses":[]}]}
        """;

    private static string Weighing(string date, double front, double rear, string rest = "\"fitted\":{}") =>
        FormattableString.Invariant($$"""{"date":"{{date}}","axles":{"front":"{{front}} kg","rear":"{{rear}} kg"},"readingError":"1 kg","wheelbase":"2560 mm","condition":"empty",{{rest}}}""");

    private static Sheet Of(params string[] weighings) => Opened.Vehicle(Lockers, top: $"\"weighings\":[{string.Join(',', weighings)}],").Sheet();

    [Fact]
    public void What_the_scale_says_more_is_put_down_to_the_least_certain_part()
    {
        // Lockers guessed at 80 kg (give or take 16), bench weighed at 30 kg (give or take 0.3): both over the rear axle. The scale drops by 98 kg, not 110.
        // Least squares by hand (kg2): rear 256 + 0.09 + two readings 2 + places 5.5 = 263.6, front 2 + 5.5 = 7.5, between them -5.5; the lockers take 256 x 7.5 x 12 / (263.6 x 7.5 - 5.5^2) = 11.8 kg.
        var sheet = Of(Weighing("2026-01-10", 1000, 1000), Weighing("2026-02-10", 1000, 902, """ "fitted":{"lockers":"gone","seat":"gone"} """));
        var text = sheet.ModelFindings.Single(f => f.Id == "model/scale[2026-02-10]").Finding;
        Assert.Equal(Verdict.Pass, text.Verdict);
        Assert.True(text.Text.Contains("lockers of lockers (-11.8 kg on 80 kg)", StringComparison.Ordinal), text.Text);
        var comparison = sheet.Scale.Single();
        Assert.Equal(12, comparison.Rear, 1e-9);
        // Places at the axle are doubtful by 75 mm of 80 kg and 10 mm of 30 kg, from axle to axle.
        Assert.Equal(Math.Sqrt(256 + 0.09 + 1 + 1 + Math.Pow(80 * 0.075 / 2.56, 2) + Math.Pow(30 * 0.010 / 2.56, 2)), comparison.RearError, 1e-9);
        Assert.Equal(12, comparison.Likely.Where(l => l.Entry.X > 2).Sum(l => l.Kilograms), 0.2);
    }

    [Fact]
    public void A_difference_beyond_all_doubt_is_a_caution()
    {
        var sheet = Of(Weighing("2026-01-10", 1000, 1000), Weighing("2026-02-10", 1000, 1040));
        var finding = sheet.ModelFindings.Single(f => f.Id == "model/scale[2026-02-10]").Finding;
        Assert.Equal(Verdict.Caution, finding.Verdict);
        Assert.Contains("nobody wrote down", finding.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void One_weighing_has_nothing_to_be_held_against() => Assert.DoesNotContain(Of(Weighing("2026-01-10", 1000, 1000)).ModelFindings, f => f.Id.StartsWith("model/scale", StringComparison.Ordinal));

    [Fact]
    public void A_raised_axle_gives_the_height_on_the_sheet()
    {
        // Derived: 2150 kg, wheelbase 2.560 m, wheel centers 0.400 m, rear lifted 0.600 m, front 1065.01 -> 1129.80 kg: 0.720 m; the datum 0.5 m up that day.
        var sheet = Of(Weighing("2026-01-10", 1065.01, 1084.99, """
            "datumHeight":"0.5 m","raised":{"lifted":"rear","by":"600 mm","reading":"1129.80 kg","wheelRadius":{"front":"400 mm","rear":"400 mm"}},"fitted":{}
            """));
        Assert.Equal(220, Opened.Told(sheet, "mass.empty.center-z"), 0.5);
        // One kilogram on each of two readings is 4.94 mm each, and the tape adds a little.
        Assert.InRange(sheet.Key("mass.empty.center-z")!.Value.PlusMinus, 0.0070, 0.0090);
        Assert.Equal(0.720, sheet.Instance("mass.center-of-gravity-height")!.Outcome.Outputs[0].Number, 0.0005);
    }

    [Fact]
    public void Raising_the_front_gives_the_same_height_as_raising_the_rear()
    {
        static string Raised(string axle, double reading) => FormattableString.Invariant(
            $$""" "datumHeight":"0 m","raised":{"lifted":"{{axle}}","by":"600 mm","reading":"{{reading}} kg","wheelRadius":{"front":"400 mm","rear":"400 mm"} },"fitted":{} """);
        Assert.Equal(Opened.Told(Of(Weighing("2026-01-10", 1065, 1085, Raised("rear", 1129.8))), "mass.empty.center-z"),
            Opened.Told(Of(Weighing("2026-01-10", 1065, 1085, Raised("front", 1149.8))), "mass.empty.center-z"), 0.001);
    }

    [Fact]
    public void A_raised_reading_that_cannot_be_leaves_the_height_unknown_and_is_named()
    {
        var sheet = Of(Weighing("2026-01-10", 1065, 1085, """ "datumHeight":"0 m","raised":{"lifted":"rear","by":"600 mm","reading":"800 kg","wheelRadius":{"front":"400 mm","rear":"400 mm"}},"fitted":{} """));
        var finding = sheet.ModelFindings.Single(f => f.Id == "model/weighing[2026-01-10,raised]").Finding;
        Assert.Equal(Verdict.Fail, finding.Verdict);
        Assert.Contains("rear axle raised", finding.Text, StringComparison.Ordinal);
        Assert.True(sheet.Key("mass.empty.moment-z")!.Value.Value.IsAbsent);
        Assert.Equal(2150, Opened.Told(sheet, "mass.empty.total"), 9);
    }

    [Fact]
    public void Three_wheels_make_the_weighing_worthless_and_the_reading_is_named()
    {
        var sheet = Opened.Vehicle("", top: """
            "weighings":[{"date":"2026-01-10","wheels":{"front":{"left":"700 kg","right":"4 kg"},"rear":{"left":"560 kg","right":"525 kg"}},"wheelbase":"2560 mm","condition":"empty","fitted":{}}],
            """).Sheet();
        var finding = sheet.ModelFindings.Single(f => f.Id == "model/weighing[2026-01-10,front.right]").Finding;
        Assert.Equal(Verdict.Fail, finding.Verdict);
        Assert.Contains("right front", finding.Text, StringComparison.Ordinal);
        Assert.True(sheet.Key("mass.empty.total")!.Value.Value.IsAbsent);
        Assert.Null(sheet.Totals.Mass.Kilograms);
    }

    [Fact]
    public void Who_was_on_board_that_day_is_taken_off()
    {
        var sheet = Of(Weighing("2026-01-10", 1000, 1000, """ "onBoard":[{"id":"driver","mass":"80 kg","at":["1.28 m","-0.4 m","0.6 m"]}],"fitted":{} """));
        Assert.Equal(1920, Opened.Told(sheet, "mass.empty.total"), 9);
        Assert.Equal(960, Opened.Told(sheet, "axle.front.empty.load"), 9);
    }

    // Three men of 600 lb, guessed, aboard both times: their doubt cancels as if nobody had been aboard.
    [Fact]
    public void Who_stayed_on_board_brings_no_doubt_to_the_comparison()
    {
        const string Men = """ "onBoard":[{"id":"three men","mass":"272 kg","at":["1.28 m","0 m","0.6 m"],"basis":"assumed"}],"fitted":{} """;
        var aboard = Of(Weighing("2026-01-10", 1136, 1136, Men), Weighing("2026-02-10", 1086, 1096, Men)).Scale.Single();
        var nobody = Of(Weighing("2026-01-10", 1000, 1000), Weighing("2026-02-10", 950, 960)).Scale.Single();
        Assert.Equal((nobody.Front, nobody.Rear), (aboard.Front, aboard.Rear));
        Assert.Equal(nobody.FrontError, aboard.FrontError, 1e-9);
        Assert.False(aboard.Agrees);
    }

    // Four scales of 2 kg: an axle is known to root 2 times 2 kg, and 4.94 mm of height a kilogram twice over; tape besides.
    [Fact]
    public void The_height_from_wheel_scales_has_the_doubt_of_two_scales_an_axle()
    {
        double Doubt(string readings) => Opened.Vehicle("", top: $$$"""
            "weighings":[{"date":"2026-01-10",{{{readings}}},"readingError":"2 kg","wheelbase":"2560 mm","datumHeight":"0 m","raised":{"lifted":"rear","by":"600 mm","reading":"1129.8 kg","wheelRadius":{"front":"400 mm","rear":"400 mm"}},"condition":"empty","fitted":{}}],
            """).Sheet().Key("mass.empty.center-z")!.Value.PlusMinus;
        double axles = Doubt(""" "axles":{"front":"1065 kg","rear":"1085 kg"} """), wheels = Doubt(""" "wheels":{"front":{"left":"545 kg","right":"520 kg"},"rear":{"left":"560 kg","right":"525 kg"}} """);
        Assert.InRange(axles, 0.0139, 0.0155);
        Assert.InRange(wheels / axles, 1.3, 1.42);
    }
}
