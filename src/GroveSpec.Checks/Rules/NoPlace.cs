using GroveSpec.Craft.Survey;
using GroveSpec.Model.States;

namespace GroveSpec.Checks.Rules;

/// <summary>A trunk whose place neither its own statement nor the tape readings give.</summary>
internal sealed class NoPlace : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "no-place",
        Severity = Severity.Warning,
        Meaning = "It is not known where a trunk stands.",
        Explanation = "A trunk is placed by its own at, or by tape readings to at least three trunks whose places are known and that do not stand in one line. Until then it is left out of the drawings and of every check that needs places.",
        Source = "plane geometry: two distances leave two places, a third decides",
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        Dictionary<string, (int Known, int Unknown, int Uncounted)>? measuredFrom = null;
        foreach (var trunk in context.State.Trunks)
        {
            if (trunk.Place is not null || trunk.Presence == Presence.Removed)
            {
                continue;
            }

            measuredFrom ??= TapesOf(context);
            var (known, unknown, uncounted) = measuredFrom.GetValueOrDefault(trunk.Name);
            yield return new Finding
            {
                Check = Description,
                Severity = trunk.Presence == Presence.Planned ? Severity.Hint : Description.Severity,
                Place = context.Origins.Locate(trunk.Trunk.Origin),
                Message = $"It is not known where {Wording.Name(trunk.Name)} stands: " + (known, unknown) switch
                {
                    _ when uncounted > 0 && known < 3 => $"{(uncounted == 1 ? "one tape reading" : $"{uncounted} tape readings")} to it between bark cannot be counted before the diameters of both trunks are known.",
                    (0, 0) => "give it an \"at\", or tape readings to three trunks whose places are known.",
                    (0, _) => "its tape readings are to trunks whose places are not known either; give one of them an \"at\".",
                    (1, _) => "one tape reading to a trunk whose place is known leaves it free on a circle; two more would place it.",
                    (2, _) => "two tape readings to trunks whose places are known leave two places open; one more would place it.",
                    _ => $"there are {known} tape readings to trunks whose places are known, but those stand in one line or the readings do not meet; measure to one that stands aside.",
                },
                Trunks = [trunk.Name],
                Measured = known,
                Limit = 3,
                Unit = "tape readings",
            };
        }
    }

    /// <summary>For each trunk, to how many others with a known place it was measured, to how many without, and how many readings between bark lack a thickness.</summary>
    private static Dictionary<string, (int Known, int Unknown, int Uncounted)> TapesOf(CheckContext context)
    {
        var trunks = new Dictionary<string, TrunkState>(StringComparer.Ordinal);
        foreach (var trunk in context.State.Trunks)
        {
            trunks.TryAdd(trunk.Name, trunk);
        }

        var counts = new Dictionary<string, (int Known, int Unknown, int Uncounted)>(StringComparer.Ordinal);
        var seen = new HashSet<(string From, string To)>();
        foreach (var tape in context.Planting.Tapes)
        {
            if (trunks.TryGetValue(tape.From, out var one) && trunks.TryGetValue(tape.To, out var other) && !TapePlacement.Counts(tape, one, other))
            {
                Leave(tape.From);
                Leave(tape.To);
                continue;
            }

            Count(tape.From, tape.To);
            Count(tape.To, tape.From);
        }

        return counts;

        void Leave(string name)
        {
            var (near, far, uncounted) = counts.GetValueOrDefault(name);
            counts[name] = (near, far, uncounted + 1);
        }

        void Count(string from, string to)
        {
            if (seen.Add((from, to)))
            {
                var (near, far, uncounted) = counts.GetValueOrDefault(from);
                counts[from] = trunks.TryGetValue(to, out var mark) && mark.Place is not null ? (near + 1, far, uncounted) : (near, far + 1, uncounted);
            }
        }
    }
}
