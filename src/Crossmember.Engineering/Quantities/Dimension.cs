using UnitsNet;

namespace Crossmember.Engineering.Quantities;

/// <summary>A kind of quantity (length, torque ...): its name in data files, its SI unit, its public quantity type.</summary>
/// <remarks>Inside, every quantity is a double in the SI unit; the public type stands at the doors only.</remarks>
public sealed class Dimension
{
    private Dimension(string name, Type type, Func<double, object> fromSi, Func<object, double> toSi, Delegate typedFromSi, Delegate typedToSi) =>
        (Name, QuantityType, FromSi, ToSi, TypedFromSi, TypedToSi) = (name, type, fromSi, toSi, typedFromSi, typedToSi);

    /// <summary>Lower-kebab name, as in <c>data/parameters.csv</c>.</summary>
    public string Name { get; }

    /// <summary>The type that calculations show at their doors.</summary>
    public Type QuantityType { get; }

    /// <summary>Makes the public quantity from a number in SI.</summary>
    public Func<double, object> FromSi { get; }

    /// <summary>The number in SI of a public quantity.</summary>
    public Func<object, double> ToSi { get; }

    /// <summary><see cref="FromSi"/> and <see cref="ToSi"/> by their own types, <c>Func&lt;double, T&gt;</c> and <c>Func&lt;T, double&gt;</c>: no boxing.</summary>
    internal Delegate TypedFromSi { get; }

    internal Delegate TypedToSi { get; }

    /// <summary>The SI unit, whose factor is 1.</summary>
    public Unit Si => Units.Of(this)[0];

