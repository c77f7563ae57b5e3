using Crossmember.Engineering.Calculations;
using UnitsNet;
using static Crossmember.Engineering.Brakes.Wheels.HowToMeasureWheels;

namespace Crossmember.Engineering.Brakes.Wheels;

/// <summary>What goes wrong when the brakes of an old vehicle are changed piece by piece: one circuit, a drum's valve on discs, no parking brake.</summary>
/// <remarks>
/// Formula:  wheels left after one burst hose = wheels less those of one circuit; the rest is looked at, not calculated
/// Valid:    two axles
/// Source:   statics for one circuit; NHTSA interpretation aiam4640 for the parking brake; the rest common practice, no source
/// Example:  four wheels on two circuits -> two left
/// </remarks>
public sealed class BrakeLayout() : Calculation<BrakeLayout.Inputs, BrakeLayout.Result>(new()
{
    Id = "brakes.layout",
    Version = 1,
    Title = "What the brakes are made up of",
    Purpose = "The mistakes that are made where drums, discs, master cylinder and valves of several vehicles come together, before anything is worked out.",
    Formula = "wheels left after one burst hose = wheels - those of one circuit; the rest is compared",
    Validity = "Two axles. What is right in kind may still be wrong in size: torque, balance, pedal and heat are worked out on their own.",
    Sources =
    [
        "One circuit: a hose that bursts empties it, statics", "NHTSA interpretation aiam4640: a parking brake is of friction type with a solely mechanical means to stay applied, and a gearbox pawl is none",
        "Residual valves, metering valves up to 1.2 MPa, silicone fluid, master cylinder of drums on discs: common practice, no source",
    ],
    Checks =
    [
        new("circuits", Sense.AtLeast, "Are there service brakes left when a hose bursts?", "circuits"),
        new("alike", null, "Has each axle the same brake on both sides?"),
        new("residual-front", null, "Does the front circuit hold the right pressure at rest?", "residualFront"),
        new("residual-rear", null, "Does the rear circuit hold the right pressure at rest?", "residualRear"),
        new("metering", null, "Do discs wait for the drums?", "metering"),
        new("master", null, "Does the master cylinder suit the brakes?", "masterFor"),
        new("fluid", null, "Does the fluid suit the seals?", "fluid"),
        new("parking", null, "Is there a parking brake?", "parking"),
    ],
    NoTrends = [new("residualFront", "compared with the kind of brake"), new("residualRear", "compared with the kind of brake"), new("metering", "held against where the shoes come on"), new("thresholds", "compared with what is held")],
    Examples =
    [
        new(new Dictionary<string, string> { ["kinds"] = """{"front.left":"disc","front.right":"disc","rear.left":"drum","rear.right":"drum"}""", ["circuits"] = "front-rear", ["residualFront"] = "0 MPa", ["metering"] = "0.7 MPa" },
            new Dictionary<string, double> { ["wheelsLeft"] = 2 }, 1e-9, "two of four, counted", Provenance.Derived),
    ],
    Cautions =
    [
        Qualified,
        "Brake tube is double-flared or bubble-flared as its fitting demands, never soldered, never joined by compression fittings. Unknown hoses and all rubber are replaced on a restoration.",
        "Lines and hoses are pressure-tested with fluid and equipment made for it, never with compressed air; fluid under pressure goes through skin.",
    ],
})
{
    /// <summary>Where brakes let go when nobody says, Pa: discs have no springs. Common practice, no source.</summary>
    private const double DiscsBear = 0.02e6, DrumsBear = 0.4e6;

    /// <summary>As late as metering valves let discs on, Pa. Common practice, no source.</summary>
    private const double MostMetering = 1.2e6;

    /// <summary>Less than this keeps no cup of a wheel cylinder spread, Pa. Common practice, no source.</summary>
    private const double KeepsCups = 0.03e6;

    private const string Practice = "common practice, no source", Agency = "NHTSA interpretation aiam4640", OneCircuit = "one", SingleMaster = "single", Silicone = "DOT 5", NoBrake = "none";

    public sealed record Inputs(
        [Input("disc or drum of each wheel", OneOf = [Disc, DrumBrake], Measure = HowToMeasureWheels.Kind)] Members<string> Kinds,
        [Input("how the circuits are split", OneOf = [OneCircuit, "front-rear", "diagonal"], Measure = "follow the lines from the master cylinder")] string? Circuits,
        [Input("kind of the master cylinder", OneOf = [SingleMaster, "tandem", "stepped", "twin"], Measure = "count its outlets and bores: one bore with one outlet is single")] string? Master,
        [Input("pressures at which the wheels' brakes begin; 0.02 MPa for discs and 0.4 MPa for drums where nothing is said", "MPa", AtLeast = 0, High = 2, Measure = "comes from each wheel's brake")] Members<Pressure>? Thresholds,
        [Input("pressure held by a residual valve in the front line", "MPa", AtLeast = 0, Measure = HowToMeasureWheels.Residual)] Pressure? ResidualFront,
        [Input("pressure held by a residual valve in the rear line", "MPa", AtLeast = 0, Measure = HowToMeasureWheels.Residual)] Pressure? ResidualRear,
        [Input("line pressure below which a metering valve keeps the front discs back", "MPa", AtLeast = 0, Measure = "look for a valve in the front line; none is 0")] Pressure? Metering,
        [Input("what the master cylinder was made for", OneOf = ["drums", "disc and drum", "discs"], Measure = "look it up by its casting number; two chambers of one size are mostly a drum's")] string? MasterFor,
        [Input("fluid", OneOf = ["DOT 3", "DOT 4", Silicone, "DOT 5.1"], Measure = "read the cap and ask who filled it; purple is silicone, straw is glycol")] string? Fluid,
        [Input("where the parking brake acts", OneOf = ["rear", "front", "driveline", NoBrake], Measure = "follow the cable from the lever")] string? Parking);

    public sealed record Result([Output("wheels that still brake after one burst hose")] Ratio? WheelsLeft);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        Kinds front = Kinds.Of(x, "front"), rear = Kinds.Of(x, "rear");
        w.Answer("alike", front.Mixed || rear.Mixed ? Verdict.Fail : Verdict.Pass, front.Mixed || rear.Mixed
            ? $"A disc on one side and a drum on the other at the {(front.Mixed ? "front" : "rear")}: it pulls at every stop. Look again, or change one." : $"Both sides alike: {front.Told} in front, {rear.Told} behind.", source: "statics");
        var left = Circuits(x, w);
        if (x.ResidualFront is { } f) Residual(w, "residual-front", "front", f.Megapascals, front);
        if (x.ResidualRear is { } r) Residual(w, "residual-rear", "rear", r.Megapascals, rear);
        if (x.Metering is { } m) Metering(w, m.Megapascals, front, rear);
        if (x.MasterFor is { } made) MadeFor(w, made, front.Discs || rear.Discs, front.Drums || rear.Drums);
        if (x.Fluid is { } fluid)
            w.Answer("fluid", fluid == Silicone ? Verdict.Caution : Verdict.Pass, fluid == Silicone
                ? "DOT 5 is silicone: it mixes with no other, wants new seals made for it in a dry system, and gives a softer pedal. Not where another fluid has been without taking all apart."
                : $"{fluid} is a glycol fluid: never top it up with silicone (DOT 5). It takes up water, so change it by the calendar.", source: Practice);
        if (x.Parking is { } parking) Parking(w, parking);
        return new(left is { } l ? Ratio.FromDecimalFractions(l) : null);
    }

    private static double? Circuits(Inputs x, Worksheet w)
    {
        // One chamber is one circuit, however the lines are split behind it.
        var single = x.Master == SingleMaster;
        if (x.Circuits is null && !single) return null;
        int wheels = x.Kinds.Items.Count, circuits = single || x.Circuits == OneCircuit ? 1 : 2;
        var left = wheels - (wheels / (double)circuits);
        w.Line("left", "wheels - wheels / circuits", $"{wheels} - {wheels} / {circuits}", left, "1");
        w.AtLeast("circuits", circuits, 2, "1", circuits == 1
            ? $"One circuit for all wheels{(single && x.Circuits is not (null or OneCircuit) ? ", since the master cylinder is a single one, however its lines are split" : "")}: one burst hose or line and there is no service brake at all. A master cylinder with two chambers is wanted, and the lines split."
            : $"Two circuits, split {(x.Circuits == "diagonal" ? "from corner to corner" : "front and rear")}: a burst hose leaves {left:0.#} of {wheels} wheels.", "statics");
        return left;
    }

    private static void Residual(Worksheet w, string check, string end, double held, in Kinds kinds)
    {
        double begins = kinds.Begins / 1e6, over = held - begins; // MPa
        var sure = over > WheelDrag.Doubt / 1e6;
        var (verdict, text) = kinds switch
        {
            { Discs: true } when over > 0 => (sure ? Verdict.Fail : Verdict.Caution,
                $"{held:0.000} MPa is held in the {end} line and discs let go below about {begins:0.000} MPa: {(sure ? "they have no springs and drag until they boil. Take the valve out of that outlet." : "they may drag. Feel them with the wheels off the ground.")}"),
            { Discs: true } => (Verdict.Pass, held > 0 ? $"{held:0.000} MPa held in the {end} line lets discs go." : $"Nothing is held in the {end} line: discs let go."),
            _ when over > 0 => (sure ? Verdict.Fail : Verdict.Caution,
                $"{held:0.000} MPa is held in the {end} line and the shoes let go below about {begins:0.000} MPa: {(sure ? "they rub all the time. Wrong valve, a port that stays shut, or tired springs." : "they may rub. Turn the drums with the wheels off the ground.")}"),
            _ when held * 1e6 < KeepsCups => (Verdict.Caution, $"{(held > 0 ? $"Only {held:0.000} MPa is" : "Nothing is")} held in the {end} line: drums with plain cups want about 0.07 MPa, or they draw air and weep. With cup expanders none is right."),
            _ => (Verdict.Pass, $"{held:0.000} MPa in the {end} line keeps the cups of drums tight."),
        };
        w.Answer(check, verdict, text, held, "MPa", over > 0 && sure ? "statics: held beyond where the brake lets go" : Practice);
    }

    private static void Metering(Worksheet w, double pressure, in Kinds front, in Kinds rear)
    {
        var begins = rear.Begins / 1e6; // MPa
        var wanted = front.Discs && rear.Drums;
        var (verdict, text) = (wanted, pressure > 0) switch
        {
            (true, false) => (Verdict.Caution, "Discs in front and drums behind without a metering valve: the front brakes first at every touch, which shows on ice and wet grass."),
            (true, true) when pressure < begins => (Verdict.Caution, $"The metering valve lets the discs on at {pressure:0.00} MPa, before the shoes come on at {begins:0.00} MPa: it does nothing."),
            (true, true) when pressure > MostMetering / 1e6 => (Verdict.Caution,
                $"The metering valve keeps the discs back until {pressure:0.00} MPa: up to there the rear brakes alone and may lock first. {MostMetering / 1e6:0.0} MPa is as late as such valves come."),
            (true, true) => (Verdict.Pass, $"The metering valve keeps the discs back until {pressure:0.00} MPa, when the shoes have come on at {begins:0.00} MPa."),
            (false, true) => (Verdict.Caution, "A metering valve without discs in front and drums behind keeps the front back for nothing: take it out."),
            _ => (Verdict.Pass, "No metering valve, and none is wanted."),
        };
        w.Answer("metering", verdict, text, pressure, "MPa", Practice);
    }

    private static void MadeFor(Worksheet w, string made, bool discs, bool drums)
    {
        var (verdict, text) = made switch
        {
            "drums" when discs => (Verdict.Caution, "A drums' master cylinder on discs: its small chamber runs dry as the pads wear, its valves hold pressure, and its bore may be too small for the calipers."),
            "discs" or "disc and drum" when !discs => (Verdict.Caution, $"A master cylinder made for {made} on drums: the bore may be too large for a leg alone, and drums may want residual valves."),
            "discs" when drums => (Verdict.Caution, "A master cylinder made for discs with drums behind: look whether that outlet wants a residual valve."),
            _ => (Verdict.Pass, $"The master cylinder was made for {made}."),
        };
        w.Answer("master", verdict, text, source: Practice);
    }

    private static void Parking(Worksheet w, string where)
    {
        if (where == NoBrake)
            w.Answer("parking", Verdict.Fail, "There is no parking brake, and nothing in its place: a gear or a pawl is none. It is wanted of friction type and must stay on by mechanical means alone.", source: Agency);
        else if (where == "driveline")
            w.Answer("parking", Verdict.Caution, "The parking brake acts on the driveline: a jacked rear wheel, a wheel on ice or a shaft that is out and it holds nothing. Chock the wheels, and keep a sticker by the jack.", source: Practice);
        else w.Answer("parking", Verdict.Pass, $"The parking brake acts on the {where} wheels.", source: Agency);
    }

    /// <summary>What stands on one axle.</summary>
    /// <param name="Begins">Least line pressure at which one of its wheels brakes, Pa.</param>
    private readonly record struct Kinds(bool Discs, bool Drums, double Begins)
    {
        public bool Mixed => Discs && Drums;

        public string Told => Discs ? "discs" : Drums ? "drums" : "nothing";

        public static Kinds Of(Inputs x, string axle)
        {
            bool discs = false, drums = false;
            foreach (var (name, kind) in x.Kinds.Items)
                if (name.StartsWith(axle, StringComparison.Ordinal)) (discs, drums) = (discs || kind == Disc, drums || kind == DrumBrake);
            var begins = double.PositiveInfinity;
            if (x.Thresholds is { } told)
                foreach (var (name, p) in told.Items)
                    if (name.StartsWith(axle, StringComparison.Ordinal)) begins = Math.Min(begins, p.Pascals);
            return new(discs, drums, double.IsFinite(begins) ? begins : discs ? DiscsBear : DrumsBear);
        }
    }
}
