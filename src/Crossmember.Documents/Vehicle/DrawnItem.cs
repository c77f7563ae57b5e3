using Crossmember.Documents.Curves;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Documents.Vehicle;

/// <summary>An item to be drawn on the vehicle.</summary>
/// <param name="Number">Its number in the list beside the drawing.</param>
/// <param name="X">Rear from the front axle, m.</param>
/// <param name="Y">To the right of the center line, m.</param>
/// <param name="Z">Over the frame datum plane, m.</param>
/// <param name="Verdict">The worst that a check says in which it has a part; null where no check has anything to do with it.</param>
/// <param name="Says">The verdict in the words of the desk, and whatever else the tooltip tells.</param>
public sealed record DrawnItem(string Id, int Number, string Title, double X, double Y, double Z, Verdict? Verdict, string Says);

/// <summary>Colours and shapes of marks; the shape tells as much as the colour.</summary>
internal static class MarkInk
{
    public static Ink Of(Verdict? verdict) => verdict switch
    {
        Verdict.Fail => new("fail", "#A32020"),
        Verdict.Caution => new("caution", "#8F5206"),
        Verdict.Pass => new("pass", "#2E6B4F"),
        Verdict.Unknown => new("unknown", "#4E5962"),
        _ => Ink.Quiet,
    };

    /// <summary>A filled shape bears its number in the colour of the ground.</summary>
    public static bool IsFilled(Verdict? verdict) => verdict is Verdict.Fail or Verdict.Pass or Verdict.Caution;
}
