using Crossmember.Engineering.Quantities;

namespace Crossmember.Engineering.Calculations;

/// <summary>The form an input or output takes.</summary>
public enum Form { Number, Text, Curve, Members }

/// <summary>One input, as read off the <c>Inputs</c> record.</summary>
/// <param name="Dimension">Null for texts; for curves that of x.</param>
/// <param name="Unit">The unit it is told in; null for texts.</param>
/// <param name="Optional">Whether the arithmetic can do without it; a default does not make an input optional, it only stands in at the caller's.</param>
public sealed record InputSpec(string Name, Form Form, Dimension? Dimension, Unit? Unit, Unit? CurveUnit, bool Optional, double? DefaultSi, InputAttribute About)
{
    private readonly ITextNotation? _notation = About.Notation is { } type ? (ITextNotation)Activator.CreateInstance(type)! : null;

    /// <summary>Whether a person must give it: neither optional nor with a default.</summary>
    public bool Required => !Optional && DefaultSi is null;

    /// <summary>Keeps products and quotients of inputs far from the end of what a double holds.</summary>
    private const double Largest = 1e12;

    /// <summary>Why a number in SI is outside the definition of this input, or null.</summary>
    public string? Outside(double si)
    {
        if (!double.IsFinite(si)) return "is no finite number";
        var x = Unit!.FromSi(si);
        if (Math.Abs(x) > Largest) return "is beyond anything on a vehicle";
        if (x <= About.MoreThan) return $"must be more than {Told(About.MoreThan)}";
        return x < About.AtLeast ? $"must be at least {Told(About.AtLeast)}" : null;
    }

    /// <summary>Why a text is outside the definition of this input, or null.</summary>
    public string? Outside(string text) =>
        About.OneOf.Length > 0 && !About.OneOf.Contains(text) ? $"must be {string.Join(" or ", About.OneOf)}" : _notation?.Refuse(text);

    /// <summary>The range the formula is known to hold in, in words.</summary>
    public string RangeText => (double.IsFinite(About.Low), double.IsFinite(About.High)) switch
    {
        (true, true) => $"{Told(About.Low)} to {Told(About.High)}",
        (true, false) => $"from {Told(About.Low)}",
        _ => $"up to {Told(About.High)}",
    };

    /// <summary>Whether a number in SI lies where the formula is known to hold.</summary>
    public bool InRange(double si)
    {
        var x = Unit!.FromSi(si);
        return x >= About.Low - (1e-9 * Math.Abs(About.Low)) && x <= About.High + (1e-9 * Math.Abs(About.High));
    }

    private string Told(double number) => Unit!.Code == "1" ? Figures.Short(number) : $"{Figures.Short(number)} {Unit.Code}";
}

/// <summary>One output, as read off the <c>Result</c> record.</summary>
public sealed record OutputSpec(string Name, Form Form, Dimension? Dimension, Unit? Unit, OutputAttribute About);

/// <summary>One line of arithmetic that a person can follow with a hand calculator.</summary>
public sealed record WorkingLine(string Symbol, string Formula, string Substituted, double Value, string Unit);

/// <summary>A plotted line of a calculation, in shop units.</summary>
/// <remarks>A curve of one point is a point that is marked.</remarks>
public sealed record PlottedCurve(string Name, string XLabel, string XUnit, IReadOnlyList<double> X, string YLabel, string YUnit, IReadOnlyList<double> Y)
{
    /// <summary>Whether it only helps to read the others, as a line of constant deceleration does: drawn thin, told by its name at its end.</summary>
    public bool IsGuide { get; init; }
}

/// <summary>An input that is not known, and how to get it.</summary>
public sealed record MissingInput(string Input, string Measure);
