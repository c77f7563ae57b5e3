namespace Crossmember.Engineering.Recovery;

/// <summary>How to get what recovery rests on, the quickest way first: one wording for all its calculations.</summary>
internal static class HowToMeasureRecovery
{
    public const string LinePull = "read the winch's plate";

    public const string RatingLayer = "read the plate or ask the maker: most vehicle winches are rated on the first layer, trade winches often on the full drum";

    public const string DrumDiameter = "pay the rope out and caliper the bare drum";

    public const string DrumWidth = "measure between the flanges";

    public const string Flange = "caliper across the drum's end flange";

    public const string RopeDiameter = "caliper the rope over its crowns, not over its flats";

    public const string RopeLength = "read the rope's tag; or count layers and turns as it is paid out";

    public const string Wraps = "take the winch maker's figure; 5 is usual of vehicle winches, ASME B30.7 asks 2 of lifting winches";

    public const string FirstPull = "read the winch's plate: line pull on the first layer";

    public const string FullPull = "read the winch's plate: line pull on the full drum";

    public const string Mass = "drive it over a scale as loaded, one axle at a time, and add the readings";

    public const string Grade = "take the slope out of the spot: rise over run, 0.25 is 25 % or 14 deg";

    public const string Ground = "choose one: hard surface, grass or gravel, hard wet sand, soft dry sand, shallow mud, clinging clay, bog, wheels locked, "
        + "mired to the hubs, mired to the fenders, mired to the cab";

    public const string Margin = "take 1.5: pulls are estimates, and a winch at its limit stalls";

    public const string Distance = "pace from the vehicle to where an anchor would be";

    public const string Sheave = "take 0.10 for each block of wire rope; more where it is dirty or small for the rope";

    public const string PullNeeded = "estimate it from mass, ground and grade";

    public const string Breaking = "read the rope's certificate or tag; ask its maker";

    public const string RatedLoad = "read the mark forged or stamped on it; what bears no mark has no rating";

    public const string Angle = "hold an angle finder or a folding rule between them";
}
