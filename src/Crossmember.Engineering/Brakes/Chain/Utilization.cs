namespace Crossmember.Engineering.Brakes.Chain;

/// <summary>Grip that each axle uses at a deceleration: its braking force over its load.</summary>
/// <remarks>
/// Formula:  f = F / N at the line pressure that brakes with z W
/// Source:   adhesion utilised, UN Regulation 13 Annex 10 and 71/320/EEC Annex II Appendix; statics
/// </remarks>
/// <param name="Pressure">Line pressure, Pa.</param>
public readonly record struct Utilization(double Pressure, double Front, double Rear)
{
    /// <summary>Null where no pressure brakes so hard, or the rear axle would lift first.</summary>
    public static Utilization? At(double z, in Rig rig, in Loading load)
    {
        if (load.Rear(z) <= 0 || load.Front(z) <= 0 || rig.Pressure(z * load.Weight) is not { } line) return null;
        return new(line, rig.FrontAt(line) / load.Front(z), rig.RearAt(line) / load.Rear(z));
    }
}
