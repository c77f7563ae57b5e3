using Crossmember.Engineering.Brakes;
using CsCheck;

namespace Crossmember.Engineering.Tests.Brakes;

public class GoldenSectionTests
{
    private readonly struct Valley(double bottom, double steeper) : GoldenSection.ICurve
    {
        public double At(double x) => x < bottom ? bottom - x : steeper * (x - bottom);
    }

    // Wherever a valley lies, 40 steps leave 4e-9 of the stretch; a rising or falling curve ends at its end.
    [Fact]
    public void The_bottom_is_found() =>
        Gen.Select(Gen.Double[-1, 2], Gen.Double[0.1, 10]).Sample((bottom, steeper) =>
            Assert.Equal(Math.Clamp(bottom, 0, 1), GoldenSection.Least(new Valley(bottom, steeper), 0, 1, 40).X, 1e-8));

    [Fact]
    public void The_height_told_is_that_of_the_place_told()
    {
        var (x, y) = GoldenSection.Least(new Valley(0.3, 2), 0, 1, 5);
        Assert.Equal(new Valley(0.3, 2).At(x), y);
    }
}
