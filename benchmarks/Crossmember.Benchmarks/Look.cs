using System.Diagnostics;

namespace Crossmember.Benchmarks;

/// <summary>Medians by stopwatch.</summary>
internal static class Look
{
    public static void Run()
    {
        var ripple = new RippleBenchmarks();
        ripple.Setup();
        Time("ripple, every calculation", () => ripple.EveryCalculation(), 300);
        Time("ripple, few calculations", () => ripple.FewCalculations(), 300);
        Time("ripple, every choice", () => ripple.EveryChoice(), 300);
        Time("ripple from nothing", () => ripple.FromNothing(), 300);
        var fold = new FoldBenchmarks();
        fold.Setup();
        Time("fold of 20,000", () => fold.Whole(), 15);
        Time("fold from snapshot", () => fold.FromSnapshot(), 15);
        fold.Cleanup();
    }

    private static void Time(string what, Func<object> work, int times)
    {
        for (var i = 0; i < times; i++) work();
        var before = GC.GetAllocatedBytesForCurrentThread();
        var runs = Enumerable.Range(0, times).Select(_ =>
        {
            var start = Stopwatch.GetTimestamp();
            work();
            return Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        }).Order().ToList();
        Console.WriteLine($"{what}: median {runs[times / 2]:0.000} ms, best {runs[0]:0.000} ms, {(GC.GetAllocatedBytesForCurrentThread() - before) / times / 1024} KiB");
    }
}
