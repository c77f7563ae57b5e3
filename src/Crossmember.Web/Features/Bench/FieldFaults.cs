using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Reading;

namespace Crossmember.Web.Features.Bench;

/// <summary>What is wrong in a form, by the field it stands beside.</summary>
public sealed class FieldFaults
{
    private readonly ILookup<string, Fault> _byInput;

    private FieldFaults(Calculation calculation, IEnumerable<Fault> faults)
    {
        var known = calculation.InputSpecs.Select(s => s.Name).ToHashSet(StringComparer.Ordinal);
        _byInput = faults.ToLookup(f => Segments(f.Path) is [var input, ..] && known.Contains(input) ? input : "");
    }

    public static FieldFaults Of(Calculation calculation, IEnumerable<Fault> faults) => new(calculation, faults);

    public static FieldFaults None(Calculation calculation) => new(calculation, []);

    /// <summary>What belongs to no field.</summary>
    public IEnumerable<Fault> Loose => _byInput[""];

    /// <summary>One line for each fault of an input: where in it, what is wrong, what would be right.</summary>
    public IReadOnlyList<string> Of(InputSpec spec) => [.. _byInput[spec.Name].Select(f => $"{Where(spec, Segments(f.Path))}{f.Wrong}: {f.Right}.")];

    private static string Where(InputSpec spec, string[] path) => (spec.Form, path) switch
    {
        (Form.Members, [_, var member, ..]) => $"{member}: ",
        (Form.Curve, [_, var line, ..]) when int.TryParse(line, out var n) => $"line {n + 1}: ",
        _ => "",
    };

    private static string[] Segments(string pointer) =>
        [.. pointer.Split('/').Skip(1).Select(s => s.Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal))];
}
