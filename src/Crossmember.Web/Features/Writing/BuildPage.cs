using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Slots;
using Crossmember.Builds.Workshop;
using Crossmember.Engineering.Reading;
using Crossmember.Web.Features.Layout;
using Microsoft.AspNetCore.Components;

namespace Crossmember.Web.Features.Writing;

/// <summary>A page of one build on which its reader may write: it shows the build as it was read, hears what others say, and keeps nothing back of what was refused.</summary>
public abstract class BuildPage : ComponentBase, IDisposable
{
    private Pen? _pen;

    [Parameter] public string Id { get; set; } = "";

    [SupplyParameterFromQuery(Name = "in")] public string? In { get; set; }

    [CascadingParameter] public Viewer Viewer { get; set; } = Viewer.Unknown;

    [Inject] public ShopDesk Desk { get; set; } = null!;

    [Inject] public NavigationManager Nav { get; set; } = null!;

    [Inject] public TimeProvider Clock { get; set; } = null!;

    /// <summary>Null where there is no build of this id.</summary>
    public BuildView? View { get; private set; }

    /// <summary>The what-if that is shown.</summary>
    public string Scenario { get; private set; } = Option.AsFound;

    public Pen Pen => _pen ??= new(Desk);

    public IReadOnlyList<HeldFact> Held { get; private set; } = [];

    /// <summary>Somebody has said something of what this reader has in hand: it waits to be asked for.</summary>
    public bool IsNewer { get; private set; }

    /// <summary>What others have just said, in words.</summary>
    public string Heard { get; private set; } = "";

    public Sheet Sheet => View!.Sheet(Scenario);

    public Build Build => View!.Build;

    /// <summary>Nothing may be written into this build at all.</summary>
    public bool IsReadOnly => View!.Open.IsReadOnly;

    /// <summary>Nothing may be chosen in what is shown: it is no what-if of this build.</summary>
    public bool Locked => IsReadOnly || !Build.Scenarios.ContainsKey(Scenario);

    public Speaker Speaker => new(Viewer.Person, Viewer.Device);

    /// <summary>What this reader said last on this device and still stands, with all that was said together with it.</summary>
    public IReadOnlyList<Fact> Own => View is { } view ? OwnWords.Last(view.Entries, Speaker) : [];

    protected override void OnInitialized() => Desk.Changed += Hear;

    protected override void OnParametersSet()
    {
        if (View?.Build.Id != Id) Reload();
        else Follow();
    }

    public void Dispose()
    {
        Desk.Changed -= Hear;
        GC.SuppressFinalize(this);
    }

    public void Reload() => Show(BuildView.Of(Desk, Id));

    /// <summary>Everything that follows from the build and the what-if.</summary>
    protected abstract void Arrange();

    /// <summary>Whether an entry on a subject is about what this reader is working on: that must not change under their hand.</summary>
    protected virtual bool IsInHand(string subject) => false;

    /// <summary>After something of this reader was kept.</summary>
    protected virtual void AfterWriting() { }

    public Fact? Find(Guid id) => View!.Entries.FirstOrDefault(e => e.Fact.Id == id)?.Fact;

    public bool Write(params IReadOnlyList<Fact> facts)
    {
        var kept = Pen.Write(facts, () => "");
        Reload();
        if (!kept) return false;
        Pen.Say(Words.Stopped($"Kept: {facts[0].Person} {EntryWords.Say(facts, Build, Find)}"));
        AfterWriting();
        return true;
    }

    public void Undo()
    {
        if (Own is not { Count: > 0 } own) return;
        if (OwnWords.OpenedIt(View!.Entries, own))
        {
            Write(Desk.Stating.Archive(Id, true, "taken back as soon as it was made", View.Seen("archive"), Speaker));
            return;
        }
        // What was said to the shop in the same breath goes with it.
        IReadOnlyList<Fact> all = own[0].Batch is { } said ? [.. Pen.Beside(said), .. own] : own;
        Guid? batch = all.Count > 1 ? FactIds.New(Clock) : null;
        Write([.. all.Reverse().Select(f => f.Stream == Id
            ? Desk.Stating.Undo(f, View.Seen(f.Subject), Speaker, batch) with { Payload = OwnWords.Before(View.Entries, f)?.DeepClone() }
            : Desk.Stating.Undo(f, Desk.Deciding.LastOn(f.Stream, f.Subject), Speaker, batch))]);
    }

    public void KeepTheirs() => Pen.Clear();

    public void UseMine()
    {
        if (Pen.Clash is { } clash) Write(clash.Insisted(Clock));
    }

    public void Release(Guid held) => Settle(() =>
    {
        var outcomes = Desk.Release(Id, held, Viewer.Person, "taken in at the desk", Build.Position);
        return outcomes.OfType<AppendOutcome.Refused>().FirstOrDefault()?.Fault
            ?? (outcomes.Any(o => o is AppendOutcome.Conflict) ? new Fault("", "Somebody was faster once more", "look at the present state and decide again") : null);
    });

    public void SetAside(Guid held) => Settle(() => Desk.SetAside(Id, held, Viewer.Person, "set aside at the desk"));

    private void Settle(Func<Fault?> decide)
    {
        Pen.Do(decide);
        Reload();
    }

    private void Show(BuildView? view)
    {
        (View, IsNewer, Heard) = (view, false, "");
        if (view is null) return;
        Held = Desk.Held(Id);
        Follow();
    }

    private void Follow()
    {
        if (View is not { } view) return;
        Scenario = In is { } named && view.Has(named) ? named : view.Usual;
        Arrange();
    }

    private void Hear(string build)
    {
        if (build == Id && !Pen.IsWriting) _ = InvokeAsync(() => { TakeIn(); StateHasChanged(); });
    }

    /// <summary>What somebody else adds shows at once, unless it is about what this reader has in hand.</summary>
    private void TakeIn()
    {
        if (View is not { } seen || BuildView.Of(Desk, Id) is not { } present) return;
        var news = present.Entries.Where(e => e.Sequence > seen.Build.Position).ToList();
        if (news.Count == 0 || news.Exists(e => IsInHand(e.Fact.Subject)))
        {
            IsNewer = news.Count > 0;
            Held = Desk.Held(Id);
            return;
        }
        var told = news.Where(e => EntryWords.IsDeciding(e.Fact)).Select(e => $"{e.Fact.Person} {EntryWords.Say(e.Fact, present.Build, id => present.Entries.FirstOrDefault(x => x.Fact.Id == id)?.Fact)}").ToList();
        Show(present);
        Pen.Say("");
        Heard = told.Count > 0 ? string.Join("; ", told) : Words.Count(news.Count, "entry was added", "entries were added");
    }
}
