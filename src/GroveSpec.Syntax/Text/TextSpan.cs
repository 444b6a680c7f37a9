namespace GroveSpec.Syntax.Text;

/// <summary>A run of UTF-16 code units in a text.</summary>
/// <param name="Start">Where it begins, from 0.</param>
/// <param name="Length">How many code units it has; 0 for a place between two.</param>
public readonly record struct TextSpan(int Start, int Length) : IComparable<TextSpan>
{
    /// <summary>The first place after it.</summary>
    public int End => Start + Length;

    /// <summary>Makes a span from its two ends.</summary>
    /// <param name="start">Where it begins.</param>
    /// <param name="end">The first place after it, not before <paramref name="start"/>.</param>
    /// <returns>The span.</returns>
    public static TextSpan FromBounds(int start, int end) => new(start, end - start);

    /// <summary>The same run elsewhere.</summary>
    /// <param name="by">By how much farther from the start.</param>
    internal TextSpan Moved(int by) => new(Start + by, Length);

    /// <summary>Whether a place lies in it; its end counts, so that a caret behind a word is in the word.</summary>
    /// <param name="position">The place.</param>
    /// <returns>True when it touches.</returns>
    public bool Touches(int position) => position >= Start && position <= End;

    /// <inheritdoc/>
    public int CompareTo(TextSpan other) => Start != other.Start ? Start.CompareTo(other.Start) : Length.CompareTo(other.Length);

    /// <summary>Whether the left span comes first.</summary>
    public static bool operator <(TextSpan left, TextSpan right) => left.CompareTo(right) < 0;

    /// <summary>Whether the right span comes first.</summary>
    public static bool operator >(TextSpan left, TextSpan right) => left.CompareTo(right) > 0;

    /// <summary>Whether the left span comes first or both are the same.</summary>
    public static bool operator <=(TextSpan left, TextSpan right) => left.CompareTo(right) <= 0;

    /// <summary>Whether the right span comes first or both are the same.</summary>
    public static bool operator >=(TextSpan left, TextSpan right) => left.CompareTo(right) >= 0;
}
