using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;

namespace Crossmember.Engineering.Tests.Recovery;

/// <summary>What recovery calculations say at the edges: readings that do not fit, things that are not there, the worst of several.</summary>
public class RecoveryEdgeTests
{
    // 20 kN asks 240 A by the table below; a lighter condition beside it changes nothing, and 0.5 kN, beneath the table's first point, is told as that point.
    [Theory]
    [InlineData("""{"empty":"12 kN","touring":"20 kN"}""", 240)]
    [InlineData("""{"touring":"20 kN","empty":"12 kN"}""", 240)]
    [InlineData("""{"touring":"0.5 kN"}""", 88)]
    public void The_heaviest_condition_draws_the_current(string loads, double amps) =>
        Door.Run("recovery.electrical-demand", $$"""{"lineLoads":{{loads}},"currentCurve":[["1 kN","88 A"],["40 kN","400 A"]]}""").Gives("current", amps, 1e-9);

    [Theory]
    [InlineData("""{"empty":"3000 kg","touring":"2000 kg"}""", "2", 6000)]
    [InlineData("""{"empty":"2000 kg","touring":"3000 kg"}""", "1.5", 4500)]
    public void The_heaviest_condition_asks_of_a_point(string masses, string factor, double kg) =>
        Door.Run("recovery.point", $$"""{"kind":"hook","ratedLoad":"5 t","masses":{{masses}},"factor":"{{factor}}"}""").Gives("wanted", kg, 1e-9);

    // One column of bolts has no width to hold a pull from the side that acts over the plate; straight it holds.
    [Theory]
    [InlineData("0 deg", "pass")]
    [InlineData("30 deg", "unknown")]
    public void Bolts_in_one_line_do_not_hold_a_pull_from_the_side(string side, string verdict)
    {
        var r = Mount("4", "30 mm", "90 mm", "0 mm", side);
        Assert.Equal(verdict, r.Verdict("bolts"));
        if (verdict == "unknown") Assert.Contains("nothing holds the mount against tipping", r.Finding("bolts")["text"]!.GetValue<string>());
    }

    // Five bolts are two and three: by hand with all of the moment about the edge, T = 40 x 90 / (2 x 30^2 + 3 x 90^2) of the pull at the far row and a fifth in shear.
    [Fact]
    public void An_odd_bolt_goes_to_the_far_row()
    {
        double T = 40.0 * 90 / ((2 * 900) + (3 * 8100)), V = 0.2, held = 580 * 0.7 * Math.PI / 4 * 144 / 1000; // shares of the pull; kN
        Mount("5", "30 mm", "90 mm", "60 mm", "0 deg").Gives("strength", held / Math.Sqrt((T * T) + (V * V / (0.577 * 0.577))), 1e-9);
    }

    [Theory]
    [InlineData("5", "30 mm", "20 mm")]
    [InlineData("30", "30 mm", "90 mm")]
    public void A_mount_that_cannot_be_is_unknown(string count, string near, string far) => Assert.Equal("unknown", Mount(count, near, far, "60 mm", "0 deg").Verdict("bolts"));

    // 40 kN on the first layer; drum 63.5, rope 9.5: 8 m out of 30 leaves the fourth layer's rest, 22.46 kN; over 1.5 that is 14.97 kN.
    [Theory]
    [InlineData("14 kN", "14.5 kN", "pass")]
    [InlineData("14 kN", "16 kN", "caution")]
    public void A_spread_of_the_ground_is_a_caution(string pull, string high, string verdict)
    {
        var r = Rig(pull, $""" ,"high":"{high}","distance":"8 m" """);
        Assert.Equal(verdict, r.Verdict("rigging"));
        r.Gives("layerPull", 40 * 73.0 / 130, 1e-9);
    }

    [Fact]
    public void A_drum_that_cannot_be_wound_is_unknown()
    {
        var r = Rig("14 kN", """ ,"distance":"8 m" """, "5 mm");
        Assert.Equal("unknown", r.Verdict("rigging"));
        Assert.Null(r.Number("fallLine"));
    }

    // Angles that are none: more than straight through at a block, more than square at a shackle.
    [Fact]
    public void Angles_that_are_none_are_told()
    {
        var block = Door.Run("recovery.block-load", """{"linePull":"10 kN","angle":"200 deg","ratedLoad":"5 t"}""");
        Assert.Null(block.Number("load"));
        Assert.Contains("never more than 180 deg apart", block.Finding("block")["text"]!.GetValue<string>());
        var chain = Door.Run("recovery.weakest-link", """{"linePull":"10 kN","blockRatedLoad":"5 t","blockAngle":"200 deg"}""");
        Assert.Equal("unknown", chain.Verdict("weakest"));
        Assert.Null(chain.Number("used"));
    }

    [Fact]
    public void A_shackle_of_which_nothing_is_known_asks_for_its_mark() =>
        Assert.Contains("read the mark", Door.Run("recovery.shackle", """{"linePull":"10 kN"}""").Finding("load")["text"]!.GetValue<string>());

    [Theory]
    [InlineData("grade 5")]
    [InlineData("Grade 5")]
    [InlineData(" GRADE 5 ")]
    public void Grades_are_read_in_any_letters(string grade) => Assert.Equal("pass", Mount("4", "30 mm", "90 mm", "60 mm", "0 deg", grade).Verdict("bolts"));

    private static JsonObject Mount(string count, string near, string far, string gauge, string side, string grade = "8.8") => Door.Run("recovery.winch-mount", $$"""
        {"linePull":"10 kN","boltCount":"{{count}}","boltDiameter":"12 mm","boltGrade":"{{grade}}","nearRow":"{{near}}","farRow":"{{far}}","gauge":"{{gauge}}","height":"40 mm","ahead":"0 mm",
         "frameWall":"25 mm","frameYield":"400 MPa","upAngle":"0 deg","sideAngle":"{{side}}"}
        """);

    private static JsonObject Rig(string pull, string more, string width = "228 mm") => Door.Run("recovery.purchase", $$"""
        {"pull":"{{pull}}","firstPull":"40 kN","drumDiameter":"63.5 mm","drumWidth":"{{width}}","ropeDiameter":"9.5 mm","ropeLength":"30 m"{{more}} }
        """);
}
