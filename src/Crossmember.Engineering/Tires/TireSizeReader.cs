using System.Globalization;
using Crossmember.Engineering.Quantities;
using UnitsNet;

namespace Crossmember.Engineering.Tires;

/// <summary>Walks once through a tire size, left to right; the first thing not understood ends the walk with its place.</summary>
internal sealed class TireSizeReader(string text)
{
    private const string Sample = "for example 235/75R15, LT235/85R16, 33x10.50R15LT or 7.50-16";

    // Speed symbols in use; I, O and X are none.
    private const string SpeedSymbols = "BCDEFGJKLMNPQRSTUHVWY";

    private readonly string _plain = Notation.Plain(text).TrimEnd().ToUpperInvariant();
    private int _at;
    private Parsed<TireSize>? _fault;

    public Parsed<TireSize> Read()
    {
        _at = Notation.SkipSpaces(_plain, 0);
        if (_at >= _plain.Length) return Parsed<TireSize>.Not("nothing is written", $"write a tire size, {Sample}");
        if (Notation.Refused(_plain) is { } refused) return Parsed<TireSize>.Not(refused.Wrong, refused.Right);
        var service = Take("LT") ? TireService.LightTruck : Take("P") ? TireService.Passenger : TireService.Unmarked;
        var size = Body(service);
        if (_fault is null && size is not null) size = Description(size);
        return _fault ?? new(size, null, null);
    }

    private TireSize? Body(TireService service)
    {
        var start = _at;
        var first = Number("a width or diameter", 3, 700);
        var second = double.NaN;
        var notation = TireNotation.Numeric;
        if (Take("/")) (notation, second) = (TireNotation.Metric, Number("an aspect ratio", 20, 100));
        else if (Take("X") || Take("*")) (notation, second) = (TireNotation.Flotation, Number("a section width", 3, first));
        var (construction, fast) = Carcass();
        var rim = Number("a rim diameter in inches", 4, 63);
        if (Take("LT")) service = TireService.LightTruck;
        if (_fault is not null) return null;

        var width = notation switch
        {
            TireNotation.Flotation => Length.FromInches(second),
            TireNotation.Metric => Length.FromMillimeters(first),
            _ => first >= 100 ? Length.FromMillimeters(first) : Length.FromInches(first), // 205R16 is in mm, 7.50R16 in inches
        };
        Length? diameter = notation switch
        {
            TireNotation.Flotation => Length.FromMillimeters(25.4 * first),
            TireNotation.Metric => Length.FromMillimeters((25.4 * rim) + (2 * first * second / 100)),
            _ => null,
        };
        if (!Plausible(start, notation, first, rim)) return null;
        return new()
        {
            Typed = text.Trim(), Notation = notation, Service = service, Construction = construction,
            Width = width, RimDiameter = Length.FromInches(rim), Diameter = diameter,
            AspectRatio = notation == TireNotation.Metric ? second : null, SpeedSymbol = fast ? 'Z' : null,
        };
    }

    private bool Plausible(int start, TireNotation notation, double first, double rim)
    {
        if (notation == TireNotation.Metric && first < 100)
            return Fail(start, "has a metric width below 100 mm", "write the width in millimetres, as in 235/75R15");
        if (notation == TireNotation.Flotation && first >= 100)
            return Fail(start, "has a diameter of 100 in or more", "write the overall diameter in inches first, as in 33x10.50R15");
        return notation != TireNotation.Flotation || rim < first
            || Fail(start, "has a rim as large as the tire", "write overall diameter x section width R rim, as in 33x10.50R15");
    }

    private (TireConstruction Kind, bool Fast) Carcass()
    {
        if (_fault is not null) return default;
        if (Take("ZR")) return (TireConstruction.Radial, true);
        if (Take("R")) return (TireConstruction.Radial, false);
        if (Take("-") || Take("D")) return (TireConstruction.Diagonal, false);
        if (Take("B")) return (TireConstruction.BeltedBias, false);
        Fail(Notation.SkipSpaces(_plain, _at), "is no construction letter", "write R (radial), - or D (diagonal) or B (bias belted) before the rim diameter");
        return default;
    }

    /// <summary>What may follow the size: load indices with a speed symbol, load range, ply rating.</summary>
    private TireSize Description(TireSize size)
    {
        while (_fault is null)
        {
            _at = Notation.SkipSpaces(_plain, _at);
            if (_at >= _plain.Length) return size;
            size = char.IsAsciiDigit(_plain[_at]) ? Indices(size) : Range(size);
        }
        return size;
    }

    private TireSize Indices(TireSize size)
    {
        var start = _at;
        var index = Index();
        if (Take("PR")) return size with { PlyRating = index };
        int? dual = Take("/") ? Index() : null;
        var adjacent = _at;
        _at = Notation.SkipSpaces(_plain, _at);
        if (_fault is not null) return size;
        if (size.LoadIndex is not null)
        {
            Fail(start, "is a second load index", "write the service description once, as in 121/118Q");
            return size;
        }
        // A letter right behind the index is the speed symbol (104E); apart, a letter up to N is the load range (104 E). The L of LRE is neither.
        var speed = StandsAlone() && SpeedSymbols.Contains(_plain[_at], StringComparison.Ordinal) && (_at == adjacent || _plain[_at] > 'N');
        return size with { LoadIndex = index, DualLoadIndex = dual, SpeedSymbol = speed ? _plain[_at++] : size.SpeedSymbol };
    }

    private int Index()
    {
        var start = _at;
        var value = Number("a load index", 2, 279);
        if (_fault is null && value != Math.Floor(value)) Fail(start, "is not a whole load index", "write it as on the sidewall, as in 104S");
        return _fault is null ? (int)value : 0;
    }

    private bool StandsAlone() => _at < _plain.Length && (_at + 1 >= _plain.Length || !char.IsLetterOrDigit(_plain[_at + 1]));

    private TireSize Range(TireSize size)
    {
        var start = _at;
        Take("/");
        if (Take("XL")) return size with { LoadRange = "XL" };
        if (!Take("LR")) Take("LOAD RANGE");
        _at = Notation.SkipSpaces(_plain, _at);
        if (StandsAlone() && _plain[_at] is >= 'A' and <= 'N' && size.LoadRange is null) return size with { LoadRange = _plain[_at++].ToString() };
        Fail(start, "is not understood after the size", "a load index with speed symbol (104S, 121/118Q), a load range (LRE) or a ply rating (8PR) may follow");
        return size;
    }

    private double Number(string what, double least, double most)
    {
        if (_fault is not null) return double.NaN;
        var start = Notation.SkipSpaces(_plain, _at);
        var end = start;
        while (end < _plain.Length && (char.IsAsciiDigit(_plain[end]) || (_plain[end] == '.' && end > start))) end++;
        if (!double.TryParse(_plain.AsSpan(start, end - start), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value))
            Fail(start, $"is not {what}", $"write a tire size, {Sample}");
        else if (value < least || value > most)
            Fail(start, $"is not {what} from {Figures.Short(least)} to {Figures.Short(most)}", $"write a tire size, {Sample}", end);
        _at = end;
        return value;
    }

    private bool Take(string word)
    {
        var from = Notation.SkipSpaces(_plain, _at);
        if (_fault is not null || !_plain.AsSpan(from).StartsWith(word)) return false;
        _at = from + word.Length;
        return true;
    }

    private bool Fail(int start, string wrong, string right, int? end = null)
    {
        _fault ??= Parsed<TireSize>.Not($"{Notation.Quoted(_plain, start, end ?? _plain.Length)} {wrong}", right);
        return false;
    }
}
