using Crossmember.Engineering.Brakes.Chain;

namespace Crossmember.Engineering.Brakes.Balance;

/// <summary>Where the axles change order.</summary>
public static class Crossing
{
    /// <summary>Where somebody really brakes: what happens below it, while springs and a metering valve let go one after the other, does not decide.</summary>
    private const double Begins = 0.15;

    /// <summary>Deceleration in g up to which the front uses more of its grip than the rear; 0 where the rear does from 0.15 g on, the end of the look where it never does.</summary>
    /// <returns>Null where the brakes make no force.</returns>
    public static double? Of(in Rig rig, in Loading load, double most)
    {
        Span<UsePiece> pieces = stackalloc UsePiece[UsePiece.Most];
        Span<double> roots = stackalloc double[2];
        var n = UsePiece.Fill(pieces, rig, load);
        if (n == 0) return null;
        var end = Math.Min(most, load.Behind / load.Height);
        foreach (var piece in pieces[..n])
        {
            double from = Math.Max(Begins, piece.From), to = Math.Min(end, piece.To);
            if (to < from) continue;
            if (Over(piece, from, load) < 0) return from == Begins ? 0 : from;
            var found = piece.Alike(roots, load);
            for (var i = 0; i < found; i++)
                if (roots[i] > from && roots[i] < to && Over(piece, roots[i] + Beyond, load) < 0) return roots[i];
        }
        return end;
    }

    private const double Beyond = 1e-6;

    /// <summary>Front force less what would use both alike, share of the weight: of one sign with ff - fr, and without its pole where the rear lifts.</summary>
    private static double Over(in UsePiece piece, double z, in Loading load) => piece.A + (piece.B * z) - (load.IdealFront(z) / load.Weight);
}
