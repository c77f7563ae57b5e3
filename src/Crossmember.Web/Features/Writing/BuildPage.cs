using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Slots;
using Microsoft.AspNetCore.Components;

namespace Crossmember.Web.Features.Writing;

/// <summary>A page of one build on which its reader may write.</summary>
public abstract class BuildPage : WritingPage
{
    [Parameter] public string Id { get; set; } = "";

    [SupplyParameterFromQuery(Name = "in")] public string? In { get; set; }

    /// <summary>Null where there is no build of this id.</summary>
    public BuildView? View => (BuildView?)Record;

    /// <summary>The what-if that is shown.</summary>
    public string Scenario { get; private set; } = Option.AsFound;

    public Sheet Sheet => View!.Sheet(Scenario);

    public Build Build => View!.Build;

    /// <summary>Nothing may be chosen in what is shown: it is no what-if of this build.</summary>
    public bool Locked => IsReadOnly || !Build.Scenarios.ContainsKey(Scenario);

    public override IEnumerable<string> Notices
    {
        get
        {
            if (IsReadOnly) yield return $"Open for reading only: {View!.Open.State.Unreadable[0]}. Use the program that wrote it.";
            if (Build.Archived is { } away) yield return $"This build is put away{(away.Length > 0 ? $": {away}" : "")}.";
            if (Build.Stopped is { } stop) yield return $"Work is stopped: {stop}";
        }
    }

    protected sealed override string Stream => Id;

    protected override void OnParametersSet()
    {
        if (View?.Build.Id != Id) Reload();
        else Follow();
    }

    /// <summary>Everything that follows from the build and the what-if.</summary>
    protected abstract void Arrange();

    protected override StreamView? Read() => BuildView.Of(Desk, Id);

    /// <summary>Rates, taxes and rounding of the shop move the totals of every build.</summary>
    protected override bool Concerns(string stream) => stream == Id || stream == Fact.Shop;

    protected override IReadOnlyList<string> Beside(StreamView seen, StreamView present) => ShopSayings.OfMoney(Desk, ((BuildView)seen).ShopPosition, ((BuildView)present).ShopPosition);

    /// <summary>Without its opening a build is nothing: one that was just made is put away.</summary>
    public override void Undo()
    {
        if (Own is not { Count: > 0 } own) return;
        if (OwnWords.OpenedIt(View!.Entries, own)) Write(Desk.Stating.Archive(Id, true, "taken back as soon as it was made", View.Seen("archive"), Speaker));
        else TakeBack(own);
    }

    public override string SayOwn => OwnWords.OpenedIt(View!.Entries, Own) ? "you made this build: it would be put away" : base.SayOwn;

    protected override bool IsTold(Fact fact) => EntryWords.IsDeciding(fact);

    protected sealed override void Follow()
    {
        if (View is not { } view) return;
        Scenario = In is { } named && view.Has(named) ? named : view.Usual;
        Arrange();
    }
}
