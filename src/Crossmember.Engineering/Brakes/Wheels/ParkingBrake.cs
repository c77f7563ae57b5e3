using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Calculations;
using UnitsNet;
using static Crossmember.Engineering.Brakes.Wheels.HowToMeasureWheels;

namespace Crossmember.Engineering.Brakes.Wheels;

/// <summary>Whether the parking brake holds on a grade, by grip and by what a hand or foot can pull.</summary>
/// <remarks>
/// Formula:  F = W sin th; use F / N; torque of a brake F R / 2 at the wheels, F R / i on the driveline; tip force = torque / (C r); lever force = brakes x tip / (strut ratio x lever ratio x efficiency)
/// Valid:    standing still, cold; cables straight and set, one tip force at both shoes
/// Source:   statics, docs/derivations/drum-brakes.md
/// Example:  2100 kg, 1.248 of 2.600 m, 0.760 m high, 20 %: 4038.8 N, 757.3 N m at each rear wheel, grip 0.3714 up and 0.4745 down
/// </remarks>
public sealed class ParkingBrake() : Calculation<ParkingBrake.Inputs, ParkingBrake.Result>(new()
{
    Id = "brakes.parking",
    Version = 1,
    Title = "Parking brake",
    Purpose = "The grade on which it stays where it was left, facing up and down, and the pull at the lever that takes: larger tires and more weight raise both.",
    Formula = "F = W sin th, use = F / N of the braked axle; torque F R / 2 at each wheel or F R / i on the driveline; pull = brakes x torque / (C r x strut ratio x lever ratio x efficiency)",
    Validity = "Standing still, cold drums, shoes and cables set. The strut is taken to press both shoes alike. A hot drum shrinks away from its shoes as it cools and lets go some; a trailer is not in here.",
    Sources =
    [
        "Statics on a slope, derived (docs/derivations/drum-brakes.md)", "Grades and forces of the rules: data/engineering/brake-rules.csv, from memory: read the official text before anything is judged by them",
        "Jacked wheel and open differential: mechanics",
    ],
    Checks =
    [
        new("facing-up", Sense.AtMost, "Does the braked axle have the grip to hold it facing up the grade?"),
        new("facing-down", Sense.AtMost, "Does the braked axle have the grip to hold it facing down the grade?"),
        new("effort", Sense.AtMost, "Can a hand or a foot pull that hard?", "operation"),
        new("rule", null, "Does it hold as the rule that was picked asks?", "rule", "operation"),
    ],
    Trends =
    [
        new("total", "effort", '+', 1200, 4000), new("grade", "effort", '+', 0.05, 0.5), new("loadedRadius", "effort", '+', 300, 500), new("factor", "effort", '-', 1, 5), new("drumDiameter", "effort", '-', 150, 350),
        new("strutRatio", "effort", '-', 2, 8), new("leverRatio", "effort", '-', 3, 12), new("cableEfficiency", "effort", '-', 0.4, 0.95), new("centerX", "steepestUp", '+', 0.9, 1.6), new("centerX", "steepestDown", '+', 0.9, 1.6),
        new("height", "steepestUp", '+', 0.5, 0.9), new("height", "steepestDown", '-', 0.5, 1.2), new("wheelbase", "steepestDown", '-', 2, 4), new("grip", "steepestDown", '+', 0.3, 0.9), new("axleRatio", "torque", '-', 2.5, 6),
        new("wheelFactors", "effort", '-', 1, 1.9), new("wheelReverseFactors", "effort", '-', 0.5, 1.8), new("wheelDrums", "effort", '-', 150, 350),
    ],
    NoTrends = [new("frontRadius", "in the place of the rear one for a brake at the front wheels")],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["kind"] = "rear", ["total"] = "2100 kg", ["centerX"] = "1.248 m", ["height"] = "0.760 m", ["wheelbase"] = "2.600 m", ["grade"] = "0.2", ["grip"] = "0.6", ["loadedRadius"] = "375 mm", ["factor"] = "2.3",
                ["drumDiameter"] = "254 mm", ["strutRatio"] = "5", ["leverRatio"] = "7", ["cableEfficiency"] = "0.8", ["operation"] = "hand", ["rule"] = "571.135",
            },
            new Dictionary<string, double> { ["force"] = 4038.8, ["torque"] = 757.3, ["useUp"] = 0.3714, ["useDown"] = 0.4745, ["steepestUp"] = 0.349, ["steepestDown"] = 0.245, ["effort"] = 185.19 }, 0.002,
            "2100 x 9.80665 x sin(atan 0.2); 2 x 757.3 / (2.3 x 0.127 x 5 x 7 x 0.8), by hand", Provenance.Derived),
        new(new Dictionary<string, string>
            {
                ["kind"] = "driveline", ["total"] = "2100 kg", ["centerX"] = "1.248 m", ["height"] = "0.760 m", ["wheelbase"] = "2.600 m", ["grade"] = "0.3", ["grip"] = "0.6", ["loadedRadius"] = "375 mm", ["axleRatio"] = "4.10",
            },
            new Dictionary<string, double> { ["force"] = 5917.6, ["torque"] = 541.2, ["useUp"] = 0.5285, ["useDown"] = 0.7647 }, 0.0005, "5917.6 x 0.375 / 4.10 by hand", Provenance.Derived),
        new(new Dictionary<string, string>
            {
                ["kind"] = "rear", ["total"] = "2100 kg", ["centerX"] = "1.248 m", ["height"] = "0.760 m", ["wheelbase"] = "2.600 m", ["loadedRadius"] = "375 mm", ["strutRatio"] = "5", ["leverRatio"] = "7", ["cableEfficiency"] = "0.8",
                ["wheelFactors"] = """{"left":"2","right":"2"}""", ["wheelReverseFactors"] = """{"left":"2","right":"2"}""", ["wheelDrums"] = """{"left":"254 mm","right":"254 mm"}""",
            },
            new Dictionary<string, double> { ["effort"] = 185.19 * 2.3 / 2 }, 0.0005, "the first case with the wheels' own drums of factor 2", Provenance.Derived),
    ],
    Cautions =
    [
        HowToMeasureWheels.Qualified, "Whatever holds, chock a wheel before you go under it or leave it on a slope. Try the brake on a real grade, both ways, with somebody at the service brake.",
    ],
})
{
    private const string Driveline = "driveline", Front = "front", Rear = "rear", Nothing = "none", Memory = "data/engineering/brake-rules.csv, from memory";

    public sealed record Inputs(
        [Input("where the parking brake acts", OneOf = [Rear, Front, Driveline, Nothing], Measure = "follow the cable from the lever")] string Kind,
        [Input("total mass", "kg", MoreThan = 0, Measure = "drive it over a scale, one axle at a time, and add the readings")] UnitsNet.Mass Total,
        [Input("center of gravity behind the front axle", "m", MoreThan = 0, Low = 0.3, High = 6, Measure = "rear axle load over total mass, times the wheelbase")] Length CenterX,
        [Input("height of the center of gravity over the ground", "m", MoreThan = 0, Low = 0.3, High = 2, Measure = "weigh once level and once with one axle lifted two feet or more, springs blocked: rated lift, two people")] Length Height,
        [Input("wheelbase", "m", MoreThan = 0, Low = 1.2, High = 8, Measure = "tape from hub center to hub center on both sides and take the mean")] Length Wheelbase,
        [Input("grade to be held as rise over run", AtLeast = 0, High = 0.6, Default = 0.2, Measure = "ask the customer for the steepest place it is parked; take 0.2")] Ratio Grade,
        [Input("grip of the tires", MoreThan = 0, High = 1.2, Default = 0.7, Measure = "take 0.7 on dry pavement")] Ratio Grip,
        [Input("loaded radius of the rear tires", "mm", MoreThan = 0, Low = 200, High = 700, Measure = "tape from level ground to the hub center")] Length? LoadedRadius,
        [Input("loaded radius of the front tires, for a brake at the front wheels", "mm", MoreThan = 0, Low = 200, High = 700, Measure = "tape from level ground to the hub center")] Length? FrontRadius,
        [Input("axle ratio behind a driveline brake", MoreThan = 0, Low = 2, High = 10, Measure = "count turns of the propeller shaft for ten turns of the wheels")] Ratio? AxleRatio,
        [Input("brake factor of the parking brake's own drum", MoreThan = 0, High = 12, Measure = "ask its maker; a driveline drum with one leading shoe has about 2 (common practice, no source)")] Ratio? Factor,
        [Input("diameter of the parking brake's own drum", "mm", MoreThan = 0, Low = 100, High = 400, Measure = "caliper the drum inside; where it works the rear drums' shoes, caliper those")] Length? DrumDiameter,
        [Input("brake factors of the rear wheels, forward", MoreThan = 0, Measure = "comes from the rear drums")] Members<Ratio>? WheelFactors,
        [Input("brake factors of the rear wheels, backward", MoreThan = 0, Measure = "comes from the rear drums")] Members<Ratio>? WheelReverseFactors,
        [Input("how the shoes of the rear drums stand", OneOf = [LeadingTrailing, TwoLeading, DuoServo], Measure = HowToMeasureWheels.DrumKind)] Members<string>? WheelDrumKinds,
        [Input("drums of the rear wheels", "mm", MoreThan = 0, Measure = "caliper the drums inside")] Members<Length>? WheelDrums,
        [Input("ratio of the lever in the drum: cable to shoe", MoreThan = 0, Low = 1, High = 12, Measure = "rule from its pivot to the cable, over that from its pivot to the strut")] Ratio? StrutRatio,
        [Input("ratio of the hand lever or pedal", MoreThan = 0, Low = 2, High = 20, Measure = "rule from its pivot to the middle of the grip, over that to the cable")] Ratio? LeverRatio,
        [Input("share of the pull that gets through cables and equalizer", MoreThan = 0, Low = 0.2, High = 1, Default = 0.75, Measure = "take 0.75 for oiled cables with few bends; spring scale at both ends")] Ratio CableEfficiency,
        [Input("worked by hand or foot", OneOf = ["hand", "foot"], Measure = "look whether it is a lever or a pedal")] string? Operation,
        [Input("rule that it is held against", OneOf = ["571.105", "571.135", "R13-H", "R13-M1", "R13-N1", ParkingRule.None], Measure = "pick the rule that it is to be registered under, or none")] string? Rule);

    public sealed record Result(
        [Output("force along the grade", "N")] Force Force,
        [Output("torque that each parking brake must hold", "N m")] Torque? Torque,
        [Output("grip used by the braked axle facing up")] Ratio? UseUp,
        [Output("grip used by the braked axle facing down")] Ratio? UseDown,
        [Output("steepest grade held by grip facing up, rise over run")] Ratio? SteepestUp,
        [Output("steepest grade held by grip facing down, rise over run")] Ratio? SteepestDown,
        [Output("pull at lever or pedal, the harder way round", "N")] Force? Effort);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        double W = x.Total.Kilograms * Loading.Gravity, G = x.Grade.DecimalFractions, mu = x.Grip.DecimalFractions; // N
        var load = new Loading(W, x.Wheelbase.Meters, x.CenterX.Meters, x.Height.Meters);
        if (load.Behind >= load.Wheelbase)
        {
            w.Caution("By these figures the center of gravity lies behind the rear axle: check the readings and the wheelbase.");
            return null;
        }
        var hold = new ParkingHold(load, x.Kind == Front);
        var F = hold.Force(G);
        w.Line("F", "W sin(atan G)", $"{W} x sin(atan {G})", F, "N");
        if (x.Kind == Nothing) return Without(F, w);
        double up = hold.Use(G, true), down = hold.Use(G, false), steepUp = hold.Steepest(mu, true), steepDown = hold.Steepest(mu, false);
        var axle = x.Kind == Front ? Front : Rear;
        w.Line("use up", "F / N facing up", $"{F} / {F / up}", up, "1");
        w.Line("use down", "F / N facing down", $"{F} / {F / down}", down, "1");
        w.Line("G up", $"by grip {mu}", $"{mu}, {load.Behind}, {load.Wheelbase}, {load.Height}", steepUp, "1");
        w.Line("G down", $"by grip {mu}", $"{mu}, {load.Behind}, {load.Wheelbase}, {load.Height}", steepDown, "1");
        Grip(w, "facing-up", "up", axle, G, up, mu, steepUp);
        Grip(w, "facing-down", "down", axle, G, down, mu, steepDown);
        if (x.Kind == Driveline)
            w.Caution("A driveline brake holds both rear wheels through an open differential: it holds only as well as the wheel with less grip, and with one wheel jacked up it holds nothing.");
        else w.Caution("Only one axle is held: on ice, wet grass or with a wheel in the air it holds with what is left.");
        var brake = Brake(x); // m
        var lever = Pull(x, w, F, brake); // N at the lever for each N along the grade
        var pull = lever * F;
        if (pull is { } p) Effort(x, w, p);
        Rule(x, w, hold, mu, lever);
        return new(Force.FromNewtons(F), brake * F is { } T ? Torque.FromNewtonMeters(T) : null, Finite(up), Finite(down), Finite(steepUp), Finite(steepDown), pull is { } told ? Force.FromNewtons(told) : null);
    }

    private static Result Without(double F, Worksheet w)
    {
        const string Text = "There is no parking brake: a gear or a pawl is none, and nothing holds it but chocks.";
        foreach (var check in (string[])["facing-up", "facing-down"]) w.Answer(check, Verdict.Fail, Text, source: "statics");
        foreach (var check in (string[])["effort", "rule"]) w.Answer(check, Verdict.Unknown, "There is no parking brake to pull.");
        return new(Force.FromNewtons(F), null, null, null, null, null, null);
    }

    private static void Grip(Worksheet w, string check, string way, string axle, double G, double use, double mu, double steepest)
    {
        var most = double.IsFinite(steepest) ? $"It holds up to {100 * steepest:0} %." : "Grip is not what limits it.";
        var text = double.IsInfinity(use) ? $"Facing {way} {100 * G:0.#} % the {axle} axle carries nothing: it does not hold."
            : $"Facing {way} {100 * G:0.#} % the {axle} axle uses {use:0.00} of its load; the tires have {mu:0.00}. {(use > mu ? "It slides. " : "")}{most}";
        if (double.IsInfinity(use)) w.Answer(check, Verdict.Fail, text, source: "statics");
        else w.AtMost(check, use, mu, "1", text, "statics");
    }

    /// <summary>Torque of one parking brake for each newton along the grade, m; null where radius or ratio lacks.</summary>
    private static double? Brake(Inputs x) => Radius(x) / (x.Kind == Driveline ? x.AxleRatio?.DecimalFractions : 2);

    private static double? Radius(Inputs x) => (x.Kind == Front ? x.FrontRadius : x.LoadedRadius)?.Meters;

    /// <summary>Pull at the lever for each newton along the grade, the weaker way round; asks for what it lacks.</summary>
    private static double? Pull(Inputs x, Worksheet w, double F, double? brake)
    {
        var wheels = x.Kind == Rear;
        var r = x.DrumDiameter?.Meters / 2 ?? (wheels && x.WheelDrums is { } drums ? Least(drums) / 2 : null); // m
        // The wheels' factors are those of their own drums: a drum of its own inside a disc has its own.
        var shared = wheels && x.DrumDiameter is null && x.WheelDrums is not null;
        var C = x.Factor?.DecimalFractions ?? (shared && x.WheelFactors is { } factors ? Least(factors, x.WheelReverseFactors) : null);
        if (Radius(x) is null) w.Lacks(x.Kind == Front ? "frontRadius" : "loadedRadius");
        if (x.Kind == Driveline && x.AxleRatio is null) w.Lacks("axleRatio");
        if (x.StrutRatio is null) w.Lacks("strutRatio");
        if (x.LeverRatio is null) w.Lacks("leverRatio");
        if (r is null) w.Lacks("drumDiameter");
        // Two leading shoes are two trailing ones backward: a maker's factor forward says nothing of that.
        if (shared && x.Factor is null && x.WheelFactors is not null && x.WheelReverseFactors is null && TwoLeads(x)) w.Lacks("wheelReverseFactors");
        if (C is null) w.Lacks(shared ? "wheelFactors" : "factor");
        if (w.Lacking.Count > 0) return null;
        double arm = brake!.Value, radius = r!.Value, factor = C!.Value, strut = x.StrutRatio!.Value.DecimalFractions, lever = x.LeverRatio!.Value.DecimalFractions, eta = x.CableEfficiency.DecimalFractions;
        double tip = F * arm / (factor * radius), brakes = x.Kind == Driveline ? 1 : 2, each = brakes * arm / (factor * radius * strut * lever * eta);
        w.Line("T", x.Kind == Driveline ? "F R / axle ratio" : "F R / 2", $"{F} x {arm}", F * arm, "N m");
        w.Line("tip", "T / (C r)", $"{F * arm} / ({factor} x {radius})", tip, "N");
        w.Line("pull", "brakes x tip / (strut x lever x efficiency)", $"{brakes} x {tip} / ({strut} x {lever} x {eta})", each * F, "N");
        return each;
    }

    private static void Effort(Inputs x, Worksheet w, double pull)
    {
        if (x.Operation is not { } by) return;
        var most = (ParkingRule.Of(x.Rule) ?? ParkingRule.Usual).Force(by);
        w.AtMost("effort", pull, most, "N", $"It takes {pull:0} N by {by} to hold {100 * x.Grade.DecimalFractions:0.#} %; {most:0} N is what rules allow by {by}.{(pull > most ? " A longer lever or a better drum is wanted." : "")}",
            Memory, beyond: Verdict.Caution);
    }

    /// <summary>Both the grade and the force that the picked rule asks; from memory, so that nothing fails by it.</summary>
    private static void Rule(Inputs x, Worksheet w, in ParkingHold hold, double mu, double? lever)
    {
        if (x.Rule is null) return;
        if (ParkingRule.Of(x.Rule) is not { } rule)
        {
            w.Answer("rule", Verdict.Pass, "No rule was picked: what binds a restored vehicle is where it is registered.");
            return;
        }
        if (x.Operation is not { } by || lever is not { } each) return;
        double use = Math.Max(hold.Use(rule.Grade, true), hold.Use(rule.Grade, false)), wanted = each * hold.Force(rule.Grade), most = rule.Force(by);
        var slides = use > mu;
        w.Answer("rule", slides || wanted > most ? Verdict.Caution : Verdict.Pass,
            $"{rule.Name} asks it to hold {100 * rule.Grade:0} % both ways: {(slides ? $"the tires would slide one way at {mu:0.00} of grip" : "the tires hold")}, and it takes {wanted:0} N by {by} of {most:0} N allowed. "
            + "From memory: read the official text.", wanted, "N", rule.Source);
    }

    private static bool TwoLeads(Inputs x)
    {
        if (x.WheelDrumKinds is not { } kinds) return false;
        foreach (var (_, kind) in kinds.Items) if (kind == TwoLeading) return true;
        return false;
    }

    private static double Least(Members<Length> lengths)
    {
        var least = double.PositiveInfinity;
        foreach (var (_, l) in lengths.Items) least = Math.Min(least, l.Meters);
        return least;
    }

    private static double Least(Members<Ratio> forward, Members<Ratio>? backward)
    {
        var least = double.PositiveInfinity;
        foreach (var (_, f) in forward.Items) least = Math.Min(least, f.DecimalFractions);
        if (backward is not null)
            foreach (var (_, f) in backward.Items) least = Math.Min(least, f.DecimalFractions);
        return least;
    }

    private static Ratio? Finite(double x) => double.IsFinite(x) ? Ratio.FromDecimalFractions(x) : null;
}
