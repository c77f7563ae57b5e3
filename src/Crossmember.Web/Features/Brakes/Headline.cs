using System.Globalization;
using Crossmember.Builds.Evaluation;
using Crossmember.Documents.Curves;
using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Web.Features.Areas;

namespace Crossmember.Web.Features.Brakes;

/// <summary>How a figure of the overview is told.</summary>
public enum Tell
{
    /// <summary>In the reader's unit, to three figures.</summary>
    Plain,

    /// <summary>As a share of gravity.</summary>
    Gravities,

    Percent,

    /// <summary>How much more of its grip the front uses than the rear, in words.</summary>
    Ahead,
}

/// <summary>A figure of the overview: the word before it, in which <see cref="Grip"/> stands for the grip of the road, and the output that it is.</summary>
public sealed record Figured(string Label, string Output, Tell As = Tell.Plain)
{
    public const string Grip = "{duty.grip}";
}

/// <summary>One question of the overview and where its answer stands.</summary>
/// <param name="Part">The part of the page that tells more.</param>
/// <param name="Checks">Checks whose worst verdict answers it; none: all that the calculation raises.</param>
public sealed record Headline(string Title, string Part, string Calculation, IReadOnlyList<string> Checks, params IReadOnlyList<Figured> Figures)
{
    /// <summary>Check of another calculation that answers it as well.</summary>
    public (string Instance, string Check)? Also { get; init; }

    /// <summary>What goes before the sentence of the worst check where that is not good, beside the figures; null: no sentence.</summary>
    public string? Why { get; init; }

    /// <summary>Nothing is asked of a booster that is not there.</summary>
    public bool OfBooster { get; init; }

    /// <summary>Left out until there is a figure.</summary>
    public bool OnlyTold { get; init; }

    /// <summary>In the order in which they are asked.</summary>
    public static IReadOnlyList<Headline> All { get; } =
    [
        new("Gauges", "gauge", "brakes.gauge-check", ["readings"], new("readings", "count"), new("as the sheet expects", "within")) { OnlyTold = true, Why = "pressures on these pages may be off: " },
        new("Which end locks first", "balance", "brakes.lock-order", [], new("first to lock", "first"), new("at", "deceleration", Tell.Gravities), new("with", "pedalForce"), new($"on a road of grip {Figured.Grip} uses", "efficiency", Tell.Percent)),
        new("By the rule picked", "balance", "brakes.adhesion", [], new("", "frontOverRear", Tell.Ahead), new("at", "worst", Tell.Gravities)),
        new("A hard stop", "pedal", "brakes.stop", [], new("takes", "pedalForce"), new("all the leg makes", "atMost", Tell.Gravities), new("stops in", "distance")),
        new("Booster dead", "failures", "brakes.failure", ["booster-dead"], new Figured("leaves", "boosterDead", Tell.Gravities)) { OfBooster = true },
        new("Front circuit lost", "failures", "brakes.failure", ["front-lost"], new Figured("leaves", "frontLost", Tell.Gravities)),
        new("Rear circuit lost", "failures", "brakes.failure", ["rear-lost"], new Figured("leaves", "rearLost", Tell.Gravities)),
        new("A burst hose", "wheels", "brakes.layout", ["circuits"], new Figured("wheels still braking", "wheelsLeft")),
        new("Parts that suit each other", "wheels", "brakes.layout", ["alike", "residual-front", "residual-rear", "metering", "master", "fluid"]),
        new("Pedal left", "pedal", "brakes.pedal-travel", ["floor", "reserve", "stroke", "free-play"], new("of the way used at high line pressure", "usedShare", Tell.Percent), new("at 50 lbf", "reserveUsed", Tell.Percent)),
        new("Booster", "pedal", "brakes.pedal-line", [], new("runs out at", "knee"), new("high line pressure takes", "hardForce"), new("dead", "deadForce")) { OfBooster = true, Why = "" },
        new("Strokes left, engine dead", "pedal", "brakes.booster-reserve", [], new Figured("helped strokes", "strokes")) { OfBooster = true },
        new("Hill it parks on", "parking", "brakes.parking", [], new("by grip facing up", "steepestUp", Tell.Percent), new("facing down", "steepestDown", Tell.Percent), new("pull", "effort")) { Also = ("brakes.layout", "parking"), Why = "" },
        new("Long hill and stops", "heat", "brakes.drive-heat", [], new("front", "frontRotor"), new("rear", "rearRotor"), new("fluid in front", "frontFluid"), new("pedal hot", "pedalHot"), new("cold", "pedalCold")),
    ];
}

/// <summary>A figure on this side, and on the other where it reads differently.</summary>
public sealed record HeadlineFigure(string Label, string Now, string? Was);

/// <summary>The answer in one loading.</summary>
/// <param name="Says">What the worst check says, where there is no figure to tell.</param>
public sealed record HeadlineCell(Verdict? Verdict, IReadOnlyList<HeadlineFigure> Figures, string? Says);

