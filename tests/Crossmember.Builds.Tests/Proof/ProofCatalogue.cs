using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Parameters;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using UnitsNet;

namespace Crossmember.Builds.Tests.Proof;

/// <summary>A made-up catalogue, small enough to be worked by hand: scalar, per gear and range, per wheel, over a map, a publisher chain, per condition, over an open set.</summary>
internal static class ProofCatalogue
{
    private const string Table = """
        pattern,dimension,unit,merge,default,minimum,page,meaning,measure
        vehicle.wheelbase,length,mm,one,,,,,
        axle.{axle}.ratio,dimensionless,1,one,,,,,
        axle.{axle}.rating,mass,kg,one,,,,,
        gearbox.{gear}.ratio,dimensionless,1,one,,,,,
        transfer.{range}.ratio,dimensionless,1,one,,,,,
        wheel.{axle}.{side}.tire.diameter,length,mm,one,,,,,
        wheel.{axle}.{side}.radius,length,mm,one,,,,,
        wheel.squash,dimensionless,1,one,0.9,,,,
        body.offset,length,mm,sum,,,,,
        body.clearance,length,mm,one,,,,,
        driveline.crawl,dimensionless,1,one,,,,,
        winch.{winch}.line-pull,mass,kg,one,,,,,
        duty.crawl-target,dimensionless,1,one,,,,,
        duty.overall-limit,dimensionless,1,one,,,,,
        duty.reference-speed,speed,km/h,one,,,,,
        duty.walk-limit,speed,km/h,one,,,,,
        duty.clearance,length,mm,one,,,,,
        duty.recovery-factor,dimensionless,1,one,1.6,,,,
        mass.{condition}.total,mass,kg,one,,,,,
        mass.{condition}.moment-x,mass-moment,kg m,one,,,,,
        mass.{condition}.moment-y,mass-moment,kg m,one,,,,,
        mass.{condition}.moment-z,mass-moment,kg m,one,,,,,
        """;

    public static Catalogue Made { get; } = new(ParameterTable.Read(Table),
    [
        Bind(new Overall(), ["gear", "range"], [("gearRatio", "gearbox.{gear}.ratio"), ("transferRatio", "transfer.{range}.ratio"), ("axleRatio", "axle.rear.ratio"), ("overallLimit", "duty.overall-limit")], [], []),
        Bind(new Crawl(), [], [("gearRatios", "gearbox.*.ratio"), ("transferRatios", "transfer.*.ratio"), ("axleRatio", "axle.rear.ratio"), ("target", "duty.crawl-target")], [("crawl", "driveline.crawl")]),
        Bind(new Walk(), [], [("referenceSpeed", "duty.reference-speed"), ("crawl", "driveline.crawl"), ("limit", "duty.walk-limit")], []),
        Bind(new Radius(), ["axle", "side"], [("diameter", "wheel.{axle}.{side}.tire.diameter"), ("squash", "wheel.squash")], [("radius", "wheel.{axle}.{side}.radius")]),
        Bind(new Height(), [], [("radii", "wheel.*.*.radius"), ("offset", "body.offset"), ("need", "duty.clearance")], [("clearance", "body.clearance")]),
        Bind(new Balance(), ["condition"], [("total", "mass.{condition}.total"), ("momentX", "mass.{condition}.moment-x"), ("wheelbase", "vehicle.wheelbase"), ("frontLimit", "axle.front.rating"), ("rearLimit", "axle.rear.rating")], []),
        Bind(new Hold(), ["winch"], [("linePull", "winch.{winch}.line-pull"), ("mass", "mass.loaded.total"), ("need", "duty.recovery-factor")], []),
    ]);

    private static Binding Bind(Calculation c, string[] forEach, (string Input, string Key)[] inputs, (string Output, string Key)[] publishes, string[]? raises = null) =>
        new(c, forEach, inputs.ToDictionary(i => i.Input, i => i.Key), publishes.ToDictionary(p => p.Output, p => p.Key), raises);

    private static Description About(string id, params Check[] checks) => new()
    {
        Id = id, Version = 1, Title = id, Purpose = "proof", Formula = "see README", Validity = "proof", Sources = [], Examples = [], Checks = checks,
    };

    public sealed class Overall() : Calculation<Overall.Inputs, Overall.Result>(About("line.overall", new Check("steep", Sense.AtMost, "", "overallLimit")))
    {
        public sealed record Inputs([Input("")] Ratio GearRatio, [Input("", Default = 1)] Ratio TransferRatio, [Input("")] Ratio AxleRatio, [Input("")] Ratio? OverallLimit);

        public sealed record Result([Output("")] Ratio Overall);

        protected override Result Solve(Inputs x, Worksheet w)
        {
            var overall = x.GearRatio.DecimalFractions * x.TransferRatio.DecimalFractions * x.AxleRatio.DecimalFractions;
            if (x.OverallLimit is { } limit) w.AtMost("steep", overall, limit.DecimalFractions, "1", "");
            return new(Ratio.FromDecimalFractions(overall));
        }
    }

