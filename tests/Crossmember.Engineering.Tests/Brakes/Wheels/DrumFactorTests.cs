using System.Globalization;
using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Brakes.Wheels;

/// <summary>Brake factors of drums against a handbook's case, hand figures, and shoes cut into pieces.</summary>
public class DrumFactorTests
{
    // Shigley, Mechanical Engineering Design, problem 16-1 (inputs from memory): 300 mm drum, pins 125 mm out and 30 deg off the middle, linings 0 to 120 deg, 40 mm wide, mu 0.28, 2.2 kN at each shoe.
    // Remembered answer 734 kPa and 277 + 144 N m; worked again: 277.6 and 144.4 N m, factor 1.279, locking at 0.887.
    [Fact]
    public void The_handbooks_drum_with_two_pins_comes_out()
    {
        var r = Drum("leading-trailing", 0.28, 300, 125, 125 * Math.Cos(Math.PI / 6), lining: (0, 120), spread: 125);
        r.Gives("factor", 1.279, 0.0005);
        r.Gives("lockFriction", 0.887, 0.0005);
        r.Gives("factor", (277.6 + 144.4) / (2200 * 0.15), 0.0005);
        var leading = Worked(r, "T lead");
        var trailing = Worked(r, "T trail");
        Assert.Equal(277.6, 2200 * leading, 0.05);
        Assert.Equal(144.4, 2200 * trailing, 0.05);
        // Peak pressure = T / (mu b r^2 (cos 0 - cos 120 deg)).
        Assert.Equal(734.5e3, 2200 * leading / (0.28 * 0.040 * 0.15 * 0.15 * 1.5), 100.0);
        Assert.Equal(382.0e3, 2200 * trailing / (0.28 * 0.040 * 0.15 * 0.15 * 1.5), 100.0);
    }

    // Derived: with anchor, cylinder and link at the same distance a and k = mu r / a the factors are 4 mu / (1 - k^2), 4 mu / (1 - k), 4 mu / (1 - k)^2.
    [Theory]
    [InlineData("leading-trailing", 1.6999, 1.428)]
    [InlineData("two-leading", 2.4138, 1.724)]
    [InlineData("duo-servo", 4.1617, 2.448)]
    public void Without_lining_ends_the_idealised_factor_stands_in_and_is_told(string kind, double factor, double sensitivity)
    {
        var r = Drum(kind, 0.35, 240, 100, 100);
        r.Gives("factor", factor, 0.00005);
        r.Gives("sensitivity", sensitivity, 0.0005);
        r.Gives("lockFriction", 100.0 / 120, 1e-9);
        Assert.Contains("Assumed:", r["cautions"]!.ToJsonString());
        Assert.Contains("idealised", r.Finding("geometry")["text"]!.GetValue<string>());
    }

    // The same case by hand: F 1000 N, N1 3448.3, link 2448.3, N2 8442.3 N; each shoe's torque is mu r N.
    [Fact]
    public void Forces_in_a_duo_servo_brake_are_those_by_hand()
    {
        var r = Drum("duo-servo", 0.35, 240, 100, 100);
        Assert.Equal(2448.3, 1000 * Worked(r, "S"), 0.05);
        Assert.Equal(3448.3, 1000 * Worked(r, "T1") / (0.35 * 0.12), 0.05);
        Assert.Equal(8442.3, 1000 * Worked(r, "T2") / (0.35 * 0.12), 0.05);
        Assert.Equal(5994.1, 1000 * ((Worked(r, "T2") / (0.35 * 0.12)) - Worked(r, "S")), 0.15); // at the top: pin and cylinder together; the source rounds
    }

