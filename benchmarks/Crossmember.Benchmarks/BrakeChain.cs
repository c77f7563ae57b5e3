using System.Diagnostics;
using BenchmarkDotNet.Attributes;
using Crossmember.Engineering.Brakes.Balance;
using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Brakes.Limits;

namespace Crossmember.Benchmarks;

/// <summary>One whole look at the brakes of a truck without their heat, in two loading conditions: first lock on four roads, uses over the rule's range, failures, a stop, the best valve.</summary>
[MemoryDiagnoser]
public class BrakeChain
{
    private const double Megapascal = 1e6;

    private static readonly double[] s_grips = [0.2, 0.4, 0.6, 0.8];

    private readonly Loading[] _loads = [new(2100 * Loading.Gravity, 2.6, 1.248, 0.76), new(2600 * Loading.Gravity, 2.6, 1.35, 0.82)];
    private readonly RoadCase[] _roads = new RoadCase[14];
    private readonly PedalLine _pedal = new(7638, 22.6, 0.67 * Megapascal, 172.9, 6.413 * Megapascal, 0.383 * Megapascal);

    /// <summary>Changed from run to run, so that nothing can be worked out beforehand.</summary>
    private double _front = 1833.7;

    [Benchmark]
    public double Balance()
    {
        var rig = Next();
        var sum = 0.0;
        Span<UsePiece> room = stackalloc UsePiece[UsePiece.Most];
        foreach (ref readonly var load in _loads.AsSpan())
        {
            foreach (var grip in s_grips) sum += LockUp.On(grip, rig, load) is var at ? at.Deceleration + _pedal.Force(at.Pressure) : 0;
            ReadOnlySpan<UsePiece> pieces = room[..UsePiece.Fill(room, rig, load)];
            sum += AdhesionRule.FrontFirst(BrakeRule.Car13, pieces, load).Margin + AdhesionRule.Band(pieces, load).Margin + AdhesionRule.Demand(0.85, pieces, load).Margin;
            sum += Crossing.Of(rig, load, 1.2) ?? 0;
            var left = Left.Of(rig, load, _pedal, 500, 500, 0.8, Failure.FrontRear, false);
            sum += left.BoosterDead.Z + left.FrontLost.Z + left.RearLost.Z;
            sum += rig.Pressure(6.43 * load.Weight / Loading.Gravity) is { } line ? _pedal.Force(line) : 0;
            sum += StoppingDistance.Of(100 / 3.6, Reached.Of(rig.TotalAt(_pedal.Pressure(500)) / load.Weight, LockUp.On(0.8, rig, load).Deceleration).Z * Loading.Gravity, 0.36);
        }
        return sum;
    }

    [Benchmark]
    public double BestValve()
    {
        var rig = Next();
        for (var c = 0; c < _loads.Length; c++)
            for (var i = 0; i < 7; i++) _roads[(7 * c) + i] = new(0.2 + (0.1 * i), rig.Front.PerPascal, 0, rig.Rear.PerPascal, rig.Rear.Threshold, 0, _loads[c]);
        return ValveSearch.Best(_roads, rig.Rear.Threshold).Margin;
    }

    /// <summary>Rough figures in seconds.</summary>
    public static void Look()
    {
        var chain = new BrakeChain();
        Time("balance, lock, failures, stop", chain.Balance);
        Time("best valve", chain.BestValve);
    }

    private Rig Next() => new(new((_front = _front > 2000 ? 1700 : _front + 0.01) / Megapascal, 0), new(789.4 / Megapascal, 0.4 * Megapascal), new(3.5 * Megapascal, 0.35, 0));

    private static void Time(string what, Func<double> work)
    {
        const int Times = 200, Batch = 500;
        var sum = 0.0;
        for (var i = 0; i < 20_000; i++) sum += work();
        var before = GC.GetAllocatedBytesForCurrentThread();
        var runs = new double[Times];
        for (var r = 0; r < Times; r++)
        {
            var start = Stopwatch.GetTimestamp();
            for (var i = 0; i < Batch; i++) sum += work();
            runs[r] = Stopwatch.GetElapsedTime(start).TotalMicroseconds / Batch;
        }
        Console.WriteLine($"{what}: median {runs.Order().ElementAt(Times / 2):0.00} us, best {runs.Min():0.00}, {(GC.GetAllocatedBytesForCurrentThread() - before - (8 * Times)) / ((long)Times * Batch)} bytes ({sum:0})");
    }
}
