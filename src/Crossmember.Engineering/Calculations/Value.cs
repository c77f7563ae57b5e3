namespace Crossmember.Engineering.Calculations;

/// <summary>What a calculation sees of an input, and gives as an output: a number in SI, a text, a curve, or members of a set. Absent is <c>default</c>.</summary>
public readonly struct Value : IEquatable<Value>
{
    private readonly double _number;
    private readonly object? _other;

    private Value(double number, object? other) => (_number, _other) = (number, other);

    private static readonly object s_isNumber = new();

    public static Value Of(double si) => new(si, s_isNumber);

    public static Value Of(string text) => new(0, text);

    public static Value Of(Curve curve) => new(0, curve);

    public static Value Of(Members members) => new(0, members);

    public bool IsAbsent => _other is null;

    public bool IsNumber => ReferenceEquals(_other, s_isNumber);

    /// <summary>The number in SI; only where <see cref="IsNumber"/>.</summary>
    public double Number => IsNumber ? _number : throw new InvalidOperationException("this value is no number");

    public string? Text => _other as string;

    public Curve? Curve => _other as Curve;

    public Members? Members => _other as Members;

    /// <summary>Bit for bit: what decides whether earlier work still stands.</summary>
    public bool Equals(Value other) =>
        BitConverter.DoubleToInt64Bits(_number) == BitConverter.DoubleToInt64Bits(other._number)
        && (ReferenceEquals(_other, other._other) || (_other is not null && !IsNumber && _other.Equals(other._other)));

    public override bool Equals(object? obj) => obj is Value v && Equals(v);

    public override int GetHashCode() => HashCode.Combine(_number, IsNumber ? 1 : _other?.GetHashCode() ?? 0);

    public static bool operator ==(Value a, Value b) => a.Equals(b);

    public static bool operator !=(Value a, Value b) => !a.Equals(b);

    public override string ToString() => IsNumber ? _number.ToString("R", null) : _other?.ToString() ?? "(absent)";
}
