using System.Globalization;

namespace Crossmember.PageBenchmarks;

/// <summary>What was measured, in the order in which it was first measured.</summary>
internal sealed class Figures
{
    private readonly List<(string What, string Unit, List<double> Runs)> _rows = [];

    public void Add(string what, string unit, double value)
    {
        var at = _rows.FindIndex(r => r.What == what);
        if (at < 0) _rows.Add((what, unit, [value]));
        else _rows[at].Runs.Add(value);
    }

    public void Print()
    {
        Console.WriteLine("| what | median | least | most | runs |\n|---|---|---|---|---|");
        foreach (var (what, unit, runs) in _rows)
        {
            var sorted = runs.Order().ToList();
            Console.WriteLine($"| {what} | {Text(sorted[sorted.Count / 2])} {unit} | {Text(sorted[0])} | {Text(sorted[^1])} | {sorted.Count} |");
        }
        Console.WriteLine($"\nLoad of the machine (1, 5, 15 minutes) on {Environment.ProcessorCount} cores: {LoadAverage()}");
    }

    private static string Text(double value) => value.ToString(value < 10 ? "0.0" : "0", CultureInfo.InvariantCulture);

    private static string LoadAverage() => File.Exists("/proc/loadavg") ? string.Join(' ', File.ReadAllText("/proc/loadavg").Split(' ')[..3]) : "not known here";
}
