using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Places;

/// <summary>How a mass item stands to what the scale said: put on since, still on as it was weighed, came off since, or on board.</summary>
public enum MassStanding { PutOn, Standing, CameOff, Aboard }

/// <summary>A mass item of a sheet in one loading condition.</summary>
/// <param name="Slot">Null for what is on board.</param>
/// <param name="At">Null where nobody has said where it sits.</param>
public sealed record PlacedMass(MassRef Ref, Slot? Slot, double? Kilograms, Place? At, Basis Basis, MassStanding Standing)
{
    public string Title => Slot is null ? Ref.Item : $"{Slot.Title}: {Ref.Item}";

    /// <summary>Every mass item that can be placed: of what is chosen, of what came off, and of who and what is on board; from front to rear.</summary>
    public static IReadOnlyList<PlacedMass> Of(Sheet sheet, LedgerLines ledger)
    {
        var entered = ledger.All.Where(e => e.Item is not null).ToLookup(e => e.Item!);
        var chosen = from slot in sheet.Build.Slots
                     let body = sheet.InEffect[sheet.Plan.SlotId(slot.Id)]!.Body
                     from item in body.Masses ?? []
                     let at = MassRef.Of(slot.Id, body.Id, item.Id)
                     // Nothing says that a part was weighed where nothing was weighed.
                     select new PlacedMass(at, slot, item.Kilograms, item.At, item.Basis, ledger.Weighing is null || entered[at].Any(e => e.Part == LedgerPart.PutOn) ? MassStanding.PutOn : MassStanding.Standing);
        var gone = ledger.All.Where(e => e is { Part: LedgerPart.CameOff, Item: not null }).Select(e => new PlacedMass(e.Item!, e.Slot, e.IsKnown ? -e.Kilograms : null, e.At, e.Basis, MassStanding.CameOff));
        var aboard = ledger.All.Where(e => e.Part == LedgerPart.Aboard).Select(e => new PlacedMass(e.Item!, null, e.IsKnown ? e.Kilograms : null, e.At, e.Basis, MassStanding.Aboard));
        return [.. chosen.Concat(gone).Concat(aboard).OrderBy(m => m.At?.X ?? double.PositiveInfinity).ThenBy(m => m.Standing).ThenBy(m => m.Ref.Key, StringComparer.Ordinal)];
    }
}
