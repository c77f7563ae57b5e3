using System.Text.Json;
using Crossmember.Builds.Folding;
using Crossmember.Builds.Journal;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Workshop;

/// <summary>What the payloads of log entries must hold. They do not enter the build; projections read them.</summary>
internal static class LogPayloads
{
    public static void Check(Fact fact, Faults faults, string? pointer = null)
    {
        if (fact.Payload is null) return;
        var r = new ObjectReader(JsonSerializer.SerializeToElement(fact.Payload), pointer ?? fact.Subject, faults);
        if (!r.IsObject) return;
        switch (fact.Kind)
        {
            case "note.written":
                r.Text("text");
                break;
            case "photo.taken":
                Hash(r);
                _ = r.OptionalText("shows");
                break;
            case "hours.logged":
                r.Text("trade");
                if (r.Number("hours") is <= 0 or > 24) faults.Add(r.At("hours"), "hours of one entry", "more than 0 and at most 24");
                break;
            case "reading.taken":
                r.Text("what");
                r.Text("value");
                break;
            case "receipt.logged":
                r.Text("what");
                if (r.Text("state") is not ("right" or "wrong" or "damaged")) faults.Add(r.At("state"), "no state of a receipt", "right, wrong or damaged");
                break;
            default:
                WeighingReader.Read(r);
                return;
        }
        r.Done();
    }

    private static void Hash(ObjectReader r)
    {
        var hash = r.Text("attachment");
        if (hash.Length != 64 || !hash.All(char.IsAsciiHexDigitLower)) r.Faults.Add(r.At("attachment"), "no content hash", "the SHA-256 of the file, 64 hexadecimal digits");
    }
}
