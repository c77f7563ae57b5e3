using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text;

namespace Crossmember.Builds.Tests.Folding;

/// <summary>A value and all it holds as text, lists in their order: two builds are the same when their texts are.</summary>
internal static class Deep
{
    public static string Text(object? value)
    {
        var text = new StringBuilder();
        Write(value, text, 0);
        return text.ToString();
    }

    private static void Write(object? value, StringBuilder text, int depth)
    {
        if (value is null || depth > 12) text.Append('-');
        else if (value is string or decimal or Enum or bool or Guid) text.Append(CultureInfo.InvariantCulture, $"\"{value}\"");
        else if (value.GetType().IsPrimitive) text.Append(((IFormattable)value).ToString("R", CultureInfo.InvariantCulture));
        else if (value is Engineering.Calculations.Value v) text.Append(v.ToString());
        else if (value is IEnumerable list)
        {
            text.Append('[');
            foreach (var item in list) Write(item, text.Append('\n').Append(' ', depth), depth + 1);
            text.Append(']');
        }
        else
        {
            text.Append('{');
            foreach (var p in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.GetIndexParameters().Length == 0 && p.Name != "EqualityContract"))
                Write(p.GetValue(value), text.Append(p.Name).Append('='), depth + 1);
            text.Append('}');
        }
    }
}
