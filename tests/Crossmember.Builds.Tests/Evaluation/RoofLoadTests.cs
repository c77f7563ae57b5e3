using System.Collections.Immutable;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Files;
using Crossmember.Builds.Ripples;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;
using CsCheck;

namespace Crossmember.Builds.Tests.Evaluation;

/// <summary>Fifty kilograms more or less on the roof of the demo's truck: every area answers with the sign that statics asks for.</summary>
public sealed class RoofLoadTests
{
    private static readonly (Build Build, ShopFacts Shop) s_truck = Read();

    private static readonly string[] s_scenarios = ["as-found", "working", "carried"];

    private static readonly EvaluationPlan s_plan = new(Catalogue.Shipped, s_truck.Build);

    /// <summary>Keys that rise, and keys that fall, when weight is put up high between the axles. Signs by statics: moments, springs in series with the ground, friction.</summary>
    private static readonly (string Key, int Sign)[] s_signs =
    [
        ("mass.C.total", 1), ("mass.C.center-z", 1), ("axle.front.C.load", 1), ("axle.rear.C.load", 1),
        ("wheel.front.left.C.load", 1), ("wheel.front.right.C.load", 1), ("wheel.rear.left.C.load", 1), ("wheel.rear.right.C.load", 1),
        ("axle.front.C.ride-height", -1), ("axle.rear.C.ride-height", -1), ("axle.front.C.datum-height", -1), ("axle.rear.C.datum-height", -1),
        ("axle.front.C.bump-travel", -1), ("axle.rear.C.bump-travel", -1), ("axle.front.C.full-bump-travel", -1), ("axle.rear.C.full-bump-travel", -1), ("axle.front.C.droop-travel", 1), ("axle.rear.C.droop-travel", 1), ("axle.front.C.spring-load", 1), ("axle.rear.C.spring-load", 1),
        ("vehicle.C.roll-per-g", 1), ("vehicle.C.shift-per-g", 1), ("vehicle.C.wheel-lift", -1), ("stability.C.static-factor", -1), ("stability.C.side-slope", -1),
        ("steering.C.kingpin-torque", 1), ("recovery.C.pull", 1), ("recovery.C.pull-high", 1),
    ];

    [Fact]
    public void Weight_on_the_roof_ripples_with_the_right_sign_everywhere() =>
        Gen.Select(Gen.Double[10, 100], Gen.Double[0.7, 2.4], Gen.Double[-0.15, 0.15], Gen.Double[1.7, 2.3], Gen.Int[0, 2].Select(i => s_scenarios[i]), Gen.Int[0, 1].Select(i => i == 0 ? "empty" : "touring")).Sample((kg, x, y, z, scenario, condition) =>
        {
            Sheet before = Sheet(s_truck.Build, scenario), after = Sheet(With(condition, kg, new(x, y, z)), scenario);
            foreach (var (pattern, sign) in s_signs)
            {
                var key = pattern.Replace("C", condition, StringComparison.Ordinal);
                double was = Number(before, key), now = Number(after, key);
                Assert.True(sign * (now - was) > 0, $"{key} in {scenario} goes from {was:R} to {now:R} with {kg:0} kg at ({x:0.00}, {y:0.00}, {z:0.00})");
            }
            Assert.Equal(kg, Number(after, $"mass.{condition}.total") - Number(before, $"mass.{condition}.total"), 1e-9 * 4000);
            // The other condition does not hear of it.
            var other = condition == "empty" ? "touring" : "empty";
            Assert.Equal(Number(before, $"stability.{other}.side-slope"), Number(after, $"stability.{other}.side-slope"));
        }, iter: 60, threads: 1);

