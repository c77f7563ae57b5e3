using System.Collections.Immutable;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Places;
using Crossmember.Builds.Slots;
using Crossmember.Builds.Tests.Evaluation;
using CsCheck;

namespace Crossmember.Builds.Tests.Places;

/// <summary>The lines that make up a mass add up to what the sheet says, whatever came off, went on or was aboard.</summary>
public sealed class LedgerLinesTests
{
    private const string Weighed = """
        "conditions":{"loaded":[{"id":"crew","mass":"150 kg","at":["1.2 m","0 m","0.5 m"]}]},
        "weighings":[{"date":"2026-01-10","axles":{"front":"1065.0117 kg","rear":"1084.9883 kg"},"wheelbase":"2560 mm","height":"0.72 m","datumHeight":"0 m","condition":"empty","fitted":{}}],
        """;

    private const string Extras = """
        ,{"id":"bumper","parent":"vehicle","title":"Bumper","options":[{"id":"as-found","masses":[{"id":"old","mass":"12 kg","at":["-0.6 m","0 m","0.4 m"],"basis":"measured"}]},{"id":"winch","class":"upgrade","originality":0,"masses":[{"id":"it","mass":"68 kg","at":["-0.62 m","0 m","0.62 m"],"basis":"vendor"}]}]}
        ,{"id":"carrier","parent":"vehicle","title":"Spare carrier","options":[{"id":"as-found","class":"none"},{"id":"rear","class":"upgrade","originality":0,"masses":[{"id":"it","mass":"74 kg","at":["3.30 m","0 m","1 m"]}]}]}
        ,{"id":"seat","parent":"vehicle","title":"Seat","options":[{"id":"light","class":"replace","originality":0,"massBelow":"6 kg"},{"id":"unknown","class":"replace","originality":0}]}
        """;

    private static Sheet With(string choices, string top = Weighed) => Opened.Vehicle(Extras, $$"""{"id":"working","base":null,"choices":{{choices}} }""", top).Sheet();

    private static void Agrees(Sheet sheet, string condition)
    {
        var ledger = LedgerLines.Of(sheet, condition);
        foreach (var (what, sum) in new[] { ("total", ledger.Kilograms), ("moment-x", ledger.MomentX), ("moment-y", ledger.MomentY), ("moment-z", ledger.MomentZ) })
        {
            var told = sheet.Key($"mass.{condition}.{what}")!.Value.Value;
            Assert.Equal(told.IsAbsent, double.IsNaN(sum));
            if (!told.IsAbsent) Assert.True(Math.Abs(told.Number - sum) <= 1e-9 * Math.Max(1, Math.Abs(told.Number)), $"{what}: the sheet says {told.Number}, the lines add up to {sum}");
        }
    }

    /// <summary>2150 - 12 + 68 + 74 + 3 + 150 = 2433 kg; the winch moves (0.62 + 2.56)/2.56 of 68 kg onto the front axle: 84.47 kg. By hand.</summary>
    [Fact]
    public void Each_line_says_what_it_is_and_what_it_puts_on_either_axle()
    {
        var sheet = With("""{"bumper":"winch","carrier":"rear","seat":"light"}""");
        var ledger = LedgerLines.Of(sheet, "loaded");
        Assert.Equal(2433, ledger.Kilograms, 9);
        Assert.Equal([LedgerPart.Weighed, LedgerPart.CameOff, LedgerPart.PutOn, LedgerPart.PutOn, LedgerPart.PutOn, LedgerPart.Aboard], ledger.All.Select(e => e.Part));
        var winch = ledger.All[2];
        Assert.Equal((MassRef.Of("bumper", "winch", "it"), "it", Basis.Vendor), (winch.Item, winch.Name, winch.Basis));
        Assert.Equal(84.47, winch.Front(2.56), 0.005);
        Assert.Equal(-16.47, winch.Rear(2.56), 0.005);
        Assert.Equal(84.47, winch.Moves(2.56), 0.005);
        Assert.True(ledger.All[4] is { IsBelow: true, Item: null, Kilograms: 3 });
        Assert.Equal(MassRef.Aboard("loaded", "crew"), ledger.All[5].Item);
        Agrees(sheet, "loaded");
        Agrees(sheet, "empty");
    }

    [Fact]
    public void What_did_not_change_since_the_weighing_is_no_line() => Assert.Single(LedgerLines.Of(With("{}"), "empty").All);

