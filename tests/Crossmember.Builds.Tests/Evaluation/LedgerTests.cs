namespace Crossmember.Builds.Tests.Evaluation;

/// <summary>The mass ledger through the sheet. Numbers worked by hand from the moments (docs/derivations/axle-and-wheel-load.md).</summary>
public sealed class LedgerTests
{
    private const string Weighed = """
        "weighings":[{"date":"2026-01-10","axles":{"front":"1065.0117 kg","rear":"1084.9883 kg"},"wheelbase":"2560 mm","height":"0.72 m","datumHeight":"0 m","condition":"empty","fitted":{}}],
        """;

    private const string Extras = """
        ,{"id":"bumper","parent":"vehicle","title":"Bumper","options":[{"id":"as-found","class":"none"},{"id":"winch","class":"upgrade","originality":0,"masses":[{"id":"it","mass":"68 kg","at":["-0.62 m","0 m","0.62 m"]}]}]}
        ,{"id":"carrier","parent":"vehicle","title":"Spare carrier","options":[{"id":"as-found","class":"none"},{"id":"rear","class":"upgrade","originality":0,"masses":[{"id":"it","mass":"74 kg","at":["3.30 m","0 m","1 m"]}]}]}
        ,{"id":"rack","parent":"vehicle","title":"Rack","options":[{"id":"as-found","class":"none"},{"id":"roof","class":"upgrade","originality":0,"masses":[{"id":"it","mass":"45 kg","at":["1.35 m","0 m","1.95 m"]}]}]}
        """;

    private const string Choices = """{"id":"working","base":null,"choices":{"bumper":"winch","carrier":"rear","rack":"roof"}}""";

    [Fact]
    public void Bumper_carrier_and_rack_move_the_center_of_gravity_as_worked_by_hand()
    {
        // 2150 kg at x 1.2919 m, z 0.72 m, and three items: total 2337 kg, x 1.3010 m, z 0.7496 m, front 1149.4, rear 1187.6 kg.
        var sheet = Opened.Vehicle(Extras, Choices, Weighed).Sheet();
        var total = Opened.Told(sheet, "mass.empty.total");
        Assert.Equal(2337, total, 6);
        Assert.Equal(1.3010, Opened.Told(sheet, "mass.empty.moment-x") / total, 0.00006);
        Assert.Equal(0.7496, Opened.Told(sheet, "mass.empty.moment-z") / total, 0.00006);
        Assert.Equal(1149.4, Opened.Told(sheet, "axle.front.empty.load"), 0.06);
        Assert.Equal(1187.6, Opened.Told(sheet, "axle.rear.empty.load"), 0.06);
    }

    [Fact]
    public void A_mass_behind_the_rear_axle_unloads_the_front()
    {
        var sheet = Opened.Vehicle(Extras, """{"id":"working","base":null,"choices":{"carrier":"rear"}}""", Weighed).Sheet();
        Assert.Equal(-21.39, Opened.Told(sheet, "axle.front.empty.load") - 1065.0117, 0.006);
        Assert.Equal(95.39, Opened.Told(sheet, "axle.rear.empty.load") - 1084.9883, 0.006);
    }

    [Fact]
    public void Without_a_height_only_what_needs_it_is_unknown()
    {
        var sheet = Opened.Vehicle(Extras, Choices, Weighed.Replace(""" "height":"0.72 m",""", "", StringComparison.Ordinal).Replace("\"height\":\"0.72 m\",", "", StringComparison.Ordinal)).Sheet();
        Assert.True(sheet.Key("mass.empty.moment-z")!.Value.Value.IsAbsent);
        Assert.Equal(2337, Opened.Told(sheet, "mass.empty.total"), 6);
    }

    [Fact]
    public void Wheel_readings_give_the_side_to_side_place()
    {
        // 545, 520, 560, 525 kg with tracks 1460 and 1480 mm: y = 20.5 mm to the left (derived in docs/derivations/axle-and-wheel-load.md).
        var opened = Opened.Vehicle("""
            ,{"id":"axles","parent":"vehicle","title":"Axles","options":[{"id":"as-found","parameters":{"axle.front.track":"1460 mm","axle.rear.track":"1480 mm"}}]}
            """, top: """
            "weighings":[{"date":"2026-01-10","wheels":{"front":{"left":"545 kg","right":"520 kg"},"rear":{"left":"560 kg","right":"525 kg"}},"wheelbase":"2560 mm","condition":"empty","fitted":{}}],
            """);
        var sheet = opened.Sheet();
        Assert.Equal(-20.5, 1000 * Opened.Told(sheet, "mass.empty.moment-y") / Opened.Told(sheet, "mass.empty.total"), 0.06);
        Assert.Equal(1291.9, 1000 * Opened.Told(sheet, "mass.empty.moment-x") / Opened.Told(sheet, "mass.empty.total"), 0.06);
    }

    [Fact]
    public void The_latest_weighing_by_date_counts_whatever_the_order_in_the_file()
    {
        var older = """{"date":"2025-01-10","axles":{"front":"1 t","rear":"1 t"},"wheelbase":"2560 mm","condition":"empty","fitted":{}}""";
        var both = Weighed.Replace("}}],", $"}}}},{older}],", StringComparison.Ordinal);
        Assert.Contains("2025", both, StringComparison.Ordinal);
        Assert.Equal(2150, Opened.Told(Opened.Vehicle("", top: both).Sheet(), "mass.empty.total"), 6);
    }

    [Fact]
    public void No_weighing_is_unknown_and_says_what_to_do()
    {
        var sheet = Opened.Vehicle(Extras, Choices).Sheet();
        Assert.True(sheet.Key("mass.empty.total")!.Value.Value.IsAbsent);
        Assert.Contains("scale", sheet.ModelFindings.Single(f => f.Id == "model/mass").Finding.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unweighed_part_is_named_and_half_of_surely_below_counts_instead()
    {
        const string Slot = """
            ,{"id":"seat","parent":"vehicle","title":"Seat","options":[{"id":"bucket","class":"replace","originality":0}SAYS]}
            """;
        const string Choice = """{"id":"working","base":null,"choices":{"seat":"bucket"}}""";
        var unknown = Opened.Vehicle(Slot.Replace("SAYS", "", StringComparison.Ordinal), Choice, Weighed).Sheet();
        Assert.Equal(["seat"], unknown.Totals.Mass.Missing);
        var below = Opened.Vehicle(Slot.Replace("0}SAYS", "0,\"massBelow\":\"6 kg\"}", StringComparison.Ordinal), Choice, Weighed).Sheet();
        Assert.Equal(2153, Opened.Told(below, "mass.empty.total"), 6);
        // Half the part sits at the weighed center of gravity: the place does not move.
        Assert.Equal(2150 * 1.2919 / 2150, Opened.Told(below, "mass.empty.moment-x") / 2153, 0.0001);
    }

    [Fact]
    public void What_was_on_board_at_the_weighing_is_taken_off_and_the_condition_put_on()
    {
        var top = """
            "conditions":{"loaded":[{"id":"crew","mass":"150 kg","at":["1.2 m","0 m","0.5 m"]}]},
            """ + Weighed.Replace("\"condition\":\"empty\"", "\"condition\":\"loaded\"", StringComparison.Ordinal);
        var sheet = Opened.Vehicle("", top: top).Sheet();
        Assert.Equal(2150, Opened.Told(sheet, "mass.loaded.total"), 6);
        Assert.Equal(2000, Opened.Told(sheet, "mass.empty.total"), 6);
    }
}
