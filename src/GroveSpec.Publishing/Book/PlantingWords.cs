using GroveSpec.Binding;
using GroveSpec.Drawing.Timeline;
using GroveSpec.Model;
using GroveSpec.Model.States;

namespace GroveSpec.Publishing.Book;

/// <summary>A planting in a few words.</summary>
internal static class PlantingWords
{
    /// <summary>The line under the name: species, how many trunks, habit, the day.</summary>
    /// <param name="planting">What is known of it.</param>
    /// <returns>Such as "Larix kaempferi · seven trunks standing, one planned · a group · as of 31 October 2026".</returns>
    public static string Remark(Assessment planting)
    {
        var parts = new List<string>();
        if (planting.Planting.Species is { } species)
        {
            parts.Add(planting.Planting.ProfileOf(species.Value)?.Botanical?.Value ?? species.Value);
        }

        var counts = new List<string> { Count(planting.State, Presence.Standing) is var standing && standing == 1 ? "1 trunk standing" : $"{standing} trunks standing" };
        Add(counts, Count(planting.State, Presence.Planned), "planned");
        Add(counts, Count(planting.State, Presence.Removed), "removed");
        parts.Add(string.Join(", ", counts));
        parts.Add(planting.Planting.EffectiveHabit switch
        {
            Habit.Clump => "a clump",
            Habit.Raft => "a raft",
            _ => "a group",
        });
        if (planting.Date is { } day)
        {
            parts.Add($"as of {DayWords.Day(day)}");
        }

        return string.Join(" · ", parts);
    }

    private static int Count(PlantingState state, Presence presence) => state.Trunks.Count(trunk => trunk.Presence == presence);

    private static void Add(List<string> counts, int count, string word)
    {
        if (count > 0)
        {
            counts.Add($"{count} {word}");
        }
    }
}