    public sealed class Crawl() : Calculation<Crawl.Inputs, Crawl.Result>(About("line.crawl", new Check("enough", Sense.AtLeast, "", "target")))
    {
        public sealed record Inputs([Input("")] Members<Ratio> GearRatios, [Input("")] Members<Ratio> TransferRatios, [Input("")] Ratio AxleRatio, [Input("")] Ratio? Target);

        public sealed record Result([Output("")] Ratio Crawl);

        protected override Result Solve(Inputs x, Worksheet w)
        {
            var crawl = x.GearRatios.Items.Max(g => g.Value.DecimalFractions) * x.TransferRatios.Items.Max(g => g.Value.DecimalFractions) * x.AxleRatio.DecimalFractions;
            if (x.Target is { } target) w.AtLeast("enough", crawl, target.DecimalFractions, "1", "");
            return new(Ratio.FromDecimalFractions(crawl));
        }
    }

    public sealed class Walk() : Calculation<Walk.Inputs, Walk.Result>(About("line.walk", new Check("slow", Sense.AtMost, "", "limit")))
    {
        public sealed record Inputs([Input("", "km/h")] Speed ReferenceSpeed, [Input("")] Ratio Crawl, [Input("", "km/h")] Speed? Limit);

        public sealed record Result([Output("", "km/h")] Speed Walk);

        protected override Result Solve(Inputs x, Worksheet w)
        {
            var walk = x.ReferenceSpeed.KilometersPerHour / x.Crawl.DecimalFractions;
            if (x.Limit is { } limit) w.AtMost("slow", walk, limit.KilometersPerHour, "km/h", "");
            return new(Speed.FromKilometersPerHour(walk));
        }
    }

    public sealed class Radius() : Calculation<Radius.Inputs, Radius.Result>(About("wheel.radius"))
    {
        public sealed record Inputs([Input("", "mm")] Length Diameter, [Input("")] Ratio Squash);

        public sealed record Result([Output("", "mm")] Length Radius);

        protected override Result Solve(Inputs x, Worksheet w) => new(x.Diameter * x.Squash.DecimalFractions / 2);
    }

    public sealed class Height() : Calculation<Height.Inputs, Height.Result>(About("body.height", new Check("enough", Sense.AtLeast, "", "need")))
    {
        public sealed record Inputs([Input("", "mm")] Members<Length> Radii, [Input("", "mm")] Length Offset, [Input("", "mm")] Length? Need);

        public sealed record Result([Output("", "mm")] Length Clearance);

        protected override Result Solve(Inputs x, Worksheet w)
        {
            var clearance = x.Radii.Items.Max(r => r.Value.Millimeters) + x.Offset.Millimeters;
            if (x.Need is { } need) w.AtLeast("enough", clearance, need.Millimeters, "mm", "");
            return new(Length.FromMillimeters(clearance));
        }
    }

    public sealed class Balance() : Calculation<Balance.Inputs, Balance.Result>(
        About("mass.balance", new Check("front", Sense.AtMost, "", "frontLimit"), new Check("rear", Sense.AtMost, "", "rearLimit")))
    {
        public sealed record Inputs([Input("", "kg")] UnitsNet.Mass Total, [Input("", "kg m")] MassMoment MomentX, [Input("", "mm")] Length Wheelbase,
            [Input("", "kg")] UnitsNet.Mass? FrontLimit, [Input("", "kg")] UnitsNet.Mass? RearLimit);

        public sealed record Result([Output("", "kg")] UnitsNet.Mass FrontLoad, [Output("", "kg")] UnitsNet.Mass RearLoad);

        protected override Result Solve(Inputs x, Worksheet w)
        {
            var rear = x.MomentX.KilogramMeters / x.Wheelbase.Meters;
            var front = x.Total.Kilograms - rear;
            if (x.FrontLimit is { } f) w.AtMost("front", front, f.Kilograms, "kg", "");
            if (x.RearLimit is { } r) w.AtMost("rear", rear, r.Kilograms, "kg", "");
            return new(UnitsNet.Mass.FromKilograms(front), UnitsNet.Mass.FromKilograms(rear));
        }
    }

    public sealed class Hold() : Calculation<Hold.Inputs, Hold.Result>(About("winch.hold", new Check("holds", Sense.AtLeast, "", "need")))
    {
        public sealed record Inputs([Input("", "kg")] UnitsNet.Mass LinePull, [Input("", "kg")] UnitsNet.Mass Mass, [Input("")] Ratio? Need);

        public sealed record Result([Output("")] Ratio Factor);

        protected override Result Solve(Inputs x, Worksheet w)
        {
            var factor = x.LinePull / x.Mass;
            if (x.Need is { } need) w.AtLeast("holds", factor, need.DecimalFractions, "1", "");
            return new(Ratio.FromDecimalFractions(factor));
        }
    }
}
