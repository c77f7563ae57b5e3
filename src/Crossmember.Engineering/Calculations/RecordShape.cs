using System.Reflection;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Engineering.Calculations;

/// <summary>Reads the description of inputs and outputs off a positional record, once, and carries values in and out of it.</summary>
internal static class RecordShape<TRecord>
    where TRecord : class
{
    private static readonly ConstructorInfo s_constructor = typeof(TRecord).GetConstructors()[0];
    private static readonly ConstructorInvoker s_make = ConstructorInvoker.Create(s_constructor);
    private static readonly Carrier[] s_carriers = [.. s_constructor.GetParameters().Select(p => new Carrier(p))];

    public static IReadOnlyList<InputSpec> Inputs { get; } = [.. s_carriers.Select(c => c.Input).OfType<InputSpec>()];

    public static IReadOnlyList<OutputSpec> Outputs { get; } = [.. s_carriers.Select(c => c.Output).OfType<OutputSpec>()];

    /// <summary>So often a record is carried by reflection before code is made for it: making it costs what some thousand runs cost.</summary>
    private const int BeforeCode = 2000;

    private static int s_carried;
    private static RecordCode<TRecord>? s_code;

    private static RecordCode<TRecord>? Code => s_code is { } made ? made : s_carried++ < BeforeCode ? null : s_code = new(s_constructor, s_carriers.Length, c => s_carriers[c].Code);

    public static object Make(ReadOnlySpan<Value> values)
    {
        if (Code is { } code) return code.Make(values);
        var arguments = new object?[s_carriers.Length];
        for (var i = 0; i < arguments.Length; i++) arguments[i] = s_carriers[i].Lift(values[i]);
        return s_make.Invoke(arguments.AsSpan());
    }

    public static Value[] Take(TRecord record)
    {
        if (Code is { } code) return code.Take(record);
        var values = new Value[s_carriers.Length];
        for (var i = 0; i < values.Length; i++) values[i] = s_carriers[i].Lower(record);
        return values;
    }

    /// <summary>Carries one member of the record between its public type and a <see cref="Value"/>.</summary>
    private sealed class Carrier
    {
        private readonly MethodInvoker _get;
        private readonly Dimension? _dimension;
        private readonly Form _form;
        private readonly Func<Members, object>? _liftMembers;
        private readonly Func<object, Members>? _lowerMembers;

        public Carrier(ParameterInfo parameter)
        {
            _get = MethodInvoker.Create(typeof(TRecord).GetProperty(parameter.Name!)!.GetMethod!);
            var type = Nullable.GetUnderlyingType(parameter.ParameterType) ?? parameter.ParameterType;
            var optional = Nullable.GetUnderlyingType(parameter.ParameterType) is not null
                || new NullabilityInfoContext().Create(parameter).ReadState == NullabilityState.Nullable;
            if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(Members<>))
            {
                var item = type.GetGenericArguments()[0];
                (_form, _dimension) = (Form.Members, Dimension.Of(item));
                _liftMembers = Of(nameof(LiftMembers), item).CreateDelegate<Func<Members, object>>();
                _lowerMembers = Of(nameof(LowerMembers), item).CreateDelegate<Func<object, Members>>();
            }
            else (_form, _dimension) = type == typeof(string) ? (Form.Text, null) : type == typeof(Curve) ? (Form.Curve, null) : (Form.Number, Dimension.Of(type));
            if (_form == Form.Number && _dimension is null) throw new InvalidOperationException($"{typeof(TRecord)}: {parameter.Name} has a type of no dimension");
            var name = char.ToLowerInvariant(parameter.Name![0]) + parameter.Name[1..];
            if (parameter.GetCustomAttribute<InputAttribute>() is { } i) Input = Spec(name, i, optional);
            if (parameter.GetCustomAttribute<OutputAttribute>() is { } o) Output = Spec(name, o);
        }

        /// <summary>What code for this member needs to know.</summary>
        public MemberCode Code => new(_form, _dimension?.TypedFromSi, _dimension?.TypedToSi, _liftMembers, _lowerMembers);

        public InputSpec? Input { get; }

        public OutputSpec? Output { get; }

        public object? Lift(Value value) =>
            value.IsAbsent ? null : _form switch
            {
                Form.Text => value.Text,
                Form.Curve => value.Curve,
                Form.Members => _liftMembers!(value.Members!),
                _ => _dimension!.FromSi(value.Number),
            };

        public Value Lower(TRecord record) => _get.Invoke(record) switch
        {
            null => default,
            string s => Value.Of(s),
            Curve c => Value.Of(c),
            object m when _form == Form.Members => Value.Of(_lowerMembers!(m)),
            object q => Value.Of(_dimension!.ToSi(q)),
        };

        private InputSpec Spec(string name, InputAttribute i, bool optional)
        {
            var unit = _form == Form.Curve ? Units.Require(i.Unit) : UnitOf(name, i.Unit);
            double? standIn = double.IsNaN(i.Default) ? null : unit!.ToSi(i.Default);
            return new(name, _form, unit?.Dimension, unit, _form == Form.Curve ? Units.Require(i.CurveUnit) : null, optional, standIn, i);
        }

        private OutputSpec Spec(string name, OutputAttribute o) =>
            _form == Form.Curve ? throw new InvalidOperationException($"{typeof(TRecord)}: {name} is a curve: plot it on the worksheet instead")
            : new(name, _form, _dimension, UnitOf(name, o.Unit), o);

        /// <summary>The unit of numbers; a unit of another dimension than the type's would silently tell a wrong number.</summary>
        private Unit? UnitOf(string name, string code)
        {
            if (_dimension is null) return null;
            var unit = Units.Require(code);
            return unit.Dimension == _dimension ? unit : throw new InvalidOperationException($"{typeof(TRecord)}: {name} is a {_dimension}, but {code} is none");
        }

        private MethodInfo Of(string method, Type item) => GetType().GetMethod(method, BindingFlags.NonPublic | BindingFlags.Static)!.MakeGenericMethod(item);

        private static Members<T> LiftMembers<T>(Members members) =>
            new(members.Items.Select(m => (m.Name, (T)(m.Value.Text ?? Dimension.Of(typeof(T))!.FromSi(m.Value.Number)))));

        private static Members LowerMembers<T>(object members) =>
            new(((Members<T>)members).Items.Select(m => (m.Name, m.Value is string s ? Value.Of(s) : Value.Of(Dimension.Of(typeof(T))!.ToSi(m.Value!)))));
    }
}
