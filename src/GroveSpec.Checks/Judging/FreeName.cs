using System.Globalization;

namespace GroveSpec.Checks.Judging;

/// <summary>Names for tasks that a remedy writes.</summary>
internal static class FreeName
{
    /// <summary>A name that no task of the planting has.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="wanted">The name it should be.</param>
    /// <returns>The name itself, or with the first free number from 2 behind it.</returns>
    public static string Of(CheckContext context, string wanted)
    {
        var names = context.Planting.Tasks.Select(task => task.Name).ToHashSet(StringComparer.Ordinal);
        var name = wanted;
        for (var number = 2; names.Contains(name); number++)
        {
            name = string.Create(CultureInfo.InvariantCulture, $"{wanted}-{number}");
        }

        return name;
    }
}
