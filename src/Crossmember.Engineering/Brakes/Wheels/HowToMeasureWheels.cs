namespace Crossmember.Engineering.Brakes.Wheels;

/// <summary>How the inputs of wheel brakes are got, and the words of caution that belong to every one of their answers.</summary>
internal static class HowToMeasureWheels
{
    public const string Disc = "disc", DrumBrake = "drum", LeadingTrailing = "leading-trailing", TwoLeading = "two-leading", DuoServo = "duo-servo";

    public const string
        Kind = "look through the wheel: disc or drum",
        Friction = "read the two letters at the end of the code on the edge of the lining: C up to 0.15, D to 0.25, E to 0.35, F to 0.45, G to 0.55, H more (SAE J866, from memory); or work it back from a road test",
        DrumKind = "drum off, look: one anchor pin at the top and a loose adjuster between the shoes below is duo-servo, a cylinder for each shoe is two-leading, else leading-trailing",
        DrumDiameter = "read the mark cast on the drum, or caliper it inside",
        Anchor = "rule from the hub's center to the middle of the pin or plate that the shoes bear on",
        Opening = "rule from the hub's center square to the line through the wheel cylinder's pistons",
        Link = "rule from the hub's center square to the adjuster between the shoes",
        Spread = "rule between the middles of both pins; 0 where the shoes share one",
        LiningEnd = "protractor at the hub's center, from the anchor round to the lining's edge",
        Pistons = "count them on one side of the disc",
        PistonDiameter = "caliper the piston, or read the bore cast or stamped on the caliper",
        CylinderBore = "read the figure cast on the wheel cylinder, or caliper its piston",
        PadOuter = "twice the rule from the hub's center to the outer edge of the pads' friction",
        PadInner = "twice the rule from the hub's center to the inner edge of the pads' friction",
        Residual = "look in the outlet of the master cylinder: none is 0, a drum's about 0.07 MPa, a disc's about 0.014 MPa; or gauge a bleeder with the pedal up",
        Factor = "comes from friction and geometry; or ask the brake's maker";

    public const string
        Linings = "The dust of old linings may be asbestos: wet-clean, no compressed air, a mask. Linings of both wheels of an axle are changed together and of one make; oil or brake fluid on one of them makes it grab or fail.",
        Qualified = "Brake parts changed on a road vehicle need a look by a qualified brake or vehicle engineer, and local rules decide. This is a help to decide with and no approval. First stops slowly, on a closed surface.";
}
