using System.Runtime.CompilerServices;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Engineering.Calculations;

/// <summary>How much of an evaluation somebody will look at; what nobody reads is not made.</summary>
public enum Told
{
    /// <summary>Outputs, verdicts and limits without a sentence: for steps of a search or of an uncertainty.</summary>
    Numbers,

    /// <summary>With the sentences of the findings.</summary>
    Findings,

    /// <summary>With the working and the curves as well.</summary>
    Working,
}

/// <summary>Where a calculation writes its working and answers its checks while it runs.</summary>
/// <remarks>Working and sentences are only made when somebody will look at them: their interpolated text costs nothing otherwise.</remarks>
public sealed class Worksheet(Told told)
{
    private readonly List<WorkingLine> _working = [];
    private readonly List<Finding> _findings = [];
    private readonly List<PlottedCurve> _curves = [];
    private readonly List<string> _cautions = [];
    private readonly List<string> _lacking = [];

    /// <summary>Whether somebody will look at working and curves.</summary>
    public bool Shown { get; } = told == Told.Working;

    /// <summary>Whether somebody will read the sentences.</summary>
    public bool Worded { get; } = told != Told.Numbers;

    public IReadOnlyList<WorkingLine> Working => _working;

    public IReadOnlyList<Finding> Findings => _findings;

    public IReadOnlyList<PlottedCurve> Curves => _curves;

    public IReadOnlyList<string> Cautions => _cautions;

    /// <summary>Optional inputs that turned out to be needed.</summary>
    public IReadOnlyList<string> Lacking => _lacking;

    /// <summary>One line of arithmetic; <paramref name="value"/> is told in <paramref name="unit"/>.</summary>
    public void Line(string symbol, string formula, [InterpolatedStringHandlerArgument("")] ref WorkingText substituted, double value, string unit)
    {
        if (Shown && double.IsFinite(value)) _working.Add(new(symbol, formula, substituted.Text, value, unit));
    }

    public void Curve(PlottedCurve curve)
    {
        if (Shown) _curves.Add(curve);
    }

    /// <summary>A caution that holds for these inputs only.</summary>
    public void Caution(string text) => _cautions.Add(text);

    /// <summary>
    /// Says that an absent optional input is needed after all, as by the kind of a part that another input names: checks that are left unanswered ask for it,
    /// and of the other optional inputs only those that a check needs are asked for.
    /// </summary>
    public void Lacks(string input) => _lacking.Add(input);

    /// <summary>Answers a check against a limit: beyond it is a fail.</summary>
    /// <param name="watch">Where given, values between it and the limit are a caution.</param>
    /// <param name="beyond">Where the limit itself is uncertain: caution.</param>
    public void AtMost(
        string check, double value, double limit, string unit, string text, string? source = null, double? watch = null, Verdict beyond = Verdict.Fail) =>
        _findings.Add(new(check, value > limit ? beyond : value > watch ? Verdict.Caution : Verdict.Pass, text, value, limit, unit, Sense.AtMost, source));

    /// <inheritdoc cref="AtMost(string, double, double, string, string, string?, double?, Verdict)"/>
    public void AtLeast(
        string check, double value, double limit, string unit, string text, string? source = null, double? watch = null, Verdict beyond = Verdict.Fail) =>
        _findings.Add(new(check, value < limit ? beyond : value < watch ? Verdict.Caution : Verdict.Pass, text, value, limit, unit, Sense.AtLeast, source));

    /// <summary>Answers a check in words, where no single limit decides.</summary>
    public void Answer(string check, Verdict verdict, string text, double? value = null, string? unit = null, string? source = null) =>
        _findings.Add(new(check, verdict, text, value, null, unit, null, source));

    /// <inheritdoc cref="AtMost(string, double, double, string, string, string?, double?, Verdict)"/>
    public void AtMost(
        string check, double value, double limit, string unit, [InterpolatedStringHandlerArgument("")] ref FindingText text, string? source = null, double? watch = null,
        Verdict beyond = Verdict.Fail) => AtMost(check, value, limit, unit, text.Text, source, watch, beyond);

    /// <inheritdoc cref="AtMost(string, double, double, string, string, string?, double?, Verdict)"/>
    public void AtLeast(
        string check, double value, double limit, string unit, [InterpolatedStringHandlerArgument("")] ref FindingText text, string? source = null, double? watch = null,
        Verdict beyond = Verdict.Fail) => AtLeast(check, value, limit, unit, text.Text, source, watch, beyond);

    /// <inheritdoc cref="Answer(string, Verdict, string, double?, string?, string?)"/>
    public void Answer(
        string check, Verdict verdict, [InterpolatedStringHandlerArgument("")] ref FindingText text, double? value = null, string? unit = null, string? source = null) =>
        Answer(check, verdict, text.Text, value, unit, source);
}

/// <summary>Builds the "numbers put in" text of a working line, only when the sheet is shown.</summary>
[InterpolatedStringHandler]
public ref struct WorkingText
{
    private DefaultInterpolatedStringHandler _inner;
    private readonly bool _on;

    public WorkingText(int literalLength, int formattedCount, Worksheet sheet, out bool shouldAppend)
    {
        _on = shouldAppend = sheet.Shown;
        _inner = _on ? new(literalLength, formattedCount, System.Globalization.CultureInfo.InvariantCulture) : default;
    }

    public string Text => _on ? _inner.ToString() : "";

    public void AppendLiteral(string s) => _inner.AppendLiteral(s);

    /// <summary>Numbers are shown to five significant figures unless a format is given.</summary>
    public void AppendFormatted(double value) => _inner.AppendFormatted(Figures.Short(value));

    public void AppendFormatted(double value, string format) => _inner.AppendFormatted(value, format);

    public void AppendFormatted<T>(T value) => _inner.AppendFormatted(value);
}

/// <summary>Builds the sentence of a finding, only where somebody will read it.</summary>
[InterpolatedStringHandler]
public ref struct FindingText
{
    private DefaultInterpolatedStringHandler _inner;
    private readonly bool _on;

    public FindingText(int literalLength, int formattedCount, Worksheet sheet, out bool shouldAppend)
    {
        _on = shouldAppend = sheet.Worded;
        _inner = _on ? new(literalLength, formattedCount) : default;
    }

    public string Text => _on ? _inner.ToStringAndClear() : "";

    public void AppendLiteral(string s) => _inner.AppendLiteral(s);

    public void AppendFormatted<T>(T value) => _inner.AppendFormatted(value);

    public void AppendFormatted<T>(T value, string? format) => _inner.AppendFormatted(value, format);

    public void AppendFormatted(string? value) => _inner.AppendFormatted(value);
}
