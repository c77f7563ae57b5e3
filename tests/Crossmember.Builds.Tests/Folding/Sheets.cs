using System.Text;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Files;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Tests.Folding;

/// <summary>Small sheets for one rule at a time.</summary>
internal static class Sheets
{
    /// <summary>A vehicle with a gearbox of two options and tires; parts of the text may be put in or replaced.</summary>
    public static string Text(string gearbox = "", string four = "", string top = "", string scenarios = """{"id":"working","choices":{}}""") => $$$"""
        {"format":"crossmember.build/1","id":"b","sets":{"gear":["1","2"],"range":["high"],"condition":["empty"]},{{{top}}}
         "slots":[{"id":"vehicle","parent":null},{"id":"tires","parent":"vehicle","options":[{"id":"at33","class":"upgrade","originality":0}]},
          {"id":"gearbox","parent":"vehicle",{{{gearbox}}}"options":[{"id":"as-found","parameters":{"gearbox.1.ratio":4}},{"id":"four","class":"replace","originality":0{{{four}}}}]}],
         "scenarios":[{{{scenarios}}}]}
        """;

    public static OpenedFile Read(string json)
    {
        var faults = new Faults();
        var file = BuildFile.Read(Encoding.UTF8.GetBytes(json), Catalogue.Shipped, faults);
        Assert.True(file is not null, string.Join('\n', faults.List));
        return file!;
    }

    public static IReadOnlyList<Fault> Faults(string json)
    {
        var faults = new Faults();
        Assert.Null(BuildFile.Read(Encoding.UTF8.GetBytes(json), Catalogue.Shipped, faults));
        return faults.List;
    }
}
