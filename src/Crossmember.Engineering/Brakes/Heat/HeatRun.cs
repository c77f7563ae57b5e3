using Crossmember.Engineering.Brakes.Chain;

namespace Crossmember.Engineering.Brakes.Heat;

/// <summary>Drives both axles' brakes over stretches of road and keeps their temperatures, with friction fed back into how the axles share the work. SI.</summary>
/// <remarks>
/// Formula:  classical fourth-order Runge-Kutta steps, none longer than 0.15 of the fastest store's time; heat put in and given off are carried along
/// Valid:    the friction power of a stretch is a cubic in time, which the steps sum exactly; what is put in is held or shed to rounding
/// Source:   derived, docs/derivations/brake-heat.md
/// </remarks>
public sealed class HeatRun
{
    /// <summary>Four temperatures in front, four behind, heat shed, heat put in.</summary>
    private const int Shed = 8, Put = 9, States = 10;

    private const double Longest = 0.15, Hotter = 150; // of the fastest store's time; K that a stretch may add, as far as the length of steps goes
    private const double Sampled = 15; // s: peaks are looked for at the ends of steps
    private const int MostSteps = 20_000, LeastBraking = 4;

    private readonly double[] _y = new double[States], _z = new double[States], _k1 = new double[States], _k2 = new double[States], _k3 = new double[States], _k4 = new double[States];
    private readonly BrakeNodes _front, _rear;
    private readonly FadeLine _frontFade, _rearFade;
    private readonly Rig _rig;
    private readonly double _air;
    private Stretch _road;
    private int _steps;
    private double _leastForce = double.PositiveInfinity;

    /// <param name="start">Of iron and linings, K; fluid and hubs begin as warm as the air.</param>
    public HeatRun(in BrakeNodes front, in BrakeNodes rear, in FadeLine frontFade, in FadeLine rearFade, in Rig rig, double start, double air)
    {
        (_front, _rear, _frontFade, _rearFade, _rig, _air) = (front, rear, frontFade, rearFade, rig, air);
        for (var i = 0; i < Shed; i++) _y[i] = i % 4 < 2 ? start : air;
        Begun = Held;
        Peaks = new HottestBrakes(_y);
    }

    /// <summary>Where an axle has no pressure that brakes as the road asks for, the figures take too fine steps, or iron is past what it stands.</summary>
    public bool Helpless { get; private set; }

    public bool TooFine { get; private set; }

    public bool Spent { get; private set; }

    /// <summary>Since the start, s.</summary>
    public double Time { get; private set; }

    public HottestBrakes Peaks { get; private set; }

    /// <summary>Torque over the cold one of each axle at the worst moment of braking: when the least force came of the pressure that all of it takes cold.</summary>
    public double FrontTorque { get; private set; } = 1;

    public double RearTorque { get; private set; } = 1;

    public double FrontFriction { get; private set; } = 1;

    public double RearFriction { get; private set; } = 1;

    /// <summary>Both wheels of both axles, J.</summary>
    public double HeatPut => _y[Put];

    public double HeatShed => _y[Shed];

    public double Held => 2 * (_front.Held(_y.AsSpan(0, 4), _air) + _rear.Held(_y.AsSpan(4, 4), _air));

    /// <summary>Held at the start, J.</summary>
    public double Begun { get; }

    /// <summary>Temperature now, K: 0 to 3 iron, lining, fluid, hub in front, 4 to 7 behind.</summary>
    public double Now(int store) => _y[store];

    /// <summary>False where it cannot go on.</summary>
    public bool Drive(in Stretch road, List<HeatPoint>? log = null)
    {
        _road = road;
        var speed = Math.Max(road.Speed, road.SpeedAt(road.Duration));
        var fastest = Math.Max(_front.Fastest(speed, _y[0] + Hotter), _rear.Fastest(speed, _y[4] + Hotter));
        var count = Math.Ceiling(road.Duration * Math.Max(fastest / Longest, 1 / Sampled));
        if (!(count + _steps <= MostSteps)) TooFine = true;
        if (TooFine) return false;
        var n = Math.Max(road.Brakes ? LeastBraking : 1, (int)count);
        _steps += n;
        var step = road.Duration / n;
        for (var i = 0; i < n && !Spent; i++)
        {
            Step(i * step, step);
            Time += step;
            Note();
            log?.Add(new(Time, _y[0], _y[2], _y[4], _y[6]));
        }
        return !(Spent || Helpless);
    }

