using System.Text;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;

namespace Crossmember.Web.Features.Bench;

/// <summary>A calculation with what is typed into its form, worked as <c>calc run</c> works it.</summary>
public sealed class Workpiece(Calculation calculation)
{
    public Calculation Calculation => calculation;

    public TypedInputs Typed { get; } = new(calculation);

    /// <summary>What is typed as the input of <c>calc run</c>.</summary>
    public string Input { get; private set; } = "{}";

    /// <summary>What was read, in the order of the inputs; null where there are faults.</summary>
    public Value[]? Arguments { get; private set; }

    public FieldFaults Faults { get; private set; } = FieldFaults.None(calculation);

    /// <summary>Rows by the names of the first example that has the input, so that a person sees what is meant.</summary>
    public void OfferMembers()
    {
        foreach (var spec in calculation.InputSpecs.Where(s => s.Form == Form.Members && Typed.Members(s.Name).Count == 0))
            foreach (var name in Named(spec)) Typed.Member(spec.Name, name);
    }

    public FieldUnits Units(InputSpec spec, MeasureSystem measure) => FieldUnits.Of(calculation, spec, measure);

    /// <summary>Reads what is typed through the door of <c>calc run</c>.</summary>
    public void Read(MeasureSystem measure)
    {
        var utf8 = Typed.Json(s => Units(s, measure));
        var faults = new Faults();
        (Input, Arguments) = (Encoding.UTF8.GetString(utf8), ArgumentReader.Read(calculation, utf8, faults));
        Faults = FieldFaults.Of(calculation, faults.List);
    }

    private IEnumerable<string> Named(InputSpec spec) =>
        calculation.About.Examples.Select(e => CatalogueJson.InputOf(e)[spec.Name] as System.Text.Json.Nodes.JsonObject).FirstOrDefault(m => m is not null)?.Select(m => m.Key) ?? ["1"];
}
