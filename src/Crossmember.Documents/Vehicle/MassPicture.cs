using System.Xml.Linq;
using Crossmember.Builds.Slots;
using Crossmember.Documents.Curves;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Documents.Vehicle;

/// <summary>What kind of mass a mark stands for: its shape tells.</summary>
public enum MassShape { PutOn, Standing, CameOff, Aboard }

/// <summary>A mass to be drawn on the vehicle.</summary>
/// <param name="Number">Its number in the list beside the drawing.</param>
/// <param name="Says">Title, mass and place in words.</param>
public sealed record DrawnMass(string Key, int Number, double? Kilograms, Place At, MassShape Shape, string Says);

/// <summary>What an axle or a wheel carries, in words.</summary>
/// <param name="Side">Null for the whole axle.</param>
/// <param name="Share">Of its rating; empty where there is none.</param>
public sealed record DrawnLoad(string Axle, string? Side, string Load, string Share, Verdict? Verdict)
{
    /// <summary>A shape beside the colour, as text.</summary>
    public string Sign => Verdict switch
    {
        Engineering.Calculations.Verdict.Fail => "■ ",
        Engineering.Calculations.Verdict.Caution => "▲ ",
        Engineering.Calculations.Verdict.Pass => "● ",
        Engineering.Calculations.Verdict.Unknown => "○ ",
        _ => "",
    };
}

/// <summary>The center of gravity as far as it is known, m; the spreads are one standard uncertainty each.</summary>
/// <param name="Z">Over the frame datum plane.</param>
public sealed record DrawnCenter(double? X, double? Y, double? Z, double? SpreadX, double? SpreadY, double? SpreadZ);

/// <summary>Where masses, loads and the center of gravity lie in a drawing from the side and from above, to one scale.</summary>
public sealed class MassPicture(VehicleShape shape, double width)
{
    /// <summary>Room for a finger in a glove.</summary>
    public const double Touch = VehicleSvg.MarkSize;

    private const double Wide = 820, Smallest = 4.5, PerRootKilogram = 1.35, Below = 40;

    private readonly PictureFrame _frame = new(shape, width);

    public double Width => width;

    public double Height => _frame.Height + Below;

    /// <summary>Pixels of a meter.</summary>
    public double Scale => _frame.Of(1);

    /// <summary>The front axle line.</summary>
    public double X0 => _frame.X(0);

    /// <summary>The frame datum plane in the side view.</summary>
    public double Side0 => _frame.SideY(0);

    /// <summary>The center line in the plan.</summary>
    public double Plan0 => _frame.PlanY(0);

    /// <summary>Above it is the side view, below it the plan.</summary>
    public double Split => _frame.Side.Height;

    public double GroundY => _frame.SideY(shape.Ground);

    /// <summary>The area of a mark is as the mass, down to the smallest that can be seen.</summary>
    public double Radius(double? kilograms) => Math.Max(Smallest * Math.Sqrt(width / Wide), PerRootKilogram * width / Wide * Math.Sqrt(kilograms ?? 0));

    /// <summary>There is room for the numbers of small marks.</summary>
    public bool IsWide => width >= 500;

    public double FontSize => IsWide ? 12.5 : 10.5;

    public (double X, double Y) Side(Place at) => (Across(_frame.X(at.X)), Math.Clamp(_frame.SideY(at.Z), 6, _frame.Side.Height - 6));

    public (double X, double Y) Plan(Place at) => (Across(_frame.X(at.X)), Math.Clamp(_frame.PlanY(at.Y), _frame.Plan.Top + 6, _frame.Height - 6));

    /// <summary>Where the words of a load begin: an axle's under its wheel in the side view, a wheel's beside it in the plan.</summary>
    public (double X, double Y) Label(DrawnLoad load)
    {
        var x = _frame.X(load.Axle == "rear" ? shape.Wheelbase : 0);
        if (load.Side is null) return (x, GroundY + FontSize + 6);
        return (x, load.Side == "left" ? _frame.PlanY(-shape.HalfWidth) + FontSize + 7 : _frame.PlanY(shape.HalfWidth) - FontSize - 11);
    }

    /// <summary>The outline of the vehicle as markup for a page, in the colours of its tokens.</summary>
    public string Outlines()
    {
        var group = new XElement("g", Drawn(ink => $"var(--{ink.Token})"));
        return string.Concat(group.Elements().Select(e => Bare(e).ToString(SaveOptions.DisableFormatting)));
    }

    internal IEnumerable<XElement> Drawn(Func<Ink, string> colour)
    {
        var outline = new Outline(shape, _frame, colour);
        return outline.Side().Concat(outline.Plan());
    }

    private double Across(double x) => Math.Clamp(x, 6, width - 6);

    /// <summary>Within a page the element stands in its drawing's namespace already.</summary>
    private static XElement Bare(XElement e) => new(e.Name.LocalName, e.Attributes().Where(a => !a.IsNamespaceDeclaration));
}
