namespace Crossmember.Engineering.Brakes.Heat;

/// <summary>A piece of road driven with constant acceleration, and the power that the brakes take on it. SI.</summary>
/// <remarks>
/// Formula:  F = -m k a - m g sin th - f m g cos th - rho CdA v^2 / 2; P = F v less what the engine holds, never below 0
/// Valid:    no wind; the driver brakes where the road asks for it and never drags the brakes against the engine
/// Source:   statics, docs/derivations/brake-heat.md
/// </remarks>
/// <param name="Acceleration">m/s2; negative slows.</param>
/// <param name="Push">What pushes it on at any speed and the brakes must hold, less rolling, N.</param>
/// <param name="AirFactor">rho CdA / 2, kg/m.</param>
/// <param name="Engine">Power that the engine holds back, W.</param>
public readonly record struct Stretch(double Duration, double Speed, double Acceleration, double Push, double AirFactor, double Engine)
{
    public const double Gravity = 9.80665;

    public double SpeedAt(double time) => Math.Max(0, Speed + (Acceleration * time));

    public double PowerAt(double speed) => Math.Max(0, ((Push - (AirFactor * speed * speed)) * speed) - Engine);

    public bool Brakes => PowerAt(Speed) > 0 || PowerAt(SpeedAt(Duration)) > 0 || PowerAt(SpeedAt(Duration / 2)) > 0;

    public static Stretch Stand(double duration) => new(duration, 0, 0, 0, 0, 0);
}

/// <summary>What a vehicle brings to every stretch. SI.</summary>
/// <param name="Rotating">Mass with what turns over mass.</param>
/// <param name="Engine">Power that the engine holds back wherever the vehicle is braked, W.</param>
public readonly record struct Driven(double Mass, double Rotating, double Rolling, double AirFactor, double Engine)
{
    /// <summary>Over a distance from one speed to another on a slope; sine positive downhill. Acceleration is constant between the two.</summary>
    public Stretch Over(double distance, double from, double to, double sine) =>
        Lasting(2 * distance / (from + to), from, to, sine);

    public Stretch Lasting(double duration, double from, double to, double sine)
    {
        double a = (to - from) / duration, weight = Mass * Stretch.Gravity;
        return new(duration, from, a, (weight * (sine - (Rolling * Math.Sqrt(1 - (sine * sine))))) - (Mass * Rotating * a), AirFactor, Engine);
    }
}
