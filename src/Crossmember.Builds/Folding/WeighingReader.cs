using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Folding;

/// <summary>Reads a weighing: <c>"axles": {"front": ..., "rear": ...}</c>, or <c>"wheels": {"front": {"left": ..., "right": ...}, ...}</c> (also flat, <c>"front.left"</c>).</summary>
public static class WeighingReader
{
    public static Weighing? Read(ObjectReader r)
    {
        var date = r.Text("date");
        if (date.Length > 0 && !DateOnly.TryParseExact(date, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _))
            r.Faults.Add(r.At("date"), $"'{date}' is no day", "a day such as 2026-03-02");
        var byWheel = r.Has("wheels");
        if (byWheel == r.Has("axles"))
            r.Faults.Add(r.Pointer, byWheel ? "both axle and wheel readings" : "neither axle nor wheel readings", "give either axles or wheels");
        var readings = ImmutableSortedDictionary.CreateBuilder<string, double>(StringComparer.Ordinal);
        foreach (var (name, value, pointer) in r.Map(byWheel ? "wheels" : "axles")) Reading(name, value, pointer, byWheel, readings, r.Faults);
        var wheelbase = Length(r, "wheelbase");
        if (!r.Has("wheelbase")) r.Missing("wheelbase");
        if (wheelbase is <= 0) r.Faults.Add(r.At("wheelbase"), "a wheelbase of zero or less", "more than 0");
        var made = new Weighing(date, readings.ToImmutable(), byWheel, wheelbase ?? 0, Length(r, "height"), Length(r, "datumHeight"),
            r.OptionalText("condition"), r.Map("fitted").Select(f => KeyValuePair.Create(f.Name, r.TextOf(f.Value, f.Pointer) ?? "")).ToImmutableSortedDictionary(StringComparer.Ordinal));
        made = made with
        {
            OnBoard = r.Has("onBoard") ? ConditionReader.Items(r, "onBoard") : [],
            ReadingError = r.Element("readingError") is { } error ? OptionReader.NotNegative(error, r.At("readingError"), r.Faults) : null,
            Raised = r.Element("raised") is { } raised ? Lift(raised, r.At("raised"), r.Faults) : null,
        };
        if (made is { Raised: not null, Height: not null })
            r.Faults.Add(r.At("height"), "both a height and a reading with an axle raised", "give one: the height follows from the raised reading");
        r.Done();
        return made;
    }

    private static RaisedReading? Lift(JsonElement raised, string pointer, Faults faults)
    {
        var r = new ObjectReader(raised, pointer, faults);
        if (!r.IsObject) return null;
        var lifted = r.Text("lifted");
        if (lifted.Length > 0 && lifted is not ("front" or "rear")) faults.Add(r.At("lifted"), $"'{lifted}' is no axle to lift", "front or rear");
        var radii = r.Map("wheelRadius").ToDictionary(m => m.Name, m => ValueReader.Quantity(m.Value, m.Pointer, Dimension.Length, faults), StringComparer.Ordinal);
        if (radii.GetValueOrDefault("front") is not > 0 || radii.GetValueOrDefault("rear") is not > 0 || radii.Count != 2)
            faults.Add(r.At("wheelRadius"), "the heights of the wheel centers are missing", "front and rear, each more than 0");
        if (!r.Has("by")) r.Missing("by");
        var by = Length(r, "by");
        if (by is <= 0) faults.Add(r.At("by"), "a lift of zero or less", "more than 0");
        if (!r.Has("reading")) r.Missing("reading");
        var reading = r.Element("reading") is { } e ? OptionReader.NotNegative(e, r.At("reading"), faults) : null;
        r.Done();
        return new(lifted, by ?? 0, reading ?? 0, radii.GetValueOrDefault("front") ?? 0, radii.GetValueOrDefault("rear") ?? 0);
    }

    private static double? Length(ObjectReader r, string key) =>
        r.Element(key) is { ValueKind: not JsonValueKind.Null } e ? ValueReader.Quantity(e, r.At(key), Dimension.Length, r.Faults) : null;

    private static void Reading(string name, JsonElement value, string pointer, bool byWheel, ImmutableSortedDictionary<string, double>.Builder readings, Faults faults)
    {
        if (byWheel && value.ValueKind == JsonValueKind.Object)
            foreach (var (side, reading, at) in new ObjectReader(value, pointer, faults).Pairs())
                Reading($"{name}.{side}", reading, at, false, readings, faults);
        else if (OptionReader.NotNegative(value, pointer, faults) is { } kg) readings[name] = kg;
    }
}
