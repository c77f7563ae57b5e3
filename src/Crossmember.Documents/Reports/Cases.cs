using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;

namespace Crossmember.Documents.Reports;

/// <summary>Finds the cases that somebody asks for by a name.</summary>
public static class Cases
{
    /// <summary>One instance by its id, or all that exist in the sheet by the plain id of their calculation; null with a fault that names the nearest.</summary>
    public static IReadOnlyList<Case>? Of(Sheet sheet, string name, MeasureSystem measure, Faults faults)
    {
        var living = sheet.Instances.OfType<InstanceState>().ToList();
        var asked = living.Where(i => i.Instance.Id == name || i.Instance.Calculation.Id == name).ToList();
        if (asked.Count > 0) return [.. asked.Select(i => Case.Of(sheet, i, measure))];
        if (name.Contains('[', StringComparison.Ordinal) || CalculationList.Find(name) is null)
            faults.Add("", $"there is no '{name}' in '{sheet.Scenario}'", $"nearest: {Nearest.To(name, living.SelectMany(i => (string[])[i.Instance.Id, i.Instance.Calculation.Id]).Distinct(StringComparer.Ordinal))}");
        else faults.Add("", $"'{name}' is not worked out in '{sheet.Scenario}'", "no item chosen there has what it is for; without a build it takes its inputs from a file");
        return null;
    }
}
