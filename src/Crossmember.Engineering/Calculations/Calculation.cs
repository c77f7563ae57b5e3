namespace Crossmember.Engineering.Calculations;

/// <summary>The unit of engineering: a pure function from named quantities to named quantities that shows its working and answers its checks.</summary>
/// <remarks>Derive from <see cref="Calculation{TInputs,TResult}"/>. One calculation, one file.</remarks>
public abstract class Calculation(Description about, IReadOnlyList<InputSpec> inputs, IReadOnlyList<OutputSpec> outputs)
{
    private readonly bool[] _onlyLimits =
        [.. inputs.Select(i => i.Optional && about.Checks.Any(c => c.Needs.Contains(i.Name)) && about.Trends.All(t => t.Input != i.Name))];

    public Description About { get; } = about;

    public IReadOnlyList<InputSpec> InputSpecs { get; } = inputs;

    public IReadOnlyList<OutputSpec> OutputSpecs { get; } = outputs;

    public string Id => About.Id;

    /// <summary>Evaluates on values in SI, in the order of <see cref="InputSpecs"/>. Never throws on values, never gives NaN.</summary>
    /// <param name="arguments">Absent values are allowed everywhere; defaults must already stand in where the caller wants them.</param>
    /// <param name="told">How much of it somebody will look at.</param>
    public abstract Outcome Run(ReadOnlySpan<Value> arguments, Told told);

    /// <inheritdoc cref="Run(ReadOnlySpan{Value}, Told)"/>
    /// <param name="working">Whether somebody will look at the arithmetic.</param>
    public Outcome Run(ReadOnlySpan<Value> arguments, bool working) => Run(arguments, working ? Told.Working : Told.Findings);

    /// <summary>Whether an input is only held against the result: it bears on the checks that need it, on no output.</summary>
    public bool IsOnlyLimit(int input) => _onlyLimits[input];

    public int InputIndex(string name) => IndexOf(InputSpecs, i => i.Name == name);

    public int OutputIndex(string name) => IndexOf(OutputSpecs, o => o.Name == name);

    public override string ToString() => Id;

    private static int IndexOf<T>(IReadOnlyList<T> list, Predicate<T> test)
    {
        for (var i = 0; i < list.Count; i++) if (test(list[i])) return i;
        return -1;
    }
}

