using System.Collections.Immutable;
using System.Text.Json;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Folding;

/// <summary>Reads the body of an option, from a build file or from an entry: the shape is the same.</summary>
public sealed class OptionReader(ParameterTable table)
{
    private static readonly string[] s_nullable =
        ["title", "class", "like", "governs", "takes", "overrides", "requires", "masses", "massBelow", "loads", "prices", "hours", "lead", "originality", "tasks", "documents", "fits", "stock"];

    public Option Read(ObjectReader r, string id)
    {
        var option = new Option
        {
            Id = id,
            Title = r.OptionalText("title"),
            Class = ClassOf(r),
            Like = r.OptionalText("like"),
            Governs = Stated(r, "governs") is { } g ? GovernsReader.Read(g, r.At("governs"), table, r.Faults) : null,
            Takes = TextsOf(r, "takes"),
            Overrides = TextsOf(r, "overrides"),
            Requires = ListOf(r, "requires", RequirementOf),
            Parameters = ParametersOf(r),
            Masses = ListOf(r, "masses", MassOf),
            MassBelow = Stated(r, "massBelow") is { } m ? NotNegative(m, r.At("massBelow"), r.Faults) : null,
            Loads = ListOf(r, "loads", LoadReader.Read),
            Prices = ListOf(r, "prices", CostReader.Price),
            Hours = ListOf(r, "hours", CostReader.Hours),
            Lead = r.OptionalText("lead"),
            Originality = r.OptionalNumber("originality"),
            Tasks = ListOf(r, "tasks", TaskOf),
            Documents = TextsOf(r, "documents"),
            Fits = TextsOf(r, "fits"),
            Stock = r.OptionalText("stock"),
            Removed = [.. s_nullable.Where(k => r.Element(k) is { ValueKind: JsonValueKind.Null })],
        };
        if (option.Originality is < 0 or > 1) r.Faults.Add(r.At("originality"), $"originality of {option.Originality}", "a number from 0 to 1");
        r.Done();
        return option;
    }

    private static JsonElement? Stated(ObjectReader r, string key) => r.Element(key) is { } e && e.ValueKind != JsonValueKind.Null ? e : null;

    private static ImmutableArray<string>? TextsOf(ObjectReader r, string key) => Stated(r, key) is null ? null : [.. r.Texts(key)];

    private static ImmutableArray<T>? ListOf<T>(ObjectReader r, string key, Func<ObjectReader, T?> read)
        where T : class
    {
        if (Stated(r, key) is null) return null;
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var items = ImmutableArray.CreateBuilder<T>();
        foreach (var (item, pointer) in r.List(key))
        {
            var inner = new ObjectReader(item, pointer, r.Faults);
            if (!inner.IsObject || read(inner) is not { } made) continue;
            inner.Done();
            items.Add(made);
            if (IdOf(made) is { } id && !seen.Add(id)) r.Faults.Add(pointer, $"'{id}' stands twice in this list", "give each its own name");
        }
        return items.ToImmutable();
    }

    private static string? IdOf(object item) => item switch
    {
        MassItem m => m.Id,
        LoadItem l => l.Id,
        PriceLine p => p.Id,
        HoursLine h => h.Trade,
        TaskLine t => t.Id,
        Requirement q => q.Slot,
        _ => null,
    };

    private static OptionClass? ClassOf(ObjectReader r)
    {
        if (r.OptionalText("class") is not { } text) return null;
        if (text.Length > 0 && char.IsAsciiLetterLower(text[0]) && Enum.TryParse<OptionClass>(text, true, out var c)) return c;
        r.Faults.Add(r.At("class"), $"'{text}' is no class", "keep, refurbish, replace, upgrade, make or none");
        return null;
    }

    private ImmutableArray<KeyValuePair<string, Stated>> ParametersOf(ObjectReader r)
    {
        var list = ImmutableArray.CreateBuilder<KeyValuePair<string, Stated>>();
        foreach (var (key, value, pointer) in r.Map("parameters"))
        {
            if (KeyChecks.Known(key, pointer, table, r.Faults) is not { } pattern) continue;
            if (ValueReader.Stated(value, pointer, pattern, r.Faults) is { } stated) list.Add(new(key, stated));
        }
        KeyChecks.NoTies([.. list.Select(p => p.Key)], r.At("parameters"), r.Faults);
        return list.ToImmutable();
    }

    private static Requirement RequirementOf(ObjectReader r)
    {
        var drop = r.OptionalFlag("drop") == true;
        var options = r.Texts("options");
        if (!drop && options.Count == 0) r.Missing("options");
        return new(r.Text("slot"), [.. options], drop);
    }

    internal static MassItem MassOf(ObjectReader r)
    {
        var id = r.Text("id");
        if (r.OptionalFlag("drop") == true) return new(id, null, null, Basis.Assumed, true);
        double? kg = null;
        if (r.Element("mass") is { } m) kg = NotNegative(m, r.At("mass"), r.Faults);
        else r.Missing("mass");
        return new(id, kg, PlaceOf(r), ValueReader.BasisOf(r));
    }

    private static Place? PlaceOf(ObjectReader r)
    {
        if (r.Element("at") is not { } at || at.ValueKind == JsonValueKind.Null) return null;
        if (at.ValueKind != JsonValueKind.Array || at.GetArrayLength() != 3)
        {
            r.Faults.Add(r.At("at"), "a place has three lengths", "[x to the rear, y to the right, z up] from the front axle on the frame datum plane");
            return null;
        }
        var c = new double?[3];
        for (var i = 0; i < 3; i++) c[i] = ValueReader.Quantity(at[i], $"{r.At("at")}/{i}", Dimension.Length, r.Faults);
        return c is [{ } x, { } y, { } z] ? new(x, y, z) : null;
    }

    internal static double? NotNegative(JsonElement e, string pointer, Faults faults)
    {
        if (ValueReader.Quantity(e, pointer, Dimension.Mass, faults) is not { } kg) return null;
        if (kg >= 0) return kg;
        faults.Add(pointer, $"a mass of {e.GetString()}", "zero or more");
        return null;
    }

    private static TaskLine TaskOf(ObjectReader r)
    {
        var id = r.Text("id");
        return r.OptionalFlag("drop") == true ? new(id, null, "", true) : TaskReader.Read(r, id);
    }
}
