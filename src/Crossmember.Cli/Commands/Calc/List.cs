using Crossmember.Engineering.Calculations;

namespace Crossmember.Cli.Commands.Calc;

internal static class List
{
    public static Verb Make() => new("list", "Every calculation with its id and title.", "crossmember calc list", "crossmember calc list --json") { Runs = (_, _) => Run() };

    private static Outcome.Result Run() => new(
        () => CatalogueJson.Of(CalculationList.All),
        output =>
        {
            foreach (var area in CalculationList.All.GroupBy(c => c.About.Area))
            {
                output.WriteLine(area.Key);
                var table = new TextTable();
                foreach (var c in area) table.Add(c.Id, c.About.Title);
                table.Write(output);
            }
        });
}
