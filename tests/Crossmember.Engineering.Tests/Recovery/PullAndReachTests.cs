using System.Text.Json.Nodes;
using Crossmember.Engineering.Reading;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Recovery;

public class PullAndReachTests
{
    private static readonly string[] s_grounds = ["hard surface", "soft dry sand", "bog", "mired to the hubs"];

    private const double Pound = 4.4482216e-3, Kilogram = 9.80665e-3; // kN of weight

    // Common practice, no source: 0.10 on a hard surface, 0.33 on grass or gravel, the high end of the table: 4000 lb take 400 and 1320 lb.
    [Theory]
    [InlineData("hard surface", 400)]
    [InlineData("grass or gravel", 1320)]
    public void Four_thousand_pounds_on_the_level(string ground, double lbf) => Needed("4000 lb", "0", ground).Gives("high", lbf * Pound, 0.5 * Pound);

    // Common practice, no source: 15, 30 and 45 deg take 25, 50 and 75 % of the weight; exactly it is the sine: 25.9, 50, 70.7 %.
    [Theory]
    [InlineData(15, 25.9)]
    [InlineData(30, 50)]
    [InlineData(45, 70.7)]
    public void What_the_grade_takes_is_the_sine(double degrees, double percent) =>
        Needed("1000 kg", $"{Math.Tan(degrees * Math.PI / 180):R}", "hard surface").Gives("gradePull", percent * 10 * Kilogram, 0.5 * Kilogram);

    // Derived: 2340 (0.25 cos 20 + sin 20) = 1350 kgf; with the share on the full weight, as the manuals reckon, 1385 kgf.
    [Fact]
    public void Twenty_degrees_of_soft_dry_sand()
    {
        var r = Needed("2340 kg", "0.3639702", "soft dry sand");
        r.Gives("pull", 1350 * Kilogram, Kilogram);
        r.Gives("ruleOfManuals", 1385 * Kilogram, Kilogram);
    }

    // US Army FM 20-22 and FM 9-43-2, from memory: hub, fender, cab deep take 1, 2, 3 times the weight; the slope comes on top and is multiplied with nothing.
    [Theory]
    [InlineData("mired to the hubs", 1)]
    [InlineData("mired to the fenders", 2)]
    [InlineData("mired to the cab", 3)]
    public void Mire_factors_are_of_the_whole_weight(string ground, double factor)
    {
        Needed("3000 kg", "0", ground).Gives("pull", factor * 3000 * Kilogram, 1e-9);
        Needed("3000 kg", "0.75", ground).Gives("pull", (factor + 0.6) * 3000 * Kilogram, 1e-9);
    }

    [Fact]
    public void Every_row_of_the_table_is_in_order_and_says_where_it_is_from()
    {
        var table = ReferenceTable.Load("ground-resistance.csv");
        Assert.NotEmpty(table.Rows);
        foreach (var row in table.Rows)
        {
            double low = table.Number(row, "low"), likely = table.Number(row, "likely"), high = table.Number(row, "high");
            Assert.True(low < likely && likely < high, row[0]);
            Assert.Contains(table.Text(row, "kind"), new[] { "rolling", "mired" });
            Assert.Contains(table.Text(row, "provenance"), new[] { "trade", "handbook-memory" });
            Assert.NotEmpty(table.Text(row, "source"));
            Assert.NotEmpty(table.Text(row, "spread"));
            var r = Needed("1000 kg", "0", table.Text(row, "ground"));
            Assert.Equal(new double?[] { low * 9.80665, likely * 9.80665, high * 9.80665 }, [r.Number("low"), r.Number("pull"), r.Number("high")], (a, b) => Math.Abs(a!.Value - b!.Value) < 1e-9);
        }
    }

    [Fact]
    public void A_ground_that_is_not_in_the_table_is_refused() =>
        Assert.Contains("must be one of: hard surface", Door.Faults("recovery.pull-needed", """{"mass":"1000 kg","grade":"0","ground":"snow"}""")[0].Right);

    [Fact]
    public void Capitals_make_no_other_ground() => Needed("1000 kg", "0", "Hard Surface").Gives("high", 0.1 * 1000 * Kilogram, 1e-9);

