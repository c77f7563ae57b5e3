using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Crossmember.Engineering.Reading;
using Crossmember.Storage;

namespace Crossmember.Web.Features.Customers;

/// <summary>Whose vehicle it is: kept so that it can be erased, handed out, and told apart from what stays.</summary>
public sealed partial class CustomerPage
{
    private const string Subject = "customer";

    private CustomerCard? _card, _begun;
    private CustomerDraft _draft = new();
    private KeptAbout _kept = null!;
    private IReadOnlyList<Fault> _unread = [], _faults = [];
    private string? _of;
    private bool _typed;
    private int _round;

    private PersonalRecords Records => Desk.Shop.Store.Personal;

    /// <summary>What was typed is this reader's own, whatever somebody else keeps meanwhile.</summary>
    protected override bool IsInHand(string subject) => _typed && subject == Subject;

    protected override void Arrange()
    {
        if (_of != Id) (_of, _typed) = (Id, false);
        var faults = new Faults();
        _card = Build.Customer is { } record ? Records.Read(record, faults) : null;
        _unread = faults.List;
        _kept = KeptAbout.Of(View!, _card);
        if (!_typed) Show();
    }

    public override void UseMine() => Keep();

    private void Show() => (_draft, _begun, _faults, _round) = (CustomerDraft.Of(_card), _card, [], _round + 1);

    private void Keep()
    {
        var card = _draft.ToCard();
        if ((_faults = card.Check().List).Count > 0) return;
        // A record that is missing or cannot be read is begun anew, under another id.
        var record = _card is not null ? Build.Customer! : PersonalRecords.NewId();
        var unread = _card is null ? Build.Customer : null;
        var faults = new Faults();
        // First the record, then the entry that names it: an entry never names what is not there. A change is said first: somebody may have been faster.
        var kept = _card is null
            ? Records.Keep(record, card, faults) && (Say(record) || Withdraw(record))
            : Say(record) && Records.Keep(record, card, faults);
        if (faults.Any) _faults = faults.List;
        if (!kept) return;
        // Nobody names the damaged one any more, so that no erasing would find it.
        var gone = unread is null || Records.Erase(unread, new());
        _typed = false;
        Arrange();
        if (!gone) _unread = [LeftOver(unread!)];
        Pen.Say("Kept. The journal says that it was written down, and nothing of what it says.");
    }

    private bool Say(string record) => Write(Desk.Stating.Say(Id, EntryKind.CustomerRecorded, Subject, new JsonObject { ["record"] = record }, View!.Seen(Subject), Speaker));

    private bool Withdraw(string record)
    {
        Records.Erase(record, new());
        return false;
    }

    private void Erase()
    {
        if (Build.Customer is not { } record) return;
        if (!Write(Desk.Stating.Say(Id, EntryKind.CustomerErased, Subject, new JsonObject(), View!.Seen(Subject), Speaker))) return;
        var faults = new Faults();
        var gone = Records.Erase(record, faults);
        _typed = false;
        Arrange();
        if (gone) Pen.Say("Erased. Nothing of the card is kept here any more; copies in backups go when the backups do.");
        else _unread = [new(record, "the journal says that it was erased, but the file could not be removed", $"remove {Records.PathOf(record)} by hand"), .. faults.List];
    }

    private Fault LeftOver(string record) => new(record, "the damaged record before this one could not be removed", $"remove {Records.PathOf(record)} by hand");

    private void SwitchWhatIf(string scenario) => Nav.NavigateTo($"builds/{Uri.EscapeDataString(Id)}/customer?in={Uri.EscapeDataString(scenario)}");

    private static IEnumerable<(string Name, string Text)> Lines(CustomerCard card) =>
        new[] { ("Name", card.Name), ("Phone", card.Phone), ("Mail", card.Mail), ("Address", card.Address), ("Notes", card.Notes) }.Where(f => f.Item2.Length > 0);
}
