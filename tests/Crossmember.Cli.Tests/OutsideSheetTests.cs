using System.Text.Json.Nodes;

namespace Crossmember.Cli.Tests;

/// <summary>The outside author's sheets, number by number: values, mass ledger, results and findings of every scenario, and the variants that mean something else.</summary>
public sealed class OutsideSheetTests : IDisposable
{
    private readonly Place _place = new();

    public static TheoryData<string> Scenarios => [.. HandTable.Expected["checks"]!.AsObject().Select(c => c.Key)];

    [Theory]
    [MemberData(nameof(Scenarios))]
    public void Every_value_of_the_sheet_is_that_of_the_hand_table(string scenario)
    {
        var (want, got) = Both(scenario);
        foreach (var (key, value) in want["parameters"]!.AsObject()) HandTable.Quantity(value, got["parameters"]![key], $"{scenario} {key}");
        foreach (var (key, value) in want["massLedger"]!.AsObject()) HandTable.Number(value, got["parameters"]![key]?["value"], $"{scenario} {key}");
    }

    [Theory]
    [MemberData(nameof(Scenarios))]
    public void Every_result_is_that_of_the_hand_table_and_gears_that_nothing_governs_have_none(string scenario)
    {
        var (want, got) = Both(scenario);
        foreach (var (id, value) in want["results"]!.AsObject())
        {
            var cut = id.LastIndexOf('.');
            HandTable.Quantity(value, got["results"]![id[..cut]]?[id[(cut + 1)..]], $"{scenario} {id}");
        }
        string[] Speeds(IEnumerable<string> ids) => [.. ids.Where(i => i.StartsWith("driveline.engine-speed[", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];
        Assert.Equal(Speeds(want["results"]!.AsObject().Select(r => r.Key[..r.Key.LastIndexOf('.')])), Speeds(got["results"]!.AsObject().Select(r => r.Key)));
    }

    [Theory]
    [MemberData(nameof(Scenarios))]
    public void Findings_agree_in_verdict_limit_and_margin_and_the_model_raises_no_other(string scenario)
    {
        var (want, got) = Both(scenario);
        var findings = got["findings"]!.AsArray().ToDictionary(f => (string)f!["id"]!);
        foreach (var f in want["findings"]!.AsArray())
        {
            var ours = findings[(string)f!["id"]!]!;
            Assert.Equal((string?)f["verdict"], (string?)ours["verdict"]);
            // An unknown has no number of its own here; the table gives it the limit it would be held against.
            if ((string?)f["verdict"] == "unknown") continue;
            HandTable.Number(f["value"], ours["value"]?["value"], $"{scenario} {f["id"]}");
            HandTable.Number(f["limit"], ours["limit"]?["value"], $"{scenario} {f["id"]} limit");
            HandTable.Number(f["margin"], ours["margin"], $"{scenario} {f["id"]} margin");
        }
        string[] Hard(IEnumerable<string> ids) => [.. ids.Where(i => i.StartsWith("model/conflict", StringComparison.Ordinal) || i.StartsWith("model/requires", StringComparison.Ordinal) || i.StartsWith("model/takes", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];
        Assert.Equal(Hard(want["findings"]!.AsArray().Select(f => (string)f!["id"]!)), Hard(findings.Keys));
    }

    [Theory]
    [MemberData(nameof(Scenarios))]
    public void The_exit_code_follows_the_findings(string scenario)
    {
        var used = _place.Run("check", HandTable.Build, "--scenario", scenario, "--json");
        var fails = used.Json["findings"]!.AsArray().Any(f => (string?)f!["verdict"] == "fail");
        Assert.Equal(fails ? 1 : 0, used.Code);
        // Our catalogue may find more that fails than the table's, never less.
        Assert.True(used.Code >= (int)HandTable.Expected["checks"]![scenario]!["exit"]!, scenario);
        Assert.Equal(used.Code, _place.Run("ripple", HandTable.Build, "--from", "received", "--to", scenario, "--json").Code);
    }

    [Fact]
    public void Without_a_weighing_masses_are_unknown_and_everything_else_stands()
    {
        var (with, without) = (Check(HandTable.Build, "working"), Check(Variant("no-weighing"), "working"));
        Assert.Null(without["totals"]!["mass"]!["value"]);
        Assert.Contains(without["findings"]!.AsArray(), f => (string?)f!["id"] == "model/mass" && (string?)f["verdict"] == "unknown");
        Assert.Equal(with["totals"]!["cost"]!.ToJsonString(), without["totals"]!["cost"]!.ToJsonString());
        Assert.Equal(with["totals"]!["hours"]!.ToJsonString(), without["totals"]!["hours"]!.ToJsonString());
        Assert.Equal(with["results"]!["driveline.cruise"]!.ToJsonString(), without["results"]!["driveline.cruise"]!.ToJsonString());
    }

    [Fact]
    public void A_transfer_case_left_off_leaves_ranges_without_ratios_and_no_default_steps_in()
    {
        var check = Check(Variant("transfer-none"), "crawler-off");
        var speeds = check["results"]!.AsObject().Where(r => r.Key.StartsWith("driveline.engine-speed[", StringComparison.Ordinal)).ToList();
        Assert.Contains(speeds, r => r.Key.Contains("range=low", StringComparison.Ordinal));
        Assert.All(speeds, r => Assert.Null(r.Value!["engineSpeed"]!["value"]));
        Assert.Equal("unknown", (string?)check["findings"]!.AsArray().Single(f => (string?)f!["id"] == "driveline.cruise/redline")!["verdict"]);
    }

    [Fact]
    public void Readings_by_wheel_say_the_same_and_the_side_as_well()
    {
        var (axles, wheels) = (Check(HandTable.Build, "working")["parameters"]!, Check(Variant("wheels"), "working")["parameters"]!);
        foreach (var key in new[] { "mass.touring.total", "mass.touring.moment-x", "mass.touring.moment-z" }) HandTable.Quantity(axles[key], wheels[key], key);
        Assert.Null(axles["mass.touring.moment-y"]?["value"]);
        Assert.NotNull(wheels["mass.touring.moment-y"]!["value"]);
    }

    [Fact]
    public void Without_a_tax_a_category_costs_what_its_lines_cost()
    {
        var cost = Check(Variant("no-tax"), "working")["totals"]!["cost"]!;
        foreach (var (category, amount) in HandTable.Expected["checks"]!["working"]!["totals"]!["costNotes"]!["withoutTax"]!.AsObject())
            Assert.Equal($"{(double)amount!:0.00} USD", (string?)cost[category]);
    }

    [Fact]
    public void Without_tasks_only_the_task_rows_go()
    {
        IEnumerable<string> Rows(string file, bool tasks) => _place.Run("ripple", file, "--from", "received", "--to", "working", "--json").Json["rows"]!.AsArray()
            .Where(r => ((string?)r!["kind"] == "task") == tasks).Select(r => r!.ToJsonString());
        Assert.Equal(Rows(HandTable.Build, false), Rows(Variant("no-tasks"), false));
        Assert.NotEmpty(Rows(HandTable.Build, true));
        Assert.Empty(Rows(Variant("no-tasks"), true));
    }

    public void Dispose() => _place.Dispose();

    private (JsonNode Want, JsonNode Got) Both(string scenario) => (HandTable.Expected["checks"]![scenario]!, Check(HandTable.Build, scenario));

    private JsonNode Check(string file, string scenario) => _place.Run("check", file, "--scenario", scenario, "--json").Json;

    private static string Variant(string name) => Path.Combine(HandTable.Folder, "variants", name + ".json");
}
