using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Web.Features.Bench;

/// <summary>One member of a map as it stands in the form.</summary>
public sealed class TypedMember
{
    public string Name { get; set; } = "";

    public string Text { get; set; } = "";
}

/// <summary>What is typed into the form of a calculation, and the input of <c>calc run</c> that it makes.</summary>
/// <remarks>A bare number is taken in the unit that stands beside its field; whatever else is typed goes on as it is, so that faults are those of the command line.</remarks>
public sealed class TypedInputs
{
    private static readonly JsonWriterOptions s_plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private readonly Calculation _calculation;
    private readonly Dictionary<string, string> _texts = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<TypedMember>> _members = new(StringComparer.Ordinal);

    public TypedInputs(Calculation calculation)
    {
        _calculation = calculation;
        foreach (var spec in calculation.InputSpecs.Where(s => s.Form == Form.Members)) _members[spec.Name] = [];
    }

    /// <summary>The text of a number, a text or a curve.</summary>
    public string this[string input]
    {
        get => _texts.GetValueOrDefault(input, "");
        set => _texts[input] = value;
    }

    public IReadOnlyList<TypedMember> Members(string input) => _members[input];

    public TypedMember Member(string input, string name)
    {
        if (_members[input].Find(m => m.Name == name) is { } known) return known;
        var added = new TypedMember { Name = name };
        _members[input].Add(added);
        return added;
    }

    public void Add(string input) => _members[input].Add(new() { Name = Enumerable.Range(1, _members[input].Count + 1).Select(n => $"{n}").First(n => _members[input].TrueForAll(m => m.Name != n)) });

    public void TakeOut(string input, TypedMember member) => _members[input].Remove(member);

    /// <summary>Whether anything is typed for an input.</summary>
    public bool Has(string input) => _members.TryGetValue(input, out var members) ? members.Exists(m => m.Text.Trim().Length > 0) : this[input].Trim().Length > 0;

    public bool Any => _calculation.InputSpecs.Any(s => Has(s.Name));

    public void Clear(string input)
    {
        _texts.Remove(input);
        foreach (var member in _members.GetValueOrDefault(input, [])) member.Text = "";
    }

    /// <summary>Writes the unit of the field behind bare numbers, as they were taken.</summary>
    public void Complete(InputSpec spec, FieldUnits units)
    {
        if (spec.Form == Form.Members) foreach (var member in _members[spec.Name]) member.Text = units.Completed(member.Text);
        else if (spec.Form == Form.Number) this[spec.Name] = units.Completed(this[spec.Name]);
        else if (spec.Form == Form.Curve && CurveText.Pairs(this[spec.Name]) is var pairs && pairs.All(p => p.Length == 2))
            this[spec.Name] = CurveText.Of(pairs.Select(p => (units.Completed(p[0]), units.CompletedY(p[1]))));
    }

    /// <summary>The input of <c>calc run</c>; what is empty is not in it.</summary>
    public byte[] Json(Func<InputSpec, FieldUnits> units)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var writer = new Utf8JsonWriter(buffer, s_plain))
        {
            writer.WriteStartObject();
            foreach (var spec in _calculation.InputSpecs.Where(s => Has(s.Name)))
            {
                writer.WritePropertyName(spec.Name);
                Write(writer, spec, units(spec));
            }
            writer.WriteEndObject();
        }
        return buffer.WrittenSpan.ToArray();
    }

    /// <summary>Fills the form from the input of <c>calc run</c>; keys that are no inputs are left to the reader to tell.</summary>
    public void Fill(string json)
    {
        try
        {
            using var document = JsonDocument.Parse(json);
            if (document.RootElement.ValueKind != JsonValueKind.Object) return;
            foreach (var spec in _calculation.InputSpecs)
                if (document.RootElement.TryGetProperty(spec.Name, out var given)) Fill(spec, Bare(spec, given));
        }
        catch (JsonException) { return; }
        catch (InvalidOperationException) { return; } // half a character: no text that a field could show
    }

    private void Fill(InputSpec spec, JsonElement given)
    {
        if (spec.Form != Form.Members || given.ValueKind != JsonValueKind.Object) this[spec.Name] = spec.Form == Form.Curve ? CurveText.Of(given) : TextOf(given);
        else foreach (var member in given.EnumerateObject()) Member(spec.Name, member.Name).Text = TextOf(Bare(null, member.Value));
    }

    private void Write(Utf8JsonWriter writer, InputSpec spec, FieldUnits units)
    {
        if (spec.Form == Form.Members) WriteMembers(writer, spec, units);
        else if (spec.Form == Form.Curve) WriteCurve(writer, this[spec.Name], units);
        else writer.WriteStringValue(units.Completed(this[spec.Name].Trim()));
    }

    private void WriteMembers(Utf8JsonWriter writer, InputSpec spec, FieldUnits units)
    {
        writer.WriteStartObject();
        foreach (var (member, i) in _members[spec.Name].Select((m, i) => (m, i)))
            if (member.Text.Trim().Length > 0) writer.WriteString(member.Name.Trim() is { Length: > 0 } name ? name : $"{i + 1}", units.Completed(member.Text.Trim()));
        writer.WriteEndObject();
    }

    private static void WriteCurve(Utf8JsonWriter writer, string text, FieldUnits units)
    {
        writer.WriteStartArray();
        foreach (var pair in CurveText.Pairs(text))
        {
            writer.WriteStartArray();
            for (var i = 0; i < pair.Length; i++) writer.WriteStringValue(i == 0 ? units.Completed(pair[i]) : units.CompletedY(pair[i]));
            writer.WriteEndArray();
        }
        writer.WriteEndArray();
    }

    /// <summary>Where from does not matter on the bench: of value and basis the value counts.</summary>
    private static JsonElement Bare(InputSpec? spec, JsonElement given) =>
        spec?.Form != Form.Members && given.ValueKind == JsonValueKind.Object && given.TryGetProperty("value", out var value) ? value : given;

    private static string TextOf(JsonElement given) => given.ValueKind == JsonValueKind.String ? given.GetString()! : given.ValueKind == JsonValueKind.Null ? "" : given.GetRawText();

    public override string ToString() => Encoding.UTF8.GetString(Json(_ => FieldUnits.None));
}
