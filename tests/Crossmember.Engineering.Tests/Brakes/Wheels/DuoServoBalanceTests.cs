using Crossmember.Engineering.Brakes.Wheels;
using CsCheck;

namespace Crossmember.Engineering.Tests.Brakes.Wheels;

/// <summary>Equilibrium of random duo-servo brakes, summed up piece by piece outside the program.</summary>
public class DuoServoBalanceTests
{
    private const int Pieces = 20_000;

    private static readonly Gen<(double Mu, double A, double H, double E, double From, double To)> s_brakes =
        from mu in Gen.Double[0.1, 0.4]
        from a in Gen.Double[0.095, 0.11]
        from h in Gen.Double[0.08, 0.095]
        from e in Gen.Double[0.085, 0.105]
        from start in Gen.Double[20, 50]
        from end in Gen.Double[125, 160]
        select (mu, a, h, e, start * Math.PI / 180, end * Math.PI / 180);

    // First shoe: pressed by 1 N at h and S at -e, both level; the drum's pieces must balance it level, upright and about the hub.
    [Fact]
    public void The_first_shoe_stands_still() =>
        s_brakes.Sample(b =>
        {
            var (mu, _, h, e, from, to) = b;
            var shoe = new LinkedShoe(0.12, h, e, (Math.PI / 2) - to, (Math.PI / 2) - from);
            var (torque, link) = shoe.Under(mu);
            if (double.IsNaN(torque)) return;
            var tilt = Tilt(mu, shoe.Low, shoe.High);
            double level = 0, upright = 0, sum = 0, d = (shoe.High - shoe.Low) / Pieces;
            for (var i = 0; i < Pieces; i++)
            {
                var f = shoe.Low + ((i + 0.5) * d);
                var p = Math.Max(0, Math.Cos(f - tilt)) * d;
                level += p * (Math.Cos(f) - (mu * Math.Sin(f)));
                upright += p * (Math.Sin(f) + (mu * Math.Cos(f)));
                sum += p;
            }
            var k = (1 + link) / level;
            Assert.Equal(0, k * upright, 1e-5 * (1 + link));
            Assert.Equal(torque, mu * 0.12 * k * sum, 1e-5 * torque);
            Assert.Equal(e * link, h + torque, 1e-5 * e * link);
        }, iter: 20);

    // Both shoes together: link and cylinder are inside, so that the drum's torque is held by the anchor pin alone, level force times its distance.
    [Fact]
    public void The_anchor_pin_holds_what_the_drum_drags() =>
        s_brakes.Sample(b =>
        {
            var (mu, a, h, e, from, to) = b;
            var drum = new Drum(DrumKind.DuoServo, 0.12, h + a, a, PivotedShoe.Of(0.12, a, from, to), new(0.12, h, e, (Math.PI / 2) - to, (Math.PI / 2) - from));
            var (factor, first, link, second) = drum.Servo(mu);
            if (double.IsNaN(factor)) return;
            // Pressure of the second shoe from its torque; then its level pull on the pin: normal p sin t, friction toward the pin, t from the pin at the top.
            double turning = 0, level = 0, d = (to - from) / Pieces;
            for (var i = 0; i < Pieces; i++)
            {
                var t = from + ((i + 0.5) * d);
                turning += mu * 0.12 * Math.Sin(t) * d;
                level += Math.Sin(t) * (Math.Sin(t) + (mu * Math.Cos(t))) * d;
            }
            var pin = (second / turning * level) - link - 1;
            Assert.Equal(first + second, pin * a, 1e-6 * (first + second));
        }, iter: 40);

    // A short lining below the level by just the friction's own angle is pressed by a level pull: mu r / e becomes r sin(angle) / e, and S = F (h + r sin) / (e - r sin).
    [Fact]
    public void A_short_first_shoe_is_pressed_through_the_frictions_angle() =>
        Gen.Select(Gen.Double[0.15, 0.45], Gen.Double[0.06, 0.095], Gen.Double[0.08, 0.095]).Sample((mu, h, e) =>
        {
            double slope = Math.Atan(mu), lever = 0.12 * Math.Sin(slope);
            var shoe = new LinkedShoe(0.12, h, e, -slope - 0.01, -slope + 0.01);
            var (torque, link) = shoe.Under(mu);
            Assert.Equal((h + lever) / (e - lever), link, link * 1e-3);
            Assert.Equal((e * link) - h, torque, 1e-9);
            Assert.True(double.IsNaN(shoe.Under(Math.Tan(slope + 0.0101)).Link) && double.IsNaN(shoe.Under(Math.Tan(slope - 0.0101)).Link)); // past either end of the lining
        }, iter: 50);

    [Fact]
    public void It_locks_where_the_factor_ends() =>
        s_brakes.Sample(b =>
        {
            var (_, a, h, e, from, to) = b;
            var drum = new Drum(DrumKind.DuoServo, 0.12, h + a, a, PivotedShoe.Of(0.12, a, from, to), new(0.12, h, e, (Math.PI / 2) - to, (Math.PI / 2) - from));
            var locks = drum.Locks();
            Assert.True(double.IsNaN(drum.Factor(locks * 1.000001)) && drum.Factor(locks * 0.999) > drum.Factor(locks * 0.9));
        }, iter: 50);

    /// <summary>By halving on sums, with no closed integral.</summary>
    private static double Tilt(double mu, double lo, double hi)
    {
        double low = lo - (Math.PI / 2) + 1e-3, high = hi + (Math.PI / 2) - 1e-3;
        for (var n = 0; n < 45; n++)
        {
            double at = (low + high) / 2, upright = 0;
            for (var i = 0; i < 4000; i++)
            {
                var f = lo + ((i + 0.5) * (hi - lo) / 4000);
                upright += Math.Max(0, Math.Cos(f - at)) * (Math.Sin(f) + (mu * Math.Cos(f)));
            }
            if (upright > 0) high = at;
            else low = at;
        }
        return (low + high) / 2;
    }
}
