using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Springs;

public class ShackleTests
{
    // Independent: a circular arc of fixed length on a real shackle, load and rate by small movements. Said beforehand: within 1.5 % while the arch stays under 5 % of the length.
    [Fact]
    public void Rate_agrees_with_an_arc_moved_step_by_step() =>
        Gen.Select(Gen.Double[30, 250], Gen.Double[900, 1400], Gen.Double[0.002, 0.05], Gen.Double[60, 150], Gen.Double[-30, 30], Gen.Double[20, 120]).Sample((k, S, share, s, lean, pressed) =>
        {
            var p = share * S;
            var arch = new HungArch(k * 1000, S / 1000, (p + pressed) / 1000, s / 1000, lean * Math.PI / 180, p / 1000);
            var m = arch.Load(p / 1000) / 9.80665;
            var r = Of(k, S, p + pressed, m, lean, s);
            var expected = arch.Rate(p / 1000) / 1000;
            Assert.Equal(expected, r.Number("installedRate")!.Value, 0.015 * expected);
            Assert.Equal(p, r.Number("arch")!.Value, Math.Max(0.2, 0.01 * p));
        }, iter: 60);

    // Derived: flat under its load, K = k + 8 W tan(th) / (3 S), the same amount softer for the same lean the other way.
    [Theory]
    [InlineData(20, 206.35)]
    [InlineData(-20, 193.65)]
    [InlineData(0, 200)]
    public void A_flat_spring_changes_with_the_lean_alone(double lean, double rate) => Of(200, 1200, 800 * 9.80665 / 200, 800, lean, 100).Gives("installedRate", rate, 0.02);

    [Fact]
    public void An_unloaded_spring_with_an_upright_shackle_is_itself()
    {
        var r = Of(200, 1200, 0, 0, 0, 100);
        r.Gives("installedRate", 200, 1e-9);
        r.Gives("change", 0, 1e-9);
    }

    [Fact]
    public void A_shackle_in_line_with_its_spring_is_refused()
    {
        var r = Of(200, 1200, 80, 800, 70, 100);
        Assert.Equal("fail", r.Verdict("swing"));
        Assert.Null(r.Number("installedRate"));
        Assert.Contains("70 deg", r.Finding("swing")["text"]!.GetValue<string>());
    }

    private static JsonObject Of(double rate, double length, double arch, double load, double lean, double shackle) => Door.Run("springs.shackle",
        $$"""{"rate":"{{rate:R}} N/mm","length":"{{length:R}} mm","freeArch":"{{arch:R}} mm","load":"{{load:R}} kg","shackleAngle":"{{lean:R}} deg","shackleLength":"{{shackle:R}} mm"}""");
}
