using System.Collections;
using System.Globalization;
using System.Reflection;
using GroveSpec.Model;

namespace GroveSpec.Tests.Shared;

/// <summary>Compares plantings fact by fact, lists included, which the equality of records does not.</summary>
public static class PlantingEquality
{
    /// <summary>The first place in which two plantings differ.</summary>
    /// <returns>Such as "Trunks[2].Height: 3 mm against 4 mm"; null where they are equal in every fact and every origin.</returns>
    public static string? FirstDifference(Planting left, Planting right) => Differ("", left, right);

    private static string? Differ(string path, object? left, object? right)
    {
        if (left is null || right is null)
        {
            return left is null && right is null ? null : Told(path, left, right);
        }

        var type = left.GetType();
        if (type != right.GetType())
        {
            return Told(path, left, right);
        }

        if (type.IsPrimitive || type.IsEnum || left is string || type.Namespace?.StartsWith("NodaTime", StringComparison.Ordinal) == true)
        {
            return left.Equals(right) ? null : Told(path, left, right);
        }

        if (left is IEnumerable first && right is IEnumerable second)
        {
            var (a, b) = (first.Cast<object?>().ToArray(), second.Cast<object?>().ToArray());
            if (a.Length != b.Length)
            {
                return $"{path}: {a.Length} against {b.Length} of them";
            }

            for (var index = 0; index < a.Length; index++)
            {
                if (Differ(string.Create(CultureInfo.InvariantCulture, $"{path}[{index}]"), a[index], b[index]) is { } difference)
                {
                    return difference;
                }
            }

            return null;
        }

        foreach (var property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance))
        {
            // What is worked out from the other properties cannot differ alone.
            if (property.GetIndexParameters().Length == 0 && IsStated(type, property)
                && Differ($"{path}.{property.Name}".TrimStart('.'), property.GetValue(left), property.GetValue(right)) is { } difference)
            {
                return difference;
            }
        }

        return null;
    }

    private static bool IsStated(Type type, PropertyInfo property) =>
        property.SetMethod is not null || (type.IsValueType && type.GetField($"<{property.Name}>k__BackingField", BindingFlags.NonPublic | BindingFlags.Instance) is not null);

    private static string Told(string path, object? left, object? right) => $"{path}: {left ?? "nothing"} against {right ?? "nothing"}";
}
