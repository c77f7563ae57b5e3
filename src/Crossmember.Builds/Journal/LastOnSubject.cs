namespace Crossmember.Builds.Journal;

/// <summary>The last of some facts on each subject, above it or beneath it: what a fact must name in <c>after</c>.</summary>
public sealed class LastOnSubject
{
    private readonly Dictionary<string, (int Order, Guid Id)> _exact = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (int Order, Guid Id)> _within = new(StringComparer.Ordinal);
    private int _next;

    public void Add(string subject, Guid id)
    {
        var last = (_next++, id);
        _exact[subject] = _within[subject] = last;
        foreach (var above in Subject.Above(subject)) _within[above] = last;
    }

    public Guid? On(string subject)
    {
        var last = (Order: -1, Id: default(Guid));
        if (_within.TryGetValue(subject, out var beneath)) last = beneath;
        foreach (var above in Subject.Above(subject))
            if (_exact.TryGetValue(above, out var there) && there.Order > last.Order)
                last = there;
        return last.Order < 0 ? null : last.Id;
    }
}
