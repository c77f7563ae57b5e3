using Crossmember.Documents.Curves;
using Crossmember.Documents.Paper;

namespace Crossmember.Documents.Reports;

/// <summary>What a chart says, as a table: who cannot see it, or wants the number, reads it here.</summary>
internal static class CurveBlocks
{
    private const string Beyond = "-";

    public static Block.Table Table(CurveChart chart)
    {
        var table = CurveTable.Of(chart);
        return new($"{chart.Title}, {chart.Y.Title}", [new(chart.X.Title, true), .. table.Curves.Select(c => new Column(c, true))],
        [
            .. table.Rows.Select(r => new Row([CurveWords.Rounded(r.X), .. r.Readings.Select(x => (Text)(x.Now is { } now ? CurveWords.Rounded(now) : Beyond))])),
            new Row([Run.Strong("highest"), .. table.Highest.Select(h => (Text)(h.Now is { } peak ? $"{CurveWords.Rounded(peak.Y)} at {CurveWords.Rounded(peak.X)}" : Beyond))]),
            .. chart.Spots.Select(s => Row.Over($"{s.Name}: {CurveWords.Told(s.X[0], chart.X)}, {CurveWords.Told(s.Y[0], chart.Y)}")),
        ]);
    }
}
