namespace Crossmember.Engineering.Brakes.Pedal;

/// <summary>How a push rod's force becomes pressure: one bore, or two cylinders side by side on a bar.</summary>
/// <remarks>
/// Formula:  one bore p = F / A; on a bar the front rod gets F xr / (xf + xr), the rear one F xf / (xf + xr)
/// Valid:    the bar moves freely and stands square; a stepped bore makes pressure with its small end once the fill valve is open
/// Source:   statics
/// </remarks>
/// <param name="FrontShare">Share of the rod's force on the front circuit's piston.</param>
/// <param name="FrontArea">m2.</param>
/// <param name="Fill">Area that fills the brakes before there is pressure, m2; a stepped bore's large end.</param>
internal readonly record struct MasterCylinder(bool Twin, double FrontShare, double FrontArea, double RearArea, double Fill)
{
    public const string Single = "single", Tandem = "tandem", Stepped = "stepped", Pair = "twin";

    public static double AreaOf(double bore) => Math.PI / 4 * bore * bore;

    /// <summary>Area whose pressure is that of the front circuit under the whole force of the rod, m2.</summary>
    public double Effective => FrontArea / FrontShare;

    /// <summary>Pressure of the rear circuit over that of the front.</summary>
    public double RearShare => Twin ? (1 - FrontShare) / RearArea * FrontArea / FrontShare : 1;

    /// <summary>Null where a measure that this kind needs is not known.</summary>
    public static MasterCylinder? Of(string? kind, double? bore, double? large, double? front, double? rear, double? frontArm, double? rearArm)
    {
        if (kind == Pair)
            return front is { } f && rear is { } r && frontArm is { } xf && rearArm is { } xr ? new(true, xr / (xf + xr), AreaOf(f), AreaOf(r), AreaOf(f)) : null;
        if (bore is not { } b) return null;
        var area = AreaOf(b);
        return new(false, 1, area, area, kind == Stepped ? Math.Max(area, large is { } l ? AreaOf(l) : 0) : area);
    }
}
