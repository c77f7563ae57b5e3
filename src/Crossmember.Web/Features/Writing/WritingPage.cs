using Crossmember.Builds.Journal;
using Crossmember.Builds.Workshop;
using Crossmember.Engineering.Reading;
using Crossmember.Web.Features.Layout;
using Microsoft.AspNetCore.Components;

namespace Crossmember.Web.Features.Writing;

/// <summary>A page over one stream on which its reader may write: it shows the stream as it was read, hears what others say, and keeps nothing back of what was refused.</summary>
public abstract class WritingPage : ComponentBase, IDisposable
{
    private Pen? _pen;

    [CascadingParameter] public Viewer Viewer { get; set; } = Viewer.Unknown;

    [Inject] public ShopDesk Desk { get; set; } = null!;

    [Inject] public NavigationManager Nav { get; set; } = null!;

    [Inject] public TimeProvider Clock { get; set; } = null!;

    /// <summary>The stream as its reader sees it; null where there is none.</summary>
    public StreamView? Record { get; private set; }

    public Pen Pen => _pen ??= new(Desk);

    public IReadOnlyList<HeldFact> Held { get; private set; } = [];

    /// <summary>Somebody has said something of what this reader has in hand: it waits to be asked for.</summary>
    public bool IsNewer { get; private set; }

    /// <summary>What others have just said, in words.</summary>
    public string Heard { get; private set; } = "";

    /// <summary>Nothing may be written at all.</summary>
    public bool IsReadOnly => Record!.IsReadOnly;

    /// <summary>What a reader must know before writing, in words.</summary>
    public virtual IEnumerable<string> Notices => [];

    public Speaker Speaker => new(Viewer.Person, Viewer.Device);

    /// <summary>What this reader said last on this device and still stands, with all that was said together with it.</summary>
    public IReadOnlyList<Fact> Own => Record is { } view ? OwnWords.Last(view.Entries, Speaker) : [];

    /// <summary>The name of the stream.</summary>
    protected abstract string Stream { get; }

    protected override void OnInitialized() => Desk.Changed += Hear;

    public void Dispose()
    {
        Desk.Changed -= Hear;
        GC.SuppressFinalize(this);
    }

    public void Reload() => Show(Read());

    /// <summary>The stream as it stands now.</summary>
    protected abstract StreamView? Read();

    /// <summary>Everything that follows from what is shown.</summary>
    protected abstract void Follow();

    /// <summary>Whether a change of a stream matters to this page.</summary>
    protected virtual bool Concerns(string stream) => stream == Stream;

    /// <summary>What else has changed between two looks, outside the stream; empty where nothing has.</summary>
    protected virtual IReadOnlyList<string> Beside(StreamView seen, StreamView present) => [];

    /// <summary>Whether an entry on a subject is about what this reader is working on: that must not change under their hand.</summary>
    protected virtual bool IsInHand(string subject) => false;

    /// <summary>Whether a reader wants to be told of an entry by its words; the others are counted.</summary>
    protected virtual bool IsTold(Fact fact) => true;

    /// <summary>After something of this reader was kept.</summary>
    protected virtual void AfterWriting() { }

    public Fact? Find(Guid id) => Record!.Find(id);

    public bool Write(params IReadOnlyList<Fact> facts)
    {
        var kept = Pen.Write(facts, () => "");
        Reload();
        if (!kept) return false;
        Pen.Say(Words.Stopped($"Kept: {facts[0].Person} {Record!.Say(facts)}"));
        AfterWriting();
        return true;
    }

    public virtual void Undo()
    {
        if (Own is { Count: > 0 } own) TakeBack(own);
    }

    /// <summary>What an undo would take back, in words; empty where there is nothing, as between an undo and the next drawing of its button.</summary>
    public virtual string SayOwn => Own is { Count: > 0 } own ? Record!.Say(own) : "";

    /// <summary>Takes facts back together, the last said first; what was said to the shop in the same breath goes with them.</summary>
    public bool TakeBack(IReadOnlyList<Fact> facts)
    {
        IReadOnlyList<Fact> all = Stream != Fact.Shop && facts[0].Batch is { } said ? [.. Pen.Beside(said), .. facts] : facts;
        Guid? batch = all.Count > 1 ? FactIds.New(Clock) : null;
        var lines = new WordLines(Record!.Entries);
        return Write([.. all.Reverse().Select(f => f.Stream == Stream
            ? Desk.Stating.Undo(f, Record.Seen(f.Subject), Speaker, batch) with { Payload = lines.Beneath(f.Id)?.DeepClone() }
            : Desk.Stating.Undo(f, Desk.Deciding.LastOn(f.Stream, f.Subject), Speaker, batch))]);
    }

    public void KeepTheirs() => Pen.Clear();

    public virtual void UseMine()
    {
        if (Pen.Clash is { } clash) Write(clash.Insisted(Clock));
    }

    public void Release(Guid held) => Settle(() =>
    {
        var outcomes = Desk.Release(Stream, held, Viewer.Person, "taken in at the desk", Record!.Position);
        return outcomes.OfType<AppendOutcome.Refused>().FirstOrDefault()?.Fault
            ?? (outcomes.Any(o => o is AppendOutcome.Conflict) ? new Fault("", "Somebody was faster once more", "look at the present state and decide again") : null);
    });

    public void SetAside(Guid held) => Settle(() => Desk.SetAside(Stream, held, Viewer.Person, "set aside at the desk"));

    private void Settle(Func<Fault?> decide)
    {
        Pen.Do(decide);
        Reload();
    }

    private void Show(StreamView? view)
    {
        (Record, IsNewer, Heard) = (view, false, "");
        if (view is null) return;
        Held = Desk.Held(Stream);
        Follow();
    }

    private void Hear(string stream)
    {
        if (Concerns(stream) && !Pen.IsWriting) _ = InvokeAsync(() => { TakeIn(); StateHasChanged(); });
    }

    /// <summary>What somebody else adds shows at once, unless it is about what this reader has in hand.</summary>
    private void TakeIn()
    {
        if (Record is not { } seen || Read() is not { } present) return;
        var news = present.Entries.Where(e => e.Sequence > seen.Position).ToList();
        var beside = Beside(seen, present);
        IsNewer = news.Exists(e => IsInHand(e.Fact.Subject));
        if (IsNewer || (news.Count == 0 && beside.Count == 0))
        {
            Held = Desk.Held(Stream);
            return;
        }
        var told = news.Where(e => IsTold(e.Fact)).Select(e => $"{e.Fact.Person} {present.Say(e.Fact)}").Concat(beside).ToList();
        Show(present);
        Pen.Say("");
        Heard = told.Count > 0 ? string.Join("; ", told) : Words.Count(news.Count, "entry was added", "entries were added");
    }
}
