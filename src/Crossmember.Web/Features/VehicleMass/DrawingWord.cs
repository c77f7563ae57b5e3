using System.Globalization;

namespace Crossmember.Web.Features.VehicleMass;

/// <summary>Which of the two views something was done on.</summary>
public enum DrawnView { Side, Plan }

/// <summary>What somebody did on the drawing.</summary>
public enum DrawnAct { Pick, Drag, Drop, Spot, Nudge, Keep, Back }

/// <summary>A word of the drawing's script, such as <c>drag|side|conditions/touring/driver|1.58|0.86</c>. Lengths are in meters.</summary>
/// <param name="Key">The mass that it is about; empty where it is about none.</param>
/// <param name="A">Along; of a nudge the number of steps.</param>
/// <param name="B">Up or across.</param>
/// <param name="Axis">Of a nudge.</param>
public sealed record DrawingWord(DrawnAct Act, DrawnView View, string Key, double A, double B, char Axis = ' ')
{
    /// <summary>Null where the word is none of the script's.</summary>
    public static DrawingWord? Read(string? word) => word?.Split('|') switch
    {
        ["pick", _, var key] => new(DrawnAct.Pick, DrawnView.Side, key, 0, 0),
        ["drag" or "drop", var view, var key, var a, var b] when Both(a, b) is var (x, y) => new(word[1] == 'r' && word[2] == 'o' ? DrawnAct.Drop : DrawnAct.Drag, Of(view), key, x, y),
        ["spot", var view, var a, var b] when Both(a, b) is var (x, y) => new(DrawnAct.Spot, Of(view), "", x, y),
        ["nudge", [var axis], var steps] when int.TryParse(steps, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var n) && Math.Abs(n) <= 100 && PlaceDraft.Axes.Contains(axis) => new(DrawnAct.Nudge, DrawnView.Side, "", n, 0, axis),
        ["keep"] => new(DrawnAct.Keep, DrawnView.Side, "", 0, 0),
        ["back"] => new(DrawnAct.Back, DrawnView.Side, "", 0, 0),
        _ => null,
    };

    private static DrawnView Of(string view) => view == "plan" ? DrawnView.Plan : DrawnView.Side;

    /// <summary>No vehicle is longer than this.</summary>
    private const double Farthest = 100;

    private static (double A, double B)? Both(string a, string b) =>
        double.TryParse(a, NumberStyles.Float, CultureInfo.InvariantCulture, out var x) && double.TryParse(b, NumberStyles.Float, CultureInfo.InvariantCulture, out var y)
        && Math.Abs(x) < Farthest && Math.Abs(y) < Farthest ? (x, y) : null;
}
