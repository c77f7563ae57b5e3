namespace Crossmember.Engineering.Brakes.Heat;

/// <summary>Rotor or drum of one wheel as a store of heat: reckoned from its dimensions. SI.</summary>
/// <remarks>
/// Formula:  disc ring pi/4 (D^2 - d^2) t, its iron share 0.65 where vented; drum rim pi (D + s) s (w + 10 mm), wall s 10 mm
/// Valid:    hat, bell and face are left out of the mass: the real thing is heavier and stays cooler
/// Source:   geometry; iron share, wall, covering of the linings: common practice, no source
/// </remarks>
/// <param name="Mass">kg.</param>
/// <param name="CoolingArea">What the air sweeps, m2.</param>
/// <param name="SweptArea">What the linings sweep, m2.</param>
/// <param name="Depth">Iron behind each swept face up to where no heat flows, m: half of a disc, one cheek of a vented one, the wall of a drum.</param>
/// <param name="LiningArea">All lining of the wheel, m2.</param>
public readonly record struct BrakeBody(double Mass, double CoolingArea, double SweptArea, double Depth, double LiningArea)
{
    /// <summary>Share of a vented rotor's thickness that is iron, and inner over outer diameter of a ring that nobody measured.</summary>
    public const double IronShare = 0.65, InnerShare = 0.62;

    /// <summary>Share of the swept area that pads and shoes cover, wall of a drum and what its rim is wider than the lining, m.</summary>
    public const double PadCover = 0.14, ShoeCover = 0.6, Wall = 0.010, Lip = 0.010;

    public static BrakeBody Disc(double outer, double inner, double padOuter, double thickness, bool vented, double padArea)
    {
        double ring = Math.PI / 4 * ((outer * outer) - (inner * inner)), iron = vented ? IronShare : 1;
        var swept = Math.PI / 2 * ((padOuter * padOuter) - (inner * inner));
        return new(GrayIron.Density * ring * thickness * iron, (2 * ring) + (Math.PI * outer * thickness), swept, thickness * iron / 2,
            padArea > 0 ? 2 * padArea : PadCover * swept);
    }

    public static BrakeBody Drum(double diameter, double width)
    {
        double rim = width + Lip, swept = Math.PI * diameter * width;
        return new(GrayIron.Density * Math.PI * (diameter + Wall) * Wall * rim, (Math.PI * (diameter + (2 * Wall)) * rim) + (Math.PI / 4 * diameter * diameter),
            swept, Wall, ShoeCover * swept);
    }

    /// <summary>Share of the friction heat that goes into the iron, each side by how readily its surface takes heat in and by its area.</summary>
    public double RotorShare => 1 / (1 + (GrayIron.LiningEffusivity * LiningArea / (GrayIron.Effusivity * SweptArea)));
}
