using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Crossmember.Engineering.Reading;

namespace Crossmember.Storage;

/// <summary>Who owns a vehicle and how to reach them; nothing else of the program holds this.</summary>
public sealed record CustomerCard(string Name, string Phone, string Mail, string Address, string Notes)
{
    /// <summary>A card is for reaching somebody, not an archive.</summary>
    public const int LongestNotes = 4000;

    private const string Format = "crossmember.customer/1";
    private const int LongestLine = 200, LongestAddress = 600;

    public static CustomerCard Blank { get; } = new("", "", "", "", "");

    /// <summary>What is wrong with it, each fault at its field.</summary>
    public Faults Check()
    {
        var faults = new Faults();
        if (Name.Trim().Length == 0) faults.Add("name", "the card has no name", "write whose vehicle it is");
        Fits("name", Name, LongestLine);
        Fits("phone", Phone, LongestLine);
        Fits("mail", Mail, LongestLine);
        Fits("address", Address, LongestAddress);
        Fits("notes", Notes, LongestNotes);
        return faults;

        void Fits(string field, string text, int most)
        {
            if (text.Length > most) faults.Add(field, $"{text.Length} characters", $"at most {most}");
        }
    }

    public JsonObject ToJson() => new() { ["format"] = Format, ["name"] = Name, ["phone"] = Phone, ["mail"] = Mail, ["address"] = Address, ["notes"] = Notes };

    internal string Write() => CanonicalJson.Of(ToJson());

    /// <summary>The card, or null with faults where the content is none.</summary>
    internal static CustomerCard? Read(ReadOnlyMemory<byte> content, Faults faults)
    {
        using var document = JsonText.Open(content, faults);
        if (document is null) return null;
        var before = faults.Count;
        var r = new ObjectReader(document.RootElement, "", faults);
        if (!r.IsObject) return null;
        if (r.Text("format") is var format && format != Format) faults.Add("/format", $"'{format}' is no customer's card", Format);
        var card = new CustomerCard(r.Text("name"), r.Text("phone"), r.Text("mail"), r.Text("address"), r.Text("notes"));
        r.Done();
        return faults.Count == before ? card : null;
    }
}
