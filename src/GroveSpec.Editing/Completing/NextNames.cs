using System.Globalization;
using GroveSpec.Model;
using GroveSpec.Model.Tasks;

namespace GroveSpec.Editing.Completing;

/// <summary>Finds names that are still free.</summary>
internal static class NextNames
{
    /// <summary>The next name for a trunk, in the manner of those there are: after A, B and C comes D, after T1 and T2 comes T3.</summary>
    /// <param name="planting">The planting.</param>
    /// <returns>A name that no trunk bears.</returns>
    public static string Trunk(Planting planting)
    {
        var taken = planting.Trunks.Select(trunk => trunk.Name).ToHashSet(StringComparer.Ordinal);
        return !planting.Trunks.IsEmpty && Split(planting.Trunks[^1].Name) is { Number: not null } last ? Numbered(last.Stem, taken) : Lettered(taken);
    }

    /// <summary>The next name for a task of a kind: W2 after W1 for wire.</summary>
    /// <param name="planting">The planting.</param>
    /// <param name="kind">The kind of work.</param>
    /// <returns>A name that no task bears.</returns>
    public static string Task(Planting planting, TaskKind kind)
    {
        var taken = planting.Tasks.Select(task => task.Name).ToHashSet(StringComparer.Ordinal);
        var stem = planting.Tasks.Where(task => task.Kind.Value == kind).Select(task => Split(task.Name)).FirstOrDefault(name => name.Number is not null).Stem;
        return Numbered(stem ?? Stem(kind), taken);
    }

    private static string Stem(TaskKind kind) => kind switch
    {
        TaskKind.LookOver => "L",
        TaskKind.RemoveSacrifice => "X",
        TaskKind.RootPrune => "Q",
        _ => kind.ToString()[..1],
    };

    private static (string Stem, int? Number) Split(string name)
    {
        var digits = name.Length;
        while (digits > 0 && char.IsAsciiDigit(name[digits - 1]))
        {
            digits--;
        }

        return digits > 0 && digits < name.Length && int.TryParse(name.AsSpan(digits), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? (name[..digits], number)
            : (name, null);
    }

    private static string Numbered(string stem, HashSet<string> taken)
    {
        for (var number = 1; ; number++)
        {
            var name = string.Create(CultureInfo.InvariantCulture, $"{stem}{number}");
            if (!taken.Contains(name))
            {
                return name;
            }
        }
    }

    private static string Lettered(HashSet<string> taken)
    {
        for (var length = 1; ; length++)
        {
            for (var letter = 'A'; letter <= 'Z'; letter++)
            {
                var name = new string(letter, length);
                if (!taken.Contains(name))
                {
                    return name;
                }
            }
        }
    }
}