    [Fact]
    public void The_body_bounces_slower_where_no_helper_or_stop_stiffens_the_spring() =>
        Gen.Select(Gen.Double[10, 100], Gen.Double[0.7, 2.4], Gen.Int[0, 1].Select(i => i == 0 ? "front" : "rear")).Sample((kg, x, axle) =>
        {
            Sheet before = Sheet(s_truck.Build, "as-found"), after = Sheet(With("touring", kg, new(x, 0, 2)), "as-found");
            if (Math.Abs(Number(before, $"axle.{axle}.touring.spring-rate") - Number(after, $"axle.{axle}.touring.spring-rate")) > 1) return;
            Assert.True(Number(after, $"axle.{axle}.touring.ride-frequency") < Number(before, $"axle.{axle}.touring.ride-frequency"));
        }, iter: 40, threads: 1);

    [Fact]
    public void The_comparison_names_every_area_and_the_item_as_its_cause()
    {
        Sheet before = Sheet(s_truck.Build, "working"), after = Sheet(With("touring", 50, new(1.5, 0, 2)), "working");
        var moved = Ripple.Between(before, after).Rows.Select(r => r.Id).ToList();
        Assert.All((string[])["mass.touring.total", "axle.rear.touring.load", "stability.touring.side-slope", "axle.rear.touring.ride-height", "vehicle.touring.roll-per-g", "steering.touring.kingpin-torque", "recovery.touring.pull"],
            key => Assert.Contains(key, moved));
        Assert.DoesNotContain(moved, id => id.Contains(".empty.", StringComparison.Ordinal) || id.Contains("condition=empty", StringComparison.Ordinal));
    }

    // Two formulations of one bend: all inner wheels together by the whole vehicle's moments, each axle by its own springs. The whole lies between the axles.
    [Theory]
    [InlineData("empty")]
    [InlineData("touring")]
    public void The_whole_vehicle_lifts_its_inner_wheels_after_the_first_and_before_the_last(string condition)
    {
        var sheet = Sheet(s_truck.Build, "working");
        double Output(string id, string output) => sheet.Instance(id) is { } i ? i.Outcome.Outputs[i.Instance.Calculation.OutputIndex(output)].Number : double.NaN;
        double first = Output($"springs.body-roll[condition={condition}]", "liftAt"), whole = Output($"stability.cornering[condition={condition}]", "lifts");
        Assert.InRange(whole, first - 0.02, 2 * first);
        // Load moved at the asked bend is the same by both, but for what sits off the middle.
        double byAxles = Output($"springs.body-roll[condition={condition}]", "frontTransfer") + Output($"springs.body-roll[condition={condition}]", "rearTransfer");
        double mass = Number(sheet, $"mass.{condition}.total"), off = Math.Abs(Number(sheet, $"mass.{condition}.center-y"));
        double track = (Number(sheet, "axle.front.track") + Number(sheet, "axle.rear.track")) / 2;
        Assert.Equal(byAxles, (Output($"stability.cornering[condition={condition}]", "moved") / 9.80665) - (mass * off / track), 0.02 * byAxles);
    }

    private static Sheet Sheet(Build build, string scenario) => s_plan.Evaluate(build, s_truck.Shop, build.Scenarios.GetValueOrDefault(scenario));

    private static Build With(string condition, double kg, Place at) => s_truck.Build with
    {
        Conditions = s_truck.Build.Conditions.SetItem(condition, new(condition, [.. s_truck.Build.Conditions.GetValueOrDefault(condition)?.Items ?? ImmutableArray<MassItem>.Empty, new("on the roof", kg, at, Basis.Measured)])),
    };

    private static double Number(Sheet sheet, string key) => sheet.Key(key) is { Value.IsNumber: true } k ? k.Value.Number : double.NaN;

    private static (Build, ShopFacts) Read()
    {
        using var stream = typeof(RoofLoadTests).Assembly.GetManifestResourceStream("packhorse.json")!;
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        var faults = new Faults();
        var file = BuildFile.Read(bytes.ToArray(), Catalogue.Shipped, faults);
        Assert.True(file is not null, string.Join('\n', faults.List));
        return (file!.Build, file.Shop);
    }
}
