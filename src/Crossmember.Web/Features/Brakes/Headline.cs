using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Web.Features.Areas;

namespace Crossmember.Web.Features.Brakes;

/// <summary>One question of the overview and where its answer stands.</summary>
/// <param name="Part">The part of the page that tells more.</param>
/// <param name="Checks">Checks whose worst verdict answers it; none: all that the calculation raises.</param>
/// <param name="Figures">Outputs with the word before each.</param>
public sealed record Headline(string Title, string Part, string Calculation, IReadOnlyList<string> Checks, params (string Label, string Output)[] Figures)
{
    public string Term => Calculation;

    /// <summary>In the order in which they are asked.</summary>
    public static IReadOnlyList<Headline> All { get; } = [];
}

/// <summary>A figure on this side, and on the other where it reads differently.</summary>
public sealed record HeadlineFigure(string Label, string Now, string? Was);

/// <summary>The answer in one loading.</summary>
public sealed record HeadlineCell(Verdict? Verdict, IReadOnlyList<HeadlineFigure> Figures);

/// <summary>A question with its answer in every loading, or one for all of them.</summary>
public sealed record HeadlineRow(Headline About, IReadOnlyList<(HeadlineCell? Cell, int Span)> Cells)
{
    /// <summary>Lightest first, as the columns.</summary>
    public static IReadOnlyList<HeadlineRow> Of(AreaView view, MeasureSystem measure)
    {
        List<string> conditions = [.. view.Conditions.Reverse()];
        var rows = new List<HeadlineRow>();
        foreach (var about in Headline.All)
        {
            if (view.Now.Instance(about.Calculation) is { } whole) rows.Add(new(about, [(Cell(view, about, whole, measure), Math.Max(1, conditions.Count))]));
            else if (conditions.Select(c => view.Now.Instance($"{about.Calculation}[condition={c}]")).ToList() is var each && each.Exists(e => e is not null))
                rows.Add(new(about, [.. each.Select(e => (e is null ? null : Cell(view, about, e, measure), 1))]));
        }
        return rows;
    }

    private static HeadlineCell Cell(AreaView view, Headline about, InstanceState state, MeasureSystem measure)
    {
        var past = view.Past(state);
        var findings = Sheet.FindingsOf(state).Where(f => about.Checks.Count == 0 || about.Checks.Contains(f.Finding.Check)).Select(f => f.Finding.Verdict).ToList();
        return new(findings.Count == 0 ? null : findings.Max(), [.. about.Figures.Select(f => Figure(f, state, past, measure))]);
    }

    private static HeadlineFigure Figure((string Label, string Output) figure, InstanceState now, InstanceState? past, MeasureSystem measure)
    {
        var i = now.Instance.Calculation.OutputIndex(figure.Output);
        string Said(InstanceState state) => FigureText.Of(now.Instance.Calculation.OutputSpecs[i], state.Outcome.Outputs[i], null, measure).Value;
        var (told, was) = (Said(now), past is null ? null : Said(past));
        return new(figure.Label, told, was == told ? null : was);
    }
}
