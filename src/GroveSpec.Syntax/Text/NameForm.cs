using System.Text;

namespace GroveSpec.Syntax.Text;

/// <summary>The form in which names are compared, so that é as one character and as two is the same name.</summary>
public static class NameForm
{
    /// <summary>
    /// Composes letters with the accents that follow them, for the Latin, Greek and Cyrillic scripts and for Korean
    /// syllables, as Unicode's canonical composition does. Other text stays as it is.
    /// </summary>
    /// <param name="name">A name as written.</param>
    /// <returns>The composed form; the very same text when there is nothing to compose.</returns>
    public static string Of(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        if (name.AsSpan().IndexOfAnyExceptInRange('\u0000', '\u02FF') < 0)
        {
            return name;
        }

        var parts = new List<char>(name.Length + 8);
        foreach (var unit in name)
        {
            Decompose(unit, parts);
        }

        SortAccents(parts);
        var composed = new StringBuilder(name.Length);
        var starter = -1;
        var lastClass = 0;
        foreach (var unit in parts)
        {
            var order = Compositions.ClassOf(unit);
            var isBlocked = starter >= 0 && composed.Length - 1 > starter && (lastClass >= order || lastClass == 0);
            if (starter >= 0 && !isBlocked && Compose(composed[starter], unit) is { } whole)
            {
                composed[starter] = whole;
                continue;
            }

            composed.Append(unit);
            if (order == 0)
            {
                starter = composed.Length - 1;
                lastClass = 0;
            }
            else
            {
                lastClass = order;
            }
        }

        return composed.ToString();
    }

    private static void Decompose(char unit, List<char> parts)
    {
        if (Compositions.PartsOf(unit) is { } pair)
        {
            Decompose(pair.First, parts);
            parts.Add(pair.Second);
        }
        else
        {
            parts.Add(unit);
        }
    }

    /// <summary>Puts the accents behind each letter in the order of their classes, those of one class as they were.</summary>
    private static void SortAccents(List<char> parts)
    {
        for (var start = 0; start < parts.Count; start++)
        {
            var end = start;
            while (end < parts.Count && Compositions.ClassOf(parts[end]) > 0)
            {
                end++;
            }

            if (end - start > 1)
            {
                var sorted = parts.GetRange(start, end - start).OrderBy(Compositions.ClassOf).ToList();
                for (var index = 0; index < sorted.Count; index++)
                {
                    parts[start + index] = sorted[index];
                }
            }

            start = Math.Max(start, end);
        }
    }

    private static char? Compose(char first, char second)
    {
        // Korean syllables are composed by arithmetic: The Unicode Standard, section 3.12.
        if (first is >= '\u1100' and <= '\u1112' && second is >= '\u1161' and <= '\u1175')
        {
            return (char)(0xAC00 + ((((first - 0x1100) * 21) + (second - 0x1161)) * 28));
        }

        if (first is >= '\uAC00' and <= '\uD7A3' && (first - 0xAC00) % 28 == 0 && second is >= '\u11A8' and <= '\u11C2')
        {
            return (char)(first + (second - 0x11A7));
        }

        return Compositions.Of(first, second);
    }
}