    // Weight resolved along and square to the slope is the weight again; low, likely and high spread about the same slope.
    [Fact]
    public void The_pull_lies_between_low_and_high_and_grows_with_the_mass() =>
        Gen.Select(Gen.Double[500, 9000], Gen.Double[0, 1.2], Gen.Double[1.01, 3]).Sample((kg, grade, times) =>
        {
            JsonObject one = Needed($"{kg:R} kg", $"{grade:R}", "shallow mud"), more = Needed($"{kg * times:R} kg", $"{grade:R}", "shallow mud");
            Assert.True(one.Number("low") < one.Number("pull") && one.Number("pull") < one.Number("high"));
            Assert.Equal(times, more.Number("pull")!.Value / one.Number("pull")!.Value, 1e-9);
            double up = one.Number("gradePull")!.Value, rolling = 3 * (one.Number("pull")!.Value - up);
            Assert.Equal(kg * Kilogram, Math.Sqrt((up * up) + (rolling * rolling)), 1e-6 * kg * Kilogram);
        }, iter: 100);

    // Derived: margin 1.5 leaves 2873 and 1613 kgf of 4310 and 2420; on 2340 kg with a third of drag 2873 is over sqrt(1 + 1/9) of the weight: any slope; 1613: 22.42 deg = 41.3 %.
    [Fact]
    public void First_layer_and_full_drum_on_shallow_mud()
    {
        var r = Reach("shallow mud", "0.2");
        r.Gives("firstLayerUsable", 2873 * Kilogram, 0.5 * Kilogram);
        Assert.Null(r.Number("firstLayerSlope"));
        r.Gives("fullDrumUsable", 1613 * Kilogram, 0.5 * Kilogram);
        r.Gives("fullDrumSlope", 22.42, 0.01);
        Assert.Equal(41.3, 100 * Math.Tan(r.Number("fullDrumSlope")!.Value * Math.PI / 180), 0.05);
    }

    // On the slope that comes out the pull along it is the pull at hand again.
    [Fact]
    public void On_the_slope_found_the_forces_balance() =>
        Gen.Select(Gen.Double[5, 60], Gen.Double[600, 6000], Gen.Int[0, 3].Select(i => s_grounds[i]), Gen.Double[1, 3]).Sample((kN, kg, ground, margin) =>
        {
            var r = Door.Run("recovery.winch-reach",
                $$"""{"firstPull":"{{kN * 1.5:R}} kN","fullPull":"{{kN:R}} kN","mass":"{{kg:R}} kg","grade":"0","ground":"{{ground}}","margin":"{{margin:R}}"}""");
            if (r.Number("fullDrumSlope") is not { } slope || slope <= -89) return;
            var needed = Needed($"{kg:R} kg", "0", ground).Number("pull")!.Value / (kg * Kilogram);
            double th = slope * Math.PI / 180, share = ground.StartsWith("mired", StringComparison.Ordinal) ? needed : needed * Math.Cos(th);
            Assert.Equal(kN / margin, kg * Kilogram * (Math.Sin(th) + share), 1e-6 * kN);
        }, iter: 200);

    // 1613 kgf on the full drum: 817 kgf on the level hard surface at 0.2; 1300 kgf on shallow mud; 2800 kgf in mire, where two parts carry 2800 x 1.1 / 2 = 1540 kgf.
    [Theory]
    [InlineData("hard surface", "pass", 1, "A single line is enough")]
    [InlineData("shallow mud", "pass", 1, "A single line is enough")]
    [InlineData("clinging clay", "caution", 1, "may be enough: have a block at hand")]
    [InlineData("mired to the hubs", "caution", 2, "With the drum full, as it is near the end of a pull, rig a double line over 1 block")]
    [InlineData("mired to the fenders", "caution", 5, "rig 5 parts of line over 4 blocks")]
    [InlineData("mired to the cab", "caution", null, "With the drum full not even 6 parts of line are enough")]
    public void How_many_parts_the_ground_takes(string ground, string verdict, int? parts, string says)
    {
        var r = Reach(ground, "0.2");
        Assert.Equal(verdict, r.Verdict("single-line"));
        Assert.Equal(parts, (int?)r.Number("parts"));
        Assert.Contains(says, r.Finding("single-line")["text"]!.GetValue<string>());
    }

    private static JsonObject Needed(string mass, string grade, string ground) =>
        Door.Run("recovery.pull-needed", $$"""{"mass":"{{mass}}","grade":"{{grade}}","ground":"{{ground}}"}""");

    private static JsonObject Reach(string ground, string grade) => Door.Run("recovery.winch-reach",
        $$"""{"firstPull":"4310 kgf","fullPull":"2420.23 kgf","mass":"2340 kg","grade":"{{grade}}","ground":"{{ground}}"}""");
}
