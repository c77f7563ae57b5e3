using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Steering;

/// <summary>Both ways of a linkage's travel, judged.</summary>
internal sealed class LinkageSweep
{
    public const double Little = Math.PI / 180; // one degree of the box's shaft

    private const string Practice = "common practice, no source";

    private const double Square = 30, Uneven = 15, Scrubbing = 4; // deg, %, deg: common practice, no source

    private readonly LinkageTravelPath _path;
    private readonly LinkageTravelPath.Walk _left, _right;

    public LinkageSweep(LinkageTravelPath path, Members<Angle> inner, Members<Angle> outer)
    {
        _path = path;
        // A wheel on the right is the outer one when turning left.
        double LockTo(bool left) => Lock(left == path.Linkage.Hand < 0 ? inner : outer, left ? "left" : "right");
        var one = path.Turn(1, LockTo);
        var other = path.Turn(-1, LockTo);
        (_left, _right) = one.Points.Count > 0 && one.Points[^1].Steer > 0 ? (one, other) : (other, one);
    }

    /// <summary>Turn of the box's shaft to each lock (rad); null where it is not reached.</summary>
    public double? Left => _left.Reached ? Math.Abs(_left.Points[^1].Box) : null;

    public double? Right => _right.Reached ? Math.Abs(_right.Points[^1].Box) : null;

    public double Transmission => _left.Points.Concat(_right.Points).Min(p => p.Transmission);

    /// <param name="boxSwing">Turn of the box's shaft to either side before its own stop, deg.</param>
    public void Judge(Worksheet w, double? boxSwing)
    {
        if (!_left.Reached || !_right.Reached)
        {
            w.Answer("closes", Verdict.Fail, string.Join(" ", new[] { Stuck(_left, "left"), Stuck(_right, "right") }.OfType<string>()));
            return;
        }
        double left = TurnGeometry.Degrees(Left!.Value), right = TurnGeometry.Degrees(Right!.Value), least = TurnGeometry.Degrees(Transmission); // deg
        w.Line("left", "turn of the box's shaft to the left lock", $"wheel at {TurnGeometry.Degrees(_left.Points[^1].Steer)} deg", left, "deg");
        w.Line("right", "turn of the box's shaft to the right lock", $"wheel at {TurnGeometry.Degrees(_right.Points[^1].Steer)} deg", right, "deg");
        w.Answer("closes", Verdict.Pass, $"The drag link reaches both locks, at {left:0.#} deg of the box's shaft to the left and {right:0.#} deg to the right.");
        w.AtLeast("transmission", least, Square, "deg", least >= Square ? $"Between the locks the drag link pulls at {least:0} deg or more; 90 deg is square, under {Square:0} deg it nears a dead center."
            : $"Toward lock the drag link pulls at only {least:0} deg: under {Square:0} deg it nears a dead center and can lock or snatch. Less lock, or arms that stand square at straight ahead.",
            Practice, beyond: Verdict.Caution);
        var apart = 100 * Math.Abs(left - right) / Math.Max(left, right);
        w.AtMost("even", apart, Uneven, "%", apart <= Uneven ? $"The box turns {left:0} and {right:0} deg to the two locks: near enough alike."
            : $"The box turns {left:0} deg to the left lock and {right:0} deg to the right: the arms do not stand square at straight ahead, or the drag link has the wrong length.",
            Practice, beyond: Verdict.Caution);
        if (boxSwing is not { } swing) return;
        var most = Math.Max(left, right);
        w.AtMost("box", most, swing, "deg", most <= swing ? $"The axle's stops end the lock at {most:0} deg of the box's shaft; from its middle the box goes {swing:0} deg."
            : $"The lock takes {most:0} deg of the box's shaft, but from its middle the box goes only {swing:0} deg: its own stop takes the load. Set the axle's stops in, or take another arm.",
            "UN Regulation No. 79, from memory", beyond: Verdict.Caution);
    }

