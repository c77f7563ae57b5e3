using Crossmember.Engineering.Brakes.Chain;

namespace Crossmember.Engineering.Brakes.Balance;

/// <summary>One inequality of a rule over a stretch of deceleration: base + slope z + front ff + rear fr is not to be below 0.</summary>
/// <param name="Front">-1, 0 or 1: how the front's use counts.</param>
/// <param name="Rear">Likewise; where both count, slope is 0.</param>
public readonly record struct GripLimit(double From, double To, double Base, double Slope, int Front, int Rear)
{
    public static GripLimit FrontOverRear(double from, double to) => new(from, to, 0, 0, 1, -1);

    /// <summary>The rear's use at most base + slope z.</summary>
    public static GripLimit RearAtMost(double from, double to, double at, double slope) => new(from, to, at, slope, 0, -1);

    public static GripLimit FrontAtMost(double from, double to, double at, double slope) => new(from, to, at, slope, -1, 0);

    public static GripLimit FrontAtLeast(double from, double to, double at, double slope) => new(from, to, -at, -slope, 1, 0);

    public double Margin(double z, in UsePiece piece, in Loading load) =>
        Base + (Slope * z) + (Front == 0 ? 0 : Front * piece.Front(z, load)) + (Rear == 0 ? 0 : Rear * piece.Rear(z, load));

    /// <summary>Where inside a piece the margin turns, if it does; NaN else. The slope of ff is Cf / (b + z h)2, that of fr Cr / (a - z h)2.</summary>
    public double Turns(in UsePiece piece, in Loading load)
    {
        double L = load.Wheelbase, a = load.Behind, b = L - a, h = load.Height;
        double cf = Front * L * ((piece.B * b) - (piece.A * h)), cr = Rear * L * (((1 - piece.B) * a) - (piece.A * h));
        if (Front == 0) return (a - Math.Sqrt(-cr / Slope)) / h;
        if (Rear == 0) return (Math.Sqrt(-cf / Slope) - b) / h;
        var q = Math.Sqrt(-cr / cf);
        return (a - (q * b)) / (h * (1 + q));
    }
}

/// <summary>The least margin of an inequality and where it is.</summary>
public readonly record struct Worst(double Z, double Margin, double FrontUse, double RearUse)
{
    public static Worst None => new(double.NaN, double.PositiveInfinity, double.NaN, double.NaN);

    public Worst Or(in Worst other) => other.Margin < Margin ? other : this;

    /// <summary>Least margin over the limit's stretch, found at the ends of pieces and where the margin turns: exact, no grid.</summary>
    /// <param name="unless">A second inequality that does instead, wherever it holds better; both over the first one's stretch.</param>
    public static Worst Of(in GripLimit limit, ReadOnlySpan<UsePiece> pieces, in Loading load, GripLimit? unless = null)
    {
        var worst = None;
        Span<double> at = stackalloc double[6];
        var lifts = Beneath * load.Behind / load.Height;
        foreach (var piece in pieces)
        {
            double from = Math.Max(limit.From, piece.From), to = Math.Min(Math.Min(limit.To, piece.To), lifts);
            if (to < from) continue;
            (at[0], at[1], at[2], at[3]) = (from, to, limit.Turns(piece, load), unless?.Turns(piece, load) ?? double.NaN);
            var n = 4;
            // The better of two turns where they cross as well: ff - fr = c + d z - fr, so ff = c + d z.
            if (unless is { } other) n += piece.FrontIs(other.Base, other.Slope, at[4..], load);
            for (var i = 0; i < n; i++)
            {
                var z = at[i];
                if (!(z >= from && z <= to)) continue;
                var margin = limit.Margin(z, piece, load);
                if (unless is { } second) margin = Math.Max(margin, second.Margin(z, piece, load));
                if (margin < worst.Margin) worst = new(z, margin, piece.Front(z, load), piece.Rear(z, load));
            }
        }
        return worst;
    }

    /// <summary>Margins are looked at up to a thousandth before the rear axle lifts, where its use has no end.</summary>
    private const double Beneath = 0.999;
}
