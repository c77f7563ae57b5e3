using System.Text.Json;

namespace Crossmember.Engineering.Reading;

/// <summary>Reads one JSON object key by key and collects located faults: every reader of a firm format is written with this.</summary>
/// <remarks>
/// Ask for each key once, then call <see cref="Done"/>: keys nobody asked for are faults that name the nearest known one.
/// A reader never throws on content; after a fault it answers a neutral value and goes on, so one pass finds every fault.
/// </remarks>
public sealed class ObjectReader
{
    private readonly Dictionary<string, JsonElement> _members = new(StringComparer.Ordinal);
    private readonly List<string> _asked = ["note"];

    public ObjectReader(JsonElement element, string pointer, Faults faults)
    {
        (Self, Pointer, Faults) = (element, pointer, faults);
        if (element.ValueKind != JsonValueKind.Object)
        {
            faults.Add(pointer, $"{Named(element)} where an object is needed", "write { ... }");
            return;
        }
        IsObject = true;
        foreach (var member in element.EnumerateObject())
            if (NameOf(member) is { } name && !_members.TryAdd(name, member.Value))
                faults.Add(At(name), "this key stands twice", "keep one of the two");
        if (_members.TryGetValue("note", out var note) && note.ValueKind != JsonValueKind.String)
            faults.Add(At("note"), "a note is text", "put it in quotes");
    }

    /// <summary>The object itself.</summary>
    public JsonElement Self { get; }

    public string Pointer { get; }

    public Faults Faults { get; }

    public bool IsObject { get; }

    public IEnumerable<string> Names => _members.Keys;

    public string At(string key) => Pointer + "/" + Escape(key);

    public bool Has(string key) => _members.ContainsKey(key);

    /// <summary>The element under a key, null where the key is absent; JSON null comes through as such.</summary>
    public JsonElement? Element(string key)
    {
        _asked.Add(key);
        return _members.TryGetValue(key, out var e) ? e : null;
    }

    public string? OptionalText(string key) => Element(key) is { } e && e.ValueKind != JsonValueKind.Null ? TextOf(e, At(key)) : null;

    public string Text(string key)
    {
        if (Element(key) is { } e) return TextOf(e, At(key)) ?? "";
        Missing(key);
        return "";
    }

    public double? OptionalNumber(string key) => Element(key) is { } e && e.ValueKind != JsonValueKind.Null ? NumberOf(e, At(key)) : null;

    public double Number(string key)
    {
        if (Element(key) is { } e) return NumberOf(e, At(key)) ?? 0;
        Missing(key);
        return 0;
    }

    public bool? OptionalFlag(string key)
    {
        if (Element(key) is not { } e) return null;
        if (e.ValueKind is JsonValueKind.True or JsonValueKind.False) return e.GetBoolean();
        Faults.Add(At(key), $"{Named(e)} where true or false is needed", "write true or false");
        return null;
    }

    /// <summary>The items of a list with their pointers; empty where the key is absent.</summary>
    public IEnumerable<(JsonElement Item, string Pointer)> List(string key)
    {
        if (Element(key) is not { } e) yield break;
        if (e.ValueKind != JsonValueKind.Array)
        {
            Faults.Add(At(key), $"{Named(e)} where a list is needed", "write [ ... ]");
            yield break;
        }
        var i = 0;
        foreach (var item in e.EnumerateArray()) yield return (item, At(key) + "/" + i++);
    }

    public IReadOnlyList<string> Texts(string key) =>
        [.. List(key).Select(x => TextOf(x.Item, x.Pointer)).OfType<string>()];

    public ObjectReader? Object(string key) => Element(key) is { } e && e.ValueKind != JsonValueKind.Null ? new(e, At(key), Faults) : null;

    /// <summary>Name-value pairs of an object used as a map; empty where the key is absent.</summary>
    public IEnumerable<(string Name, JsonElement Value, string Pointer)> Map(string key) => Object(key)?.Pairs() ?? [];

    public IEnumerable<(string Name, JsonElement Value, string Pointer)> Pairs()
    {
        foreach (var (name, value) in _members)
            if (name != "note")
                yield return (name, value, At(name));
    }

    /// <summary>Says that every key has been asked for: what is left over is unknown.</summary>
    public void Done()
    {
        foreach (var name in _members.Keys)
            if (!_asked.Contains(name))
                Faults.Add(At(name), $"'{name}' is no key here", $"nearest known key: {Nearest.To(name, _asked)}");
    }

    public void Missing(string key)
    {
        if (IsObject) Faults.Add(At(key), $"'{key}' is missing", "it is required here");
    }

    public static string Escape(string key) => key.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal);

    private string? NameOf(JsonProperty member)
    {
        // As with texts below: half a character passes the JSON parser and throws only here.
        try { return member.Name; }
        catch (InvalidOperationException) { Faults.Add(Pointer, "a key with half a character (lone surrogate)", "write whole characters"); return null; }
    }

    public string? TextOf(JsonElement e, string pointer)
    {
        if (e.ValueKind == JsonValueKind.String)
        {
            // A lone surrogate is valid JSON escape syntax but no text: GetString would throw.
            try { return e.GetString(); }
            catch (InvalidOperationException) { Faults.Add(pointer, "text with half a character (lone surrogate)", "write whole characters"); return null; }
        }
        Faults.Add(pointer, $"{Named(e)} where text is needed", "put it in quotes");
        return null;
    }

    public double? NumberOf(JsonElement e, string pointer)
    {
        if (e.ValueKind == JsonValueKind.Number && e.TryGetDouble(out var d) && double.IsFinite(d)) return d;
        Faults.Add(pointer, e.ValueKind == JsonValueKind.Number ? "a number too large to keep" : $"{Named(e)} where a number is needed", "write a plain number");
        return null;
    }

    public static string Named(JsonElement e) => e.ValueKind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "a list",
        JsonValueKind.String => "text",
        JsonValueKind.Number => "a number",
        JsonValueKind.Null => "null",
        JsonValueKind.Undefined => "nothing",
        _ => "true or false",
    };
}