    [Fact]
    public void A_change_that_nobody_weighed_is_named_and_the_whole_is_unknown()
    {
        var sheet = With("""{"seat":"unknown","bumper":"winch"}""");
        var ledger = LedgerLines.Of(sheet, "empty");
        Assert.Equal(["seat"], ledger.Missing.Select(s => s.Id));
        Assert.Contains(ledger.All, e => e is { IsKnown: false, Slot.Id: "seat" });
        Assert.True(double.IsNaN(ledger.Kilograms));
        Agrees(sheet, "empty");
    }

    [Fact]
    public void Without_a_weighing_only_what_is_aboard_is_listed_and_the_whole_is_unknown()
    {
        var sheet = With("{}", """ "conditions":{"loaded":[{"id":"crew","mass":"150 kg"}]}, """);
        var ledger = LedgerLines.Of(sheet, "loaded");
        Assert.Null(ledger.Weighing);
        Assert.Equal(LedgerPart.Aboard, Assert.Single(ledger.All).Part);
        Agrees(sheet, "loaded");
    }

    private static readonly Gen<MassItem> s_mass = Gen.Select(Gen.Int[1, 3], Gen.Double[0, 500], Gen.Bool, Gen.Double[-2, 6], Gen.Double[-1, 1], Gen.Double[-1, 2], Gen.Enum<Basis>())
        .Select((id, kg, placed, x, y, z, basis) => new MassItem($"m{id}", kg, placed || id > 1 ? new Place(x, y, z) : null, basis));

    private static readonly Gen<ImmutableArray<MassItem>?> s_masses = Gen.Select(Gen.Int[0, 8], s_mass.Array[0, 3])
        .Select((kind, items) => kind == 0 ? (ImmutableArray<MassItem>?)null : [.. items.DistinctBy(i => i.Id)]);

    private static readonly Gen<(Option Found, Option New, bool Fitted, bool Chosen)> s_slot = Gen.Select(s_masses, s_masses, Gen.Int[0, 5], Gen.Int[0, 3], Gen.Bool, Gen.Bool)
        .Select((found, now, below, like, fitted, chosen) => (new Option { Id = Option.AsFound, Masses = found },
            new Option { Id = "new", Class = OptionClass.Replace, Masses = now, MassBelow = below == 0 ? 8 : null, Like = like == 0 ? Option.AsFound : null }, fitted, chosen));

    /// <summary>Whatever is fitted then and now, whoever was aboard then and is now, known or not.</summary>
    [Fact]
    public void The_lines_add_up_to_the_sheet() => Gen.Select(s_slot.Array[0, 6], s_masses, s_masses, Gen.Bool, Gen.Bool).Sample((slots, then, now, wasLoaded, byWheel) =>
    {
        var readings = (byWheel ? [("front.left", 410.0), ("front.right", 395.0), ("rear.left", 520.0), ("rear.right", 533.0)] : new[] { ("front", 805.0), ("rear", 1053.0) }).ToImmutableSortedDictionary(r => r.Item1, r => r.Item2);
        var build = new Build
        {
            Id = "b", Sets = new(Sets.Usual.Ordered.SetItem("condition", ["loaded", "towing"])),
            Slots = [new() { Id = Slot.Root, Title = "Vehicle" }, .. slots.Select((s, i) => new Slot { Id = $"s{i}", Parent = Slot.Root, Title = $"S{i}", Options = [s.Found, s.New] })],
            Conditions = ImmutableSortedDictionary.CreateRange([KeyValuePair.Create("loaded", new Condition("loaded", then ?? [])), KeyValuePair.Create("towing", new Condition("towing", now ?? []))]),
            Weighings = [new("2026-01-01", readings, byWheel, 2.8, 0.7, 0.5, wasLoaded ? "loaded" : null, slots.Select((s, i) => (s, i)).Where(s => s.s.Fitted).ToImmutableSortedDictionary(s => $"s{s.i}", _ => "new"))],
        };
        var chosen = slots.Select((s, i) => (s, i)).Where(s => s.s.Chosen).ToDictionary(s => $"s{s.i}", _ => "new");
        var sheet = new EvaluationPlan(Catalogue.Shipped, build).Evaluate(build, new(), "tried", chosen);
        Agrees(sheet, "loaded");
        Agrees(sheet, "towing");
    }, iter: 400);
}
