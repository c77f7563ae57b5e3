using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;

namespace Crossmember.Engineering.Tests.Steering;

/// <summary>Linkages for the tests, run through the door; lengths in mm, angles in deg.</summary>
internal static class LinkagePlane
{
    public const double Deg = Math.PI / 180;

    /// <summary>A linkage that lies in one level plane, upright kingpins.</summary>
    public static JsonObject Travel((double X, double Y) pivot, (double X, double Y) pitman, (double X, double Y) arm, double kingpins, double lockTo, string more = "") => Door.Run("steering.linkage-travel", $$"""
        {"pitmanShaft":"upright","pivotX":"{{pivot.X:R}} mm","pivotY":"{{pivot.Y:R}} mm","pivotZ":"-150 mm","pitmanX":"{{pitman.X:R}} mm","pitmanY":"{{pitman.Y:R}} mm","pitmanZ":"-150 mm",
         "armX":"{{arm.X:R}} mm","armY":"{{arm.Y:R}} mm","armZ":"-150 mm","kingpinDistance":"{{kingpins:R}} mm","pointsRideHeight":"150 mm","caster":"0 deg","inclination":"0 deg",
         "innerAngles":{"left":"{{lockTo:R}} deg","right":"{{lockTo:R}} deg"},"outerAngles":{"left":"{{lockTo:R}} deg","right":"{{lockTo:R}} deg"}{{more}}}
        """);

    public static JsonObject Bump((double X, double Y, double Z) pitman, (double X, double Y, double Z) arm, double kingpins, double ride, string more) => Door.Run("steering.bump-steer", $$"""
        {"pitmanX":"{{pitman.X:R}} mm","pitmanY":"{{pitman.Y:R}} mm","pitmanZ":"{{pitman.Z:R}} mm","armX":"{{arm.X:R}} mm","armY":"{{arm.Y:R}} mm","armZ":"{{arm.Z:R}} mm",
         "kingpinDistance":"{{kingpins:R}} mm","pointsRideHeight":"{{ride:R}} mm",{{more}}}
        """);

    public static (double[] X, double[] Y) Curve(JsonObject result, int which) =>
        (Values(result["curves"]![which]!["x"]!), Values(result["curves"]![which]!["y"]!));

    private static double[] Values(JsonNode axis) => [.. axis["values"]!.AsArray().Select(v => v!.GetValue<double>())];
}
