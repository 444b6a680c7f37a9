using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;
using Xunit;

namespace GroveSpec.Syntax.Tests;

/// <summary>A token keeps its kind and its place in eight bytes.</summary>
public sealed class SyntaxTokenTests
{
    [Fact]
    public void Every_kind_is_kept_with_the_shortest_and_the_longest_span_anywhere_in_a_text()
    {
        foreach (var kind in Enum.GetValues<TokenKind>())
        {
            foreach (var length in new[] { 0, 1, 10_000, SyntaxToken.Longest - 1, SyntaxToken.Longest })
            {
                foreach (var start in new[] { 0, 1, 16 * 1024 * 1024, int.MaxValue - length })
                {
                    var token = new SyntaxToken(kind, new TextSpan(start, length));
                    Assert.Equal((kind, start, length), (token.Kind, token.Span.Start, token.Span.Length));
                }
            }
        }
    }

    [Fact]
    public void A_longer_span_is_refused_and_not_cut() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new SyntaxToken(TokenKind.Stray, new TextSpan(0, SyntaxToken.Longest + 1)));

    [Fact]
    public void Tokens_differ_by_kind_by_place_and_by_length()
    {
        var token = new SyntaxToken(TokenKind.Word, new TextSpan(5, 3));
        Assert.Equal(new SyntaxToken(TokenKind.Word, new TextSpan(5, 3)), token);
        Assert.NotEqual(new SyntaxToken(TokenKind.Number, new TextSpan(5, 3)), token);
        Assert.NotEqual(new SyntaxToken(TokenKind.Word, new TextSpan(6, 3)), token);
        Assert.NotEqual(new SyntaxToken(TokenKind.Word, new TextSpan(5, 4)), token);
    }
}
