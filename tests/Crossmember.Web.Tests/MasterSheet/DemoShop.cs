using System.Text;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Files;
using Crossmember.Engineering.Reading;

namespace Crossmember.Web.Tests.MasterSheet;

/// <summary>The four invented vehicles, each in every what-if that it has.</summary>
public static class DemoShop
{
    public static TheoryData<string, string> Sheets
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var build in (string[])["croft", "packhorse", "shieling", "steading"])
                foreach (var scenario in File(build).Build.Scenarios.Keys) data.Add(build, scenario);
            return data;
        }
    }

    public static SheetImport File(string build)
    {
        using var reader = new StreamReader(typeof(DemoShop).Assembly.GetManifestResourceStream($"demo/{build}.json")!);
        return BuildFile.Read(Encoding.UTF8.GetBytes(reader.ReadToEnd()), Catalogue.Shipped, new Faults())!.Sheet!;
    }

    public static Sheet Sheet(string build, string scenario)
    {
        var file = File(build);
        return new EvaluationPlan(Catalogue.Shipped, file.Build).Evaluate(file.Build, file.Shop, file.Build.Scenarios[scenario]);
    }
}
