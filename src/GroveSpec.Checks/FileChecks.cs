using System.Collections.Immutable;

namespace GroveSpec.Checks;

/// <summary>Checks of the file itself: what it states, whether or not the composition is good.</summary>
public static class FileChecks
{
    /// <summary>An acceptance that no finding answers to any more.</summary>
    public static CheckDescription StaleAccept { get; } = new()
    {
        Name = "stale-accept",
        Severity = Severity.Hint,
        Meaning = "An accept statement lets a finding stand that is no longer there.",
        Explanation = "The trunks have moved, grown or gone, and the reason written down no longer holds anything up. Take the statement out, so that a new finding of the same kind is not hidden by an old reason.",
        Source = "the language",
    };

    /// <summary>A tolerance that its check cannot use.</summary>
    public static CheckDescription OddTolerance { get; } = new()
    {
        Name = "odd-tolerance",
        Severity = Severity.Warning,
        Meaning = "A tolerance is set in a unit or to an amount that its check cannot use.",
        Explanation = "Each check measures one kind of thing and takes a limit within a range in which it still means something. The usual limit was used instead.",
        Source = "the language",
    };

    /// <summary>A check that broke down on a planting.</summary>
    public static CheckDescription BrokenCheck { get; } = new()
    {
        Name = "broken-check",
        Severity = Severity.Warning,
        Meaning = "One check could not be carried out; all others were.",
        Explanation = "This is a fault of GroveSpec and not of the planting. The file that shows it is worth sending in.",
        Source = "the language",
    };

    /// <summary>All of them, in the order in which they are told.</summary>
    public static ImmutableArray<CheckDescription> All { get; } =
    [
        StaleAccept,
        OddTolerance,
        BrokenCheck,
    ];
}
