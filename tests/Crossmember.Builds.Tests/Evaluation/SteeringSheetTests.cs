using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Tests.Evaluation;

/// <summary>Steering through the sheet, by the way a builder states it.</summary>
public sealed class SteeringSheetTests
{
    private const string Weighed = """
        "weighings":[{"date":"2026-01-10","wheels":{"front":{"left":"550 kg","right":"550 kg"},"rear":{"left":"525 kg","right":"525 kg"}},"wheelbase":"2560 mm","condition":"empty","fitted":{}}],
        "conditions":{"empty":[],"loaded":[{"id":"winch","mass":"150 kg","at":["-600 mm","0 mm","200 mm"]}]},
        """;

    private const string Turned = """
        "steering.turns":4,"steering.lock.*.inner-angle":"37 deg","steering.lock.*.outer-angle":"29 deg","steering.kingpin-distance":"1300 mm","steering.wheel-diameter":"400 mm",
        "steering.efficiency":"0.75","axle.front.tire-pressure":"200 kPa","axle.*.track":"1460 mm","duty.parking-grip":"0.8","wheel.*.*.tire.size":"33x10.50R15","steering.assist-factor":1
        """;

    private const string Points = """
        "steering.points.ride-height":"150 mm","steering.pitman.shaft":"upright","steering.pitman.pivot-x":"150 mm","steering.pitman.pivot-y":"0 mm","steering.pitman.pivot-z":"-100 mm",
        "steering.pitman.end-x":"300 mm","steering.pitman.end-y":"0 mm","steering.pitman.end-z":"-100 mm","steering.arm.ball-x":"150 mm","steering.arm.ball-y":"-650 mm","steering.arm.ball-z":"-100 mm",
        "axle.front.caster":"2 deg","axle.front.guide.kind":"leaf","axle.front.guide.fixed-x":"-560 mm","axle.front.guide.fixed-rise":"20 mm",
        "axle.front.empty.ride-height":"150 mm","axle.front.loaded.ride-height":"140 mm","axle.front.*.bump-travel":"70 mm","axle.front.*.full-bump-travel":"85 mm","axle.front.*.droop-travel":"80 mm"
        """;

    // Derived: half of 1100 kg on each wheel at 200 kPa and 0.8: 0.8 / 3 x sqrt(5393.7^3 / 200000) = 236.19 N m; two of them, 21.818 to 1 and 0.75 on 200 mm: 144.34 N.
    [Fact]
    public void Weight_pressure_turns_and_plates_become_the_pull_at_the_rim()
    {
        var sheet = Vehicle(Turned);
        Assert.Equal(4 * 360 / 66.0, Opened.Told(sheet, "steering.ratio"), 1e-9);
        Assert.Equal(2 * 236.19, Opened.Told(sheet, "steering.empty.kingpin-torque"), 0.02);
        Assert.Equal(144.34, Finding(sheet, "steering.hand-effort[condition=empty]/parking").Value!.Value, 0.01);
    }

    // Standing on dry ground is not the off-road grip of the drive: mud under the driven wheels makes no parking easier.
    [Fact]
    public void The_grip_of_the_trail_does_not_turn_the_parked_wheels()
    {
        double T(string more) => Opened.Told(Vehicle(Turned.Replace("\"duty.parking-grip\":\"0.8\",", more, StringComparison.Ordinal)), "steering.empty.kingpin-torque");
        Assert.Equal(T(""), T("\"duty.grip\":\"0.3\","), 1e-9);
        Assert.Equal(2 * 236.19 * 0.7 / 0.8, T(""), 0.02);
    }

    // 150 kg hung 600 mm ahead of the axle add 150 (1 + 600 / 2560) = 185.2 kg to it, and the torque by the power 1.5.
    [Fact]
    public void A_winch_ahead_of_the_axle_weighs_more_than_itself_on_the_hands()
    {
        var sheet = Vehicle(Turned);
        double F(string condition) => Finding(sheet, $"steering.hand-effort[condition={condition}]/parking").Value!.Value;
        Assert.Equal(Math.Pow((1100 + (150 * (1 + (600 / 2560.0)))) / 1100, 1.5), F("loaded") / F("empty"), 1e-9);
    }

    [Fact]
    public void Manual_steering_is_stated_and_asks_for_no_pump()
    {
        var sheet = Vehicle(Turned);
        Assert.Equal(Verdict.Pass, Finding(sheet, "steering.pump-demand/flow").Verdict);
        var unsaid = Vehicle(Turned.Replace(""","steering.assist-factor":1""", "", StringComparison.Ordinal));
        foreach (var id in (string[])["steering.pump-demand/flow", "steering.pump-demand/pressure", "steering.hand-effort[condition=empty]/parking", "steering.hand-effort[condition=empty]/assist-lost"])
            Assert.Equal(Verdict.Unknown, Finding(unsaid, id).Verdict);
        Assert.Equal(Verdict.Unknown, Finding(Vehicle(Turned.Replace("factor\":1", "factor\":4", StringComparison.Ordinal)), "steering.pump-demand/flow").Verdict);
    }

