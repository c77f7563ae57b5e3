using Crossmember.Engineering.Reading;

namespace Crossmember.Engineering.Brakes.Heat;

/// <summary>Friction of a lining over its temperature, by the two letters on its edge, and what it makes of a brake's torque. SI.</summary>
/// <remarks>
/// Formula:  all of the cold letter's friction up to 142 C, the hot letter's from 288 C, straight between; torque goes with friction^sensitivity
/// Valid:    up to 343 C, where the letters end; each letter is a band 0.1 wide, so two linings of the same letters may differ by a quarter
/// Source:   SAE J866 letters and the temperatures of SAE J661 that they are averaged over, from memory; brake-friction.csv
/// </remarks>
/// <param name="Hot">Friction at 288 C and above over the cold one.</param>
/// <param name="Sensitivity">Relative change of torque over that of friction: 1 for a disc.</param>
public readonly record struct FadeLine(double Hot, double Sensitivity)
{
    /// <summary>Middle of the points that the cold letter is taken from (200, 250, 300, 400 F), of those of the hot one (300 to 650 F), and the last of them, K.</summary>
    public const double Cold = 142 + 273.15, Full = 288 + 273.15, Told = 343 + 273.15;

    public static FadeLine None => new(1, 1);

    /// <summary>Friction over the cold one at a temperature in K.</summary>
    public double Friction(double temperature) =>
        temperature <= Cold ? 1 : temperature >= Full ? Hot : 1 + ((Hot - 1) * (temperature - Cold) / (Full - Cold));

    /// <summary>Torque over the cold one.</summary>
    public double Torque(double temperature)
    {
        var friction = Friction(temperature);
        return friction == 1 ? 1 : Sensitivity == 1 ? friction : Math.Pow(friction, Sensitivity);
    }

    private static readonly ReferenceTable s_table = ReferenceTable.Load("brake-friction.csv");
    private static readonly Dictionary<char, double> s_middle = s_table.Rows.ToDictionary(r => s_table.Text(r, "letter")[0], r => s_table.Number(r, "middle"));

    public static string Letters { get; } = string.Concat(s_middle.Keys);

    /// <summary>Null where the letters are none of the table.</summary>
    public static FadeLine? Of(string letters, double sensitivity) =>
        letters.Length == 2 && s_middle.TryGetValue(letters[0], out var cold) && s_middle.TryGetValue(letters[1], out var hot) ? new(hot / cold, sensitivity) : null;
}
