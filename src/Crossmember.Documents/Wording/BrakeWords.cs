using Crossmember.Engineering.Quantities;

namespace Crossmember.Documents.Wording;

/// <summary>What is said of work on brakes, the same on the screen and on paper. Common practice, no source, unless it names one.</summary>
public static class BrakeWords
{
    public const string Caution =
        "Brakes can kill. A brake design is to be reviewed by a qualified brake engineer, local law judges a conversion and asks for its own inspection, "
        + "and the first stops are tried on closed ground, slowly. These figures help to decide; they certify nothing.";

    /// <summary>Before a gauge is screwed on.</summary>
    public const string GaugeCaution =
        "Fluid under pressure injures skin and eyes: gauges, hoses and fittings made for brake pressure only, goggles, nobody in line with a joint. Never test with compressed air. Wheels chocked.";

    public static IReadOnlyList<string> GaugeSteps { get; } =
    [
        "Gauges at the bleeders, one in front and one behind, both for at least twice the highest figure below. Bleed them.",
        "A force gauge between shoe and pedal pad. Pedal free play as the maker has it.",
        "Engine running warm for “booster working”; read the vacuum at the hose. For “booster dead”: engine off, press until the pedal no longer sinks.",
        "Go up slowly to each force, hold until the needles stand, read. Up only: on the way down seals and valves hold pressure back.",
        "Pedal up: what the gauges still show is what a residual valve holds, or a blocked port.",
    ];

    public static IReadOnlyList<string> Bleeding { get; } =
    [
        "Fluid of the class on the cap, from a sealed can opened today. Silicone fluid mixes with no other and asks for new seals and dry parts.",
        "Master cylinder bled on the bench before it goes in, level as it will sit.",
        "Reservoir kept over the outlets all the while; what comes out is never used again.",
        "Order as the maker says; else the longest line first. A bleeder must be the highest point of its cylinder: left and right not swapped.",
        "Slow strokes. Where there was rust, not the whole stroke of an old master cylinder: its seals have never been there.",
        "Load-sensing valve: axle at its loaded height, or its lever held as its maker says, or air stays behind it.",
        "Done when the fluid runs clear without bubbles at every wheel and the second push of the pedal is no higher than the first.",
        "Hold hard for 10 s (125 lbf, 556 N; 49 CFR 570.55): the pedal does not sink, no joint weeps, no lamp comes on. Look at every joint, hose and flare with a lamp.",
        "Steering from lock to lock, axle to full droop and bump: no hose tightens, kinks or touches.",
        "Fluid wiped off paint and linings: it eats the one and spoils the other.",
    ];

    public static IReadOnlyList<string> Bedding(MeasureSystem measure) =>
    [
        "New linings ground or set to the drum; shoes adjusted until they just drag, then backed off as the maker says.",
        "Discs free of oil, run-out measured at the rim; calipers slide by hand.",
        $"On closed ground: 20 to 30 slowings from about {(measure == MeasureSystem.Metric ? "55 to 15 km/h" : "35 to 10 mph")}, gentle at first and then firmer, with half a minute of driving between them.",
        "Never hold it hot: after the last one drive on without brakes until they are cool. No full stop with the pedal held.",
        "Wheel temperatures left and right of an axle alike, measured at once and at the same place. A hot one drags, a cold one does nothing.",
        "Adjust once more when cold; wheel nuts to their torque again.",
    ];

    /// <summary>In this order: each is only tried when the one before it was good.</summary>
    public static IReadOnlyList<(string Test, string Good)> RoadTest(MeasureSystem measure)
    {
        var (slow, brisk, fast) = measure == MeasureSystem.Metric ? ("30 km/h", "50 km/h", "65 km/h") : ("20 mph", "30 mph", "40 mph");
        return
        [
            ("Standing, engine off: pedal held hard for 10 s", "does not sink"),
            ("Standing, one full pedal, engine started with the foot on it", "pedal sinks a little: the booster helps"),
            ("Walking pace, hands light on the wheel", "stops, pulls to no side, lets go again"),
            ($"{slow}, gently, then firmly", "straight; nothing grabs, scrapes or smells"),
            ($"{slow}, hard, empty: who locks first (somebody watches from beside, well away)", "the front first, or nothing"),
            ($"{slow}, hard, loaded as it will be used", "the front first, or nothing"),
            ($"{brisk}, hard: pedal force and deceleration written down", "as the sheet says, within a tenth"),
            ($"{slow}, booster emptied", "stops with a leg, and more pedal"),
            ($"{slow}, one circuit opened at a bleeder by somebody qualified, into a bottle; then the other", "stops, pedal still off the floor, lamp comes on"),
            ("Parking brake on the steepest ground that is safe, facing up, then down, wheels chocked with a gap", "holds five minutes"),
            ($"Fade: 10 to 15 firm slowings from {fast} at equal distances, temperatures by paint or probe after it", "pedal force rises little, comes back when cool"),
            ("After it: every joint, hose, flare and wheel nut looked at again", "dry, tight"),
        ];
    }

    public static IReadOnlyList<string> RoadCautions { get; } =
    [
        "Closed, level, dry ground with room on all sides, nobody ahead; low speed first. Belt on, nothing loose aboard, fire extinguisher in reach.",
        "Stop at the first pull, sink, smell or noise, and find out why before going on.",
        "Linings of old vehicles may hold asbestos: wet-clean, no compressed air, no dry brushing.",
        "A qualified brake or vehicle engineer reviews the design; the inspection that local law asks for comes before public roads.",
    ];

    public static IReadOnlyList<string> LineCautions { get; } =
    [
        "Steel or copper-nickel tube made for brakes. Double or bubble flare as the fitting asks; no single flare, no compression joint, nothing heated or soldered.",
        "Clips so close that no tube hums; none where a wheel, shaft or exhaust can reach it. Hoses and rubber of unknown age are replaced, not cleaned.",
        "Lines are proved with bench equipment made for it, shielded, by fluid and never by air.",
    ];
}
