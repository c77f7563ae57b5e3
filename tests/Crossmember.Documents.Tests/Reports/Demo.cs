using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Files;
using Crossmember.Builds.Slots;
using Crossmember.Documents.Reports;
using Crossmember.Documents.Tests.Paper;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;

namespace Crossmember.Documents.Tests.Reports;

/// <summary>The invented vehicles of the demo shop.</summary>
internal static class Demo
{
    public static readonly string[] Builds = ["packhorse", "shieling", "steading", "croft"];

    public static Imprint Imprint(MeasureSystem measure = MeasureSystem.UsCustomary) => new(ReadBack.Instant, measure, new(2026, 11, 25, 8, 0, 0, TimeSpan.Zero));

    public static Sheet Sheet(string name, string scenario = "working")
    {
        var file = File(name);
        return new EvaluationPlan(Catalogue.Shipped, file.Build).Evaluate(file.Build, file.Shop, scenario == Option.AsFound ? null : file.Build.Scenarios[scenario]);
    }

    public static OpenedFile File(string name)
    {
        using var stream = typeof(Demo).Assembly.GetManifestResourceStream(name + ".json")!;
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        return BuildFile.Read(copy.ToArray(), Catalogue.Shipped, new Faults())!;
    }
}
