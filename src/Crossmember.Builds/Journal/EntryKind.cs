namespace Crossmember.Builds.Journal;

/// <summary>Whether the order on a subject matters (state) or entries simply add up (log).</summary>
public enum EntryNature { State, Log }

/// <summary>A kind of entry. Its name and schema are the contract; the classes that read it may be renamed.</summary>
/// <param name="Subject">The shape of its subject, with names in braces.</param>
/// <param name="Schema">The newest payload shape this program writes and reads.</param>
public sealed record EntryKind(string Name, int Schema, EntryNature Nature, string Subject, string Says)
{
    public static readonly EntryKind BuildOpened = new("build.opened", 1, EntryNature.State, "build", "a vehicle came in: title, sets");
    public static readonly EntryKind SlotDefined = new("slot.defined", 1, EntryNature.State, "slots/{slot}", "an item of the vehicle: parent, title, weight, governs");
    public static readonly EntryKind SlotGraded = new("slot.graded", 1, EntryNature.State, "slots/{slot}/grade", "the grade and findings of the survey");
    public static readonly EntryKind OptionStated = new("option.stated", 1, EntryNature.State, "slots/{slot}/options/{option}", "an option with all it brings, or its new wording");
    public static readonly EntryKind ValueNoted = new("value.noted", 1, EntryNature.State, "slots/{slot}/options/{option}/values/{key}", "a measured or corrected value of the fitted part");
    public static readonly EntryKind ScenarioOpened = new("scenario.opened", 1, EntryNature.State, "scenarios/{scenario}", "a set of choices, its base");
    public static readonly EntryKind ScenarioDropped = new("scenario.dropped", 1, EntryNature.State, "scenarios/{scenario}", "a set of choices is given up");
    public static readonly EntryKind ChoiceMade = new("choice.made", 1, EntryNature.State, "scenarios/{scenario}/choices/{slot}", "an option chosen for an item; null goes back to the base");
    public static readonly EntryKind WhatIfSet = new("what-if.set", 1, EntryNature.State, "scenarios/{scenario}/what-ifs/{key}", "a value tried out; null drops it");
    public static readonly EntryKind ScenarioApproved = new("scenario.approved", 2, EntryNature.State, "approved", "the customer's yes: choices, positions, methods, what was shown");
    public static readonly EntryKind ConditionStated = new("condition.stated", 1, EntryNature.State, "conditions/{condition}", "who and what is on board");
    public static readonly EntryKind DocumentRevised = new("document.revised", 1, EntryNature.State, "documents/{document}", "a harness, structure or plan file by content hash");
    public static readonly EntryKind WorkStopped = new("work.stopped", 1, EntryNature.State, "work", "stop or go on, and why");
    public static readonly EntryKind PhaseEntered = new("phase.entered", 1, EntryNature.State, "phase", "where the vehicle stands on its way through the shop");
    public static readonly EntryKind BuildArchived = new("build.archived", 1, EntryNature.State, "archive", "put away: out of the daily lists, nothing is lost; or taken out again");
    public static readonly EntryKind CustomerRecorded = new("customer.recorded", 1, EntryNature.State, "customer", "whose vehicle it is: the id of a record that can be erased");
    public static readonly EntryKind CustomerErased = new("customer.erased", 1, EntryNature.State, "customer", "the customer's record was erased");
    public static readonly EntryKind WeighingTaken = new("weighing.taken", 1, EntryNature.Log, "weighings/{date}", "scale readings of one day");
    public static readonly EntryKind NoteWritten = new("note.written", 1, EntryNature.Log, "slots/{slot}/notes", "a remark");
    public static readonly EntryKind PhotoTaken = new("photo.taken", 1, EntryNature.Log, "slots/{slot}/photos", "a picture by content hash");
    public static readonly EntryKind HoursLogged = new("hours.logged", 1, EntryNature.Log, "slots/{slot}/hours", "hours of a trade");
    public static readonly EntryKind ReadingTaken = new("reading.taken", 1, EntryNature.Log, "slots/{slot}/readings", "a measurement that feeds a document");
    public static readonly EntryKind ReceiptLogged = new("receipt.logged", 1, EntryNature.Log, "slots/{slot}/receipts", "what arrived, and whether it was right");
    public static readonly EntryKind ShopOpened = new("shop.opened", 1, EntryNature.State, "shop", "the shop's currency");
    public static readonly EntryKind TradeRated = new("trade.rated", 1, EntryNature.State, "trades/{trade}", "a trade and its hourly rate, if it has one");
    public static readonly EntryKind TaxSet = new("tax.set", 1, EntryNature.State, "tax/{category}", "the tax on a category, as a fraction");
    public static readonly EntryKind MilestoneNamed = new("milestone.named", 1, EntryNature.State, "milestones/{milestone}", "a milestone that tasks may name");
    public static readonly EntryKind StockListed = new("stock.listed", 1, EntryNature.State, "stock/{part}", "a part the shop keeps, or a price it was quoted");
    public static readonly EntryKind PersonNamed = new("person.named", 1, EntryNature.State, "people/{person}", "somebody who works here");
    public static readonly EntryKind RoundingSet = new("rounding.set", 1, EntryNature.State, "rounding", "the smallest step of a line on a bill");

    public static IReadOnlyList<EntryKind> All { get; } =
    [
        BuildOpened, SlotDefined, SlotGraded, OptionStated, ValueNoted, ScenarioOpened, ScenarioDropped, ChoiceMade, WhatIfSet, ScenarioApproved,
        ConditionStated, DocumentRevised, WorkStopped, PhaseEntered, BuildArchived, CustomerRecorded, CustomerErased, WeighingTaken, NoteWritten, PhotoTaken, HoursLogged, ReadingTaken, ReceiptLogged,
        ShopOpened, TradeRated, TaxSet, MilestoneNamed, StockListed, PersonNamed, RoundingSet,
    ];

    private static readonly Dictionary<string, EntryKind> s_byName = All.ToDictionary(k => k.Name);

    public static EntryKind? Find(string name) => s_byName.GetValueOrDefault(name);
}
