using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Ripples;
using Crossmember.Builds.Slots;
using Crossmember.Builds.Workshop;
using Crossmember.Engineering.Reading;
using Crossmember.Web.Features.Decisions;
using Crossmember.Web.Features.Writing;

namespace Crossmember.Web.Features;

/// <summary>A build as one person sees it at one position: what was seen decides whether what they say next is late.</summary>
public sealed class BuildView : StreamView
{
    /// <summary>A plan remembers the options of every build that it was asked about: after so many looks a new one takes its place.</summary>
    private const int MostLooks = 40;

    private readonly Dictionary<(string Scenario, string Slot, string Option), Sheet> _previews = [];
    private readonly Comparing _comparing;
    private readonly ShopFacts _shop;
    private (EvaluationPlan Plan, Sheet? Last, int Looks)? _looking;

    private BuildView(OpenBuild open, ShopFacts shop, Comparing comparing, IReadOnlyList<Entry> entries)
        : base(entries) => (Open, _shop, _comparing) = (open, shop, comparing);

    public OpenBuild Open { get; }

    public Build Build => Open.Build;

    /// <summary>Where the shop's stream stood that the totals rest on.</summary>
    public long ShopPosition => _shop.Position;

    public override long Position => Build.Position;

    public override bool IsReadOnly => Open.IsReadOnly;

    /// <summary>The build as it stands now, or null where there is none of this id.</summary>
    public static BuildView? Of(ShopDesk desk, string build)
    {
        if (desk.Open(build) is not { } open) return null;
        var entries = desk.Shop.Store.Journal.Store.Read(build, 0, open.Build.Position);
        return new(open, desk.Shop.Shelf.Shop(), desk.Shop.Comparing(open), entries);
    }

    public Sheet Sheet(string scenario) => Open.Sheet(scenario, _shop) ?? throw new ArgumentException($"there is no scenario '{scenario}'", nameof(scenario));

    public bool Has(string scenario) => scenario is Option.AsFound || (scenario is Option.Approved && Open.Approval is not null) || Build.Scenarios.ContainsKey(scenario);

    public string Usual => Builds.BuildGlance.Usual(Open, _shop);

    /// <summary>The sides that can be worked out today.</summary>
    public IEnumerable<string> SidesNow => Sides.Where(Has);

    /// <summary>Everything that two sides can be compared between, in the order people think of them.</summary>
    public IEnumerable<string> Sides =>
        [Option.AsFound, .. Build.Scenarios.Keys, .. Open.Approval is null ? (string[])[] : [Option.Approved, "approved@"]];

    /// <summary>The sheet as it would be with another option chosen; nothing is written.</summary>
    public Sheet Preview(string scenario, string slot, string option)
    {
        if (_previews.TryGetValue((scenario, slot, option), out var known)) return known;
        var now = Build.Scenarios[scenario];
        var tried = now with { Choices = now.Choices.SetItem(slot, option) };
        return _previews[(scenario, slot, option)] = Open.Plan.Evaluate(Build, _shop, tried, Sheet(scenario));
    }

    /// <summary>The sheet of a scenario as it would be if the build differed in what parts weigh or where they sit; nothing is written.</summary>
    public Sheet Look(string scenario, Build otherwise)
    {
        var (plan, last, looks) = _looking is { Looks: < MostLooks } known ? known : (new EvaluationPlan(Open.Plan.Catalogue, otherwise), null, 0);
        var sheet = scenario == Option.Approved && Open.Approval is { } approval
            ? plan.Evaluate(otherwise, _shop, Option.Approved, approval.Choices, last) : plan.Evaluate(otherwise, _shop, Build.Scenarios.GetValueOrDefault(scenario), last);
        _looking = (plan, sheet, looks + 1);
        return sheet;
    }

    /// <summary>What choosing an option would change everywhere.</summary>
    public Ripple KnockOn(string scenario, string slot, string option) => KnockOn(scenario, slot, option, scenario);

    /// <summary>The same against another side than the scenario it would be chosen in.</summary>
    public Ripple KnockOn(string scenario, string slot, string option, string against) => Ripple.Between(Sheet(against), Preview(scenario, slot, option));

    /// <summary>Options that would settle findings of a scenario, by finding id.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<Remedy>> Remedies(string scenario, IReadOnlyCollection<SheetFinding> findings) =>
        Remedy.For(Sheet(scenario), Build.Scenarios.GetValueOrDefault(scenario), findings);

    /// <summary>What the option in effect does to the vehicle: against the same build with the item as it was found.</summary>
    public Ripple Since(string scenario, string slot) => Ripple.Between(Preview(scenario, slot, Option.AsFound), Sheet(scenario));

    /// <summary>Other items' options that would restore what an option spoils, by finding id.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<Remedy>> Restoring(string scenario, string slot, string option)
    {
        var chosen = Sheet(scenario).Choices[slot].Id == option;
        var tried = chosen ? Sheet(scenario) : Preview(scenario, slot, option);
        var now = Build.Scenarios[scenario];
        var spoilt = (chosen ? Since(scenario, slot) : KnockOn(scenario, slot, option)).Rows.Where(RippleGroups.IsWorse).Select(r => r.Id).ToHashSet(StringComparer.Ordinal);
        return Remedy.For(tried, now with { Choices = now.Choices.SetItem(slot, option) }, [.. tried.Findings().Where(f => spoilt.Contains(f.Id))], slot);
    }

    public Ripple? KnockOn(string from, string to) => _comparing.Ripple(from, to, new Faults());

    protected override string Plain(Fact fact) => EntryWords.Plain(fact, Build);
}