    // Plain Python 3: both shoes cut into 20,000 pieces, the first shoe's shift found by halving (upright forces to zero), pieces without contact left out:
    //   k = (h + e) / (e X - mu r P); T1 = mu r k P; S = k X - 1; second shoe by sums of sin^2, sin (r - a cos), sin.
    // In the first seven the lining lifts off at its upper end, in the next two it touches all over, in the last two it lifts off at its lower end.
    [Theory]
    [InlineData(0.25, 25, 145, 2.62176148, 1.97028777)]
    [InlineData(0.35, 25, 145, 5.69157065, 2.65000122)]
    [InlineData(0.45, 25, 145, 12.57363543, 3.56334331)]
    [InlineData(0.25, 40, 130, 2.30672688, 1.87917532)]
    [InlineData(0.35, 40, 130, 4.79807888, 2.48495146)]
    [InlineData(0.45, 40, 130, 9.93263293, 3.29134221)]
    [InlineData(0.3, 20, 170, 4.89899596, 2.55367605)]
    [InlineData(0.15, 60, 150, 1.04574169, 1.42879802)]
    [InlineData(0.3, 70, 165, 4.65539966, 2.26859629)]
    [InlineData(0.2, 80, 175, 1.88756148, 1.60802516)]
    [InlineData(0.1, 75, 175, 0.60106978, 1.20605890)]
    public void A_duo_servo_brake_comes_out_as_its_shoes_cut_into_pieces(double mu, double start, double end, double factor, double link)
    {
        var r = Drum("duo-servo", mu, 279.4, 110, 95, lining: (start, end), link: 105);
        r.Gives("factor", factor, factor * 1e-6);
        r.Gives("reverseFactor", factor, factor * 1e-6);
        var told = Worked(r, "S");
        Assert.Equal(link, told, link * 1e-6);
        Assert.DoesNotContain("Assumed", r["cautions"]!.ToJsonString());
    }

    // The same program: 127 mm drum radius, 100 and 95 mm, linings 25 to 140 deg, mu 0.38.
    [Theory]
    [InlineData("leading-trailing", 2.38798948, 2.38798948)]
    [InlineData("two-leading", 3.65135722, 1.12462175)]
    public void Pivoted_shoes_come_out_as_cut_into_pieces_forward_and_backward(string kind, double forward, double backward)
    {
        var r = Drum(kind, 0.38, 254, 100, 95, lining: (25, 140));
        r.Gives("factor", forward, 1e-7);
        r.Gives("reverseFactor", backward, 1e-7);
    }

    // A lining of a degree at a right angle from its pivot is the idealised shoe.
    [Fact]
    public void A_short_lining_is_the_idealised_factor() =>
        Gen.Select(Gen.Double[0.1, 0.5], Gen.Double[100, 130], Gen.Double[70, 95], Gen.Double[60, 95], Gen.Bool).Sample((mu, r, a, h, two) =>
        {
            var kind = two ? "two-leading" : "leading-trailing";
            var factor = Drum(kind, mu, 2 * r, a, h).Number("factor")!.Value;
            Drum(kind, mu, 2 * r, a, h, lining: (89.5, 90.5)).Gives("factor", factor, factor * 1e-3);
        }, iter: 50);

    // As friction goes to nothing every factor goes to 2 mu times what both shoes are pressed with, and a percent of friction is a percent of torque.
    [Theory]
    [InlineData("leading-trailing")]
    [InlineData("two-leading")]
    [InlineData("duo-servo")]
    public void With_little_friction_nothing_helps_itself(string kind)
    {
        var r = Drum(kind, 1e-6, 240, 100, 100);
        r.Gives("factor", 4e-6, 1e-10);
        r.Gives("sensitivity", 1, 1e-4);
        r.Gives("reverseFactor", 4e-6, 1e-10);
    }

    // Scale: every length doubled leaves the factor alone.
    [Fact]
    public void A_drum_twice_the_size_has_the_same_factor() =>
        Gen.Select(Gen.Double[0.1, 0.4], Gen.Double[80, 110], Gen.Double[60, 80], Gen.Int[0, 2], Gen.Double[0, 50], Gen.Double[100, 160]).Sample((mu, a, h, k, from, to) =>
        {
            var kind = ((string[])["leading-trailing", "two-leading", "duo-servo"])[k];
            var one = Drum(kind, mu, 240, a, h, lining: (from, to), link: h).Number("factor");
            if (one is { } f) Drum(kind, mu, 480, 2 * a, 2 * h, lining: (from, to), link: 2 * h).Gives("factor", f, f * 1e-9);
        }, iter: 100);