    /// <summary>Largest error of the outer wheel (rad), judged; null where the other wheel is not known all the way.</summary>
    public double? Scrub(double kingpins, double wheelbase, Worksheet w)
    {
        var errors = Errors(kingpins, wheelbase).ToList();
        if (!_left.Reached || !_right.Reached || errors.Count == 0 || errors.Exists(e => e is null))
        {
            if (errors.Exists(e => e is null)) w.Answer("scrub", Verdict.Fail, "Before the lock the tie rod no longer reaches from arm to arm: measure its length and the place of its balls again.");
            return null;
        }
        var worst = errors.OfType<(double Inner, double Error)>().MaxBy(e => Math.Abs(e.Error));
        double deg = TurnGeometry.Degrees(worst.Error), inner = TurnGeometry.Degrees(worst.Inner); // deg
        w.Line("e", "outer - ideal outer, largest", $"with the inner wheel at {inner} deg", deg, "deg");
        if (w.Shown) w.Curve(ErrorCurve(kingpins, wheelbase));
        w.AtMost("scrub", Math.Abs(deg), Scrubbing, "deg", Math.Abs(deg) <= Scrubbing
            ? $"The outer wheel is at most {Math.Abs(deg):0.#} deg off rolling without scrub, with the inner one at {inner:0} deg."
            : $"The outer wheel is {Math.Abs(deg):0.#} deg off rolling without scrub, with the inner one at {inner:0} deg: look where the tie rod's arms point, and at its length.",
            Practice, beyond: Verdict.Caution);
        return worst.Error;
    }

    public IEnumerable<PlottedCurve> Curves()
    {
        List<LinkageTravelPath.Point> all = [.. _right.Points.Reverse(), .. _left.Points.Skip(1)];
        if (all.Count < 2) yield break;
        double[] box = [.. all.Select(p => Math.CopySign(TurnGeometry.Degrees(Math.Abs(p.Box)), p.Steer))];
        yield return new("wheel at the drag link", "box shaft, left positive", "deg", box, "road wheel, left positive", "deg", [.. all.Select(p => TurnGeometry.Degrees(p.Steer))]);
        if (all.TrueForAll(p => p.OtherSteer is not null))
            yield return new("other wheel", "box shaft, left positive", "deg", box, "road wheel, left positive", "deg", [.. all.Select(p => TurnGeometry.Degrees(p.OtherSteer!.Value))]);
    }

    private PlottedCurve ErrorCurve(double kingpins, double wheelbase)
    {
        var right = Errors(_right, kingpins, wheelbase).OfType<(double Inner, double Error)>().Select(e => (Inner: -e.Inner, e.Error)).Reverse();
        var all = right.Concat(Errors(_left, kingpins, wheelbase).OfType<(double Inner, double Error)>()).ToList();
        return new("outer wheel against rolling without scrub", "inner wheel, left positive", "deg", [.. all.Select(e => TurnGeometry.Degrees(e.Inner))],
            "outer wheel too far", "deg", [.. all.Select(e => TurnGeometry.Degrees(e.Error))]);
    }

    private IEnumerable<(double Inner, double Error)?> Errors(double kingpins, double wheelbase) => Errors(_left, kingpins, wheelbase).Concat(Errors(_right, kingpins, wheelbase));

    /// <summary>Inner angle and error of the outer wheel (rad) at each point; null where the tie rod does not reach.</summary>
    private IEnumerable<(double Inner, double Error)?> Errors(LinkageTravelPath.Walk walk, double kingpins, double wheelbase)
    {
        foreach (var p in walk.Points.Skip(1))
        {
            if (p.OtherSteer is not { } other)
            {
                yield return null;
                continue;
            }
            var near = p.Steer > 0 == _path.Linkage.Hand < 0; // the drag link's wheel is the inner one
            double inner = Math.Abs(near ? p.Steer : other), outer = Math.Abs(near ? other : p.Steer);
            yield return (inner, outer - TurnGeometry.Outer(inner, kingpins, wheelbase));
        }
    }

    private static string? Stuck(LinkageTravelPath.Walk walk, string way)
    {
        if (walk.Reached) return null;
        var (box, wheel) = walk.Points.Count > 0 ? (TurnGeometry.Degrees(Math.Abs(walk.Points[^1].Box)), TurnGeometry.Degrees(Math.Abs(walk.Points[^1].Steer))) : (0, 0);
        var why = walk.Gap != 0 ? $"a degree farther {LinkagePoints.ArmBall} parts from the drag link, which is then {LinkagePoints.Short(walk.Gap)}" : "there it stands over its dead center and the wheel comes back";
        return $"Turning {way} the wheel gets no farther than {wheel:0.#} deg, at {box:0} deg of the box's shaft: {why}. Measure the points again, or change arm or link.";
    }

    /// <summary>The lock to a side (rad), by name; of sides with other names the farthest.</summary>
    private static double Lock(Members<Angle> angles, string side) =>
        angles.Items.FirstOrDefault(i => i.Name == side) is { Name: not null } named ? named.Value.Radians : angles.Items.Max(i => i.Value.Radians);
}
