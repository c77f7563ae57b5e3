namespace Crossmember.Engineering.Brakes.Wheels;

/// <summary>What was measured of a drum brake, what stands in for the rest, and whether it can be.</summary>
/// <param name="Radius">Of the drum, m.</param>
/// <param name="Anchor">From its center to the pivot of a shoe, m.</param>
/// <param name="Opening">To the line of the wheel cylinder, m.</param>
/// <param name="Link">To the link of a duo-servo brake, m.</param>
/// <param name="Spread">Between both pivots, m.</param>
/// <param name="From">Lining from the pivot, rad.</param>
/// <param name="Lined">Whether both ends of the lining were measured.</param>
internal readonly record struct DrumReadings(
    DrumKind Kind, double Radius, double Anchor, double Opening, double Link, double Spread, double From, double To, bool Lined, string? Assumed)
{
    public static DrumReadings Of(BrakeFactor.Inputs x)
    {
        var kind = x.DrumKind switch { HowToMeasureWheels.TwoLeading => DrumKind.TwoLeading, HowToMeasureWheels.DuoServo => DrumKind.DuoServo, _ => DrumKind.LeadingTrailing };
        double anchor = (x.AnchorDistance ?? x.ActuatorDistance)!.Value.Meters, opening = (x.ActuatorDistance ?? x.AnchorDistance)!.Value.Meters;
        var lined = x.LiningStart is not null && x.LiningEnd is not null;
        var servo = kind == DrumKind.DuoServo;
        return new(kind, x.DrumDiameter!.Value.Meters / 2, anchor, opening, x.LinkDistance?.Meters ?? anchor, kind == DrumKind.LeadingTrailing ? x.AnchorSpread?.Meters ?? 0 : 0,
            x.LiningStart?.Radians ?? 0, x.LiningEnd?.Radians ?? 0, lined, StandsIn(x, lined, servo));
    }

    public string Method => Lined ? "Worked from the lining's ends." : "By the idealised factor, since the lining's ends were not measured.";

    /// <summary>Which reading cannot be; null where all of them can.</summary>
    public string? CannotBe()
    {
        if (Anchor >= Radius) return $"The anchor would lie {1000 * Anchor:0.#} mm from the hub's center, outside a drum of {1000 * Radius:0.#} mm radius: rule it again.";
        if (Opening >= Radius) return $"The wheel cylinder's line would lie {1000 * Opening:0.#} mm from the hub's center, outside a drum of {1000 * Radius:0.#} mm radius: rule it again.";
        if (Spread / 2 >= Anchor) return $"Pins {1000 * Spread:0.#} mm apart cannot lie {1000 * Anchor:0.#} mm from the hub's center: rule both again.";
        if (Kind == DrumKind.DuoServo && Link >= Radius) return $"The link would lie {1000 * Link:0.#} mm from the hub's center, outside a drum of {1000 * Radius:0.#} mm radius: rule it again.";
        if (Kind == DrumKind.DuoServo && Opening > Anchor)
            return $"The cylinder's line would lie {1000 * Opening:0.#} mm from the hub's center and the anchor pin only {1000 * Anchor:0.#} mm: in a duo-servo brake the pin lies beyond the cylinder. Rule both again.";
        if (!Lined) return null;
        if (From >= To) return $"The lining would begin {Degrees(From):0.#} deg from the anchor and end at {Degrees(To):0.#} deg: read both ends again, round from the anchor.";
        if (Kind == DrumKind.DuoServo && (To <= Math.PI / 2 || From >= Math.PI / 2))
            return $"The lining would reach from {Degrees(From):0.#} to {Degrees(To):0.#} deg round from the anchor, all on one side of the hub's level, where a free shoe finds no hold: read both ends again.";
        return To > Math.PI ? $"The lining would reach {Degrees(To):0.#} deg round from its own anchor, onto the other shoe: read its end again." : null;
    }

    public Drum Brake()
    {
        var shoe = Lined ? PivotedShoe.Of(Radius, Anchor, From, To) : PivotedShoe.Short(Radius, Anchor);
        var first = Kind != DrumKind.DuoServo ? default
            : Lined ? new LinkedShoe(Radius, Opening, Link, (Math.PI / 2) - To, (Math.PI / 2) - From) : LinkedShoe.Short(Radius, Opening, Link);
        // The cylinder's line and the pivots of one brake lie on opposite sides of the hub; pins that stand apart are nearer the hub, measured square to that line.
        return new(Kind, Radius, Opening + Math.Sqrt((Anchor * Anchor) - (Spread * Spread / 4)), Anchor, shoe, first);
    }

    private static string? StandsIn(BrakeFactor.Inputs x, bool lined, bool servo)
    {
        var same = x.AnchorDistance is null || x.ActuatorDistance is null ? " anchor and wheel cylinder as far from the hub's center;" : "";
        var link = servo && x.LinkDistance is null ? " the link as far from it as the anchor;" : "";
        var idealised = lined ? "" : " all pressure at a right angle from the anchor, as the lining's ends were not measured;";
        return same.Length + link.Length + idealised.Length == 0 ? null : $"Assumed:{same}{link}{idealised} the factor may be a quarter off.";
    }

    private static double Degrees(double radians) => radians * 180 / Math.PI;
}
