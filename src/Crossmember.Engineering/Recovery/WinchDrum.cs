namespace Crossmember.Engineering.Recovery;

/// <summary>A winch drum and its rope: layers stacked one over another, the drum's torque the same on each. SI throughout.</summary>
/// <remarks>Derived in <c>docs/derivations/winch-and-tackle.md</c>. Turns lie side by side and rope upon rope, not nested in the grooves between.</remarks>
/// <param name="Diameter">Of the bare drum, m.</param>
/// <param name="Width">Between the flanges, m.</param>
/// <param name="Rope">Diameter of the rope, m.</param>
/// <param name="Length">Of the whole rope, m.</param>
internal readonly record struct WinchDrum(double Diameter, double Width, double Rope, double Length)
{
    /// <summary>More layers than any drum has: the readings are wrong.</summary>
    public const int MostLayers = 40;

    /// <summary>Whole turns side by side; a hair of slack, so that 228 / 9.5 is 24.</summary>
    public double Turns => Math.Floor((Width / Rope) + 1e-9);

    /// <summary>Whether such a drum can be wound at all.</summary>
    public bool Holds => Turns >= 1 && Exact <= MostLayers;

    /// <summary>Layers that the whole rope makes; the last one may be part of a layer.</summary>
    public int Layers => Math.Max(1, (int)Math.Ceiling(Exact - 1e-9));

    private double Exact => AsLayers(Length);

    /// <summary>Diameter at the middle of the rope in a layer, m.</summary>
    public double At(int layer) => Diameter + (((2 * layer) - 1) * Rope);

    /// <summary>Rope on the drum when this many layers are full, m.</summary>
    public double Wound(int layers) => Turns * Math.PI * ((layers * Diameter) + (layers * layers * Rope));

    /// <summary>Pull on a layer as a share of the pull on the first, at the same torque.</summary>
    public double Share(int layer) => At(1) / At(layer);

    /// <summary>The layer that the rope leaves when <paramref name="paidOut"/> (m) of it is off the drum.</summary>
    public int LayerAt(double paidOut) => Math.Clamp((int)Math.Ceiling(AsLayers(Math.Max(0, Length - paidOut)) - 1e-9), 1, Layers);

    /// <summary>What may be paid out, m, with <paramref name="wraps"/> left on the drum.</summary>
    public double Usable(double wraps) => Length - (wraps * Math.PI * At(1));

    /// <summary>How many layers a length of rope makes: d k^2 + D k = length / (turns pi), in the form that loses no figures.</summary>
    private double AsLayers(double length)
    {
        var c = length / (Turns * Math.PI);
        return 2 * c / (Diameter + Math.Sqrt((Diameter * Diameter) + (4 * Rope * c)));
    }
}
