namespace GroveSpec.Syntax.Text;

/// <summary>What sets two texts apart: one run of each, between what they have in common at their starts and at their ends.</summary>
/// <param name="Start">Where both runs begin, in UTF-16 code units from the start.</param>
/// <param name="EndBefore">The first place after the run in the text before.</param>
/// <param name="EndAfter">The first place after the run in the text after.</param>
internal readonly record struct TextChange(int Start, int EndBefore, int EndAfter)
{
    /// <summary>By how much what stands behind the run has moved away from the start.</summary>
    public int Growth => EndAfter - EndBefore;

    /// <summary>Whether the texts are the same.</summary>
    public bool IsNone => EndBefore == Start && EndAfter == Start;

    /// <summary>Compares two texts.</summary>
    /// <param name="before">The one.</param>
    /// <param name="after">The other.</param>
    /// <returns>The shortest runs that set them apart, the common start being taken first.</returns>
    public static TextChange Between(ReadOnlySpan<char> before, ReadOnlySpan<char> after)
    {
        var start = before.CommonPrefixLength(after);
        var end = CommonEnd(before[start..], after[start..]);
        return new(start, before.Length - end, after.Length - end);
    }

    private static int CommonEnd(ReadOnlySpan<char> left, ReadOnlySpan<char> right)
    {
        const int Block = 256;
        var longest = Math.Min(left.Length, right.Length);
        var common = 0;
        while (common + Block <= longest && left[^(common + Block)..^common].SequenceEqual(right[^(common + Block)..^common]))
        {
            common += Block;
        }

        while (common < longest && left[^(common + 1)] == right[^(common + 1)])
        {
            common++;
        }

        return common;
    }
}
