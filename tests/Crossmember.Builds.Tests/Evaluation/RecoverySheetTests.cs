using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Tests.Evaluation;

/// <summary>Winch, rigging and recovery points through the sheet: the cases of docs/checks.md by the way a builder states them.</summary>
public sealed class RecoverySheetTests
{
    private const double Kgf = 9.80665;

    private const string Weighed = """
        "weighings":[{"date":"2026-01-10","axles":{"front":"1170 kg","rear":"1170 kg"},"wheelbase":"2560 mm","condition":"empty","fitted":{}}],
        "conditions":{"empty":[],"loaded":[{"id":"load","mass":"500 kg","at":["2 m","0 m","0.8 m"]}]},
        """;

    private const string Slots = """
        ,{"id":"duty","parent":"vehicle","title":"Duty","options":[{"id":"as-found","masses":[],"parameters":{"duty.recovery-ground":"soft dry sand","duty.recovery-grade":0.3639702}}]}
        ,{"id":"winch","parent":"vehicle","title":"Winch","options":[{"id":"as-found","class":"none"},
          {"id":"drum","class":"upgrade","originality":0,"masses":[],"governs":["winch.front"],"parameters":{
            "winch.front.line-pull":"4310 kgf","winch.front.rating-layer":"first layer","winch.front.drum-diameter":"63.5 mm","winch.front.drum-width":"228 mm",
            "winch.front.rope-diameter":"9.5 mm","winch.front.rope-length":"30.6 m","winch.front.rope-breaking-force":"6600 kgf","winch.front.rope-material":"steel",
            "winch.front.shackle-rated-load":"4750 kg","winch.front.drive":"electric","winch.front.mass":"68 kg","winch.front.ahead":"620 mm",
            "winch.front.current-curve":[["0 kN","80 A"],["40 kN","400 A"]]}},
          {"id":"bare","class":"upgrade","originality":0,"masses":[],"governs":["winch.front"],"parameters":{"winch.front.line-pull":"4310 kgf"}}]}
        ,{"id":"points","parent":"vehicle","title":"Points","options":[{"id":"as-found","masses":[],"parameters":{"recovery.rear.kind":"tow ball","recovery.front.kind":"hook","recovery.front.rated-load":"6 t"}},
          {"id":"bolted","class":"upgrade","originality":0,"masses":[],"parameters":{"recovery.*.kind":"eye","recovery.*.rated-load":"8 t","recovery.*.bolt-count":6,
            "recovery.*.bolt-diameter":"1/2 in","recovery.*.bolt-pitch":"1.9538461538 mm","recovery.*.bolt-grade":"grade 5","recovery.*.bolt-near-row":"25 mm","recovery.*.bolt-far-row":"140 mm",
            "recovery.*.bolt-gauge":"100 mm","recovery.*.height":"40 mm","recovery.*.ahead":"60 mm","recovery.*.frame-wall":"25 mm","recovery.*.frame-yield":"400 MPa"}}]}
        """;

    private const string Scenarios = """
        {"id":"working","base":null,"choices":{}},{"id":"winched","base":null,"choices":{"winch":"drum"}},{"id":"bare","base":null,"choices":{"winch":"bare"}},
        {"id":"bolted","base":"winched","choices":{"points":"bolted"}},{"id":"nowhere","base":"winched","choices":{"duty":"none"}}
        """;

    private static readonly Opened s_truck = Opened.Vehicle(Slots, Scenarios, Weighed);

    // 2340 kg on 20 deg of soft dry sand: 1350 kgf; 2840 kg: 2840 / 2340 of it.
    [Fact]
    public void The_pull_follows_the_ledger()
    {
        Assert.Equal(1350 * Kgf, Opened.Told(Sheet("working"), "recovery.empty.pull"), Kgf);
        Assert.Equal(2840.0 / 2340, Opened.Told(Sheet("working"), "recovery.loaded.pull") / Opened.Told(Sheet("working"), "recovery.empty.pull"), 1e-9);
    }

    [Fact]
    public void Without_a_winch_nothing_is_asked_of_one() =>
        Assert.DoesNotContain(Sheet("working").Findings(), f => f.Id.Contains("winch=", StringComparison.Ordinal));

    // 4310 kgf on the first layer, 2420 on the fourth; with 10 m out the rope leaves the third, 2835 kgf: a single line does.
    [Fact]
    public void Layers_rigging_and_current_follow_from_the_winch()
    {
        var sheet = Sheet("winched");
        Assert.Equal(4310 * Kgf, Opened.Told(sheet, "winch.front.first-layer-pull"), 1e-6);
        Assert.Equal(2420 * Kgf, Opened.Told(sheet, "winch.front.full-drum-pull"), 3 * Kgf);
        var line = Opened.Told(sheet, "winch.front.loaded.line-load");
        Assert.Equal(Opened.Told(sheet, "recovery.loaded.pull"), line, 1e-6);
        Assert.Equal(10, Opened.Told(sheet, "winch.front.loaded.rope-out"), 1e-9);
        Assert.Equal(line * 111 / 73, Opened.Told(sheet, "winch.front.loaded.first-layer-load"), 1e-6);
        Assert.Equal(line * 130 / 73, Opened.Told(sheet, "winch.front.loaded.full-drum-load"), 1e-6);
        // At the start it draws less: the full drum counts.
        Assert.Equal(80 + (320 * line * 130 / 73 / 40000), Opened.Told(sheet, "winch.front.current"), 1e-6);
    }

    [Theory]
    [InlineData("winched", "recovery.rope[winch=front]/design-factor", Verdict.Caution)]
    [InlineData("winched", "recovery.weakest-link[winch=front]/weakest", Verdict.Caution)]
    [InlineData("winched", "recovery.purchase[condition=loaded,winch=front]/rigging", Verdict.Pass)]
    [InlineData("winched", "recovery.winch-mount[winch=front]/bolts", Verdict.Unknown)]
    [InlineData("bare", "recovery.rope[winch=front]/design-factor", Verdict.Unknown)]
    [InlineData("nowhere", "recovery.winch-reach[condition=empty,winch=front]/single-line", Verdict.Unknown)]
    [InlineData("working", "recovery.point[axle=rear]/holds", Verdict.Fail)]
    [InlineData("working", "recovery.point[axle=front]/holds", Verdict.Caution)]
    [InlineData("bolted", "recovery.point[axle=rear]/holds", Verdict.Pass)]
    public void Verdicts(string scenario, string finding, Verdict verdict) =>
        Assert.Equal(verdict, Sheet(scenario).Findings().Single(f => f.Id == finding).Finding.Verdict);

    // The bracket of the engineering tests holds 89.57 kN; twice 2840 kg is 5680 kg.
    [Fact]
    public void Bolts_of_a_point_carry_into_it()
    {
        Assert.Equal(89569, Opened.Told(Sheet("bolted"), "recovery.front.strength"), 1.0);
        Assert.Equal(5680, Sheet("bolted").Findings().Single(f => f.Id == "recovery.point[axle=front]/holds").Finding.Limit!.Value, 1e-6);
    }

    private static Sheet Sheet(string scenario) => s_truck.Sheet(scenario);
}
