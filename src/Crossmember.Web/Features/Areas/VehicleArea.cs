namespace Crossmember.Web.Features.Areas;

/// <summary>A part of the Vehicle pages: which calculations stand on it and the caution that belongs there.</summary>
/// <param name="Path">Last part of its address; empty: the masses themselves.</param>
/// <param name="Prefixes">How the ids of its calculations begin.</param>
public sealed record VehicleArea(string Path, string Title, string Term, string Lead, string Caution, params string[] Prefixes)
{
    public static IReadOnlyList<VehicleArea> All { get; } =
    [
        new("", "Mass", "the mass ledger, center of gravity, axle and wheel loads", "", ""),
        new("tipping", "Tipping", "static stability factor, tip angles, load transfer",
            "How the loaded vehicle leans, tips and moves its load: what stands on the roof or hangs behind the axle decides.",
            "A tip angle is an upper bound and never a safe slope. Changed suspension, tires and roof loads may need approval: local law and a qualified inspector decide.",
            "stability.", "mass.added-load", "mass.center-of-gravity", "model/weighing"),
        new("springs", "Springs", "rates, ride height, ride frequency, roll",
            "What the springs carry, how high it stands and how it rides, and what would restore it.",
            "New U-bolts whenever springs come off, torqued again after the first miles; bump stops that meet before the spring, the shaft or the hose does. Compressed coils and torsion bars can kill: use the right tools, and let somebody qualified check the work.",
            "springs."),
        new("steering", "Steering", "geometry, effort, linkage through its travel",
            "Whether it turns tight enough, light enough, and straight when the springs work.",
            "Steering parts hold lives: castle nuts pinned, no bent or heated arms, no welded links, frame looked at for cracks where the box sits. Have the work inspected by a qualified person; local law may ask for approval.",
            "steering."),
        new("after-a-lift", "After a lift", "angles, shafts, hoses after a lift or axle change",
            "What other springs or another axle ask of shafts, joints, trackbar, caster and hoses.",
            "Measure with the weight on the wheels and again at full droop and bump, wheels locked both ways. Hoses that tighten and shafts that come apart kill: try every one through its travel before the road.",
            "lift."),
        new("recovery", "Recovery", "winch, rope, blocks, anchors, points",
            "What the winch can pull, what is needed, and which link is the weakest.",
            "A rope or hook that lets go kills. Use marked ratings only, never a tow ball; gloves, a damper on the rope, nobody near or in line with it, and nobody lifted. Makers' instructions and local rules come first.",
            "recovery."),
    ];

    public static VehicleArea? Find(string path) => All.FirstOrDefault(a => a.Path == path && path.Length > 0);
}
