using System.Text;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model;
using GroveSpec.Model.Containers;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;
using NodaTime;

namespace GroveSpec.Drawing.Plan;

/// <summary>What a plan says of itself in words.</summary>
internal static class PlanWords
{
    private const int MostTrunksDescribed = 60;

    private static readonly string[] Numbers = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

    private static readonly string[] Months =
        ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];

    /// <summary>The planting's name, or words for one without.</summary>
    public static string Name(Planting planting) => planting.Name is { } name && !string.IsNullOrWhiteSpace(name.Value) ? name.Value : "A planting without a name";

    /// <summary>The line below the heading: species, trunks and habit, view, day.</summary>
    public static string Remark(PlantingState state)
    {
        var parts = new List<string>();
        var standing = state.Trunks.Count(trunk => trunk.Presence == Presence.Standing);
        var count = $"{Number(standing)} {(standing == 1 ? "trunk" : "trunks")} {Habit(state.Planting)}";
        parts.Add(Species(state) is { } species ? $"{species}, {count}" : Capital(count));
        parts.Add("from above");
        if (state.Date is { } date)
        {
            parts.Add($"as of {Day(date)}");
        }

        return DrawnText.Clean(string.Join(" · ", parts));
    }

    /// <summary>What a pointer that rests on a trunk is told.</summary>
    public static string Trunk(TrunkState trunk, UnitSystem units)
    {
        var words = new StringBuilder(DrawnText.Isolated(trunk.Name));
        words.Append(trunk.Presence switch
        {
            Presence.Planned => ", planned",
            Presence.Removed => ", removed",
            _ => "",
        });
        if (trunk.Diameter is { } diameter)
        {
            words.Append(", ").Append(DrawnLength.Text(diameter.Value, units)).Append(" thick");
        }

        if (trunk.Height is { } height)
        {
            words.Append(", ").Append(DrawnLength.Text(height.Value, units)).Append(" high");
        }

        if (trunk.Trunk.Lean is { } lean)
        {
            words.Append($", leans {DrawnLength.Plain(lean.Value.FromUpright.Degrees, 1)}° toward {DrawnLength.Plain(lean.Value.Toward.Degrees, 1)}°");
        }

        if (trunk is { Place: not null, Trunk.At: null })
        {
            words.Append(", placed by tape readings");
        }

        return words.ToString();
    }

    /// <summary>The whole plan in words, for those who do not see it.</summary>
    public static string Description(DrawingSubject subject, IReadOnlyList<int> shownFindings, UnitSystem units)
    {
        var state = subject.State;
        var words = new StringBuilder();
        words.Append(Capital(Remark(state).Replace(" · ", ", ", StringComparison.Ordinal)));
        words.Append(state.Planting.Container is { } container ? $", {ContainerWords(container, units)}. " : ". ");
        var told = 0;
        foreach (var trunk in state.Trunks)
        {
            if (++told > MostTrunksDescribed)
            {
                words.Append($"And {state.Trunks.Length - MostTrunksDescribed} more trunks. ");
                break;
            }

            words.Append(Trunk(trunk, units));
            if (trunk.Place is { } place)
            {
                words.Append($", {Side(place.X, "right", "left", units)} and {Side(place.Y, "behind", "in front", units)}");
            }
            else
            {
                words.Append(", not drawn since its place is not known");
            }

            words.Append(". ");
        }

        foreach (var number in shownFindings)
        {
            words.Append($"Finding {number}: {DrawnText.Clean(subject.Findings[number - 1].Message)} ");
        }

        return words.ToString().TrimEnd();
    }

    /// <summary>A day in words, such as 30 October 2026.</summary>
    public static string Day(LocalDate date) => $"{date.Day} {Months[date.Month - 1]} {date.Year}";

    private static string Side(Length length, string ahead, string behind, UnitSystem units) =>
        length == Length.Zero ? "on the middle line" : $"{DrawnLength.Text(length.Magnitude, units)} {(length > Length.Zero ? ahead : behind)}";

    private static string Number(int count) => count < Numbers.Length ? Numbers[count] : DrawnLength.Plain(count, 0);

    private static string Habit(Planting planting) => planting.EffectiveHabit switch
    {
        Model.Habit.Clump => "of a clump",
        Model.Habit.Raft => "of a raft",
        _ => "of a group",
    };

    private static string? Species(PlantingState state)
    {
        var names = new List<string>();
        foreach (var trunk in state.Trunks)
        {
            if (trunk.Presence == Presence.Standing && state.Planting.SpeciesOf(trunk.Trunk) is { } species)
            {
                var name = state.Planting.ProfileOf(species)?.Botanical?.Value ?? Capital(species.Replace('-', ' '));
                if (!names.Contains(name))
                {
                    names.Add(name);
                }

                if (names.Count > 3)
                {
                    return "Several species";
                }
            }
        }

        return names.Count switch
        {
            0 => null,
            1 => names[0],
            _ => $"{string.Join(", ", names.Take(names.Count - 1))} and {names[^1]}",
        };
    }

    private static string Capital(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];

    private static string ContainerWords(Container container, UnitSystem units) => container switch
    {
        Container.Oval oval => $"in an oval container {DrawnLength.Text(oval.Width, units)} wide and {DrawnLength.Text(oval.Breadth, units)} from front to back",
        Container.Rectangle rectangle => $"in a rectangular container {DrawnLength.Text(rectangle.Width, units)} wide and {DrawnLength.Text(rectangle.Breadth, units)} from front to back",
        Container.Round round => $"in a round container {DrawnLength.Text(round.Across, units)} across",
        _ => "on a slab",
    };
}
