using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Recovery;

public class ElectricalDemandTests
{
    // By hand on straight lines: 20 kN is halfway, 240 A and 6 m/min; 20 m take 3 min 20 s; 240 x 200 s = 13.33 A h; 0.4 x 70 A h at 200 A last 8.4 min.
    [Fact]
    public void A_pull_halfway_along_the_makers_lines()
    {
        var r = Draw("""{"empty":"12 kN","touring":"20 kN"}""");
        r.Gives("current", 240, 1e-9);
        r.Gives("pullMinutes", 10.0 / 3, 1e-9);
        r.Gives("charge", 40.0 / 3, 1e-9);
        r.Gives("batteryMinutes", 8.4, 1e-9);
        r.Gives("rechargeMinutes", 20, 1e-9);
        Assert.Equal("pass", r.Verdict("battery"));
    }

    // Charge is conserved: what the battery gave over the minutes it lasts is its usable share.
    [Fact]
    public void The_battery_gives_no_more_than_it_has() =>
        Gen.Select(Gen.Double[1, 39], Gen.Double[20, 200], Gen.Double[0, 79], Gen.Double[0.2, 0.8]).Sample((kN, Ah, spare, share) =>
        {
            var r = Draw($$"""{"touring":"{{kN:R}} kN"}""", $""" "batteryCapacity":"{Ah:R} A h","chargingCurrent":"{spare:R} A","batteryShare":"{share:R}" """);
            Assert.Equal(share * Ah, (r.Number("current")!.Value - spare) * r.Number("batteryMinutes")!.Value / 60, 1e-9 * Ah);
            Assert.Equal(80 + (8 * kN), r.Number("current")!.Value, 1e-9);
        }, iter: 100);

    [Theory]
    [InlineData("20 A h", "0 A", "caution", "pull in stages")]
    [InlineData("50 A h", "0 A", "caution", "no second try")]
    [InlineData("90 A h", "0 A", "pass", "the battery lasts")]
    [InlineData("20 A h", "240 A", "pass", "the alternator keeps up")]
    public void The_battery_outlasts_the_pull(string capacity, string charging, string verdict, string says)
    {
        var r = Draw("""{"touring":"20 kN"}""", $""" "batteryCapacity":"{capacity}","chargingCurrent":"{charging}" """);
        Assert.Equal(verdict, r.Verdict("battery"));
        Assert.Contains(says, r.Finding("battery")["text"]!.GetValue<string>());
    }

    [Fact]
    public void Beyond_the_table_the_motor_stalls()
    {
        var r = Draw("""{"touring":"41 kN"}""");
        Assert.Null(r.Number("current"));
        Assert.Equal("caution", r.Verdict("battery")); // the pull is an estimate
        Assert.Contains("it would stall", r.Finding("battery")["text"]!.GetValue<string>());
    }

    // 20 kN at the start is 240 A; as the drum fills the same line asks 25 kN of the first layer: 80 + 25 x 8 = 280 A, and 5 m/min.
    [Fact]
    public void The_full_drum_draws_more_than_the_start()
    {
        var r = Draw("""{"empty":"12 kN","touring":"20 kN"}""", """ "batteryCapacity":"70 A h","chargingCurrent":"40 A","fullDrumLoads":{"empty":"15 kN","touring":"25 kN"} """);
        r.Gives("current", 280, 1e-9);
        r.Gives("pullMinutes", 4, 1e-9);
        Assert.Contains("draws 280 A, 240 A at the start", r.Finding("battery")["text"]!.GetValue<string>());
        var stalls = Draw("""{"touring":"30 kN"}""", """ "batteryCapacity":"70 A h","chargingCurrent":"40 A","fullDrumLoads":{"touring":"45 kN"} """);
        stalls.Gives("current", 400, 1e-9);
        Assert.Equal("caution", stalls.Verdict("battery"));
        Assert.Contains("it would stall before the end", stalls.Finding("battery")["text"]!.GetValue<string>());
        // A drum with one layer, or none stated: the start is all there is.
        Draw("""{"touring":"20 kN"}""", """ "fullDrumLoads":{"touring":"20 kN"} """).Gives("current", 240, 1e-9);
    }

    [Fact]
    public void A_winch_worked_by_hand_takes_nothing_out_of_the_battery()
    {
        var r = Door.Run("recovery.electrical-demand", """{"lineLoads":{"touring":"9 kN"},"drive":"hand"}""");
        r.Gives("current", 0, 0);
        Assert.Equal("pass", r.Verdict("battery"));
    }

    [Fact]
    public void Without_the_makers_table_it_says_what_to_get() =>
        Assert.Contains("clamp the cable", Door.Run("recovery.electrical-demand", """{"lineLoads":{"touring":"9 kN"}}""").Finding("battery")["text"]!.GetValue<string>());

    private static JsonObject Draw(string loads, string battery = """ "batteryCapacity":"70 A h","chargingCurrent":"40 A" """) => Door.Run("recovery.electrical-demand",
        $$"""
        {"lineLoads":{{loads}},"ropeOut":{"touring":"20 m"},"currentCurve":[["0 kN","80 A"],["40 kN","400 A"]],"speedCurve":[["0 kN","10 m/min"],["40 kN","2 m/min"]],{{battery}} }
        """);
}
