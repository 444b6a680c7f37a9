using GroveSpec.Checks.Judging;
using GroveSpec.Model.States;

namespace GroveSpec.Checks.Rules;

/// <summary>An even number of standing trunks, under ten.</summary>
internal sealed class EvenCount : IRule
{
    private const int NobodyCountsFrom = 10;

    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "even-count",
        Severity = Severity.Hint,
        Meaning = "The planting has an even number of trunks, under ten.",
        Explanation = "An even number falls into pairs and halves that the eye finds at once; an odd one keeps it moving. From ten trunks on nobody counts. Planned and removed trunks are not counted.",
        Source = "common practice",
        IsComposition = true,
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        var count = context.State.Trunks.Count(trunk => trunk.Presence == Presence.Standing);
        if (!IsSplit(count))
        {
            return [];
        }

        var last = context.State.Trunks.Last(trunk => trunk.Presence == Presence.Standing);
        var number = count switch
        {
            2 => "Two",
            4 => "Four",
            6 => "Six",
            _ => "Eight",
        };
        return
        [
            new Finding
            {
                Check = Description,
                Severity = Description.Severity,
                Place = context.Origins.Locate(last.Trunk.Origin),
                Message = $"{number} trunks stand here, an even number, which the eye splits into pairs: one more, or one fewer, would keep it moving.",
                Measured = count,
                Unit = "trunks",
                Remedies = Acceptance.Offer(context, Description, []),
            },
        ];
    }

    /// <summary>Whether the eye splits a number of trunks into pairs.</summary>
    /// <param name="count">How many stand.</param>
    /// <returns>True for an even number of a few.</returns>
    public static bool IsSplit(int count) => count is > 0 and < NobodyCountsFrom && count % 2 == 0;
}
