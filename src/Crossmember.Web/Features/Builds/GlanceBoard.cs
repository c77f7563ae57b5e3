using System.Collections.Concurrent;
using System.Text.Json;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Slots;
using Crossmember.Storage;

namespace Crossmember.Web.Features.Builds;

/// <summary>A vehicle in the lists.</summary>
/// <param name="IsOld">Something was said since this was worked out; it is being worked out anew.</param>
/// <param name="Held">Entries that wait for somebody to decide on them.</param>
public sealed record BoardRow(BuildGlance Glance, bool IsOld, int Held);

/// <summary>The glances of all vehicles. What is still true is read as it was kept; what is not is worked out, a few at once and many one after the other while people read on.</summary>
public sealed class GlanceBoard : IDisposable
{
    private static readonly TimeSpan s_atOnce = TimeSpan.FromMilliseconds(80);
    private static readonly JsonSerializerOptions s_json = new(JsonSerializerDefaults.Web);

    // Wording counts too: another build of the program may tell the same sheet better.
    private static readonly string s_maker = string.Join('-', new[] { typeof(GlanceBoard), typeof(Build), typeof(Engineering.Calculations.Calculation) }.Select(t => t.Assembly.ManifestModule.ModuleVersionId.ToString("N")[..8]));

    private readonly OpenShop _shop;
    private readonly TimeProvider _clock;
    private readonly Lock _lock = new();
    private readonly HashSet<string> _waiting = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, (long Build, long Shop, string Why)> _failed = new(StringComparer.Ordinal);
    private Task _working = Task.CompletedTask;
    private bool _isBusy, _isClosed;

    public GlanceBoard(ShopDesk desk, TimeProvider clock)
    {
        (_shop, _clock) = (desk.Shop, clock);
        desk.Changed += build => Ask(build == Fact.Shop ? [.. desk.Builds().Select(b => b.Id)] : [build]);
    }

    /// <summary>Vehicles were worked out anew.</summary>
    public event Action? Changed;

    /// <summary>Every vehicle of the shop, those put away included, by id.</summary>
    public IReadOnlyList<BoardRow> Rows()
    {
        var shop = _shop.Shelf.Shop();
        var (began, late, rows) = (_clock.GetTimestamp(), new List<string>(), new List<BoardRow>());
        foreach (var kept in _shop.Store.Glances.All(s_maker))
        {
            var known = Read(kept.Content);
            var isOld = known is null || !kept.IsOf(shop.Position);
            if (isOld && Failure(kept, shop) is { } why) (known, isOld) = (BuildGlance.Broken(kept.Build, kept.Title, why), false);
            if (isOld && _clock.GetElapsedTime(began) < s_atOnce && Try(kept.Build, shop) is { } fresh) (known, isOld) = (fresh, false);
            if (isOld) late.Add(kept.Build);
            rows.Add(new(known ?? BuildGlance.NotYet(kept.Build, kept.Title), isOld, kept.Held));
        }
        Ask(late);
        return rows;
    }

    /// <summary>When nothing is left to be worked out.</summary>
    public Task Settled()
    {
        lock (_lock) return _working;
    }

    private static BuildGlance? Read(string? content)
    {
        try { return content is null ? null : JsonSerializer.Deserialize<BuildGlance>(content, s_json); }
        catch (JsonException) { return null; }
    }

    /// <summary>Why it could not be worked out as it stands, if it was tried.</summary>
    private string? Failure(KeptGlance kept, ShopFacts shop) => _failed.TryGetValue(kept.Build, out var f) && (f.Build, f.Shop) == (kept.Head, shop.Position) ? f.Why : null;

    /// <summary>One vehicle that cannot be worked out must not take the list of all the others with it: it is told as such.</summary>
    private BuildGlance? Try(string build, ShopFacts shop)
    {
        var work = Task.Run(() => Work(build, shop));
        ((IAsyncResult)work).AsyncWaitHandle.WaitOne();
        if (work.IsCompletedSuccessfully) return work.Result;
        _failed[build] = (_shop.Store.Journal.Store.Head(build).Sequence, shop.Position, work.Exception!.InnerException!.Message);
        return null;
    }

    private BuildGlance? Work(string build, ShopFacts shop)
    {
        if (_shop.Shelf.Open(build) is not { } open) return null;
        var glance = BuildGlance.Of(open, shop);
        _shop.Store.Glances.Keep(build, open.Build.Position, shop.Position, s_maker, JsonSerializer.Serialize(glance, s_json));
        return glance;
    }

    private void Ask(IReadOnlyList<string> builds)
    {
        lock (_lock)
        {
            if (_isClosed) return;
            _waiting.UnionWith(builds);
            if (_isBusy || _waiting.Count == 0) return;
            (_isBusy, _working) = (true, Task.Run(WorkOff));
        }
    }

    private void WorkOff()
    {
        while (Next() is { } build)
        {
            Try(build, _shop.Shelf.Shop());
            Changed?.Invoke();
        }
    }

    private string? Next()
    {
        lock (_lock)
        {
            var next = _isClosed ? null : _waiting.FirstOrDefault();
            if (next is null) _isBusy = false;
            else _waiting.Remove(next);
            return next;
        }
    }

    /// <summary>Waits for the vehicle in hand: the shop is closed after this.</summary>
    public void Dispose()
    {
        lock (_lock) _isClosed = true;
        Settled().Wait();
    }
}
