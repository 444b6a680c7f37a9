using GroveSpec.Model.States;

namespace GroveSpec.Checks.Rules;

/// <summary>Trunks without a diameter or a height; told once for all of them.</summary>
internal sealed class NoSize : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "no-size",
        Severity = Severity.Hint,
        Meaning = "A trunk has no diameter or no height.",
        Explanation = "It is drawn, but every check that needs the size leaves it out.",
        Source = "the language",
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        var names = new List<string>();
        TrunkState? first = null;
        foreach (var trunk in context.State.Trunks)
        {
            if (trunk.Presence != Presence.Removed && (trunk.Diameter is null || trunk.Height is null))
            {
                first ??= trunk;
                names.Add(trunk.Name);
            }
        }

        if (first is null)
        {
            return [];
        }

        var missing = names.Count > 1 ? "lack a diameter or a height" : first.Diameter is not null ? "has no height" : first.Height is not null ? "has no diameter" : "has neither diameter nor height";
        return
        [
            new Finding
            {
                Check = Description,
                Severity = Description.Severity,
                Place = context.Origins.Locate(first.Trunk.Origin),
                Message = $"{Wording.List(names)} {missing}, and what needs it leaves {(names.Count == 1 ? "it" : "them")} out.",
                Trunks = [.. names.Order(StringComparer.Ordinal)],
                Measured = names.Count,
                Unit = "trunks",
            },
        ];
    }
}
