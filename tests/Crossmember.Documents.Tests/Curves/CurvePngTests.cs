using System.Buffers.Binary;
using Crossmember.Documents.Curves;
using SkiaSharp;

namespace Crossmember.Documents.Tests.Curves;

/// <summary>Portable Network Graphics (W3C Recommendation, Third Edition): signature in 5.2, width and height in the IHDR chunk, 11.2.1.</summary>
public sealed class CurvePngTests
{
    private static readonly byte[] s_compared = CurvePng.Write(Gears.Compared(), PictureSize.Wide(Gears.Compared()));

    [Fact]
    public void It_is_twice_as_fine_as_the_drawing()
    {
        Assert.Equal([0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A], s_compared[..8]);
        Assert.Equal(2 * PictureSize.Wide(Gears.Compared()).Width, BinaryPrimitives.ReadInt32BigEndian(s_compared.AsSpan(16)));
        Assert.Equal(2 * PictureSize.Wide(Gears.Compared()).Height, BinaryPrimitives.ReadInt32BigEndian(s_compared.AsSpan(20)));
    }

    [Fact]
    public void It_is_drawn_on_white_in_the_light_colours()
    {
        using var picture = SKBitmap.Decode(s_compared);
        Assert.Equal(SKColor.Parse(Ink.Ground.Light), picture.GetPixel(1, 1));
        var seen = picture.Pixels.ToHashSet();
        foreach (var ink in (Ink[])[Ink.Text, Ink.Quiet, Ink.OfCurve(0), Ink.OfCurve(1), Ink.OfCurve(2), Ink.OfCurve(3)]) Assert.Contains(SKColor.Parse(ink.Light), seen);
    }

    [Fact]
    public void What_is_compared_shows() => Assert.NotEqual(s_compared, CurvePng.Write(Gears.Alone(), PictureSize.Wide(Gears.Alone())));

    [Fact]
    public void The_same_chart_is_the_same_picture_to_the_byte() =>
        Parallel.For(0, 4, _ => Assert.Equal(s_compared, CurvePng.Write(Gears.Compared(), PictureSize.Wide(Gears.Compared()))));
}