    [Fact]
    public void Points_of_the_linkage_give_the_lengths_of_its_arms_to_the_ratio()
    {
        var sheet = Vehicle($"{Turned},{Points},\"steering.box.ratio\":20");
        Assert.Equal(150, Opened.Told(sheet, "steering.pitman.length"), 1e-6);
        // The kingpin leans 2 deg back and 8 deg inboard, the ball stands (150, 0, 50) mm from where it passes the axle: |(150, 0, 50) x (tan 2, tan 8, 1)| / 1.0104.
        Assert.Equal(148.36, Opened.Told(sheet, "steering.arm.length"), 0.005);
        Assert.Equal(Verdict.Pass, Finding(sheet, "steering.ratio/agree").Verdict);
        Assert.Equal(Verdict.Pass, Finding(sheet, "steering.linkage-travel/closes").Verdict);
    }

    [Fact]
    public void Bump_steer_is_told_for_each_condition_and_follows_its_ride_height()
    {
        var sheet = Vehicle($"{Turned},{Points}");
        double empty = Off(sheet, "empty"), loaded = Off(sheet, "loaded");
        Assert.Equal(0, empty, 1e-9);
        Assert.NotEqual(0, loaded);
        Assert.Equal(Verdict.Pass, Finding(sheet, "steering.bump-steer[condition=loaded]/closes").Verdict);
        Assert.Equal(Verdict.Pass, Finding(sheet, "steering.drag-link-angle/angle").Verdict);
        // A stop whose squash nobody stated passes nothing.
        var touching = Vehicle($"{Turned},{Points}".Replace("\"axle.front.*.full-bump-travel\":\"85 mm\",", "", StringComparison.Ordinal));
        Assert.Equal(Verdict.Caution, Finding(touching, "steering.bump-steer[condition=loaded]/closes").Verdict);
    }

    // The drag link crosses from the middle to the left wheel; a track bar beside it, level too, carries the axle along and takes most of its steer away.
    [Fact]
    public void A_track_bar_on_the_sheet_reaches_the_drag_link()
    {
        const string bar = ""","axle.front.trackbar.length":"650 mm","axle.front.trackbar.end-height":"0 mm","axle.front.original-ride-height":"150 mm","axle.front.trackbar.frame-side":"right" """;
        double Total(string more)
        {
            var state = Vehicle($"{Turned},{Points}{more}").Instance("steering.bump-steer[condition=empty]")!;
            return state.Outcome.Outputs[state.Instance.Calculation.OutputIndex("total")].Number;
        }
        Assert.True(Total(bar) < 0.5 * Total(""), $"{Total(bar)} of {Total("")}");
    }

    // 33x10.50: 25.4 mm more radius and 12.7 mm more half width than a 31 by 9.5 in tire, at 37 deg: 12.7 cos 37 + 25.4 sin 37 = 25.43 mm.
    [Fact]
    public void A_size_on_the_sheet_is_held_against_the_gaps_of_the_survey()
    {
        var sheet = Vehicle($$"""{{Turned}},"steering.survey.tire-diameter":"31 in","steering.survey.tire-width":"9.5 in","steering.survey.offset":"0 mm","steering.survey.lock-gap":"50 mm" """);
        Assert.Equal(50 - 25.43, Finding(sheet, "steering.clearance/lock").Value!.Value, 0.005);
        Assert.Equal(Verdict.Unknown, Finding(sheet, "steering.clearance/fender").Verdict);
    }

    [Fact]
    public void A_sheet_without_a_word_on_steering_asks_and_claims_nothing()
    {
        var sheet = Opened.Vehicle("").Sheet();
        var told = sheet.Findings().Where(f => f.Id.StartsWith("steering.", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(told);
        Assert.All(told, f => Assert.True(f.Finding.Verdict == Verdict.Unknown, f.Id));
    }

    private static double Off(Sheet sheet, string condition)
    {
        var state = sheet.Instance($"steering.bump-steer[condition={condition}]")!;
        return state.Outcome.Outputs[state.Instance.Calculation.OutputIndex("offCenter")].Number;
    }

    private static Finding Finding(Sheet sheet, string id) => sheet.Findings().Single(f => f.Id == id).Finding;

    private static Sheet Vehicle(string facts) =>
        Opened.Vehicle($$$""",{"id":"parts","parent":"vehicle","title":"Parts","options":[{"id":"as-found","parameters":{ {{{facts}}} }}]}""", top: Weighed).Sheet();
}
