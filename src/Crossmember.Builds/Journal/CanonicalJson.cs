using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Journal;

/// <summary>RFC 8785 (JSON Canonicalization Scheme): one text for one value, so that its hash means something.</summary>
/// <remarks>
/// Refused, because no canonical text exists: lone surrogates, a key that stands twice, numbers outside the range of a double.
/// Numbers are doubles, as the RFC has it: digits beyond that are lost, so payloads keep long figures as text.
/// </remarks>
public static class CanonicalJson
{
    /// <summary>The canonical text, or null with a fault for each place that has none.</summary>
    public static string? Text(JsonElement value, Faults faults, string pointer = "")
    {
        var writer = new Writer(faults);
        writer.Element(value, pointer);
        return writer.Result;
    }

    /// <inheritdoc cref="Text(JsonElement, Faults, string)"/>
    public static string? Text(JsonNode? value, Faults faults, string pointer = "")
    {
        var writer = new Writer(faults);
        writer.Node(value, pointer);
        return writer.Result;
    }

    /// <summary>The canonical text of a value that this program made itself; one without canonical text is a programming error.</summary>
    public static string Of(JsonNode? value)
    {
        var faults = new Faults();
        return Text(value, faults) ?? throw new ArgumentException(faults.List[0].ToString(), nameof(value));
    }

    private sealed class Writer(Faults faults)
    {
        private readonly StringBuilder _out = new();
        private bool _refused;

        public string? Result => _refused ? null : _out.ToString();

        public void Element(JsonElement value, string pointer)
        {
            switch (value.ValueKind)
            {
                case JsonValueKind.Object:
                    var members = new List<(string Name, JsonElement Value)>();
                    foreach (var member in value.EnumerateObject())
                        if (Whole(() => member.Name) is { } name) members.Add((name, member.Value));
                        else Refuse(pointer, "a key with half a character (lone surrogate)", "write whole characters");
                    Members(members, pointer, Element);
                    break;
                case JsonValueKind.Array: Items(value.EnumerateArray(), pointer, Element); break;
                case JsonValueKind.String: String(Whole(value.GetString), pointer); break;
                case JsonValueKind.Number: Number(value.GetRawText(), pointer); break;
                case JsonValueKind.True: _out.Append("true"); break;
                case JsonValueKind.False: _out.Append("false"); break;
                default: _out.Append("null"); break;
            }
        }

        public void Node(JsonNode? value, string pointer)
        {
            switch (value)
            {
                case null: _out.Append("null"); break;
                case JsonObject o: Members([.. o.Select(m => (m.Key, m.Value))], pointer, Node); break;
                case JsonArray a: Items(a, pointer, Node); break;
                // Serializing would silently put a replacement character for a lone surrogate, so text is taken as it is.
                case JsonValue v when v.TryGetValue<JsonElement>(out var e): Element(e, pointer); break;
                case JsonValue v when v.TryGetValue<string>(out var s): String(s, pointer); break;
                default: Element(JsonSerializer.SerializeToElement(value), pointer); break;
            }
        }

        private void Members<T>(List<(string Name, T Value)> members, string pointer, Action<T, string> write)
        {
            members.Sort((a, b) => string.CompareOrdinal(a.Name, b.Name));
            _out.Append('{');
            for (var i = 0; i < members.Count; i++)
            {
                var (name, value) = members[i];
                var at = pointer + "/" + ObjectReader.Escape(name);
                if (i > 0 && members[i - 1].Name == name) Refuse(at, "this key stands twice", "keep one of the two");
                if (i > 0) _out.Append(',');
                String(name, at);
                _out.Append(':');
                write(value, at);
            }
            _out.Append('}');
        }

        private void Items<T>(IEnumerable<T> items, string pointer, Action<T, string> write)
        {
            _out.Append('[');
            var i = 0;
            foreach (var item in items)
            {
                if (i > 0) _out.Append(',');
                write(item, $"{pointer}/{i++}");
            }
            _out.Append(']');
        }

        private void Number(string raw, string pointer)
        {
            var number = double.Parse(raw, NumberStyles.Float, CultureInfo.InvariantCulture);
            if (double.IsFinite(number)) _out.Append(EcmaNumber.Text(number));
            else Refuse(pointer, "a number too large to keep", "write a plain number");
        }

        private void String(string? text, string pointer)
        {
            if (text is null || !IsWhole(text))
            {
                Refuse(pointer, "text with half a character (lone surrogate)", "write whole characters");
                return;
            }
            _out.Append('"');
            foreach (var c in text) Character(c);
            _out.Append('"');
        }

        private void Character(char c) => _ = c switch
        {
            '"' => _out.Append("\\\""),
            '\\' => _out.Append("\\\\"),
            '\b' => _out.Append("\\b"),
            '\t' => _out.Append("\\t"),
            '\n' => _out.Append("\\n"),
            '\f' => _out.Append("\\f"),
            '\r' => _out.Append("\\r"),
            < ' ' => _out.Append("\\u").Append(((int)c).ToString("x4", CultureInfo.InvariantCulture)),
            _ => _out.Append(c),
        };

        private void Refuse(string pointer, string wrong, string right)
        {
            _refused = true;
            faults.Add(pointer, wrong, right);
        }

        private static string? Whole(Func<string?> text)
        {
            // The reader throws where an escape or a byte sequence is no Unicode text.
            try { return text(); }
            catch (InvalidOperationException) { return null; }
        }

        private static bool IsWhole(string text)
        {
            for (var i = 0; i < text.Length; i++)
                if (char.IsSurrogate(text[i]) && !(i + 1 < text.Length && char.IsSurrogatePair(text[i], text[++i])))
                    return false;
            return true;
        }
    }
}