    // The sensitivity is the slope that two neighbouring frictions show; it grows with friction and is never below one for a drum that helps itself.
    [Fact]
    public void Sensitivity_is_what_a_little_more_friction_does() =>
        Gen.Select(Gen.Double[0.15, 0.4], Gen.Int[0, 2]).Sample((mu, k) =>
        {
            var kind = ((string[])["leading-trailing", "two-leading", "duo-servo"])[k];
            JsonObject At(double f) => Drum(kind, f, 254, 100, 92, lining: (30, 140), link: 98);
            double s = At(mu).Number("sensitivity")!.Value, up = At(mu * 1.001).Number("factor")!.Value, down = At(mu / 1.001).Number("factor")!.Value;
            Assert.Equal(Math.Log(up / down) / Math.Log(1.001 * 1.001), s, 1e-4);
            Assert.True(s > 1);
        }, iter: 60);

    [Theory]
    [InlineData("leading-trailing", 0.84)]
    [InlineData("two-leading", 0.84)]
    [InlineData("duo-servo", 0.84)]
    [InlineData("duo-servo", 5)]
    public void Past_the_friction_that_locks_there_is_no_number(string kind, double mu)
    {
        var r = Drum(kind, mu, 240, 100, 100); // locks at 100 / 120
        Assert.Equal("fail", r.Verdict("self-locking"));
        Assert.Contains("0.83", r.Finding("self-locking")["text"]!.GetValue<string>());
        Assert.Null(r.Number("factor"));
        Assert.Null(r.Number("sensitivity"));
        r.Gives("lockFriction", 100.0 / 120, 1e-9);
    }

    [Fact]
    public void Near_the_friction_that_locks_is_a_caution()
    {
        Assert.Equal("caution", Drum("duo-servo", 0.68, 240, 100, 100).Verdict("self-locking"));
        Assert.Equal("pass", Drum("duo-servo", 0.65, 240, 100, 100).Verdict("self-locking"));
    }

    // A lining that lies all above the level finds no hold against friction that drags it down: it locks from a friction of tan of its lower end on.
    [Fact]
    public void A_first_shoe_without_hold_is_no_number()
    {
        var r = Drum("duo-servo", 0.4, 240, 100, 90, lining: (30, 105), link: 95);
        Assert.Equal("fail", r.Verdict("self-locking"));
        Assert.InRange(r.Number("lockFriction")!.Value, 0.01, Math.Tan(15 * Math.PI / 180) + 1e-9);
        Assert.Null(r.Number("factor"));
    }

    [Theory]
    [InlineData(""" "anchorDistance":"121 mm","actuatorDistance":"90 mm" """, "The anchor would lie")]
    [InlineData(""" "anchorDistance":"100 mm","actuatorDistance":"120 mm" """, "The wheel cylinder's line")]
    [InlineData(""" "anchorDistance":"100 mm","actuatorDistance":"90 mm","liningStart":"130 deg","liningEnd":"30 deg" """, "read both ends again")]
    [InlineData(""" "anchorDistance":"100 mm","actuatorDistance":"90 mm","liningStart":"30 deg","liningEnd":"190 deg" """, "onto the other shoe")]
    public void What_cannot_be_names_the_reading(string readings, string told)
    {
        var r = Door.Run("brakes.factor", $$"""{"kind":"drum","friction":"0.35","drumKind":"leading-trailing","drumDiameter":"240 mm",{{readings}}}""");
        Assert.Equal("fail", r.Verdict("geometry"));
        Assert.Contains(told, r.Finding("geometry")["text"]!.GetValue<string>());
        Assert.Null(r.Number("factor"));
    }

    [Theory]
    [InlineData("leading-trailing", 100, 90, 210, 90, "Pins")]
    [InlineData("duo-servo", 100, 90, 0, 125, "The link would lie")]
    [InlineData("duo-servo", 90, 100, 0, 80, "the pin lies beyond the cylinder")]
    public void What_cannot_be_of_one_kind_names_the_reading(string kind, double anchor, double opening, double spread, double link, string told)
    {
        var r = Drum(kind, 0.35, 240, anchor, opening, spread: spread, link: link);
        Assert.Equal("fail", r.Verdict("geometry"));
        Assert.Contains(told, r.Finding("geometry")["text"]!.GetValue<string>());
    }

