using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Slots;
using Crossmember.Builds.Workshop;
using Crossmember.Engineering.Reading;
using Crossmember.Web.Features.Builds;

namespace Crossmember.Web.Features.Writing;

/// <summary>A page of the shop itself on which its reader may write.</summary>
public abstract class ShopPage : WritingPage
{
    private Guid? _taken;

    public ShopView View => (ShopView)Record!;

    public ShopFacts Shop => View.Shop;

    /// <summary>The subject whose form is open; null: none.</summary>
    public string? InHand { get; private set; }

    protected sealed override string Stream => Fact.Shop;

    protected override void OnInitialized()
    {
        base.OnInitialized();
        Reload();
    }

    public void Take(string subject)
    {
        (InHand, _taken) = (subject, View.Seen(subject));
        Pen.Clear();
    }

    public void PutDown() => InHand = null;

    /// <summary>Makes the fact that this reader would say, having seen what is shown.</summary>
    public Fact Make(EntryKind kind, string subject, JsonNode payload) => Desk.Stating.Say(Fact.Shop, kind, subject, payload, View.Seen(subject), Speaker);

    public bool Say(EntryKind kind, string subject, JsonNode payload) => Write(Make(kind, subject, payload));

    /// <summary>What a fact would do to the totals of the builds, in their usual what-if and as approved; nothing is written. Null with a fault where it cannot be said.</summary>
    public IReadOnlyList<MoneyMove>? Preview(Fact fact, Faults faults)
    {
        var then = Desk.Shop.Shelf.ShopWith([fact], faults);
        return faults.Any ? null : [.. Desk.OpenBuilds().SelectMany(b => MoneyMove.Of(b, [BuildGlance.Usual(b, Shop), .. b.Approval is null ? (string[])[] : [Option.Approved]], Shop, then))];
    }

    protected override StreamView? Read() => ShopView.Of(Desk);

    protected override void Follow() { }

    protected override bool IsInHand(string subject) => subject == InHand;

    /// <summary>The form closes when its own words were kept, not when something else was, such as an undo.</summary>
    protected override void AfterWriting()
    {
        if (InHand is { } subject && View.Seen(subject) != _taken) PutDown();
    }
}
