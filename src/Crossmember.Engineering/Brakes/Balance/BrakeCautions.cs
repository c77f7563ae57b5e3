namespace Crossmember.Engineering.Brakes.Balance;

/// <summary>What must stand beside every answer about brakes.</summary>
internal static class BrakeCautions
{
    private const string Qualified = "A changed brake system needs the eye of a qualified brake engineer or inspector and whatever inspection local law asks: this is help in choosing, not approval.";

    public static readonly string[] Balance =
    [
        Qualified, "Try it on a closed road before any other: slowly first, empty and loaded, wet as well as dry, with somebody watching which wheels lock.",
    ];

    public static readonly string[] Stopping =
    [
        Qualified, "Try it on a closed road: slowly first, then with the engine off and the assist used up. A test with a circuit opened is work for a proving ground and people who know how.",
    ];
}
