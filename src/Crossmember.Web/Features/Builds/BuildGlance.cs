using Crossmember.Builds.Slots;
using Crossmember.Builds.Workshop;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Reading;

namespace Crossmember.Web.Features.Builds;

/// <summary>A vehicle at a glance: is it in trouble, why, and what is next. Everything the lists of the shop show of it, so that nothing else need be opened.</summary>
/// <param name="Scenario">The what-if people work in, in which everything here is counted.</param>
/// <param name="Worst">The finding that weighs most; null where nothing is checked.</param>
/// <param name="Next">What to do next, in one sentence.</param>
/// <param name="Item">The item where that can be done; null: anywhere.</param>
/// <param name="Trouble">Checks that say no, each kind once, worst first.</param>
/// <param name="FindOut">What most checks wait for.</param>
/// <param name="Undecided">Items for which something is on offer and nothing is chosen, the most pressing first.</param>
/// <param name="Prices">Last days of prices that the what-if counts on.</param>
public sealed record BuildGlance(
    string Id, string Title, string? Phase, string? Archived, string? Stopped, string Scenario, string ScenarioTitle, GlanceFinding? Worst, int Fails, int Unknowns, int Cautions, int Checks,
    string Next, string? Item, IReadOnlyList<GlanceFinding> Trouble, IReadOnlyList<GlanceMeasurement> FindOut, IReadOnlyList<GlanceItem> Undecided, Consent Consent, IReadOnlyList<GlancePrice> Prices)
{
    public Verdict State => Worst?.Verdict ?? Verdict.Unknown;

    /// <summary>What was read of it cannot be trusted to be all there is: a later program wrote the rest.</summary>
    public bool IsReadOnly { get; init; }

    public static BuildGlance Of(OpenBuild open, ShopFacts shop)
    {
        var build = open.Build;
        var scenario = Usual(open, shop);
        var sheet = open.Sheet(scenario, shop)!;
        var findings = sheet.Findings().ToList();
        int Count(Verdict v) => findings.Count(f => f.Finding.Verdict == v);
        var marks = ItemMarks.Of(sheet, build.Scenarios.GetValueOrDefault(scenario));
        var worst = findings.Count > 0 ? findings[0] : null;
        var parts = new GlanceParts(open, sheet, marks);
        var step = NextStep.Of(open, worst, marks, Count(Verdict.Fail), sheet);
        return new(build.Id, build.Title.Length > 0 ? build.Title : build.Id, build.Phase, build.Archived, build.Stopped, scenario, Words.Scenario(scenario, build),
            worst is null ? null : parts.Told(worst), Count(Verdict.Fail), Count(Verdict.Unknown), Count(Verdict.Caution), findings.Count, step.Says, step.Item,
            parts.Trouble(findings), parts.FindOut(), parts.Undecided(), parts.Consent(), parts.Prices())
        { IsReadOnly = open.IsReadOnly };
    }

    /// <summary>A vehicle that has not been looked at yet.</summary>
    public static BuildGlance NotYet(string id, string title) =>
        new(id, title, null, null, null, Option.AsFound, Words.AsFound, null, 0, 0, 0, 0, "Being worked out …", null, [], [], [], new(null, 0), []);

    /// <summary>A vehicle that cannot be worked out: that itself is in trouble.</summary>
    public static BuildGlance Broken(string id, string title, string why) => NotYet(id, title) with
    {
        Worst = new("board/broken", Verdict.Fail, $"This vehicle cannot be worked out: {why}.", "Can it be worked out?", "", null, 0),
        Fails = 1,
        Next = "Verify the records, and bring the program up to date.",
        Trouble = [new("board/broken", Verdict.Fail, $"This vehicle cannot be worked out: {why}.", "Can it be worked out?", "", null, 0)],
    };

    /// <summary>The scenario people work in: the one a check would take, else the first.</summary>
    public static string Usual(OpenBuild open, ShopFacts shop) => open.Build.Scenarios.IsEmpty ? Option.AsFound
        : new Comparing(open, shop, _ => throw new InvalidOperationException("nothing is compared here")).Default(new Faults()) ?? open.Build.Scenarios.Keys.First();
}

/// <summary>A check as a list shows it.</summary>
/// <param name="Title">What is asked.</param>
/// <param name="Where">Which of several: gear, axle, load.</param>
/// <param name="Item">Where it can be settled; null where no item stands behind it.</param>
/// <param name="Alike">How many more checks of its kind say the same.</param>
public sealed record GlanceFinding(string Id, Verdict Verdict, string Text, string Title, string Where, string? Item, int Alike)
{
    public double? Value { get; init; }

    public double? Limit { get; init; }

    public string? Unit { get; init; }

    public string In(Engineering.Quantities.MeasureSystem measure) => Engineering.Quantities.Sentences.InMeasures(Words.Brief(Text), measure, [(Value, Unit), (Limit, Unit)]);
}

/// <summary>One thing to measure or to ask for, and how many checks wait for it.</summary>
public sealed record GlanceMeasurement(string What, string Meaning, string Measure, int Checks);

/// <summary>Something to decide, and why it matters now.</summary>
public sealed record GlanceItem(string Id, string Title, string Why);

/// <summary>A price that holds until a day, as it was written.</summary>
public sealed record GlancePrice(string Item, string Title, string What, string Until);

/// <summary>Whether the customer has said yes to what is planned.</summary>
/// <param name="By">Who said it; null where nobody has.</param>
/// <param name="Differing">Items that are chosen otherwise now.</param>
public sealed record Consent(string? By, int Differing);
