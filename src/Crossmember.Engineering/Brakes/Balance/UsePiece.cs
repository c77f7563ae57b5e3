using Crossmember.Engineering.Brakes.Chain;

namespace Crossmember.Engineering.Brakes.Balance;

/// <summary>A stretch of deceleration over which the braking forces of both axles are straight: front share of the weight A + B z, rear share the rest of z.</summary>
/// <remarks>
/// Formula:  ff = (A + B z) L / (b + z h), fr = ((1 - B) z - A) L / (a - z h): each rises or falls all the way, so that what is worst lies at an end or where the slopes balance
/// Valid:    below the deceleration at which the rear axle lifts
/// Source:   derived in docs/derivations/brake-balance.md
/// </remarks>
public readonly record struct UsePiece(double From, double To, double A, double B)
{
    /// <summary>Most pieces that <see cref="Fill"/> writes.</summary>
    public const int Most = Rig.MostCorners;

    /// <summary>All pieces in rising order from standstill; the last goes on for ever.</summary>
    /// <returns>How many were written; 0 where the brakes make no force at all.</returns>
    public static int Fill(Span<UsePiece> pieces, in Rig rig, in Loading load)
    {
        Span<double> corners = stackalloc double[Rig.MostCorners];
        int n = rig.Corners(corners), written = 0;
        for (var i = 0; i < n; i++)
        {
            var last = i + 1 == n;
            double from = corners[i], to = last ? from + AxleForce.ReferencePressure : corners[i + 1];
            double z0 = rig.TotalAt(from) / load.Weight, z1 = rig.TotalAt(to) / load.Weight;
            if (!(z1 > z0)) continue; // an empty stretch, or pressure that brakes nothing yet
            double f0 = rig.FrontAt(from) / load.Weight, f1 = rig.FrontAt(to) / load.Weight, b = (f1 - f0) / (z1 - z0);
            pieces[written++] = new(z0, last ? double.PositiveInfinity : z1, f0 - (b * z0), b);
        }
        return written;
    }

    /// <summary>Grip that the front axle uses at z, share of its load.</summary>
    public double Front(double z, in Loading load) => (A + (B * z)) * load.Wheelbase / (load.Wheelbase - load.Behind + (z * load.Height));

    public double Rear(double z, in Loading load) => (((1 - B) * z) - A) * load.Wheelbase / (load.Behind - (z * load.Height));

    /// <summary>Where front and rear use alike: front use is z there, so A + B z = z (b + z h) / L.</summary>
    /// <returns>How many roots were written, in rising order; those outside of the piece among them.</returns>
    public int Alike(Span<double> roots, in Loading load) =>
        Quadratic(load.Height, load.Wheelbase - load.Behind - (B * load.Wheelbase), -A * load.Wheelbase, roots);

    /// <summary>Where the front use is c + d z.</summary>
    public int FrontIs(double c, double d, Span<double> roots, in Loading load)
    {
        double L = load.Wheelbase, b = L - load.Behind, h = load.Height;
        return Quadratic(d * h, (c * h) + (d * b) - (B * L), (c * b) - (A * L), roots);
    }

    private static int Quadratic(double a, double b, double c, Span<double> roots)
    {
        var d = (b * b) - (4 * a * c);
        if (d < 0) return 0;
        var q = -0.5 * (b + (b < 0 ? -1 : 1) * Math.Sqrt(d));
        double one = q / a, other = c / q;
        (roots[0], roots[1]) = one < other ? (one, other) : (other, one);
        return 2;
    }
}