/// <summary>A question with its answer in every loading, or one for all of them.</summary>
public sealed record HeadlineRow(Headline About, IReadOnlyList<(HeadlineCell? Cell, int Span)> Cells)
{
    /// <summary>Whether it says anything in any loading.</summary>
    public bool IsAnswered => Cells.Any(c => c.Cell is { Figures.Count: > 0 } or { Verdict: not (null or Verdict.Unknown) } or { Verdict: null, Says: not null });

    /// <summary>Lightest first, as the columns.</summary>
    public static IReadOnlyList<HeadlineRow> Of(AreaView view, MeasureSystem measure)
    {
        List<string> conditions = [.. view.Conditions.Reverse()];
        var unboosted = view.Now.Key("brakes.booster.kind")?.Value.Text == "none";
        var rows = new List<HeadlineRow>();
        foreach (var about in Headline.All)
        {
            if (about.OfBooster && unboosted) rows.Add(new(about, [(new(null, [], "none fitted"), Math.Max(1, conditions.Count))]));
            else if (view.Now.Instance(about.Calculation) is { } whole)
            {
                if (!about.OnlyTold || Told(whole, about.Figures[0], measure) is not null) rows.Add(new(about, [(Cell(view, about, whole, measure), Math.Max(1, conditions.Count))]));
            }
            else if (conditions.Select(c => view.Now.Instance($"{about.Calculation}[condition={c}]")).ToList() is var each && each.Exists(e => e is not null))
                rows.Add(new(about, [.. each.Select(e => (e is null ? null : Cell(view, about, e, measure), 1))]));
        }
        return rows;
    }

    /// <summary>A number as the overview tells it; null where the calculation does not give it.</summary>
    public static string? Told(InstanceState? state, Figured figure, MeasureSystem measure)
    {
        if (state?.Instance.Calculation.OutputIndex(figure.Output) is not (>= 0 and var i)) return null;
        var (spec, value) = (state.Instance.Calculation.OutputSpecs[i], state.Outcome.Outputs[i]);
        if (!value.IsNumber) return value.Text;
        return figure.As switch
        {
            Tell.Gravities => Gravities(spec.Dimension == Dimension.Acceleration ? value.Number / Loading.Gravity : value.Number),
            Tell.Percent => $"{CurveWords.Rounded(100 * value.Number)} %",
            Tell.Ahead => $"{(value.Number < 0 ? "rear ahead of front" : "front ahead of rear")} by {Math.Abs(value.Number).ToString("0.00", CultureInfo.InvariantCulture)} of grip",
            _ => Plain(spec, value.Number, measure),
        };
    }

    public static string Gravities(double z) => z.ToString("0.00", CultureInfo.InvariantCulture) + " g";

    private static string Plain(OutputSpec spec, double si, MeasureSystem measure)
    {
        var unit = Display.UnitFor(spec.Unit!, si, measure);
        var number = unit.FromSi(si);
        return unit.Code == "1" ? CurveWords.Rounded(number) : $"{(Math.Abs(number) >= 10 ? Math.Round(number).ToString("#,0", CultureInfo.InvariantCulture) : CurveWords.Rounded(number))} {Display.Symbol(unit)}";
    }

    private static HeadlineCell Cell(AreaView view, Headline about, InstanceState state, MeasureSystem measure)
    {
        var past = view.Past(state);
        var also = about.Also is { } other && view.Now.Instance(other.Instance) is { } there ? Sheet.FindingsOf(there).Select(f => f.Finding).FirstOrDefault(f => f.Check == other.Check) : null;
        var own = Sheet.FindingsOf(state).Select(f => f.Finding).Where(f => about.Checks.Count == 0 || about.Checks.Contains(f.Check));
        var worst = (also is null ? own : own.Append(also)).MaxBy(f => f.Verdict);
        // What another part found is told even where something here is worse: nothing else on this row tells it.
        var why = also is { Verdict: not Verdict.Pass } ? also : worst;
        List<HeadlineFigure> figures =
        [
            .. about.Figures.Select(f => (f.Label, Now: Told(state, f, measure), Was: Told(past, f, measure))).Where(f => f.Now is not null)
                .Select(f => new HeadlineFigure(Sentences.InMeasures(Label(view.Now, f.Label), measure), f.Now!, view.Then is null || f.Was == f.Now ? null : f.Was ?? Words.DontKnow)),
        ];
        return new(worst?.Verdict, figures, why is null or { Verdict: Verdict.Pass } ? null
            : figures.Count == 0 ? Sentences.InMeasures(ShopWords.Brief(why.Text), measure, why.Exact)
            : about.Why is { } before ? before + Sentences.InMeasures(ShopWords.Brief(why.Text), measure, why.Exact).Split(". ")[0].TrimEnd('.') : null);
    }

    private static string Label(Sheet sheet, string label) =>
        label.Replace(Figured.Grip, sheet.Key("duty.grip")?.Value is { IsNumber: true } grip ? grip.Number.ToString("0.00", CultureInfo.InvariantCulture) : "assumed", StringComparison.Ordinal);
}