    private void Step(double at, double h)
    {
        double v0 = _road.SpeedAt(at), v1 = _road.SpeedAt(at + (h / 2)), v2 = _road.SpeedAt(at + h);
        var middle = Flow.Of(v1, _front, _rear);
        Slopes(_y, _k1, v0, Flow.Of(v0, _front, _rear));
        Ahead(_k1, h / 2);
        Slopes(_z, _k2, v1, middle);
        Ahead(_k2, h / 2);
        Slopes(_z, _k3, v1, middle);
        Ahead(_k3, h);
        Slopes(_z, _k4, v2, Flow.Of(v2, _front, _rear));
        for (var i = 0; i < States; i++) _y[i] += h / 6 * (_k1[i] + (2 * (_k2[i] + _k3[i])) + _k4[i]);
    }

    private void Ahead(double[] slope, double h)
    {
        for (var i = 0; i < States; i++) _z[i] = _y[i] + (h * slope[i]);
    }

    private void Slopes(double[] y, double[] slope, double v, in Flow flow)
    {
        var power = _road.PowerAt(v); // W, all four wheels
        var front = power > 0 ? power * FrontShare(power / v, y[0], y[4]) / 2 : 0;
        var shed = _front.Slopes(y.AsSpan(0, 4), slope.AsSpan(0, 4), front, flow.Front, flow.Wind, _air)
            + _rear.Slopes(y.AsSpan(4, 4), slope.AsSpan(4, 4), (power / 2) - front, flow.Rear, flow.Wind, _air);
        (slope[Shed], slope[Put]) = (2 * shed, power);
    }

    /// <summary>What the front axle takes of a force while both linings are as hot as they are.</summary>
    private double FrontShare(double force, double front, double rear)
    {
        double f = _rig.Front.PerPascal * _frontFade.Torque(front), r = _rig.Rear.PerPascal * _rearFade.Torque(rear), f0 = _rig.Front.Threshold, r0 = _rig.Rear.Threshold;
        // Both axles braking and no valve at work, as nearly always: one straight line.
        var straight = (force + (f * f0) + (r * r0)) / (f + r);
        if (straight >= f0 && straight >= r0 && straight <= _rig.Valves.Knee && straight >= 2 * _rig.Valves.Metering) return f * (straight - f0) / force;
        var hot = _rig with { Front = _rig.Front with { PerPascal = f }, Rear = _rig.Rear with { PerPascal = r } };
        if (hot.Pressure(force) is { } line && hot.TotalAt(line) is > 0 and var all) return hot.FrontAt(line) / all;
        Helpless = true;
        return 0.5;
    }

    private void Note()
    {
        Peaks = Peaks.With(_y);
        if (Math.Max(_y[0], _y[4]) > GrayIron.Spent || double.IsNaN(_y[0]) || double.IsNaN(_y[4])) Spent = true;
        if (!_road.Brakes) return;
        double f = _frontFade.Torque(_y[0]), r = _rearFade.Torque(_y[4]), force = (f * _rig.Front.PerPascal) + (r * _rig.Rear.PerPascal);
        if (force >= _leastForce) return;
        (_leastForce, FrontTorque, RearTorque) = (force, f, r);
        (FrontFriction, RearFriction) = (_frontFade.Friction(_y[0]), _rearFade.Friction(_y[4]));
    }

    /// <summary>Films of a moment, W/K, and how caliper and hub are cooled.</summary>
    private readonly record struct Flow(double Front, double Rear, double Wind)
    {
        public static Flow Of(double speed, in BrakeNodes front, in BrakeNodes rear) => new(front.Air.At(speed), rear.Air.At(speed), BrakeNodes.Wind(speed));
    }
}

/// <summary>Temperatures at a moment, K.</summary>
public readonly record struct HeatPoint(double Time, double FrontRotor, double FrontFluid, double RearRotor, double RearFluid);

/// <summary>The highest temperatures so far, K.</summary>
public readonly record struct HottestBrakes(double FrontRotor, double FrontLining, double FrontFluid, double RearRotor, double RearLining, double RearFluid)
{
    internal HottestBrakes(ReadOnlySpan<double> y)
        : this(y[0], y[1], y[2], y[4], y[5], y[6])
    {
    }

    internal HottestBrakes With(ReadOnlySpan<double> y) => new(
        Math.Max(FrontRotor, y[0]), Math.Max(FrontLining, y[1]), Math.Max(FrontFluid, y[2]), Math.Max(RearRotor, y[4]), Math.Max(RearLining, y[5]), Math.Max(RearFluid, y[6]));
}
