using Crossmember.Engineering.Reading;
using Crossmember.Planning;

namespace Crossmember.Builds.Pasting;

/// <summary>A row of a parts list as it was understood.</summary>
/// <param name="Line">Of the pasted text.</param>
/// <param name="Source">Its cells as pasted.</param>
/// <param name="Place">What the list itself says the part is for.</param>
/// <param name="Mass">Of one, as typed with its unit.</param>
/// <param name="Faults">What needs a look before the row can be taken in; empty: it is ready.</param>
public sealed record PastedPart(
    int Line, IReadOnlyList<string> Source, string Title, string? Description, decimal Count, Money? Each, string? Vendor, string? Number, string? Lead, string? Place, string Category, string? Mass,
    IReadOnlyList<Fault> Faults)
{
    public bool IsReady => Faults.Count == 0;
}
