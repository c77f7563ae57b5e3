using System.Collections.Immutable;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Files;
using Crossmember.Builds.Ripples;
using Crossmember.Builds.Slots;
using Crossmember.Builds.Tests.Proof;
using Crossmember.Engineering.Reading;
using CsCheck;

namespace Crossmember.Builds.Tests.Ripples;

/// <summary>What must hold of every ripple, on random choices of the hand-worked vehicle.</summary>
public sealed class RippleProperties
{
    private static readonly Build s_build = Open();
    private static readonly EvaluationPlan s_plan = new(ProofCatalogue.Made, s_build);
    private static readonly ShopFacts s_shop = new() { Currency = "USD" };

    private static readonly (string Slot, string[] Options)[] s_open =
        [.. s_build.Slots.Where(s => s.Id != Slot.Root).Select(s => (s.Id, (string[])[.. s.Options.Select(o => o.Id), Option.None]))];

    private static readonly Gen<IReadOnlyDictionary<string, string>> s_choices = Gen.Int[0, 1000].Array[s_open.Length]
        .Select(picks => (IReadOnlyDictionary<string, string>)s_open.Zip(picks).ToDictionary(p => p.First.Slot, p => p.First.Options[p.Second % p.First.Options.Length]));

    [Fact]
    public void Nothing_changes_between_a_sheet_and_itself() =>
        s_choices.Sample(c => Assert.Empty(Ripple.Between(Sheet(c), Sheet(c)).Rows), iter: 200);

    [Fact]
    public void The_way_back_is_the_mirror_of_the_way_there() =>
        Gen.Select(s_choices, s_choices).Sample(
            (a, b) =>
            {
                var there = Ripple.Between(Sheet(a), Sheet(b)).Rows.ToDictionary(r => (r.Kind, r.Id));
                var back = Ripple.Between(Sheet(b), Sheet(a)).Rows;
                Assert.Equal(there.Count, back.Count);
                foreach (var r in back)
                {
                    var t = there[(r.Kind, r.Id)];
                    Assert.Equal((t.To, t.From), (r.From, r.To));
                    Assert.Equal(t.Because, r.Because);
                    Assert.Equal(t.State switch { RowState.Appeared => RowState.Gone, RowState.Gone => RowState.Appeared, var s => s }, r.State);
                }
            }, iter: 200);

    [Fact]
    public void A_sheet_worked_from_another_is_the_sheet_worked_alone() =>
        Gen.Select(s_choices, s_choices).Sample(
            (a, b) => Assert.Equal(Text(Sheet(b)), Text(s_plan.Evaluate(s_build, s_shop, "x", b, Sheet(a)))), iter: 200);

    /// <summary>The causes named are enough: put the old values of these keys back, and the result is the old one.</summary>
    [Fact]
    public void Putting_the_causes_back_undoes_the_change() =>
        Gen.Select(s_choices, s_choices).Sample(
            (a, b) =>
            {
                Sheet from = Sheet(a), to = Sheet(b);
                foreach (var row in Ripple.Between(from, to).Rows.Where(r => r is { Kind: RowKind.Result, State: RowState.Changed } && r.Because.All(k => !k.StartsWith("slot:", StringComparison.Ordinal))))
                {
                    Assert.NotEmpty(row.Because);
                    var old = row.Because.Select(k => KeyValuePair.Create(k, from.Keys[s_plan.Space.KeyId(k)])).ToList();
                    // A member that no longer exists cannot be tried out again, nor a value that was never there.
                    if (old.Exists(k => !k.Value.Value.IsNumber || to.Key(k.Key) is null)) continue;
                    var back = Tried(b, old.Select(k => KeyValuePair.Create<string, Stated?>(k.Key, new(k.Value.Value, "", Basis.Assumed, null))));
                    var (instance, output) = Split(row.Id);
                    var want = from.Instance(instance)!.Outcome.Outputs[output(from.Instance(instance)!)];
                    var got = back.Instance(instance)!.Outcome.Outputs[output(back.Instance(instance)!)];
                    Assert.True(want == got || (want.IsNumber && got.IsNumber && Math.Abs(want.Number - got.Number) <= 1e-9 * Math.Abs(want.Number)), $"{row.Id}: {want} against {got}");
                }
            }, iter: 300);

    private static (string Instance, Func<InstanceState, int> Output) Split(string id)
    {
        var cut = id.LastIndexOf('.');
        return (id[..cut], i => i.Instance.Calculation.OutputIndex(id[(cut + 1)..]));
    }

    private static Sheet Sheet(IReadOnlyDictionary<string, string> choices) => s_plan.Evaluate(s_build, s_shop, "x", choices);

    private static Sheet Tried(IReadOnlyDictionary<string, string> choices, IEnumerable<KeyValuePair<string, Stated?>> tried) =>
        s_plan.Evaluate(s_build, s_shop, new Scenario("x", null, null, choices.ToImmutableSortedDictionary(StringComparer.Ordinal), [.. tried]));

    private static string Text(Sheet sheet) => SheetJson.Of(sheet, (0, 0)).ToJsonString();

    private static Build Open()
    {
        var faults = new Faults();
        return BuildFile.Read(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "Proof", "build.json")), ProofCatalogue.Made, faults)!.Build;
    }
}
