using System.Linq.Expressions;
using System.Reflection;

namespace Crossmember.Engineering.Calculations;

/// <summary>How one member of a record is carried: by its form, and by the typed conversions of its dimension.</summary>
internal readonly record struct MemberCode(Form Form, Delegate? FromSi, Delegate? ToSi, Func<Members, object>? LiftMembers, Func<object, Members>? LowerMembers);

/// <summary>Code that carries values in and out of a record, made at run time for shapes that are used thousands of times: no boxing, no reflection.</summary>
/// <remarks>Does exactly what <see cref="RecordShape{TRecord}"/> does by reflection; a test compares the two over every calculation.</remarks>
internal sealed class RecordCode<TRecord>
    where TRecord : class
{
    [ThreadStatic] private static Value[]? s_room;

    private readonly Func<Value[], TRecord> _make;
    private readonly Func<TRecord, Value[]> _take;

    public RecordCode(ConstructorInfo constructor, int members, Func<int, MemberCode> code)
    {
        var parameters = constructor.GetParameters();
        var values = Expression.Parameter(typeof(Value[]));
        _make = Expression.Lambda<Func<Value[], TRecord>>(
            Expression.New(constructor, Enumerable.Range(0, members).Select(m => Lift(Expression.ArrayIndex(values, Expression.Constant(m)), parameters[m].ParameterType, code(m)))), values).Compile();
        var record = Expression.Parameter(typeof(TRecord));
        _take = Expression.Lambda<Func<TRecord, Value[]>>(
            Expression.NewArrayInit(typeof(Value), Enumerable.Range(0, members).Select(m => Lower(Expression.Property(record, parameters[m].Name!), code(m)))), record).Compile();
    }

    public TRecord Make(ReadOnlySpan<Value> values)
    {
        var room = s_room is { } known && known.Length >= values.Length ? known : s_room = new Value[Math.Max(64, values.Length)];
        values.CopyTo(room);
        return _make(room);
    }

    public Value[] Take(TRecord record) => _take(record);

    private static ConditionalExpression Lift(Expression value, Type type, MemberCode code)
    {
        Expression lifted = code.Form switch
        {
            Form.Text => Expression.Property(value, nameof(Value.Text)),
            Form.Curve => Expression.Property(value, nameof(Value.Curve)),
            Form.Members => Expression.Convert(Expression.Invoke(Expression.Constant(code.LiftMembers), Expression.Property(value, nameof(Value.Members))), type),
            _ => Expression.Convert(Expression.Invoke(Expression.Constant(code.FromSi), Expression.Property(value, nameof(Value.Number))), type),
        };
        return Expression.Condition(Expression.Property(value, nameof(Value.IsAbsent)), Expression.Default(type), lifted);
    }

    private static Expression Lower(MemberExpression member, MemberCode code)
    {
        if (code.Form == Form.Number)
        {
            var nullable = Nullable.GetUnderlyingType(member.Type) is not null;
            var si = Of(Expression.Invoke(Expression.Constant(code.ToSi), nullable ? Expression.Property(member, "Value") : member), typeof(double));
            return nullable ? Expression.Condition(Expression.Property(member, "HasValue"), si, Expression.Default(typeof(Value))) : si;
        }
        var given = code.Form switch
        {
            Form.Members => Of(Expression.Invoke(Expression.Constant(code.LowerMembers), Expression.Convert(member, typeof(object))), typeof(Members)),
            _ => Of(member, member.Type),
        };
        return Expression.Condition(Expression.ReferenceEqual(member, Expression.Constant(null)), Expression.Default(typeof(Value)), given);
    }

    private static MethodCallExpression Of(Expression argument, Type type) => Expression.Call(typeof(Value).GetMethod(nameof(Value.Of), [type])!, argument);
}
