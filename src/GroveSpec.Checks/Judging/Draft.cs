using System.Collections.Immutable;
using GroveSpec.Model;
using GroveSpec.Model.States;

namespace GroveSpec.Checks.Judging;

/// <summary>Makes the findings of composition alike: where they are, what they relate to, and the remedy that accepts them.</summary>
internal static class Draft
{
    private const int MostRelated = 8;

    /// <summary>A finding about some trunks.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="check">The check.</param>
    /// <param name="clause">The clause of each trunk's statement that it is about, such as "at" or "height".</param>
    /// <param name="about">The trunks; the finding's place is with the first, the others are related places.</param>
    /// <param name="message">The sentence.</param>
    /// <param name="beside">Other trunks that it is not about but that show why, as further related places.</param>
    /// <returns>The finding, to which the rule adds what was measured.</returns>
    public static Finding Of(CheckContext context, CheckDescription check, string clause, IReadOnlyList<TrunkState> about, string message, IEnumerable<TrunkState>? beside = null)
    {
        var names = ImmutableArray.CreateBuilder<string>(about.Count);
        foreach (var trunk in about)
        {
            names.Add(trunk.Name);
        }

        names.Sort(StringComparer.Ordinal);
        var trunks = names.MoveToImmutable();
        var related = ImmutableArray.CreateBuilder<RelatedPlace>();
        foreach (var trunk in about.Skip(1).Concat(beside ?? []).Take(MostRelated))
        {
            related.Add(new(context.Origins.Locate(OriginOf(trunk, clause)), Wording.Name(trunk.Name)));
        }

        return new Finding
        {
            Check = check,
            Severity = check.Severity,
            Place = context.Origins.Locate(OriginOf(about[0], clause)),
            Message = message,
            Trunks = trunks,
            Related = related.DrainToImmutable(),
            Remedies = check.Severity == Severity.Error ? [] : Acceptance.Offer(context, check, trunks),
        };
    }

    /// <summary>A size may be the newest of many readings; its own origin says where it was written.</summary>
    private static Origin OriginOf(TrunkState trunk, string clause) => clause switch
    {
        "diameter" when trunk.Diameter is { } diameter => diameter.Origin,
        "height" when trunk.Height is { } height => height.Origin,
        _ => trunk.Trunk.Origin.Part(clause),
    };
}
