using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Driveline;

public class CardanTests
{
    // Derived: 1 / cos 30 = 1.1547, cos 30 = 0.8660; with the input yoke at 45 deg 0.98974; 12 deg: sin 12 tan 12 = 0.04419. Tolerance 1e-4.
    [Fact]
    public void One_joint_at_thirty_degrees()
    {
        var r = Door.Run("driveline.joint-fluctuation", """{"angle":"30 deg"}""");
        r.Gives("largestRatio", 1.1547, 0.0001);
        r.Gives("smallestRatio", 0.8660, 0.0001);
        Assert.Equal(0.98974, Turn(30)[9], 0.0001);
    }

    [Fact]
    public void Fluctuation_at_twelve_degrees() => Door.Run("driveline.joint-fluctuation", """{"angle":"12 deg"}""").Gives("fluctuation", 4.419, 0.01);

    // Independent: the unit vectors of the cross. Each arm is at right angles to its own shaft and to the other arm; the output's angle is differenced numerically.
    [Fact]
    public void The_curve_of_a_turn_agrees_with_the_geometry_of_the_cross() =>
        Gen.Double[0, 44].Sample(degrees =>
        {
            var b = degrees * Math.PI / 180;
            var curve = Turn(degrees);
            Assert.Equal(73, curve.Length);
            for (var i = 0; i < curve.Length; i++) Assert.Equal(Cross.SpeedRatio(5 * i * Math.PI / 180, [b], 0), curve[i], 1e-6);
        }, iter: 20);

    [Fact]
    public void The_largest_and_smallest_of_the_curve_are_those_told() =>
        Gen.Double[0.1, 44].Sample(degrees =>
        {
            var r = Door.Run("driveline.joint-fluctuation", $$"""{"angle":"{{degrees:R}} deg"}""");
            var curve = Turn(degrees);
            r.Gives("largestRatio", curve.Max(), 1e-9);
            r.Gives("smallestRatio", curve.Min(), 1e-9);
            r.Gives("fluctuation", 100 * (curve.Max() - curve.Min()), 1e-7);
            // In a whole turn of the input the output turns once: the mean of the ratio is one.
            Assert.Equal(1, curve.SkipLast(1).Average(), 1e-9);
        }, iter: 50);

    // In phase the difference of the squares counts, a quarter turn out their sum: 5 and 3 deg make 4 and 5.83; 4 and 3 deg a quarter turn out make 5.
    [Theory]
    [InlineData(5, 3, 0, 4)]
    [InlineData(3, 5, 180, 4)]
    [InlineData(4, 3, 90, 5)]
    [InlineData(4, 3, 270, 5)]
    [InlineData(6, 6, 0, 0)]
    public void Two_joints_make_one_equivalent(double b1, double b2, double offset, double equivalent) =>
        Angles(b1, b2, offset).Gives("equivalentAngle", equivalent, 1e-6);

    // Independent: the crosses of both joints chained as vectors, input, tube and output in one plane, as a Z and as a W. What the formula leaves out is of fourth order:
    // up to 6 deg (0.105 rad) less than 1.5 % of the squares.
    [Fact]
    public void The_equivalent_angle_agrees_with_two_crosses_in_a_row() =>
        Gen.Select(Gen.Double[0, 6], Gen.Double[0, 6], Gen.Double[0, 180], Gen.Bool).Sample((first, second, offset, z) =>
        {
            double b1 = first * Math.PI / 180, b2 = second * Math.PI / 180;
            var ratios = Enumerable.Range(0, 180).Select(i => Cross.SpeedRatio(2 * i * Math.PI / 180, [b1, z ? -b2 : b2], offset * Math.PI / 180)).ToList();
            var told = Angles(first, second, offset).Number("fluctuation")!.Value / 100;
            Assert.Equal(ratios.Max() - ratios.Min(), told, 0.015 * ((b1 * b1) + (b2 * b2)) + 1e-7);
        }, iter: 100);

    // Equal angles with the yokes in phase cancel exactly, whatever the angle: the axle turns like the transfer case.
    [Fact]
    public void Equal_angles_in_phase_cancel_exactly() =>
        Gen.Double[0, 15].Sample(degrees =>
        {
            Angles(degrees, degrees, 0).Gives("fluctuation", 0, 1e-12);
            var b = degrees * Math.PI / 180;
            Assert.All(Enumerable.Range(0, 36), i => Assert.Equal(1, Cross.SpeedRatio(i * Math.PI / 18, [b, -b], 0), 1e-7));
        }, iter: 30);

    [Fact]
    public void A_shaft_turned_end_for_end_is_as_even() =>
        Gen.Select(Gen.Double[0, 15], Gen.Double[0, 15], Gen.Double[0, 180]).Sample((b1, b2, offset) =>
        {
            var there = Angles(b1, b2, offset).Number("equivalentAngle")!.Value;
            Assert.Equal(there, Angles(b2, b1, 180 - offset).Number("equivalentAngle")!.Value, 1e-6);
            // Never more even than the difference, never worse than a quarter turn out.
            Assert.InRange(there, Math.Sqrt(Math.Abs((b1 * b1) - (b2 * b2))) - 1e-6, Math.Sqrt((b1 * b1) + (b2 * b2)) + 1e-6);
        }, iter: 50);

