namespace Crossmember.Engineering.Brakes.Heat;

/// <summary>How the numbers of hot brakes are got, and the words of caution that belong to every one of its answers.</summary>
internal static class HowToMeasureHeat
{
    public const string
        Mass = "drive it over a scale, one axle at a time, and add the readings",
        Center = "rear axle load over total mass, times the wheelbase",
        CenterHeight = "weigh once level and once with one axle lifted two feet or more, springs blocked: rated lift, two people",
        Wheelbase = "tape from hub center to hub center on both sides and take the mean",
        Force = "comes from brakes and tires of the axle",
        Threshold = "comes from the kind of brake; or read a gauge at the bleeder when the wheel just begins to drag",
        Kind = "take a wheel off and look: disc or drum",
        HeatMass = "weigh one rotor or drum; or measure its diameter, thickness and the ring that the pads sweep",
        RotorShare = "comes from pads and rotor; 0.95 is common",
        SweptArea = "measure the outer and inner diameter of the ring that the pads sweep",
        Depth = "caliper the rotor's thickness or the drum's wall",
        Cooling = "comes from diameter and kind; better: time how long a brake at 200 C takes at a steady 40 mph to lose 63 % of what it is over the air",
        CoolingArea = "comes from the diameters of rotor or drum",
        LiningArea = "trace one pad on squared paper",
        CoolingTime = "drive at a steady 40 mph on a quiet road and read an infrared thermometer at stops: the time in which a hot brake loses 63 % of what it is over the air",
        RotorDiameter = "tape across the rotor",
        PadOuter = "caliper the outer edge of the bright ring", PadInner = "caliper the inner edge of the bright ring",
        Thickness = "caliper the rotor where the pads rub",
        Vented = "look at its edge: vented or solid",
        RotorMass = "put the bare rotor on a scale", DrumMass = "put the bare drum on a scale",
        DrumDiameter = "caliper the drum inside", LiningWidth = "tape the lining across",
        PadArea = "trace one pad on squared paper",
        Valve = "comes from the valve; a gauge before and one behind it shows where it begins", Slope = "read gauges before and behind the valve above its knee: rise behind over rise before",
        RearShare = "comes from bores and bar; 1 but for two cylinders on a bar",
        Metering = "read a gauge at a front bleeder: line pressure at which it begins to rise",
        Braking = "0.6 is a hard stop on dry pavement", StopSpeed = "choose the speed of the stop: 60 mph is usual",
        Stops = "choose how many stops follow each other: 15 is a usual test", From = "choose the speed at which braking begins", To = "choose the speed at which it ends",
        Interval = "choose the time from one stop to the next: 45 s is a usual test",
        Grade = "read the sign at the top of the worst hill on the trip: 7 % is 0.07", Length = "read the map", Speed = "take the speed at which it will be driven down",
        EnginePower = "0 unless it is known: hold the speed by the gear alone on a hill of known grade, then it is what the hill gives",
        Rolling = "take 0.015 on pavement", DragArea = "coast down from 50 mph, or take 0.45 to 0.6 times height times width", AirDensity = "take 1.2 near sea level",
        Start = "warm brakes on the road are near 80 C", Air = "choose the day: 25 C is mild",
        Rotating = "wheels, shafts and engine turn as well: 1.04 is common with the clutch out",
        Lining = "ask the maker of the linings what they are: organic, semi-metallic, ceramic or sintered",
        Letters = "read the two letters at the end of the code on the lining's edge",
        Sensitivity = "comes from the kind of brake: 1 for a disc, 2 and more for a drum that helps itself",
        Fluid = "read the cap of the reservoir and the last bill",
        FluidState = "new or old: fluid takes up water from the first day; count it as old after a year",
        Grip = "take 0.7 on dry pavement or firm dry ground",
        Pedal = "comes from pedal, master cylinder and booster",
        SpeedProfile = "drive the trip with a recorder of position and take speed over distance", HeightProfile = "take height over distance from a map or recorder";

    public const string
        Estimate = "Brake temperatures reckoned beforehand may be off by a third: prove the finished vehicle on a closed road with temperature paint or a probe, empty and loaded, with a qualified brake specialist.",
        Grades = "Go down a grade in the gear that holds the vehicle and brake in spells; no calculation replaces that.",
        Makers = "What the maker of rotors, linings and fluid marks or prints governs; local rules decide what may be fitted.";
}
