namespace Crossmember.Documents.Curves;

/// <summary>A chart as a table: what every curve says at round values, and the highest it reaches.</summary>
/// <param name="Curves">The names, a column each.</param>
public sealed record CurveTable(IReadOnlyList<string> Curves, IReadOnlyList<CurveRow> Rows, IReadOnlyList<Highest> Highest)
{
    private const int FewestSteps = 8;

    private static readonly double[] s_round = [5, 2, 1];

    public static CurveTable Of(CurveChart chart)
    {
        var curves = chart.Curves.ToList();
        List<string> names = [.. curves.OrderBy(l => l.Mark).Select(l => l.Name).Distinct()];
        Line? Find(string name, bool then) => curves.Find(l => l.Name == name && l.Then == then);
        var columns = names.Select(n => (Now: Find(n, false), Then: Find(n, true))).ToList();
        var rows = curves.Count == 0 ? [] : Steps(curves.Min(l => l.X.Min()), curves.Max(l => l.X.Max()))
            .Select(x => new CurveRow(x, [.. columns.Select(c => new Reading(c.Now?.At(x), c.Then?.At(x)))]));
        return new(names, [.. rows], [.. columns.Select(c => new Highest(Peak(c.Now), Peak(c.Then)))]);
    }

    private static (double X, double Y)? Peak(Line? line) => line?.X.Zip(line.Y).MaxBy(p => p.Second);

    /// <summary>Round values of one, two or five times a power of ten, at least so many that a curve's shape shows.</summary>
    private static IEnumerable<double> Steps(double low, double high)
    {
        if (high <= low) return [low];
        var power = Math.Pow(10, Math.Floor(Math.Log10((high - low) / FewestSteps)));
        var step = s_round.Select(n => n * power).First(s => (high - low) / s >= FewestSteps);
        var first = (int)Math.Ceiling((low / step) - 1e-9);
        return Enumerable.Range(first, (int)Math.Floor((high / step) + 1e-9) - first + 1).Select(i => i * step);
    }
}

public sealed record CurveRow(double X, IReadOnlyList<Reading> Readings);

/// <summary>What a curve says on either side; null beyond its ends.</summary>
public sealed record Reading(double? Now, double? Then);

/// <summary>Where a curve is highest, on either side.</summary>
public sealed record Highest((double X, double Y)? Now, (double X, double Y)? Then);
