using Crossmember.Engineering.Quantities;

namespace Crossmember.Engineering.Calculations;

/// <summary>The form an input or output takes.</summary>
public enum Form { Number, Text, Curve, Members }

/// <summary>One input, as read off the <c>Inputs</c> record.</summary>
/// <param name="Dimension">Null for texts; for curves that of x.</param>
/// <param name="Unit">The unit it is told in; null for texts.</param>
public sealed record InputSpec(string Name, Form Form, Dimension? Dimension, Unit? Unit, Unit? CurveUnit, bool Required, double? DefaultSi, InputAttribute About)
{
    /// <summary>Keeps products and quotients of inputs far from the end of what a double holds.</summary>
    private const double Largest = 1e12;

    /// <summary>Why a number in SI is outside the definition of this input, or null.</summary>
    public string? Outside(double si)
    {
        if (!double.IsFinite(si)) return "is no finite number";
        var x = Unit!.FromSi(si);
        if (Math.Abs(x) > Largest) return "is beyond anything on a vehicle";
        if (x <= About.MoreThan) return $"must be more than {About.MoreThan} {Unit.Code}";
        return x < About.AtLeast ? $"must be at least {About.AtLeast} {Unit.Code}" : null;
    }

    /// <summary>Whether a number in SI lies where the formula is known to hold.</summary>
    public bool InRange(double si)
    {
        var x = Unit!.FromSi(si);
        return x >= About.Low - (1e-9 * Math.Abs(About.Low)) && x <= About.High + (1e-9 * Math.Abs(About.High));
    }
}

/// <summary>One output, as read off the <c>Result</c> record.</summary>
public sealed record OutputSpec(string Name, Form Form, Dimension? Dimension, Unit? Unit, OutputAttribute About);

/// <summary>One line of arithmetic that a person can follow with a hand calculator.</summary>
public sealed record WorkingLine(string Symbol, string Formula, string Substituted, double Value, string Unit);

/// <summary>A plotted line of a calculation, in shop units.</summary>
public sealed record PlottedCurve(string Name, string XLabel, string XUnit, IReadOnlyList<double> X, string YLabel, string YUnit, IReadOnlyList<double> Y);

/// <summary>An input that is not known, and how to get it.</summary>
public sealed record MissingInput(string Input, string Measure);
