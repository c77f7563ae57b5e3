using Crossmember.Web.Features.Builds;
using Crossmember.Web.Features.Layout;
using Microsoft.AspNetCore.Components;

namespace Crossmember.Web.Features.Today;

/// <summary>The shop in the morning: which vehicles are in trouble and why, what to find out, what to decide, who waits for whom. What nobody needs to do anything about is one line.</summary>
public sealed partial class TodayPage : IDisposable
{
    /// <summary>More vehicles than this nobody works on in a day.</summary>
    private const int Shortly = 12;

    private bool _all;
    private List<VehicleDay> _rows = [];

    [CascadingParameter] public Viewer Viewer { get; set; } = Viewer.Unknown;

    [Inject] private GlanceBoard Board { get; set; } = null!;

    [Inject] private TimeProvider Clock { get; set; } = null!;

    private DateOnly Date => DateOnly.FromDateTime(Clock.GetLocalNow().DateTime);

    /// <summary>Vehicles that need nobody, and those beyond what is told at length.</summary>
    private List<VehicleDay> Rest => [.. _rows.Where((r, i) => i >= Shortly || !r.NeedsSomebody)];

    private string Sum
    {
        get
        {
            int Count(Func<VehicleDay, bool> what) => _rows.Count(what);
            (int Count, string Says)[] parts =
            [
                (Count(r => r.Glance.Fails > 0), $"{Count(r => r.Glance.Fails > 0)} in trouble"),
                (Count(r => r.Glance.Stopped is not null), $"{Count(r => r.Glance.Stopped is not null)} stopped"),
                (Count(r => r.Glance.Unknowns > 0), $"{Count(r => r.Glance.Unknowns > 0)} with something to find out"),
                (Count(r => r.AsksForYes is not null), Words.Count(Count(r => r.AsksForYes is not null), "waits for the customer's yes", "wait for the customer's yes")),
            ];
            var told = parts.Where(p => p.Count > 0).Select(p => p.Says).ToList();
            var delivered = Count(r => r.IsDelivered);
            return $"{Words.Count(_rows.Count - delivered, "vehicle", "vehicles")} in the shop{(delivered > 0 ? $", {delivered} delivered" : "")}{(told.Count > 0 ? ": " + string.Join(", ", told) : ", nothing is in trouble")}.";
        }
    }

    protected override void OnInitialized()
    {
        Load();
        Board.Changed += Reload;
    }

    public void Dispose() => Board.Changed -= Reload;

    private void Load() => _rows = [.. Board.Rows().Where(r => r.Glance.Archived is null).Select(r => new VehicleDay(r, Date))
        .OrderByDescending(r => r.Glance.Stopped is not null).ThenByDescending(r => r.Glance.State).ThenByDescending(r => r.Glance.Fails).ThenBy(r => r.Glance.Title, StringComparer.OrdinalIgnoreCase)];

    private void Reload() => _ = InvokeAsync(() => { Load(); StateHasChanged(); });
}
