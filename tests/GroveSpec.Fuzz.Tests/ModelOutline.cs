using System.Collections;
using System.Collections.Concurrent;
using System.Globalization;
using System.Reflection;
using System.Text;
using GroveSpec.Model;

namespace GroveSpec.Fuzz.Tests;

/// <summary>Writes a planting out with every value it has, so that two can be compared.</summary>
internal static class ModelOutline
{
    private static readonly ConcurrentDictionary<Type, FieldInfo[]> Fields = new();

    /// <summary>Every value of the planting, its origins among them.</summary>
    public static string Of(Planting planting)
    {
        var text = new StringBuilder();
        Write(text, planting);
        return text.ToString();
    }

    private static void Write(StringBuilder text, object? value)
    {
        switch (value)
        {
            case null:
                text.Append("nothing\n");
                break;
            case string or Enum:
                text.Append(value).Append('\n');
                break;
            case IFormattable number when value.GetType().Assembly != typeof(Planting).Assembly:
                text.Append(number.ToString(null, CultureInfo.InvariantCulture)).Append('\n');
                break;
            case IEnumerable list:
                text.Append("[\n");
                foreach (var item in list)
                {
                    Write(text, item);
                }

                text.Append("]\n");
                break;
            case var part when part.GetType().Assembly == typeof(Planting).Assembly:
                text.Append(part.GetType().Name).Append('\n');
                foreach (var field in Fields.GetOrAdd(part.GetType(), FieldsOf))
                {
                    text.Append(field.Name).Append(' ');
                    Write(text, field.GetValue(part));
                }

                break;
            default:
                text.Append(value).Append('\n');
                break;
        }
    }

    /// <summary>The fields are what a value is; properties may be reckoned from them without end.</summary>
    private static FieldInfo[] FieldsOf(Type type)
    {
        var fields = new List<FieldInfo>();
        for (var level = type; level is not null && level != typeof(object); level = level.BaseType)
        {
            fields.AddRange(level.GetFields(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.DeclaredOnly));
        }

        return [.. fields];
    }
}
