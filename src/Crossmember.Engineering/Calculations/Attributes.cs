namespace Crossmember.Engineering.Calculations;

/// <summary>Describes one input on the parameter of an <c>Inputs</c> record. The type says the dimension; nullable means optional.</summary>
[AttributeUsage(AttributeTargets.Parameter)]
public sealed class InputAttribute(string meaning, string unit = "1") : Attribute
{
    public string Meaning { get; } = meaning;

    /// <summary>Unit of the range, the default and the worked examples; ignored for texts.</summary>
    public string Unit { get; } = unit;

    /// <summary>How to get it when it is missing, the quickest way first.</summary>
    public string Measure { get; init; } = "";

    /// <summary>The definition: at or below this the thing does not exist (a fault, not a finding).</summary>
    public double MoreThan { get; init; } = double.NegativeInfinity;

    /// <summary>The definition, with its edge allowed.</summary>
    public double AtLeast { get; init; } = double.NegativeInfinity;

    /// <summary>Validity: outside this range a pass becomes a caution that says so.</summary>
    public double Low { get; init; } = double.NegativeInfinity;

    public double High { get; init; } = double.PositiveInfinity;

    /// <summary>What stands in where nothing is given, always of basis assumed.</summary>
    public double Default { get; init; } = double.NaN;

    /// <summary>For texts that name one of a few things: all of them.</summary>
    public string[] OneOf { get; init; } = [];

    /// <summary>For texts in a notation of their own: an <see cref="ITextNotation"/> without state.</summary>
    public Type? Notation { get; init; }

    /// <summary>Unit code of the second axis, for curves.</summary>
    public string CurveUnit { get; init; } = "1";
}

/// <summary>What a text input must look like; any other text is outside its definition.</summary>
public interface ITextNotation
{
    /// <summary>What would be right, as the end of a sentence that begins with the input's name; null where the text can be read.</summary>
    string? Refuse(string text);
}

/// <summary>Describes one output on the parameter of a <c>Result</c> record, with the unit in which it is always told.</summary>
[AttributeUsage(AttributeTargets.Parameter)]
public sealed class OutputAttribute(string meaning, string unit = "1") : Attribute
{
    public string Meaning { get; } = meaning;

    public string Unit { get; } = unit;
}
