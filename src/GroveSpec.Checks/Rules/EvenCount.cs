using System.Collections.Immutable;

namespace GroveSpec.Checks.Rules;

/// <summary>An even number of standing trunks, under ten.</summary>
internal sealed class EvenCount : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "even-count",
        Severity = Severity.Hint,
        Meaning = "The planting has an even number of trunks, under ten.",
        Explanation = "An even number falls into pairs and halves that the eye finds at once; an odd one keeps it moving. From ten trunks on nobody counts. Two trunks, one large and one small, are a pairing of their own and are let be.",
        Source = "common practice",
        IsComposition = true,
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        var standing = context.State.Trunks.Where(trunk => trunk.Presence == Model.States.Presence.Standing).Select(trunk => trunk.Trunk).ToImmutableArray();
        if (standing.Length is 0 or 2 or >= 10 || standing.Length % 2 != 0)
        {
            return [];
        }

        return
        [
            new Finding
            {
                Check = Description,
                Severity = Description.Severity,
                Place = context.Origins.Locate(standing[^1].Origin),
                Message = $"{standing.Length} trunks stand here, an even number: one more, or one fewer, would keep the group from falling into halves.",
                Measured = standing.Length,
                Unit = "trunks",
            },
        ];
    }
}
