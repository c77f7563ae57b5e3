using D = Crossmember.Engineering.Quantities.Dimension;

namespace Crossmember.Engineering.Quantities;

/// <summary>Which unit a shop reads a quantity in. Common practice, no source.</summary>
internal static class CustomaryUnits
{
    /// <summary>A ladder of units by size: each rung serves magnitudes below its bound (in SI). Main is the unit for zero and for examples.</summary>
    private sealed record Ladder(string Main, params (double Below, string Code)[] Rungs)
    {
        public static implicit operator Ladder(string only) => new(only);
    }

    private const double Always = double.PositiveInfinity;

    private static readonly Dictionary<D, (Ladder Us, Ladder Metric)> s_ladders = new()
    {
        [D.Dimensionless] = Same("1"),
        [D.Length] = (new("in", (3.048, "in"), (1609.344, "ft"), (Always, "mile")), new("mm", (10, "mm"), (1000, "m"), (Always, "km"))),
        [D.Area] = (new("in2", (0.92903, "in2"), (Always, "ft2")), new("mm2", (0.01, "mm2"), (Always, "m2"))),
        [D.Volume] = (new("gal", (9.4e-4, "in3"), (7.5e-3, "qt"), (Always, "gal")), new("L", (1e-3, "cm3"), (1, "L"), (Always, "m3"))),
        [D.Mass] = (new("lb", (0.045, "oz"), (Always, "lb")), new("kg", (0.1, "g"), (1e5, "kg"), (Always, "t"))),
        [D.MassMoment] = ("lb in", "kg m"),
        [D.Duration] = Same(new("h", (1, "ms"), (120, "s"), (7200, "min"), (172800, "h"), (Always, "day"))),
        [D.Speed] = ("mph", "km/h"),
        [D.Acceleration] = ("ft/s2", "m/s2"),
        [D.RotationalSpeed] = Same("rpm"),
        [D.ReciprocalLength] = ("rev/mile", "rev/km"),
        [D.Angle] = Same("deg"),
        [D.Frequency] = Same("Hz"),
        [D.Force] = ("lbf", new("N", (1e4, "N"), (Always, "kN"))),
        [D.Torque] = (new("lbf ft", (6.7, "lbf in"), (Always, "lbf ft")), "N m"),
        [D.Pressure] = (new("psi", (6.89e7, "psi"), (Always, "ksi")), new("kPa", (2e6, "kPa"), (1e10, "MPa"), (Always, "GPa"))),
        [D.SpringRate] = ("lbf/in", "N/mm"),
        [D.TorsionRate] = ("lbf ft/deg", "N m/deg"),
        [D.AreaMoment] = ("in4", new("cm4", (1e-8, "mm4"), (Always, "cm4"))),
        [D.Inertia] = ("lb ft2", "kg m2"),
        [D.LinearDensity] = ("lb/ft", "kg/m"),
        [D.VolumeFlow] = ("gpm", "L/min"),
        [D.MassFlow] = ("lb/h", "kg/h"),
        [D.Energy] = ("ft lbf", new("kJ", (1e3, "J"), (1e6, "kJ"), (Always, "MJ"))),
        [D.Power] = (new("hp", (745.6, "W"), (Always, "hp")), new("kW", (1e3, "W"), (Always, "kW"))),
        [D.Density] = ("lb/ft3", "kg/m3"),
        [D.Temperature] = ("F", "C"),
        [D.TemperatureDifference] = ("dF", "dC"),
        [D.Current] = Same(new("A", (1, "mA"), (Always, "A"))),
        [D.Voltage] = Same(new("V", (0.1, "mV"), (Always, "V"))),
        [D.Resistance] = Same(new("Ohm", (1, "mOhm"), (1e3, "Ohm"), (1e6, "kOhm"), (Always, "MOhm"))),
        [D.Resistivity] = Same("Ohm mm2/m"),
        [D.Charge] = Same("A h"),
    };

    private static readonly HashSet<string> s_us =
    [
        "in", "ft", "yd", "mile", "mil", "gal", "qt", "pt", "fl", "lb", "oz", "ton", "mph",
        "lbf", "kip", "tonf", "psi", "ksi", "inHg", "inHO", "gpm", "gph", "cfm", "BTU", "hp", "F", "dF",
    ];

    // Watts of a lamp, g of a bump and turns of a bolt are read as they stand in either system.
    private static readonly HashSet<string> s_either = ["W", "W h", "kW h", "gn", "rev", "atm", "K", "dK"];

    public static Unit Main(D dimension, MeasureSystem system) => Units.Require(Of(dimension, system).Main);

    public static Unit For(double si, D dimension, MeasureSystem system)
    {
        var ladder = Of(dimension, system);
        if (si == 0 || ladder.Rungs.Length == 0) return Units.Require(ladder.Main);
        return Units.Require(ladder.Rungs.First(r => Math.Abs(si) < r.Below).Code);
    }

    /// <summary>Whether people of the system use the unit, so that a typed text may stay as it is.</summary>
    public static bool Belongs(Unit unit, MeasureSystem system)
    {
        var (us, metric) = s_ladders[unit.Dimension];
        if (us == metric || s_either.Contains(unit.Code)) return true;
        var words = unit.Code.Split(' ', '/').Select(w => new string([.. w.Where(c => !char.IsAsciiDigit(c))]));
        return words.Any(s_us.Contains) == (system == MeasureSystem.UsCustomary);
    }

    private static Ladder Of(D dimension, MeasureSystem system) => system == MeasureSystem.Metric ? s_ladders[dimension].Metric : s_ladders[dimension].Us;

    private static (Ladder, Ladder) Same(Ladder ladder) => (ladder, ladder);
}
