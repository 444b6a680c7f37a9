using GroveSpec.Syntax.Text;

namespace GroveSpec.Syntax.Tree;

/// <summary>The smallest piece of text with a meaning. The tokens of a tree cover its text without gap or overlap.</summary>
/// <remarks>
/// A text of 10,000 trunks has 300,000 of them, and they are kept as long as its tree: so the length and the kind share one
/// number, of which the kind takes the lowest four bits.
/// </remarks>
public readonly record struct SyntaxToken
{
    /// <summary>How many UTF-16 code units a token has at most.</summary>
    public const int Longest = int.MaxValue >> KindBits;

    private const int KindBits = 4;
    private const int KindMask = (1 << KindBits) - 1;

    private readonly int start;
    private readonly int lengthAndKind;

    /// <summary>Makes one.</summary>
    /// <param name="kind">What it is.</param>
    /// <param name="span">Where it stands; not longer than <see cref="Longest"/>.</param>
    public SyntaxToken(TokenKind kind, TextSpan span)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(span.Length, Longest);
        start = span.Start;
        lengthAndKind = (span.Length << KindBits) | (int)kind;
    }

    private SyntaxToken(int start, int lengthAndKind)
    {
        this.start = start;
        this.lengthAndKind = lengthAndKind;
    }

    /// <summary>What it is.</summary>
    public TokenKind Kind => (TokenKind)(lengthAndKind & KindMask);

    /// <summary>Where it stands.</summary>
    public TextSpan Span => new(start, lengthAndKind >> KindBits);

    /// <summary>The same token elsewhere.</summary>
    /// <param name="by">By how much farther from the start, in UTF-16 code units.</param>
    internal SyntaxToken Moved(int by) => new(start + by, lengthAndKind);
}
