using System.Collections.Immutable;

namespace GroveSpec.Syntax.Printing;

/// <summary>How the columns of a kind of line are set.</summary>
/// <param name="Gaps">How many blanks stand behind each column at least.</param>
/// <param name="FirstWidth">How wide the first column is at least.</param>
internal sealed record TidyLayout(ImmutableArray<int> Gaps, int FirstWidth = 0)
{
    /// <summary>A word, what it is about, and why.</summary>
    public static TidyLayout Head { get; } = new([1, 3, 3], 9);

    /// <summary>A tape's word, its two trunks, the distance and how it was read.</summary>
    public static TidyLayout Tape { get; } = new([1, 1, 1, 1], 9);

    /// <summary>A trunk's name, place, thickness, height, role and all the rest.</summary>
    public static TidyLayout Trunk { get; } = new([3, 3, 3, 3, 3, 3]);

    /// <summary>A task's name, kind, target, times, and details with the note.</summary>
    public static TidyLayout Task { get; } = new([3, 1, 3, 3, 3]);

    /// <summary>A role's name, brace, form, vigour and all the rest, on one line.</summary>
    public static TidyLayout Role { get; } = new([1, 1, 2, 2, 3]);

    /// <summary>A trunk's name and what was read of it.</summary>
    public static TidyLayout Reading { get; } = new([2, 3, 3, 3]);

    /// <summary>An entry of a profile.</summary>
    public static TidyLayout Entry { get; } = new([1, 3, 1], 10);
}