    public static Dimension Dimensionless { get; } = Make("dimensionless", x => Ratio.FromDecimalFractions(x), x => x.DecimalFractions);
    public static Dimension Length { get; } = Make("length", x => UnitsNet.Length.FromMeters(x), x => x.Meters);
    public static Dimension Area { get; } = Make("area", x => UnitsNet.Area.FromSquareMeters(x), x => x.SquareMeters);
    public static Dimension Volume { get; } = Make("volume", x => UnitsNet.Volume.FromCubicMeters(x), x => x.CubicMeters);
    public static Dimension Mass { get; } = Make("mass", x => UnitsNet.Mass.FromKilograms(x), x => x.Kilograms);
    public static Dimension MassMoment { get; } = Make("mass-moment", Quantities.MassMoment.FromKilogramMeters, x => x.KilogramMeters);
    public static Dimension Duration { get; } = Make("duration", x => UnitsNet.Duration.FromSeconds(x), x => x.Seconds);
    public static Dimension Speed { get; } = Make("speed", x => UnitsNet.Speed.FromMetersPerSecond(x), x => x.MetersPerSecond);
    public static Dimension Acceleration { get; } = Make("acceleration", x => UnitsNet.Acceleration.FromMetersPerSecondSquared(x), x => x.MetersPerSecondSquared);
    public static Dimension RotationalSpeed { get; } = Make("rotational-speed", x => UnitsNet.RotationalSpeed.FromRadiansPerSecond(x), x => x.RadiansPerSecond);
    public static Dimension ReciprocalLength { get; } = Make("reciprocal-length", x => UnitsNet.ReciprocalLength.FromInverseMeters(x), x => x.InverseMeters);
    public static Dimension Angle { get; } = Make("angle", x => UnitsNet.Angle.FromRadians(x), x => x.Radians);
    public static Dimension Frequency { get; } = Make("frequency", x => UnitsNet.Frequency.FromHertz(x), x => x.Hertz);
    public static Dimension Force { get; } = Make("force", x => UnitsNet.Force.FromNewtons(x), x => x.Newtons);
    public static Dimension Torque { get; } = Make("torque", x => UnitsNet.Torque.FromNewtonMeters(x), x => x.NewtonMeters);
    public static Dimension Pressure { get; } = Make("pressure", x => UnitsNet.Pressure.FromPascals(x), x => x.Pascals);
    public static Dimension SpringRate { get; } = Make("spring-rate", x => ForcePerLength.FromNewtonsPerMeter(x), x => x.NewtonsPerMeter);
    public static Dimension TorsionRate { get; } = Make("torsion-rate", x => RotationalStiffness.FromNewtonMetersPerRadian(x), x => x.NewtonMetersPerRadian);
    public static Dimension AreaMoment { get; } = Make("area-moment", x => AreaMomentOfInertia.FromMetersToTheFourth(x), x => x.MetersToTheFourth);
    public static Dimension Inertia { get; } = Make("inertia", x => MassMomentOfInertia.FromKilogramSquareMeters(x), x => x.KilogramSquareMeters);
    public static Dimension LinearDensity { get; } = Make("linear-density", x => UnitsNet.LinearDensity.FromKilogramsPerMeter(x), x => x.KilogramsPerMeter);
    public static Dimension VolumeFlow { get; } = Make("volume-flow", x => UnitsNet.VolumeFlow.FromCubicMetersPerSecond(x), x => x.CubicMetersPerSecond);
    public static Dimension MassFlow { get; } = Make("mass-flow", x => UnitsNet.MassFlow.FromKilogramsPerSecond(x), x => x.KilogramsPerSecond);
    public static Dimension Energy { get; } = Make("energy", x => UnitsNet.Energy.FromJoules(x), x => x.Joules);
    public static Dimension Power { get; } = Make("power", x => UnitsNet.Power.FromWatts(x), x => (double)x.Watts);
    public static Dimension Density { get; } = Make("density", x => UnitsNet.Density.FromKilogramsPerCubicMeter(x), x => x.KilogramsPerCubicMeter);
    public static Dimension Temperature { get; } = Make("temperature", x => UnitsNet.Temperature.FromKelvins(x), x => x.Kelvins);
    public static Dimension TemperatureDifference { get; } = Make("temperature-difference", x => TemperatureDelta.FromKelvins(x), x => x.Kelvins);
    public static Dimension Current { get; } = Make("current", x => ElectricCurrent.FromAmperes(x), x => x.Amperes);
    public static Dimension Voltage { get; } = Make("voltage", x => ElectricPotential.FromVolts(x), x => x.Volts);
    public static Dimension Resistance { get; } = Make("resistance", x => ElectricResistance.FromOhms(x), x => x.Ohms);
    public static Dimension Resistivity { get; } = Make("resistivity", x => ElectricResistivity.FromOhmMeters(x), x => x.OhmMeters);
    public static Dimension Charge { get; } = Make("charge", x => ElectricCharge.FromCoulombs(x), x => x.Coulombs);

    /// <summary>Every dimension, in the order of the reference page.</summary>
    public static IReadOnlyList<Dimension> All { get; } =
    [
        Dimensionless, Length, Area, Volume, Mass, MassMoment, Duration, Speed, Acceleration, RotationalSpeed, ReciprocalLength, Angle, Frequency,
        Force, Torque, Pressure, SpringRate, TorsionRate, AreaMoment, Inertia, LinearDensity, VolumeFlow, MassFlow, Energy, Power, Density,
        Temperature, TemperatureDifference, Current, Voltage, Resistance, Resistivity, Charge,
    ];

    private static readonly Dictionary<string, Dimension> s_byName = All.ToDictionary(d => d.Name);
    private static readonly Dictionary<Type, Dimension> s_byType = All.ToDictionary(d => d.QuantityType);

    public static Dimension? Named(string name) => s_byName.GetValueOrDefault(name);

    public static Dimension? Of(Type quantityType) => s_byType.GetValueOrDefault(quantityType);

    public override string ToString() => Name;

    private static Dimension Make<T>(string name, Func<double, T> from, Func<T, double> to)
        where T : struct => new(name, typeof(T), x => from(x), x => to((T)x), from, to);
}
