using System.Text;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Files;
using Crossmember.Builds.Ripples;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;

namespace Crossmember.Web.Tests;

/// <summary>The invented flatbed that the tests look at: as found it cruises just under its redline, with 4.88 gears well over it.</summary>
public static class Bracken
{
    public static string Json { get; } = Resource("bracken.json");

    public static SheetImport File { get; } = BuildFile.Read(Encoding.UTF8.GetBytes(Json), Catalogue.Shipped, new Faults())!.Sheet!;

    public static Build Build => File.Build;

    public static EvaluationPlan Plan { get; } = new(Catalogue.Shipped, Build);

    public static Scenario Working => Build.Scenarios["working"];

    public static Slot Item(string id) => Build.Find(id)!;

    /// <summary>The sheet of the working scenario with further choices.</summary>
    public static Sheet With(params (string Slot, string Option)[] choices) =>
        Plan.Evaluate(Build, File.Shop, Working with { Choices = Working.Choices.SetItems(choices.Select(c => KeyValuePair.Create(c.Slot, c.Option))) });

    public static Ripple KnockOn(params (string Slot, string Option)[] choices) => Ripple.Between(With(), With(choices));

    private static string Resource(string name)
    {
        using var reader = new StreamReader(typeof(Bracken).Assembly.GetManifestResourceStream(name)!);
        return reader.ReadToEnd();
    }
}
