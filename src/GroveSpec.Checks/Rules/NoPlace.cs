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
        Dictionary<string, HashSet<string>>? measuredFrom = null;
        foreach (var trunk in context.State.Trunks)
        {
            if (trunk.Place is not null || trunk.Presence == Presence.Removed)
            {
                continue;
            }

            measuredFrom ??= TapesOf(context);
            var count = measuredFrom.TryGetValue(trunk.Name, out var others) ? others.Count : 0;
            yield return new Finding
            {
                Check = Description,
                Severity = trunk.Presence == Presence.Planned ? Severity.Hint : Description.Severity,
                Place = context.Origins.Locate(trunk.Trunk.Origin),
                Message = $"It is not known where {Wording.Name(trunk.Name)} stands: " + count switch
                {
                    0 => "give it an “at”, or tape readings to three trunks whose places are known.",
                    1 => "one tape reading leaves it free on a circle; two more, to trunks whose places are known, would place it.",
                    2 => "two tape readings leave two places open; one more, to a trunk whose place is known, would place it.",
                    _ => $"there are tape readings to {count} trunks, but their places are not known either, or they stand in one line; give one of them an “at”.",
                },
                Trunks = [trunk.Name],
                Measured = count,
                Limit = 3,
                Unit = "tape readings",
            };
        }
    }

    private static Dictionary<string, HashSet<string>> TapesOf(CheckContext context)
    {
        var tapes = new Dictionary<string, HashSet<string>>(StringComparer.Ordinal);
        foreach (var tape in context.Planting.Tapes)
        {
            Join(tapes, tape.From, tape.To);
            Join(tapes, tape.To, tape.From);
        }

        return tapes;
    }

    private static void Join(Dictionary<string, HashSet<string>> tapes, string from, string to)
    {
        if (!tapes.TryGetValue(from, out var others))
        {
            tapes.Add(from, others = new(StringComparer.Ordinal));
        }

        others.Add(to);
    }
}