    [Fact]
    public void A_servo_lining_all_on_one_side_of_the_hub_names_its_ends()
    {
        foreach (var lining in ((double, double)[])[(20, 88), (92, 160)])
        {
            var r = Drum("duo-servo", 0.1, 240, 100, 90, lining: lining, link: 95);
            Assert.Equal("fail", r.Verdict("geometry"));
            Assert.Contains("finds no hold", r.Finding("geometry")["text"]!.GetValue<string>());
        }
    }

    // SAE J866, from memory: E is 0.25 to 0.35 warm.
    [Theory]
    [InlineData(0.6, "EE", "caution")]
    [InlineData(0.36, "EF", "caution")]
    [InlineData(0.35, "EE", "pass")]
    [InlineData(0.25, "EF", "pass")]
    [InlineData(0.24, "EE", "caution")]
    public void A_friction_that_its_letters_do_not_have_is_told(double mu, string letters, string verdict)
    {
        foreach (var brake in (string[])[""" "kind":"disc" """, """ "kind":"drum","drumKind":"leading-trailing","drumDiameter":"240 mm","anchorDistance":"100 mm","actuatorDistance":"90 mm" """])
        {
            var r = Door.Run("brakes.factor", $$"""{ {{brake}},"friction":"{{mu:R}}","frictionLetters":"{{letters}}"}""");
            Assert.Equal(verdict, r.Verdict("geometry"));
            if (verdict == "caution") Assert.Contains("0.25 to 0.35", r.Finding("geometry")["text"]!.GetValue<string>());
            Assert.NotNull(r.Number("factor"));
        }
    }

    [Fact]
    public void Only_what_the_kind_needs_is_asked_for()
    {
        var disc = Door.Run("brakes.factor", """{"kind":"disc"}""");
        Assert.Contains("edge of the lining", disc.Finding("self-locking")["text"]!.GetValue<string>());
        Assert.Contains("SAE J866, from memory", disc.Finding("self-locking")["text"]!.GetValue<string>());
        Assert.DoesNotContain("anchor", disc.Finding("geometry")["text"]!.GetValue<string>());
        var drum = Door.Run("brakes.factor", """{"kind":"drum","friction":"0.35"}""");
        Assert.Equal("unknown", drum.Verdict("geometry"));
        Assert.Equal(["drumKind", "drumDiameter", "anchorDistance"], drum["missing"]!.AsArray().Select(m => m!["input"]!.GetValue<string>()));
        Assert.Contains("inner diameter of the drum is missing", drum.Finding("geometry")["text"]!.GetValue<string>());
    }

    private static double Worked(JsonObject r, string symbol) => r["working"]!.AsArray().Single(l => l!["symbol"]!.GetValue<string>() == symbol)!["value"]!["value"]!.GetValue<double>();

    /// <summary>Lengths in mm, angles in degrees.</summary>
    private static JsonObject Drum(string kind, double mu, double diameter, double anchor, double opening, (double From, double To)? lining = null, double? spread = null, double? link = null)
    {
        string N(double x) => x.ToString("R", CultureInfo.InvariantCulture);
        var more = (lining is { } l ? $""","liningStart":"{N(l.From)} deg","liningEnd":"{N(l.To)} deg" """ : "") + (spread is { } s ? $""","anchorSpread":"{N(s)} mm" """ : "")
            + (link is { } e ? $""","linkDistance":"{N(e)} mm" """ : "");
        return Door.Run("brakes.factor",
            $$"""{"kind":"drum","friction":"{{N(mu)}}","drumKind":"{{kind}}","drumDiameter":"{{N(diameter)}} mm","anchorDistance":"{{N(anchor)}} mm","actuatorDistance":"{{N(opening)}} mm"{{more}}}""");
    }
}
