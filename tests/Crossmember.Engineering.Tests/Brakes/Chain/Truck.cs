using Crossmember.Engineering.Brakes.Chain;
using CsCheck;

namespace Crossmember.Engineering.Tests.Brakes.Chain;

/// <summary>The truck of docs/derivations/brake-balance.md: 2100 kg, discs before, drums behind, and random ones.</summary>
internal static class Truck
{
    // Derived: front 2 x 48 mm pistons on one side, friction 0.38, 125 mm; rear 25.4 mm cylinder, factor 2.30, 127 mm, 0.40 MPa; tires 0.375 m loaded.
    public static readonly double FrontPerPascal = 2 * 2 * 0.38 * 2 * (Math.PI / 4 * 0.048 * 0.048) * 0.125 / 0.375, RearPerPascal = 2 * 2.30 * (Math.PI / 4 * 0.0254 * 0.0254) * 0.127 / 0.375;

    public static readonly Loading Load = new(2100 * Loading.Gravity, 2.6, 1.248, 0.76);

    public static readonly AxleForce Front = new(FrontPerPascal, 0), Rear = new(RearPerPascal, 0.4e6);

    public static readonly Rig Plain = new(Front, Rear, Valves.None), Valved = new(Front, Rear, new(3.5e6, 0.35, 0));

    /// <summary>Booster at 70 kPa: 2660 N of it, gain 5 from 90 N and 350 N; pedal 4.2 at 0.95, cylinder 506.7 mm2 at 0.97.</summary>
    public static PedalLine Pedal(double vacuum = 70_000)
    {
        double area = Math.PI / 4 * 0.0254 * 0.0254, rod = 4.2 * 0.95, perRod = 0.97 / area, assist = vacuum * 0.04 * 0.95, knee = (assist - 350 + (5 * 90)) / 4;
        return new(rod * perRod, 90 / rod, 350 * perRod, knee / rod, (knee + assist) * perRod, 200 * perRod);
    }

    public static readonly Gen<Rig> AnyRig = Gen.Select(Gen.Double[500, 4000], Gen.Double[0, 0.8], Gen.Double[200, 3000], Gen.Double[0, 0.8], Gen.Double[0.5, 9], Gen.Double[0, 1], Gen.Int[0, 2], Gen.Double[0.1, 1.2])
        .Select((f, tf, r, tr, knee, slope, kind, metering) => new Rig(new(f / 1e6, tf * 1e6), new(r / 1e6, tr * 1e6),
            new(kind == 0 ? double.PositiveInfinity : knee * 1e6, kind == 0 ? 1 : slope, kind == 2 ? metering * 1e6 : 0)));

    public static readonly Gen<Loading> AnyLoad = Gen.Select(Gen.Double[900, 4000], Gen.Double[2, 3.6], Gen.Double[0.35, 0.65], Gen.Double[0.4, 1.1])
        .Select((m, L, a, h) => new Loading(m * Loading.Gravity, L, a * L, h));
}
