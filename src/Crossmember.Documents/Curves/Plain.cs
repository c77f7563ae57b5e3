using System.Text;
using System.Xml;

namespace Crossmember.Documents.Curves;

/// <summary>Names that people gave, fit to be drawn and written: on one line, without signs that no drawing can hold.</summary>
internal static class Plain
{
    private const int Longest = 26;

    public static string Text(string name) =>
        string.Concat(name.EnumerateRunes().Where(r => r != Rune.ReplacementChar && (!r.IsBmp || XmlConvert.IsXmlChar((char)r.Value))).Select(r => Rune.IsControl(r) ? " " : r.ToString()));

    /// <summary>For the key of a picture, where a long name would leave no room for the curves.</summary>
    public static string Short(string name) => name.Length <= Longest ? name : string.Concat(name.AsSpan(0, Longest - 1).TrimEnd(), "…");
}
