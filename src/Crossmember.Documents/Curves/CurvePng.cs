using ScottPlot;

namespace Crossmember.Documents.Curves;

/// <summary>A chart in pixels, in the light colours, twice as fine as a screen needs so that it prints well.</summary>
public static class CurvePng
{
    private const int Fineness = 2;

    public static byte[] Write(CurveChart chart, PictureSize size)
    {
        var plot = CurvePlot.Of(chart, size, new PixelPens());
        plot.ScaleFactor = Fineness;
        return plot.GetImageBytes(size.Width * Fineness, size.Height * Fineness, ImageFormat.Png);
    }
}
