using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Crossmember.Storage.Tests.Importing;

/// <summary>Spoils a JSON file in one of the ways that programs, people and transport do. The same random numbers spoil it the same way.</summary>
internal sealed class Mutations(Random chance)
{
    /// <summary>Stands for what no tree can hold (NaN, half a character) until the tree is text.</summary>
    private const string Raw = "@raw@";

    private static readonly string[] s_raw =
    [
        "1e400", "-1e400", "NaN", "Infinity", "1e308", "-1e308", "-1", "0", "1e-320", "123456789012345678901234567890", "01", "\"\\ud800\"", "\"x\\udc00y\"", "{\"\\ud800\":1}", "{\"a\":1,\"a\":2}",
        "null", "true", "[]", "{}", "\"\"", "[null]", "[[[]]]", "1.5", "'x'", "",
    ];

    private static readonly string[] s_texts =
    [
        "12 kgs", "3,5 kg", "1.234,5 mm", "12", "kg", "-5 kg", "1e300 kg", "1e300 mm", "99999999999999999999 USD", "-0.00001 USD", "5 usd", "1/0 in", "nan kg", "\u202etxet", "\u0000", "\ud83d\ude99", "\ufffe", "none",
        "as-found", "approved", "shop", "note", "working", "*", "a/b", "../../etc", "a.b.c", " tires", "tires", "0001-01-01", "9999-12-31", "2026-02-30", "refurbish", "Keep", "1", "vehicle", "gear.*", "axle.rear.ratio",
        "crossmember.build/2", "measured",
    ];

    private string _raw = "";

    public byte[] OfJson(JsonNode file)
    {
        if (chance.Next(4) == 0) return OfBytes(Encoding.UTF8.GetBytes(file.ToJsonString()));
        var tree = file.DeepClone();
        for (var n = chance.Next(1, 3); n > 0; n--) Tree(tree);
        return Encoding.UTF8.GetBytes(tree.ToJsonString().Replace($"\"{Raw}\"", _raw, StringComparison.Ordinal));
    }

    /// <summary>One change in a tree; what it cannot do at the place it hit it leaves.</summary>
    public void Tree(JsonNode tree)
    {
        var all = Nodes(tree).ToList();
        var node = all[chance.Next(all.Count)];
        switch (chance.Next(11))
        {
            case 0: Remove(node); break;
            case 1: Rename(node); break;
            case 2 or 3: _raw = Pick(s_raw); Put(node, Raw); break;
            case 4 or 5: Put(node, Pick(s_texts)); break;
            case 6: Put(node, Deep(chance.Next(2, 70))); break;
            case 7: Put(node, all[chance.Next(all.Count)].DeepClone()); break;
            case 8 when node is JsonArray { Count: > 0 } list: list.Add(list[chance.Next(list.Count)]?.DeepClone()); break;
            case 9 when node is JsonObject map: map.TryAdd(Pick(s_texts), Pick(s_texts)); break;
            default: Number(node); break;
        }
    }

    public byte[] OfBytes(byte[] file)
    {
        var list = file.ToList();
        switch (chance.Next(8))
        {
            case 0: return file[..chance.Next(file.Length)];
            case 1: for (var n = chance.Next(1, 6); n > 0; n--) list[chance.Next(list.Count)] = (byte)chance.Next(256); break;
            case 2: list.InsertRange(chance.Next(list.Count), Some(chance.Next(1, 20))); break;
            case 3: return [0xEF, 0xBB, 0xBF, .. file];
            case 4: return Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes(Encoding.UTF8.GetString(file))).ToArray();
            case 5: return Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(file).Replace(",", ",\r", StringComparison.Ordinal));
            case 6: return Some(chance.Next(0, 400));
            default: list.RemoveRange(chance.Next(list.Count / 2), chance.Next(1, list.Count / 2)); break;
        }
        return [.. list];
    }

    private byte[] Some(int count)
    {
        var bytes = new byte[count];
        chance.NextBytes(bytes);
        return bytes;
    }

    private T Pick<T>(T[] from) => from[chance.Next(from.Length)];

    private static IEnumerable<JsonNode> Nodes(JsonNode node)
    {
        yield return node;
        foreach (var inner in node is JsonObject o ? o.Select(m => m.Value) : node is JsonArray a ? a : [])
            if (inner is not null)
                foreach (var deeper in Nodes(inner))
                    yield return deeper;
    }

    private static void Remove(JsonNode node)
    {
        if (node.Parent is JsonObject map) map.Remove(node.GetPropertyName());
        else if (node.Parent is JsonArray list) list.Remove(node);
    }

    private void Rename(JsonNode node)
    {
        if (node.Parent is not JsonObject map) return;
        var name = node.GetPropertyName();
        map.Remove(name);
        map.TryAdd(chance.Next(3) switch { 0 => name + "s", 1 => name.ToUpperInvariant(), _ => Pick(s_texts) }, node);
    }

    private static void Put(JsonNode node, JsonNode value)
    {
        if (node.Parent is JsonObject map) map[node.GetPropertyName()] = value;
        else if (node.Parent is JsonArray list) list[node.GetElementIndex()] = value;
    }

    private void Number(JsonNode node)
    {
        if (node is not JsonValue v) return;
        if (v.GetValueKind() == JsonValueKind.Number) Put(node, chance.Next(-3, 9) * Math.Pow(10, chance.Next(-3, 12)));
        else if (v.GetValueKind() == JsonValueKind.String)
            Put(node, string.Concat(((string)v!).Select(c => char.IsAsciiDigit(c) ? chance.Next(10).ToString(CultureInfo.InvariantCulture) : c.ToString())));
    }

    private static JsonNode Deep(int levels)
    {
        JsonNode node = new JsonObject();
        for (var i = 0; i < levels; i++) node = i % 2 == 0 ? new JsonArray(node) : new JsonObject { ["options"] = node };
        return node;
    }
}
