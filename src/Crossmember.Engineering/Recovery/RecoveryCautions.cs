namespace Crossmember.Engineering.Recovery;

/// <summary>What must be said wherever a rope is pulled, in one wording.</summary>
internal static class RecoveryCautions
{
    public const string StandClear = "A loaded rope that lets go kills: everybody stands clear by more than the length of rope that is out, nobody steps over it or stands inside its angle, "
        + "hood up or damper on the rope, gloves on.";

    public const string Marks = "The marked rating of each rope, block, shackle and strap governs, and the makers' instructions and local rules come first. A number here is no permission.";

    public const string NoLifting = "Vehicle recovery gear is not lifting gear: never lift a load or a person with it, never stand under what it holds.";

    public const string Qualified = "Have winch mounts and recovery points looked at by somebody qualified; local rules may ask for an inspection.";

    public const string NoBall = "Never pull from a tow ball: its stem is made for towing, breaks under a jerk, and the ball flies as far as the rope throws it.";
}
