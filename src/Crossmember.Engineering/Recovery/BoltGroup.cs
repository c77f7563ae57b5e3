namespace Crossmember.Engineering.Recovery;

/// <summary>Bolts that hold a stiff bracket: tension and shear of each from a pull at a point over the bolt plane. SI throughout.</summary>
/// <remarks>
/// x runs against the pull from the bracket's edge that lies toward it, y sideways from the middle. The bracket may stand on its front edge (x = 0), on its rear edge
/// (x = near + far), or be lifted off altogether; which of the three, the signs decide. Preload is left out: it does not change what a ductile bolt holds.
/// Derived in <c>docs/derivations/bolt-group.md</c>.
/// </remarks>
/// <param name="Count">Of all bolts, half of them in each row; one row where near and far are the same.</param>
/// <param name="Near">Row nearer the edge toward the pull, m from it.</param>
/// <param name="Far">Row farther from it, m.</param>
/// <param name="Gauge">Between the outer bolts of a row, m.</param>
internal readonly record struct BoltGroup(int Count, double Near, double Far, double Gauge)
{
    /// <summary>Places of the bolts: x from the edge toward the pull, y from the middle.</summary>
    public IReadOnlyList<(double X, double Y)> Bolts
    {
        get
        {
            var rows = Near == Far || Count < 2 ? 1 : 2;
            var list = new List<(double, double)>(Count);
            for (var row = 0; row < rows; row++)
            {
                var inRow = rows == 1 ? Count : row == 0 ? Count / 2 : Count - (Count / 2);
                for (var i = 0; i < inRow; i++)
                    list.Add((row == 0 ? Near : Far, inRow == 1 ? 0 : Gauge * (((double)i / (inRow - 1)) - 0.5)));
            }
            return list;
        }
    }

    /// <summary>Tension and shear of each bolt, N; null where nothing holds the bracket against tipping sideways.</summary>
    /// <param name="pull">Along the plate, sideways along it, and off it (negative presses it on), N.</param>
    /// <param name="height">Of the pull over the plate, m.</param>
    /// <param name="ahead">Of the pull before the edge toward it, m; negative where it lies over the plate.</param>
    public IReadOnlyList<(double Tension, double Shear)>? Loads((double Along, double Across, double Off) pull, double height, double ahead)
    {
        var bolts = Bolts;
        double n = bolts.Count, middle = bolts.Sum(b => b.X) / n, wide = bolts.Sum(b => b.Y * b.Y), spread = bolts.Sum(b => (b.X - middle) * (b.X - middle));
        if (pull.Across != 0 && wide == 0) return null;
        var lift = Lifts(bolts, middle, spread, pull.Along * height, pull.Off, ahead);
        double twist = -(ahead + middle) * pull.Across, polar = spread + wide;
        return
        [
            .. bolts.Select((b, i) =>
            {
                double x = -(pull.Along / n) - (polar > 0 ? twist * b.Y / polar : 0), y = (pull.Across / n) + (polar > 0 ? twist * (b.X - middle) / polar : 0);
                // Tipping sideways loads one side and presses the other on; as a pull may come from either side, each bolt is given its worse one.
                var sideways = wide > 0 ? Math.Abs(pull.Across * height * b.Y) / wide : 0;
                return (lift[i] + sideways, Math.Sqrt((x * x) + (y * y)));
            }),
        ];
    }

    /// <summary>Tension of each bolt from tipping along the pull (<paramref name="tip"/>, N m) and from the pull off the plate.</summary>
    private double[] Lifts(IReadOnlyList<(double X, double Y)> bolts, double middle, double spread, double tip, double off, double ahead)
    {
        double n = bolts.Count, length = Near + Far;
        double about = tip - (off * (ahead + middle));
        double Free(double x) => (off / n) + (spread > 0 ? about * (x - middle) / spread : 0);
        if (off > 0 && Free(0) >= 0 && Free(length) >= 0 && (spread > 0 || about == 0)) return [.. bolts.Select(b => Free(b.X))];
        double front = (tip - (off * ahead)) / bolts.Sum(b => b.X * b.X), rear = ((off * (ahead + length)) - tip) / bolts.Sum(b => Math.Pow(length - b.X, 2));
        if (front > 0 && front * bolts.Sum(b => b.X) >= off) return [.. bolts.Select(b => front * b.X)];
        if (rear > 0 && rear * bolts.Sum(b => length - b.X) >= off) return [.. bolts.Select(b => rear * (length - b.X))];
        return new double[bolts.Count];
    }
}
