namespace Crossmember.Engineering.Steering;

/// <summary>A solid axle's steering from the ball of the pitman arm to the wheel, as it was measured, straight ahead.</summary>
/// <param name="PitmanBall">Ball at the end of the pitman arm.</param>
/// <param name="Knuckle">Steering arm about the kingpin; the axis points up.</param>
/// <param name="Hand">1 where the steering arm sits on the right, -1 on the left.</param>
internal sealed record Linkage(Point3 PitmanBall, LinkageCrank Knuckle, int Hand)
{
    /// <summary>The drag link, from ball to ball.</summary>
    public double Rod { get; } = (Knuckle.Ball - PitmanBall).Length;

    private readonly int _side = LinkClosure.Side(Knuckle, PitmanBall);

    /// <summary>From points in m and angles in rad.</summary>
    /// <param name="kingpins">Distance between the kingpins at the height of the axle.</param>
    /// <param name="axleHeight">Axle center over the frame datum: negative.</param>
    public static Linkage Of(Point3 pitmanBall, Point3 armBall, double kingpins, double axleHeight, double caster, double inclination)
    {
        var hand = armBall.Y >= 0 ? 1 : -1;
        return new(pitmanBall, new(new(0, hand * kingpins / 2, axleHeight), Kingpin(hand, caster, inclination), armBall), hand);
    }

    /// <summary>Direction of a kingpin: its top leans to the rear by the caster and inboard by the inclination.</summary>
    public static Point3 Kingpin(int hand, double caster, double inclination)
    {
        var leaning = new Point3(Math.Tan(caster), -hand * Math.Tan(inclination), 1);
        return 1 / leaning.Length * leaning;
    }

    /// <summary>Turn of the steering arm about the kingpin, with the axle moved and the pitman ball where it is.</summary>
    public LinkClosure.Answer Turn(Point3 axleMoved, Point3 pitmanBall) => LinkClosure.Solve(Knuckle.Moved(axleMoved), pitmanBall, Rod, _side);

    /// <summary>Angle of a wheel as a turn plate reads it, left positive (rad), for a turn about its kingpin.</summary>
    public double Steer(double turn) => Steer(Knuckle.Axis, turn);

    public static double Steer(Point3 axis, double turn)
    {
        // The spindle starts level and across; its shadow on the ground is square to the wheel's.
        var spindle = new LinkageCrank(default, axis, new(0, 1, 0)).At(turn);
        return Math.Atan2(-spindle.X, spindle.Y);
    }

    /// <summary>Slope of the drag link's arm-to-pitman line: the pitman end higher is positive (rad).</summary>
    public static double Slope(Point3 pitmanBall, Point3 armBall)
    {
        var rod = pitmanBall - armBall;
        return Math.Asin(Math.Clamp(rod.Z / rod.Length, -1, 1));
    }
}
