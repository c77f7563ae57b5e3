namespace Crossmember.Engineering.Brakes.Heat;

/// <summary>One wheel's brake as four stores of heat: rotor or drum, linings, fluid at the piston with what holds it, hub with wheel. SI.</summary>
/// <remarks>
/// Formula:  C dT/dt = heat in - sum of G (T - T next) - hA(v) (T - air) - s (T^4 - air^4); friction heat splits between iron and lining
/// Valid:    each store of one temperature; the paths lining - fluid - hub are usual figures by lining area, not measured, and err to the hot side
/// Source:   lumped heat balance, derived in docs/derivations/brake-heat.md; paths: common practice, no source
/// </remarks>
/// <param name="Rotor">J/K, as the other three stores.</param>
/// <param name="ToLining">W/K from iron to lining, as the other two paths.</param>
/// <param name="Air">Of the rotor or drum.</param>
/// <param name="Radiating">Emissivity x Stefan-Boltzmann x area, W/K4.</param>
/// <param name="FluidToAir">W/K at 40 mph from caliper or cylinder; standing a fifth of it.</param>
/// <param name="RotorShare">Share of the friction heat that goes into the iron.</param>
public readonly record struct BrakeNodes(
    double Rotor, double Lining, double Fluid, double Hub, double ToLining, double ToFluid, double ToHub, Airflow Air, double Radiating,
    double FluidToAir, double HubToAir, double RotorShare)
{
    /// <summary>Of the iron's faces between bright and rusty. Common practice, no source.</summary>
    public const double Emissivity = 0.4;

    /// <summary>Standing air takes this share of what 40 mph takes from caliper and hub.</summary>
    public const double StillShare = 0.2;

    private const double StefanBoltzmann = 5.670_374e-8; // W/(m2 K4), CODATA
    private const double LiningHeat = 51_000; // J/(K m2): 10 mm of lining and 5 mm of steel, 64 kg/m2 x 800
    private const double LiningPath = 120; // W/(K m2): 1.2 W/(m K) through 10 mm
    private const double PistonPath = 150, ShoePath = 5; // W/(K m2) from plate through piston, from shoe through its tip
    private const double CaliperHeat = 216_000, CaliperFilm = 240; // by m2 of lining: 450 kg x 480 J/(kg K); 8 times the lining's area at 30 W/(m2 K)
    private const double CylinderHeat = 400, CylinderFilm = 1; // J/K, W/K
    private const double HubHeat = 10 * GrayIron.SpecificHeat, HubPath = 2, HubFilm = 4; // J/K, W/K

    /// <param name="mass">Of rotor or drum, kg.</param>
    /// <param name="shed">W at 40 mph, 100 K over the air.</param>
    /// <param name="area">What the air sweeps, m2.</param>
    /// <param name="lining">All lining of the wheel, m2.</param>
    public static BrakeNodes Of(bool drum, double mass, double shed, double area, double lining, double share) => new(
        mass * GrayIron.SpecificHeat, LiningHeat * lining, drum ? CylinderHeat : CaliperHeat * lining, HubHeat,
        LiningPath * lining, (drum ? ShoePath : PistonPath) * lining, HubPath, Airflow.Of(drum, shed, area), Emissivity * StefanBoltzmann * area,
        drum ? CylinderFilm : CaliperFilm * lining, HubFilm, share);

    /// <summary>The iron alone, as the closed forms see it: nothing conducted, nothing radiated, all heat into the iron.</summary>
    public static BrakeNodes Alone(double store, Airflow air) => new(store, 1, 1, 1, 0, 0, 0, air, 0, 0, 0, 1);

    /// <summary>The fastest rate at which any store settles, 1/s: no step may be long against it.</summary>
    /// <param name="hottest">Temperature of the iron at the most, K: what is hotter radiates faster.</param>
    public double Fastest(double speed, double hottest)
    {
        double wind = Wind(speed), hot = 4 * Radiating * hottest * hottest * hottest;
        var rotor = (Air.At(speed) + ToLining + ToHub + hot) / Rotor;
        return Math.Max(Math.Max(rotor, (ToLining + ToFluid) / Lining), Math.Max((ToFluid + (FluidToAir * wind)) / Fluid, (ToHub + (HubToAir * wind)) / Hub));
    }

    /// <summary>How caliper and hub are cooled at a speed, over 40 mph.</summary>
    public static double Wind(double speed) => StillShare + ((1 - StillShare) * Math.Pow(speed / Airflow.ReferenceSpeed, Airflow.DiscExponent));

    /// <summary>Slopes in K/s of the four temperatures; gives what goes to the air, W.</summary>
    /// <param name="heat">Friction heat of this wheel, W.</param>
    /// <param name="film">hA of the iron, W/K.</param>
    internal double Slopes(ReadOnlySpan<double> t, Span<double> slope, double heat, double film, double wind, double air)
    {
        double lining = ToLining * (t[0] - t[1]), fluid = ToFluid * (t[1] - t[2]), hub = ToHub * (t[0] - t[3]);
        double square = t[0] * t[0], still = air * air;
        double shed = (film * (t[0] - air)) + (Radiating * ((square * square) - (still * still)));
        double fromFluid = FluidToAir * wind * (t[2] - air), fromHub = HubToAir * wind * (t[3] - air);
        slope[0] = ((RotorShare * heat) - lining - hub - shed) / Rotor;
        slope[1] = (((1 - RotorShare) * heat) + lining - fluid) / Lining;
        slope[2] = (fluid - fromFluid) / Fluid;
        slope[3] = (hub - fromHub) / Hub;
        return shed + fromFluid + fromHub;
    }

    /// <summary>Heat held over a temperature, J.</summary>
    public double Held(ReadOnlySpan<double> t, double over) =>
        (Rotor * (t[0] - over)) + (Lining * (t[1] - over)) + (Fluid * (t[2] - over)) + (Hub * (t[3] - over));
}
