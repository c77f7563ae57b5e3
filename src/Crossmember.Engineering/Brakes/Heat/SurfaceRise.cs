namespace Crossmember.Engineering.Brakes.Heat;

/// <summary>Rise of the rubbed face in one stop whose heat flow falls evenly to nothing. SI.</summary>
/// <remarks>
/// Formula:  wall of depth l, no heat through its back: T(t) = q0 [S(t) - (1/ts) integral of S], S(t) = (1/k)(a t/l + l/3 - (2 l/pi^2) sum exp(-n^2 pi^2 a t/l^2)/n^2);
///           for a thick wall 2 q0 sqrt(t) (1 - 2t/(3 ts)) / sqrt(pi k rho c), greatest 0.5319 q0 sqrt(ts) / sqrt(k rho c) at half the stop
/// Valid:    heat straight into the iron, evenly over the swept ring; no cooling during the stop
/// Source:   step response of a slab (Carslaw and Jaeger, Conduction of Heat in Solids, from memory), superposed; docs/derivations/brake-heat.md
/// </remarks>
public static class SurfaceRise
{
    /// <summary>Below this Fourier number a wall is as good as infinitely thick: what comes back from its far side is under 1e-9.</summary>
    private const double Thick = 0.05;

    /// <summary>The time of the greatest is then known to 3e-6 of the stop, and the greatest itself, which is level there, to 1e-11.</summary>
    private const int Halvings = 26;

    /// <summary>Greatest rise in the stop, K.</summary>
    /// <param name="flux">At the start of the stop, W/m2.</param>
    public static double Greatest(double flux, double duration, double depth) => -GoldenSection.Least(new Fall(flux, duration, depth), 0, duration, Halvings).Y;

    private readonly struct Fall(double flux, double duration, double depth) : GoldenSection.ICurve
    {
        public double At(double time) => -SurfaceRise.At(flux, duration, depth, time);
    }

    /// <summary>Rise in K at a time into the stop.</summary>
    public static double At(double flux, double duration, double depth, double time)
    {
        double fourier = GrayIron.Diffusivity * time / (depth * depth);
        if (fourier < Thick) return 2 * flux * Math.Sqrt(time / Math.PI) / GrayIron.Effusivity * (1 - (2 * time / (3 * duration)));
        double step = 0, held = 0;
        for (var n = 1; n < 12; n++)
        {
            double n2 = n * n, left = Math.Exp(-n2 * Math.PI * Math.PI * fourier);
            (step, held) = (step + (left / n2), held + ((1 - left) / (n2 * n2)));
            if (left < 1e-17) { held += Tail(n); break; }
        }
        var pi2 = Math.PI * Math.PI;
        double s = fourier + (1.0 / 3) - (2 / pi2 * step);
        double integral = (fourier * fourier / 2) + (fourier / 3) - (2 / (pi2 * pi2) * held);
        return flux * depth / GrayIron.Conductivity * (s - (integral * depth * depth / (GrayIron.Diffusivity * duration)));
    }

    /// <summary>The sum of 1/k^4 beyond n: the whole is pi^4 / 90.</summary>
    private static double Tail(int n)
    {
        var rest = Math.PI * Math.PI * Math.PI * Math.PI / 90;
        for (double k = 1; k <= n; k++) rest -= 1 / (k * k * k * k);
        return rest;
    }
}
