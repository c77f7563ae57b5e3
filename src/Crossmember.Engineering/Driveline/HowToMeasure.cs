namespace Crossmember.Engineering.Driveline;

/// <summary>How to get the numbers of a driveline, the quickest way first: one wording for all its calculations.</summary>
internal static class HowToMeasure
{
    public const string TireDiameter = "read the size on the sidewall, or tape once around the tread and divide by 3.1416";

    public const string AxleRatio = "read the tag, or with the axle on stands count propeller shaft turns for ten turns of both wheels together";

    public const string GearRatio = "count input turns for ten output turns in the gear, or look the gearbox up by its casting number";

    public const string GearRatios = "count input turns for ten output turns in every gear, or look the gearbox up by its casting number";

    public const string TransferRatio = "count input turns for ten output turns in this range, or look the transfer case up by its casting number";

    public const string TransferRatios = "count input turns for ten output turns in every range, or look the transfer case up by its casting number";

    public const string CruiseSpeed = "choose the speed the customer wants to cruise at";

    public const string Redline = "ask the machine shop that built the engine, or take the maker's figure";
}
