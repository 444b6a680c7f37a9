namespace GroveSpec.Checks;

/// <summary>The order in which a grower counts names: numbers in them by their value, everything else letter by letter.</summary>
internal sealed class NaturalOrder : IComparer<string>
{
    private NaturalOrder()
    {
    }

    /// <summary>The order.</summary>
    public static NaturalOrder Instance { get; } = new();

    /// <summary>Compares two names.</summary>
    /// <param name="x">One.</param>
    /// <param name="y">The other.</param>
    /// <returns>Below zero where the one comes first, above where the other does; zero only for the same name, for of two that count alike, such as T2 and T02, the first by letters comes first.</returns>
    public int Compare(string? x, string? y)
    {
        ReadOnlySpan<char> one = x, other = y;
        while (!one.IsEmpty && !other.IsEmpty)
        {
            int digits = Digits(one), digitsOfOther = Digits(other);
            var order = digits > 0 && digitsOfOther > 0 ? CompareNumbers(one[..digits], other[..digitsOfOther]) : one[0].CompareTo(other[0]);
            if (order != 0)
            {
                return order;
            }

            one = one[Math.Max(1, digits)..];
            other = other[Math.Max(1, digitsOfOther)..];
        }

        return one.Length != other.Length ? one.Length.CompareTo(other.Length) : string.CompareOrdinal(x, y);
    }

    private static int Digits(ReadOnlySpan<char> text)
    {
        var end = text.IndexOfAnyExceptInRange('0', '9');
        return end < 0 ? text.Length : end;
    }

    /// <summary>By value, however many digits there are.</summary>
    private static int CompareNumbers(ReadOnlySpan<char> one, ReadOnlySpan<char> other)
    {
        one = one.TrimStart('0');
        other = other.TrimStart('0');
        return one.Length != other.Length ? one.Length.CompareTo(other.Length) : one.SequenceCompareTo(other);
    }
}