    // US Army TM 5-4210-230-14 and P-1, propeller shaft: working angles within 3 deg of each other, parallel within 1 deg, yokes in phase.
    // Equivalent angle of at most 3 deg: common practice, no source.
    [Theory]
    [InlineData(4, 3.5, 0, "pass", "pass", "pass")]
    [InlineData(4, 2.9, 0, "caution", "pass", "pass")]
    [InlineData(6, 4, 0, "caution", "fail", "pass")]
    [InlineData(3.2, 0.1, 0, "fail", "fail", "pass")]
    [InlineData(3, 3, 90, "pass", "fail", "fail")]
    [InlineData(1, 1, 90, "pass", "pass", "fail")]
    [InlineData(4, 4, 178.5, "pass", "pass", "pass")]
    public void Angles_and_yokes_are_judged_apart(double b1, double b2, double offset, string ends, string equivalent, string phase)
    {
        var r = Angles(b1, b2, offset);
        Assert.Equal((ends, equivalent, phase), (r.Verdict("ends"), r.Verdict("equivalent"), r.Verdict("phase")));
    }

    [Fact]
    public void Until_the_yokes_are_looked_at_the_ends_alone_are_judged()
    {
        var r = Door.Run("driveline.joint-angles", """{"transferAngle":"4 deg","axleAngle":"3.5 deg"}""");
        Assert.Equal(("pass", "unknown", "unknown"), (r.Verdict("ends"), r.Verdict("equivalent"), r.Verdict("phase")));
        Assert.Contains("straightedge across each yoke", r.Finding("phase")["text"]!.GetValue<string>());
    }

    [Theory]
    [InlineData("driveline.joint-fluctuation", """{"angle":"90 deg"}""", "fluctuation")]
    [InlineData("driveline.joint-angles", """{"transferAngle":"95 deg","axleAngle":"3 deg","yokeOffset":"0 deg"}""", "equivalentAngle")]
    public void No_joint_turns_at_a_right_angle(string id, string inputs, string output)
    {
        var r = Door.Run(id, inputs);
        Assert.Null(r.Number(output));
        Assert.Contains(r["cautions"]!.AsArray(), c => c!.GetValue<string>().Contains("right angle", StringComparison.Ordinal));
    }

    private static System.Text.Json.Nodes.JsonObject Angles(double b1, double b2, double offset) =>
        Door.Run("driveline.joint-angles", $$"""{"transferAngle":"{{b1:R}} deg","axleAngle":"{{b2:R}} deg","yokeOffset":"{{offset:R}} deg"}""");

    /// <summary>Output over input every five degrees of the input yoke, as plotted.</summary>
    private static double[] Turn(double degrees) =>
        [.. Door.Run("driveline.joint-fluctuation", $$"""{"angle":"{{degrees:R}} deg"}""")["curves"]![0]!["y"]!["values"]!.AsArray().Select(v => v!.GetValue<double>())];

    /// <summary>A row of crosses as unit vectors: shafts in one plane, each joint bending the line by its angle.</summary>
    private static class Cross
    {
        private const double Step = 1e-5;

        /// <summary>Output over input speed, by differences of the angles over a small step either side.</summary>
        public static double SpeedRatio(double input, double[] bends, double offset)
        {
            var turned = Output(input + Step, bends, offset) - Output(input - Step, bends, offset);
            return Math.IEEERemainder(turned, 2 * Math.PI) / (2 * Step);
        }

        private static double Output(double input, double[] bends, double offset)
        {
            var direction = 0.0;
            (double X, double Y, double Z) arm = (0, Math.Cos(input), Math.Sin(input)); // of the first yoke, at right angles to its shaft along x
            for (var i = 0; i < bends.Length; i++)
            {
                if (i > 0) arm = Turned(arm, (Math.Cos(direction), Math.Sin(direction), 0), offset);
                direction += bends[i];
                // The other arm of the cross: at right angles to this one and to the next shaft.
                arm = Unit(Product((Math.Cos(direction), Math.Sin(direction), 0), arm));
            }
            return Math.Atan2(arm.Z, (-arm.X * Math.Sin(direction)) + (arm.Y * Math.Cos(direction)));
        }

        /// <summary>Turned about a unit axis at right angles to it.</summary>
        private static (double X, double Y, double Z) Turned((double X, double Y, double Z) v, (double X, double Y, double Z) axis, double angle)
        {
            var across = Product(axis, v);
            double c = Math.Cos(angle), s = Math.Sin(angle);
            return ((c * v.X) + (s * across.X), (c * v.Y) + (s * across.Y), (c * v.Z) + (s * across.Z));
        }

        private static (double X, double Y, double Z) Product((double X, double Y, double Z) a, (double X, double Y, double Z) b) =>
            ((a.Y * b.Z) - (a.Z * b.Y), (a.Z * b.X) - (a.X * b.Z), (a.X * b.Y) - (a.Y * b.X));

        private static (double X, double Y, double Z) Unit((double X, double Y, double Z) v)
        {
            var size = Math.Sqrt((v.X * v.X) + (v.Y * v.Y) + (v.Z * v.Z));
            return (v.X / size, v.Y / size, v.Z / size);
        }
    }
}
