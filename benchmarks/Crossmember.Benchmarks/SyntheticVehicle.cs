using System.Text;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Files;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Reading;
using UnitsNet;

namespace Crossmember.Benchmarks;

/// <summary>A made-up vehicle whose sheet has 150 bound calculations beside the shipped ones: chains of three, each with a check, over keys of its own.</summary>
internal static class SyntheticVehicle
{
    private const int Bound = 150;

    public static Catalogue Catalogue { get; } = new(Table(), [.. ShippedBindings.All, .. Enumerable.Range(0, Bound).Select(Bind)]);

    public static Build Build { get; } = Open(Json());

    private const string Part = """
        ,{"id":"part-#","parent":"vehicle","title":"Part #","options":[
         {"id":"as-found","parameters":{"part.p#.load":"100 N"},"masses":[{"id":"it","mass":"5 kg","at":["# in","0 in","10 in"]}]},
         {"id":"other","class":"replace","originality":0.5,"parameters":{"part.p#.load":"120 N"},"masses":[{"id":"it","mass":"6 kg","at":["# in","0 in","11 in"]}],
          "prices":[{"id":"it","count":1,"each":"#.50 USD","category":"parts"}],"hours":[{"trade":"technician","distribution":{"kind":"pert","low":1,"mode":2,"high":4}}]}]}
        """;

    private const string Vehicle = """
        {"format":"crossmember.build/1","id":"bench","title":"Bench","sets":{"gear":["1","2","3","4"],"range":["high","low"],"condition":["empty","loaded"]},
         "conditions":{"loaded":[{"id":"crew","mass":"200 kg","at":["1 m","0 m","0.5 m"]}]},
         "weighings":[{"date":"2026-01-10","wheels":{"front":{"left":"500 kg","right":"510 kg"},"rear":{"left":"450 kg","right":"455 kg"}},
          "wheelbase":"2.6 m","height":"0.7 m","datumHeight":"0.5 m","condition":"empty","fitted":{}}],
         "slots":[{"id":"vehicle","parent":null,"title":"Vehicle","options":[{"id":"as-found","parameters":{
           "vehicle.wheelbase":"2.6 m","duty.cruise-speed":"60 mph","engine.redline":"3800 rpm",
           "gearbox.1.ratio":6.4,"gearbox.2.ratio":3.1,"gearbox.3.ratio":1.7,"gearbox.4.ratio":1,"transfer.high.ratio":1,"transfer.low.ratio":2,
           "axle.*.ratio":4.27,"axle.*.rating":"1500 kg","axle.*.track":"1.5 m","wheel.*.*.tire.load-rating":"900 kg"}}]},
          {"id":"tires","parent":"vehicle","title":"Tires","options":[{"id":"as-found","parameters":{"wheel.*.*.tire.size":"31x10.50R15LT"}},
           {"id":"at33","class":"upgrade","originality":0.2,"masses":[],"parameters":{"wheel.*.*.tire.size":"33x10.50R15LT"}}]}SLOTS],
         "scenarios":[{"id":"working","base":null,"choices":{}},{"id":"tall","base":"working","choices":{"tires":"at33"}},{"id":"all","base":"working","choices":{CHOICES}}],
         "shop":{"currency":"USD","rates":{"technician":"95.00 USD"}}}
        """;

    /// <summary>120 slots, two options each; <c>tall</c> changes one parameter of <c>working</c>, the tire size.</summary>
    public static byte[] Json() => Encoding.UTF8.GetBytes(Vehicle
        .Replace("SLOTS", string.Concat(Parts.Select(i => Part.Replace("#", $"{i}", StringComparison.Ordinal))), StringComparison.Ordinal)
        .Replace("CHOICES", string.Join(',', Parts.Select(i => $"\"part-{i}\":\"other\"")), StringComparison.Ordinal));

    /// <summary>Without the keys that only the synthetic catalogue knows.</summary>
    public static byte[] PlainJson() => Encoding.UTF8.GetBytes(Vehicle.Replace("SLOTS", "", StringComparison.Ordinal).Replace("CHOICES", "", StringComparison.Ordinal));

    private static IEnumerable<int> Parts => Enumerable.Range(0, 120);

    private static Build Open(byte[] json)
    {
        var faults = new Faults();
        return BuildFile.Read(json, Catalogue, faults)?.Build ?? throw new InvalidOperationException(string.Join('\n', faults.List));
    }

    private static ParameterTable Table()
    {
        var rows = ParameterTable.Shipped.All.ToList();
        for (var i = 0; i < Bound; i++) rows.Add(ForceKey($"chain.c{i}"));
        for (var i = 0; i < 120; i++) rows.Add(ForceKey($"part.p{i}.load"));
        return new(rows);
    }

    private static ParameterPattern ForceKey(string key) =>
        new(key) { Form = Form.Number, Dimension = Engineering.Quantities.Dimension.Force, Unit = Engineering.Quantities.Units.Require("N") };

    private static Binding Bind(int i) => new(new Link(i), [],
        new Dictionary<string, string> { ["tireDiameter"] = "axle.rear.tire-diameter", ["load"] = $"part.p{i % 120}.load", ["before"] = i % 3 == 0 ? "part.p0.load" : $"chain.c{i - 1}" },
        new Dictionary<string, string> { ["force"] = $"chain.c{i}" });

    /// <summary>Rests on the tire, so that changing the tire moves all of them: the worst case.</summary>
    private sealed class Link(int number) : Calculation<Link.In, Link.Out>(new()
    {
        Id = $"bench.link-{number}", Version = 1, Title = "Link", Purpose = "bench", Formula = "F = (load + before) D", Validity = "bench", Sources = [], Examples = [],
        Checks = [new("small", Sense.AtMost, "Is it small?")],
    })
    {
        public sealed record In([Input("tire", "m")] Length TireDiameter, [Input("load", "N")] Force Load, [Input("before", "N")] Force Before);

        public sealed record Out([Output("force", "N")] Force Force);

        protected override Out Solve(In x, Worksheet w)
        {
            var f = (x.Load.Newtons + (0.5 * x.Before.Newtons)) * x.TireDiameter.Meters;
            w.Line("F", "(load + before / 2) D", $"({x.Load.Newtons} + {x.Before.Newtons} / 2) x {x.TireDiameter.Meters}", f, "N");
            w.AtMost("small", f, 500, "N", $"{f:0.0} N of 500 N.");
            return new(Force.FromNewtons(f));
        }
    }
}
