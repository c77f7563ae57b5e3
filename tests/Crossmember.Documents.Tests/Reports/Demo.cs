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
        // A file has no position; as if it had been imported.
        var build = file.Build with { Position = 41 };
        return new EvaluationPlan(Catalogue.Shipped, build).Evaluate(build, file.Shop, scenario == Option.AsFound ? null : build.Scenarios[scenario]);
    }

    public static OpenedFile File(string name)
    {
        using var stream = typeof(Demo).Assembly.GetManifestResourceStream(name + ".json")!;
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        return BuildFile.Read(copy.ToArray(), Catalogue.Shipped, new Faults())!;
    }
}
