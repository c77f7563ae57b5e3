using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Web.Features.Bench;

/// <summary>What a value in a sheet is from, in words, and where that is found.</summary>
/// <param name="Href">Null where there is no page for it.</param>
public sealed record Origin(string Text, string? Href);

/// <summary>One value that an input of an instance reads.</summary>
/// <param name="Member">Its name in a map; empty for a single value.</param>
/// <param name="Key">The key of the sheet; null where it has none.</param>
/// <param name="Meaning">The key in words.</param>
/// <param name="Refusal">Why it cannot be tried as a what-if of the build; null where it can.</param>
public sealed record SheetReading(string Member, string? Key, string Meaning, Value Value, string Shown, Basis? Basis, IReadOnlyList<Origin> From, string? Refusal);

/// <summary>One input of an instance with what the sheet gives it.</summary>
/// <param name="IsPlace">Whether it names what the instance is for: that is chosen, not tried.</param>
public sealed record SheetInput(InputSpec Spec, IReadOnlyList<SheetReading> Readings, bool IsPlace)
{
    /// <summary>Whether it is a map of which each member is a value of the sheet.</summary>
    public bool IsMap => Readings.Any(r => r.Member.Length > 0);

    public static IReadOnlyList<SheetInput> Of(Sheet sheet, InstanceState state, MeasureSystem measure)
    {
        var reader = new InputReader(sheet, measure);
        return [.. state.Instance.Inputs.Select((source, i) => new SheetInput(source.Spec, reader.Read(source, state.Inputs[i]), !source.Constant.IsAbsent))];
    }

    private sealed class InputReader(Sheet sheet, MeasureSystem measure)
    {
        private readonly RowNames _names = new(sheet.Plan, sheet.Build);

        public IReadOnlyList<SheetReading> Read(InputSource source, Value value)
        {
            if (!source.Constant.IsAbsent) return [new("", null, "", value, value.Text!, null, [new("what this card is for: choose another above", null)], null)];
            if (source.Map is { } map) return [.. map.Where(m => Lives(m.Key)).Select(m => OfKey(m.Key, m.Name, sheet.Keys[m.Key].Value, source.Spec))];
            if (source.Key >= 0) return [OfKey(source.Key, "", value, source.Spec)];
            return [new("", null, "", value, value.IsAbsent ? Words.DontKnow : Told(value, source.Spec), value.IsAbsent ? null : Basis.Assumed,
                [new(value.IsAbsent ? "the build keeps no such value" : Origins.OfCalculation, null)], "the build keeps no such value: it can be tried here, and not kept")];
        }

        private SheetReading OfKey(int key, string member, Value value, InputSpec spec)
        {
            var (state, pattern, name) = (sheet.Keys[key], sheet.Plan.Space.PatternOf(key), sheet.Plan.Space.KeyName(key));
            var words = _names.Key(name);
            var shown = state.Source == Source.None && !value.IsAbsent ? Told(value, spec) : Shown.Value(value, pattern, state.Source is Source.Option or Source.WhatIf ? state.Typed : null, measure);
            return new(member, name, words.Where.Length > 0 ? $"{words.Title}, {words.Where}" : words.Title, value, shown, value.IsAbsent ? null : state.Basis, [.. From(key, state)], Refusal(key));
        }

        private IEnumerable<Origin> From(int key, KeyState state) => state.Source switch
        {
            Source.Option => Stating(key),
            Source.Conflict => [new(Origins.TwoItems + ":", null), .. Stating(key)],
            Source.WhatIf => [new(Origins.Tried, $"builds/{Uri.EscapeDataString(sheet.Build.Id)}/decisions?in={Uri.EscapeDataString(sheet.Scenario)}#try-title")],
            Source.Calculated => [Calculated(key)],
            Source.Default => [new(Origins.Usual, null)],
            _ when sheet.Plan.Space.PatternOf(key).IsLedger => [Ledger],
            _ when Publisher(key) is { } publisher => [new("cannot be worked out yet:", null), Card(publisher)],
            _ => [new(sheet.Plan.Space.PatternOf(key).Measure, null)],
        };

        private IEnumerable<Origin> Stating(int key) => Origins.Stating(sheet, key)
            .Select(o => new Origin(Origins.Of(o), BenchAddress.Item(sheet.Build.Id, sheet.Scenario, o.Slot.Id)));

        private Origin Calculated(int key) => Publisher(key) is { } publisher ? Card(publisher) : Ledger;

        private static Origin Ledger => new(Origins.Ledger, null);

        private Origin Card(InstanceState publisher) =>
            new(Origins.Of(publisher), BenchAddress.Of(sheet.Build.Id, sheet.Scenario, publisher.Instance.Id));

        private InstanceState? Publisher(int key) => sheet.Instances.FirstOrDefault(i => i is not null && i.Instance.Publishes.Contains(key));

        private string? Refusal(int key) =>
            sheet.Plan.Space.PatternOf(key).IsLedger ? "it is made of the weighing and the masses of the items: weigh again, or change an item's mass"
            : sheet.Plan.Space.PatternOf(key).Form == Form.Curve ? "a curve is a statement of an item's option: note it there" : null;

        private bool Lives(int key) => Array.TrueForAll(sheet.Plan.Space.MembersOf(key), m => sheet.Alive[m]);

        private string Told(Value value, InputSpec spec) =>
            value.IsNumber ? Shown.Number(spec.Unit!.FromSi(value.Number), spec.Unit.Code, measure) : value.Text ?? $"curve of {value.Curve!.Points.Count} points";
    }
}