/// <typeparam name="TInputs">A positional record of public quantities, each parameter with an <see cref="InputAttribute"/>.</typeparam>
/// <typeparam name="TResult">A positional record likewise, with <see cref="OutputAttribute"/>; nullable members may stay unknown.</typeparam>
public abstract class Calculation<TInputs, TResult>(Description about)
    : Calculation(about, RecordShape<TInputs>.Inputs, RecordShape<TResult>.Outputs)
    where TInputs : class
    where TResult : class
{
    /// <summary>More missing inputs than this are not read in a sentence: the first few are named there, and all of them under <see cref="Outcome.Missing"/>.</summary>
    private const int MostTold = 6, FirstTold = 3;

    /// <summary>The typed door.</summary>
    public Evaluation<TResult> Evaluate(TInputs inputs)
    {
        var arguments = RecordShape<TInputs>.Take(inputs);
        TResult? result = null;
        var outcome = Run(arguments, Told.Working, ref result);
        return new(result, outcome);
    }

    public override Outcome Run(ReadOnlySpan<Value> arguments, Told told)
    {
        TResult? result = null;
        return Run(arguments, told, ref result);
    }

    /// <summary>The arithmetic. Every required input is present and inside its definition; every check whose needs are met must be answered.</summary>
    /// <returns>Null where the inputs, though each allowed, have no answer together: every check is then unknown.</returns>
    protected abstract TResult? Solve(TInputs x, Worksheet w);

    private Outcome Run(ReadOnlySpan<Value> arguments, Told told, ref TResult? result)
    {
        var missing = new List<MissingInput>();
        var broken = new List<string>();
        var beyond = new List<string>();
        for (var i = 0; i < InputSpecs.Count; i++) Examine(InputSpecs[i], arguments[i], missing, broken, beyond);
        var worksheet = new Worksheet(told);
        if (broken.Count == 0 && !missing.Exists(m => Indispensable(m.Input)))
            result = Solve((TInputs)RecordShape<TInputs>.Make(arguments), worksheet);
        var outputs = result is null ? new Value[OutputSpecs.Count] : RecordShape<TResult>.Take(result);
        for (var i = 0; i < outputs.Length; i++)
            if (outputs[i].IsNumber && !double.IsFinite(outputs[i].Number))
            {
                outputs[i] = default;
                broken.Add($"{OutputSpecs[i].Name} has no finite answer for these inputs");
            }
        if (worksheet.Lacking.Count > 0)
            missing.RemoveAll(m => !Indispensable(m.Input) && !worksheet.Lacking.Contains(m.Input) && !About.Checks.Any(c => c.Needs.Contains(m.Input)));
        var findings = About.Checks.Count == 0 ? [] : Answers(worksheet, missing, broken, beyond);
        IReadOnlyList<string> cautions = broken.Count + beyond.Count + worksheet.Cautions.Count == 0
            ? About.Cautions : [.. About.Cautions, .. worksheet.Cautions, .. broken, .. beyond];
        return new(outputs, findings, worksheet.Working, worksheet.Curves, missing, cautions);
    }

    private bool Indispensable(string input) => !InputSpecs[InputIndex(input)].Optional;

    private static void Examine(InputSpec spec, Value value, List<MissingInput> missing, List<string> broken, List<string> beyond)
    {
        if (value.IsAbsent || value.Members is { Complete: false }) missing.Add(new(spec.Name, spec.About.Measure));
        else if (value.Members is { } members)
            foreach (var (name, member) in members.Items) ExamineOne(spec, member, $"{spec.Name} of {name}", broken, beyond);
        else ExamineOne(spec, value, spec.Name, broken, beyond);
    }

    private static void ExamineOne(InputSpec spec, Value value, string name, List<string> broken, List<string> beyond)
    {
        var outside = value.IsNumber ? spec.Outside(value.Number) : value.Text is { } text ? spec.Outside(text) : value.Curve?.Outside();
        if (outside is not null) broken.Add($"{name} {outside}");
        else if (value.IsNumber && !spec.InRange(value.Number)) beyond.Add($"{name} is outside the range this holds for ({spec.RangeText})");
    }

    private List<Finding> Answers(Worksheet worksheet, List<MissingInput> missing, List<string> broken, List<string> beyond)
    {
        var answers = new List<Finding>(About.Checks.Count);
        foreach (var check in About.Checks)
        {
            var given = worksheet.Findings.FirstOrDefault(f => f.Check == check.Id);
            if (given is { Value: { } v } && !double.IsFinite(v)) given = null;
            answers.Add(given switch
            {
                null => new(check.Id, Verdict.Unknown, worksheet.Worded ? Why(check, missing, broken, worksheet) : "", null, null, null, check.Sense, null),
                { Verdict: Verdict.Pass } when beyond.Count > 0 => given with { Verdict = Verdict.Caution, Text = worksheet.Worded ? $"{given.Text} But {beyond[0]}." : "" },
                _ => given,
            });
        }
        return answers;
    }

    private string Why(Check check, List<MissingInput> missing, List<string> broken, Worksheet worksheet)
    {
        if (broken.Count > 0) return $"Not known: {string.Join("; ", broken)}.";
        var lacking = missing.Where(m => Indispensable(m.Input) || check.Needs.Contains(m.Input) || worksheet.Lacking.Contains(m.Input)).ToList();
        if (lacking.Count == 0) return "Not known: these inputs have no answer together.";
        var told = lacking.Count > MostTold ? lacking[..FirstTold] : lacking;
        return "Not known: " + string.Join("; ", told.Select(m => InputSpecs[InputIndex(m.Input)].About is var a && a.Measure.Length > 0
            ? $"{a.Meaning} is missing ({a.Measure})" : $"{a.Meaning} is missing")) + (told.Count < lacking.Count ? $"; and {lacking.Count - told.Count} more." : ".");
    }
}
