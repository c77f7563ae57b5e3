using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Files;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Tests.Evaluation;

/// <summary>A build file opened for a test, against the shipped catalogue.</summary>
internal sealed class Opened
{
    private Opened(Build build, ShopFacts shop) => (Build, Shop, Plan) = (build, shop, new(Catalogue.Shipped, build));

    private const string Working = """{"id":"working","base":null,"choices":{}}""";

    public Build Build { get; }

    public ShopFacts Shop { get; }

    public EvaluationPlan Plan { get; }

    /// <summary>A vehicle with the slots and scenarios given as JSON, the usual sets and whatever else is put at the top.</summary>
    public static Opened Vehicle(string slots, string scenarios = Working, string top = "")
    {
        var json = $$$"""
            {"format":"crossmember.build/1","id":"t","title":"Test","sets":{"gear":["1","2","3","4","5"],"range":["high","low"],"condition":["empty","loaded"]},{{{top}}}
             "slots":[{"id":"vehicle","parent":null,"title":"Vehicle","weight":0,"options":[{"id":"as-found","parameters":{"vehicle.wheelbase":"2560 mm"}}]}{{{slots}}}],
             "scenarios":[{{{scenarios}}}]}
            """;
        var faults = new Faults();
        var file = BuildFile.Read(System.Text.Encoding.UTF8.GetBytes(json), Catalogue.Shipped, faults);
        Assert.True(file is not null, string.Join('\n', faults.List));
        return new(file!.Build, file.Shop);
    }

    public Sheet Sheet(string scenario = "working") => Plan.Evaluate(Build, Shop, Build.Scenarios[scenario]);

    public static double Told(Sheet sheet, string key)
    {
        var state = sheet.Key(key);
        Assert.True(state is { Value.IsNumber: true }, $"{key} has no value");
        return sheet.Plan.Space.PatternOf(sheet.Plan.Space.KeyId(key)).Told(state!.Value.Value.Number);
    }
}
