using System.Collections.Immutable;
using GroveSpec.Checks.Nudging;

namespace GroveSpec.Checks.Sentences;

/// <summary>Says what the smallest moves leave.</summary>
public static class NudgeSentences
{
    private const int MostLeftTold = 6;

    /// <summary>What the checks of composition still find after the moves.</summary>
    /// <param name="suggestion">The moves.</param>
    /// <returns>A sentence for each of the first few findings, and one that counts the others; empty where nothing is left.</returns>
    public static ImmutableArray<string> Left(NudgeSuggestion suggestion)
    {
        ArgumentNullException.ThrowIfNull(suggestion);
        var told = suggestion.Left.Take(MostLeftTold).Select(finding => $"Left: {finding.Message}");
        return [.. suggestion.Left.Length > MostLeftTold ? told.Append($"And {suggestion.Left.Length - MostLeftTold} more are left.") : told];
    }

    /// <summary>What to keep in mind.</summary>
    /// <param name="answer">What was found.</param>
    /// <returns>Sentences in the order in which they are told, the care of bending first where a trunk is bent.</returns>
    public static ImmutableArray<string> Remarks(NudgeAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var isBending = answer.Suggestions.Any(suggestion => suggestion.Moves.Any(move => !move.IsMoved));
        return isBending ? [NudgeWords.CareOfBending, .. answer.Remarks] : [.. answer.Remarks];
    }
}
