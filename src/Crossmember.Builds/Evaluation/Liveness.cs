using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Evaluation;

/// <summary>Which members of sets exist on the vehicle as chosen.</summary>
internal static class Liveness
{
    public static bool[] Of(KeySpace space, Build build, CompiledOption?[] inEffect)
    {
        var governed = new bool[space.MemberCount];
        foreach (var option in inEffect)
            if (option is not null)
                foreach (var member in option.Governs)
                    governed[member] = true;
        var free = Sets.Closed.Where(Sets.IsGoverned).Where(set => !space.MembersIn(set).Any(m => governed[m])).ToHashSet();
        var alive = new bool[space.MemberCount];
        for (var m = 0; m < alive.Length; m++)
        {
            var (set, member) = space.Member(m);
            alive[m] = Sets.Open.Contains(set) ? governed[m]
                : build.Sets.Of(set).Contains(member) && (governed[m] || !Sets.IsGoverned(set) || free.Contains(set));
        }
        return alive;
    }
}
