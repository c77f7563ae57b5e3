using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;

namespace Crossmember.Engineering.Tests.Brakes.Wheels;

/// <summary>The traps of an old vehicle's brakes, each from both sides.</summary>
public class LayoutTests
{
    [Theory]
    [InlineData("one", "fail", 0)]
    [InlineData("front-rear", "pass", 2)]
    [InlineData("diagonal", "pass", 2)]
    public void One_circuit_leaves_no_brake_when_a_hose_bursts(string circuits, string verdict, double left)
    {
        var r = Layout("drum", "drum", $$""","circuits":"{{circuits}}" """);
        Assert.Equal(verdict, r.Verdict("circuits"));
        r.Gives("wheelsLeft", left, 0);
    }

    [Theory]
    [InlineData("disc", "0.07", "fail")]
    [InlineData("disc", "0.069", "fail")] // a drum's valve of 10 lb
    [InlineData("disc", "0.021", "caution")]
    [InlineData("disc", "0.014", "pass")]
    [InlineData("disc", "0", "pass")]
    [InlineData("drum", "0.07", "pass")]
    [InlineData("drum", "0", "caution")]
    [InlineData("drum", "0.42", "caution")]
    [InlineData("drum", "0.5", "fail")]
    public void A_residual_valve_belongs_to_drums(string kind, string held, string verdict)
    {
        Assert.Equal(verdict, Layout(kind, "drum", $$""","residualFront":"{{held}} MPa" """).Verdict("residual-front"));
        Assert.Equal(verdict, Layout("disc", kind, $$""","residualRear":"{{held}} MPa" """).Verdict("residual-rear"));
    }

    [Theory]
    [InlineData("disc", "drum", "0", "caution")]
    [InlineData("disc", "drum", "0.05", "caution")]
    [InlineData("disc", "drum", "0.39", "caution")]
    [InlineData("disc", "drum", "0.41", "pass")]
    [InlineData("disc", "drum", "0.7", "pass")]
    [InlineData("disc", "drum", "1.2", "pass")]
    [InlineData("disc", "drum", "1.21", "caution")]
    [InlineData("disc", "drum", "4", "caution")]
    [InlineData("disc", "disc", "0", "pass")]
    [InlineData("disc", "disc", "0.7", "caution")]
    [InlineData("drum", "drum", "0", "pass")]
    public void A_metering_valve_belongs_to_discs_before_drums(string front, string rear, string pressure, string verdict) =>
        Assert.Equal(verdict, Layout(front, rear, $$""","metering":"{{pressure}} MPa" """).Verdict("metering"));

    // Springs as measured: discs that let go at 0.1 MPa bear a drum's valve, tired drums do not; strong drums come on after a metering valve of 0.7 MPa.
    [Fact]
    public void What_was_measured_at_the_wheels_counts()
    {
        const string Wheels = ""","thresholds":{"front.left":"0.1 MPa","front.right":"0.12 MPa","rear.left":"0.03 MPa","rear.right":"0.025 MPa"}""";
        var r = Layout("disc", "drum", Wheels + ""","residualFront":"0.07 MPa","residualRear":"0.07 MPa" """);
        Assert.Equal("pass", r.Verdict("residual-front"));
        Assert.Equal("fail", r.Verdict("residual-rear"));
        Assert.Contains("0.025 MPa", r.Finding("residual-rear")["text"]!.GetValue<string>());
        Assert.Equal("caution", Layout("disc", "drum", ""","thresholds":{"rear.left":"0.8 MPa","rear.right":"0.8 MPa"},"metering":"0.7 MPa" """).Verdict("metering"));
    }

    // One chamber is one circuit: lines split behind it do not help.
    [Theory]
    [InlineData(""","master":"single","circuits":"front-rear" """, "fail", 0)]
    [InlineData(""","master":"single" """, "fail", 0)]
    [InlineData(""","master":"tandem","circuits":"front-rear" """, "pass", 2)]
    [InlineData(""","master":"tandem","circuits":"one" """, "fail", 0)]
    public void A_single_master_cylinder_is_one_circuit(string more, string verdict, double left)
    {
        var r = Layout("drum", "drum", more);
        Assert.Equal(verdict, r.Verdict("circuits"));
        r.Gives("wheelsLeft", left, 0);
        Assert.Equal("unknown", Layout("drum", "drum", ""","master":"tandem" """).Verdict("circuits"));
    }

    [Theory]
    [InlineData("drum", "drum", "drums", "pass")]
    [InlineData("disc", "drum", "drums", "caution")]
    [InlineData("disc", "drum", "disc and drum", "pass")]
    [InlineData("drum", "drum", "disc and drum", "caution")]
    [InlineData("disc", "drum", "discs", "caution")]
    [InlineData("disc", "disc", "discs", "pass")]
    public void A_master_cylinder_belongs_to_its_brakes(string front, string rear, string made, string verdict) =>
        Assert.Equal(verdict, Layout(front, rear, $$""","masterFor":"{{made}}" """).Verdict("master"));

    [Theory]
    [InlineData("DOT 5", "caution")]
    [InlineData("DOT 5.1", "pass")]
    [InlineData("DOT 3", "pass")]
    public void Silicone_is_a_caution(string fluid, string verdict) => Assert.Equal(verdict, Layout("drum", "drum", $$""","fluid":"{{fluid}}" """).Verdict("fluid"));

    // NHTSA interpretation aiam4640: of friction type, held by mechanical means alone; a pawl is none.
    [Theory]
    [InlineData("none", "fail", "a gear or a pawl is none")]
    [InlineData("driveline", "caution", "jacked rear wheel")]
    [InlineData("rear", "pass", "rear wheels")]
    public void No_parking_brake_fails(string parking, string verdict, string told)
    {
        var r = Layout("drum", "drum", $$""","parking":"{{parking}}" """);
        Assert.Equal(verdict, r.Verdict("parking"));
        Assert.Contains(told, r.Finding("parking")["text"]!.GetValue<string>());
    }

    [Fact]
    public void Two_kinds_on_one_axle_fail()
    {
        var r = Door.Run("brakes.layout", """{"kinds":{"front.left":"disc","front.right":"drum","rear.left":"drum","rear.right":"drum"}}""");
        Assert.Equal("fail", r.Verdict("alike"));
        Assert.Equal("pass", Layout("disc", "drum", "").Verdict("alike"));
    }

    [Fact]
    public void What_was_not_looked_at_is_unknown_and_says_where_to_look()
    {
        var r = Layout("disc", "drum", "");
        foreach (var check in (string[])["circuits", "residual-front", "residual-rear", "metering", "master", "fluid", "parking"]) Assert.Equal("unknown", r.Verdict(check));
        Assert.Contains("follow the lines", r.Finding("circuits")["text"]!.GetValue<string>());
        Assert.Contains("outlet of the master cylinder", r.Finding("residual-front")["text"]!.GetValue<string>());
    }

    private static JsonObject Layout(string front, string rear, string more) =>
        Door.Run("brakes.layout", $$"""{"kinds":{"front.left":"{{front}}","front.right":"{{front}}","rear.left":"{{rear}}","rear.right":"{{rear}}"}{{more}}}""");
}
