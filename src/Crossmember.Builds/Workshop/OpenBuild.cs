using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Folding;
using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Workshop;

/// <summary>A build opened at one position, with its plan compiled once and its sheets remembered.</summary>
public sealed class OpenBuild(StreamState state, Catalogue catalogue)
{
    private readonly Lazy<EvaluationPlan> _plan = new(() => new(catalogue, state.Build));
    private readonly Dictionary<(string Scenario, long Shop), Sheet> _sheets = [];
    private readonly Lock _lock = new();
    private Sheet? _last;

    public StreamState State => state;

    public Build Build => state.Build;

    /// <summary>Not empty: nothing may be written, and these name what wrote the rest.</summary>
    public bool IsReadOnly => state.Unreadable.Count > 0;

    public EvaluationPlan Plan => _plan.Value;

    public Approval? Approval => state.Build.Approvals is [.., var last] ? last : null;

    /// <summary>The sheet of a scenario; <c>approved</c> is the approved choices worked out today. Null where there is no such scenario.</summary>
    public Sheet? Sheet(string scenario, ShopFacts shop)
    {
        lock (_lock)
        {
            if (_sheets.TryGetValue((scenario, shop.Position), out var known)) return known;
            if (Work(scenario, shop) is not { } sheet) return null;
            return _last = _sheets[(scenario, shop.Position)] = sheet;
        }
    }

    private Sheet? Work(string scenario, ShopFacts shop) => scenario switch
    {
        Option.AsFound => Plan.Evaluate(Build, shop, (Scenario?)null, _last),
        Option.Approved => Approval is { } a ? Plan.Evaluate(Build, shop, Option.Approved, a.Choices, _last) : null,
        _ => Build.Scenarios.TryGetValue(scenario, out var s) ? Plan.Evaluate(Build, shop, s, _last) : null,
    };
}
