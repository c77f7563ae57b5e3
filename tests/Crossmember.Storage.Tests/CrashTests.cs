using System.Diagnostics;

namespace Crossmember.Storage.Tests;

public sealed class CrashTests : IDisposable
{
    private readonly Shop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void What_was_acknowledged_before_a_kill_is_there_exactly_once()
    {
        var acknowledged = new List<string>();
        var random = new Random(20260131);
        for (var round = 0; round < 20; round++) acknowledged.AddRange(KilledAfter(acknowledgements: random.Next(1, 30), thenMilliseconds: random.Next(0, 12)));

        var kept = _shop.Query("SELECT FactId FROM Entries");
        Assert.Equal(kept.Count, kept.Distinct().Count());
        Assert.Equal(acknowledged.Count, acknowledged.Distinct().Count());
        Assert.Empty(acknowledged.Except(kept));
        Assert.True(acknowledged.Count > 20);
        Assert.Empty(_shop.Store.Verify());
        BatchesAreWhole();
    }

    private void BatchesAreWhole()
    {
        var sizes = _shop.Journal.Store.Read("b1").GroupBy(e => e.Fact.Batch).Select(g => g.Count()).ToList();
        // Within a round sizes run 1, 2, 3, 1 ...; a new round starts at 1 again. A torn batch would break the run.
        for (var i = 1; i < sizes.Count; i++) Assert.True(sizes[i] == sizes[i - 1] % 3 + 1 || sizes[i] == 1, $"batch {i} has {sizes[i]} facts after one of {sizes[i - 1]}");
    }

    /// <summary>Starts the program, waits for so many acknowledgements and a moment more, kills it without warning, and answers all it said.</summary>
    private List<string> KilledAfter(int acknowledgements, int thenMilliseconds)
    {
        var program = Path.Combine(AppContext.BaseDirectory.Replace("Crossmember.Storage.Tests", "Crossmember.Storage.Crasher", StringComparison.Ordinal), "Crossmember.Storage.Crasher.dll");
        using var child = Process.Start(new ProcessStartInfo(Environment.ProcessPath is { } p && Path.GetFileNameWithoutExtension(p) == "dotnet" ? p : "dotnet", [program, _shop.Folder]) { RedirectStandardOutput = true })!;
        var said = new List<string>();
        while (said.Count < acknowledgements && child.StandardOutput.ReadLine() is { } line) said.Add(line);
        Thread.Sleep(thenMilliseconds);
        child.Kill();
        // What was still in the pipe had been acknowledged too; a line cut short by the kill had not been said whole.
        while (child.StandardOutput.ReadLine() is { } line)
            if (line.Length == 36) said.Add(line);
        child.WaitForExit();
        Assert.True(said.Count >= acknowledgements, "the program ended by itself");
        return said;
    }
}
