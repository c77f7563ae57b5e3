using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Brakes.Heat;
using CsCheck;

namespace Crossmember.Engineering.Tests.Brakes.Heat;

/// <summary>The stores of heat over a drive, against the closed forms that they come to and against what must hold of any.</summary>
public class HeatRunTests
{
    private const double Air = 298.15;

    private static readonly Rig s_even = new(new(1e-3, 0), new(1e-3, 0), Valves.None);

    // Constant power into one store with constant cooling: air + (q / hA) (1 - e^(-hA t / C)).
    [Fact]
    public void Constant_power_is_an_exponential()
    {
        var run = Alone(Air);
        var vehicle = new Driven(2500, 1, 0.015, 0, 0);
        var road = vehicle.Lasting(540, 11.1111, 11.1111, 0.0698);
        Assert.True(run.Drive(road));
        var q = road.PowerAt(11.1111) / 4;
        Assert.Equal(Air + (q / 9 * (1 - Math.Exp(-9.0 * 540 / 3600))), run.Now(0), 0.01);
        Assert.Equal(run.Now(0), run.Now(4), 1e-9);
    }

    // Stops of next to no length with a constant film: the n-stop formula.
    [Fact]
    public void Short_stops_are_the_series_of_rises_and_decays()
    {
        var run = Alone(353.15);
        var vehicle = new Driven(2100, 1.04, 0, 0, 0);
        double rise = 0.5 * 1.04 * 2100 * ((22.2222 * 22.2222) - (11.1111 * 11.1111)) / 4 / 3600, beta = 9.0 * 45 / 3600;
        for (var i = 0; i < 15; i++)
        {
            Assert.True(run.Drive(vehicle.Lasting(0.001, 22.2222, 11.1111, 0)));
            if (i < 14) Assert.True(run.Drive(vehicle.Lasting(45, 11.1111, 22.2222, 0)));
        }
        var series = Air + (55 * Math.Exp(-14 * beta)) + (rise * (1 - Math.Exp(-15 * beta)) / (1 - Math.Exp(-beta)));
        Assert.Equal(series, run.Now(0), 0.02);
    }

    // What is put in is the energy that the vehicle gives up, and it is held or shed: kinetic and potential energy against the run's own sums, random drives.
    [Fact]
    public void Every_joule_is_held_or_shed() =>
        Gen.Select(Gen.Double[1000, 3500], Gen.Double[5, 30], Gen.Double[0, 1], Gen.Double[0.04, 0.12], Gen.Double[60, 900], Gen.Double[0, 0.02]).Sample((mass, v, slower, sine, time, rolling) =>
        {
            var run = new HeatRun(Disc(mass), Drum(mass), new(0.7, 1), new(0.8, 1.6), new(new(2e-3, 2e4), new(1e-3, 4e5), new(3e6, 0.35, 0)), 350, Air);
            var vehicle = new Driven(mass, 1.04, rolling, 0, 0);
            if (!run.Drive(vehicle.Lasting(time, v, v, sine)) || !run.Drive(vehicle.Lasting(4, v, slower * v, 0))) return;
            run.Drive(Stretch.Stand(900));
            double given = (mass * 9.80665 * (sine - (rolling * Math.Sqrt(1 - (sine * sine)))) * v * time) + (0.52 * mass * v * v * (1 - (slower * slower)))
                - (mass * 9.80665 * rolling * 4 * v * (1 + slower) / 2);
            if (sine > rolling + 0.01 && slower < 0.9) Assert.Equal(given, run.HeatPut, 1e-6 * given);
            Assert.Equal(run.HeatPut, run.Held - run.Begun + run.HeatShed, 1e-6 * run.HeatPut);
        }, iter: 200);

    // Half as long steps leave every temperature where it is: two half stretches against one whole.
    [Fact]
    public void Cutting_a_stretch_in_two_changes_nothing()
    {
        HeatRun whole = Full(), halves = Full();
        var vehicle = new Driven(2100, 1.04, 0.015, 0.78, 0);
        Assert.True(whole.Drive(vehicle.Lasting(400, 16, 16, 0.07)));
        for (var i = 0; i < 40; i++) Assert.True(halves.Drive(vehicle.Lasting(10, 16, 16, 0.07)));
        for (var i = 0; i < 8; i++) Assert.Equal(halves.Now(i), whole.Now(i), 0.01);
    }

    // A hot front hands work to the rear: with fade the rear ends hotter and the front cooler than without.
    [Fact]
    public void Fade_hands_work_to_the_other_axle()
    {
        var vehicle = new Driven(2100, 1.04, 0.015, 0.78, 0);
        HeatRun plain = Full(), faded = Full(0.6);
        foreach (var run in new[] { plain, faded }) Assert.True(run.Drive(vehicle.Lasting(500, 16, 16, 0.08)));
        Assert.True(faded.Now(0) < plain.Now(0) && faded.Now(4) > plain.Now(4));
        Assert.Equal(plain.HeatPut, faded.HeatPut, 1e-6 * plain.HeatPut);
        Assert.Equal(0.6, faded.FrontTorque, 1e-9);
    }

    [Fact]
    public void Both_axles_dead_is_said_and_not_guessed()
    {
        var run = new HeatRun(Disc(2000), Drum(2000), FadeLine.None, FadeLine.None, new(new(1e-3, 0), new(0, 0), new(double.PositiveInfinity, 1, 0)), 350, Air);
        Assert.True(run.Drive(new Driven(2000, 1, 0.015, 0, 0).Lasting(10, 16, 16, 0.08)));
        var dead = new HeatRun(Disc(2000), Drum(2000), FadeLine.None, FadeLine.None, new(AxleForce.None, AxleForce.None, Valves.None), 350, Air);
        Assert.False(dead.Drive(new Driven(2000, 1, 0.015, 0, 0).Lasting(10, 16, 16, 0.08)));
        Assert.True(dead.Helpless);
    }

    // Letters: F 0.35 to 0.45, E 0.25 to 0.35 (SAE J866, from memory): FE falls to 0.30 / 0.40 from 142 to 288 C.
    [Theory]
    [InlineData(100, 1)]
    [InlineData(215, 0.875)]
    [InlineData(288, 0.75)]
    [InlineData(600, 0.75)]
    public void Friction_falls_from_letter_to_letter(double celsius, double friction) =>
        Assert.Equal(friction, FadeLine.Of("FE", 1)!.Value.Friction(celsius + 273.15), 1e-9);

    [Fact]
    public void A_drum_that_helps_itself_fades_more() =>
        Assert.Equal(Math.Pow(0.75, 2.448), FadeLine.Of("FE", 2.448)!.Value.Torque(700), 1e-12);

    [Theory]
    [InlineData("F")]
    [InlineData("FX")]
    [InlineData("fe")]
    public void What_are_no_letters_are_none(string text) => Assert.Null(FadeLine.Of(text, 1));

    private static HeatRun Alone(double start)
    {
        var one = BrakeNodes.Alone(3600, new(9, 9, 0.8));
        return new(one, one, FadeLine.None, FadeLine.None, s_even, start, Air);
    }

    private static HeatRun Full(double hot = 1) =>
        new(Disc(2100), Drum(2100), new(hot, 1), FadeLine.None, new(new(1.8337e-3, 0), new(0.7894e-3, 4e5), Valves.None), 353.15, Air);

    private static BrakeNodes Disc(double mass) => BrakeNodes.Of(false, 7.5 * mass / 2100, 800, 0.1, 0.01, 0.98);

    private static BrakeNodes Drum(double mass) => BrakeNodes.Of(true, 9 * mass / 2100, 600, 0.13, 0.03, 0.93);
}
