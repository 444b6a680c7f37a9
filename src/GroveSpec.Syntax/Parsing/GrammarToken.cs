using Antlr4.Runtime;

namespace GroveSpec.Syntax.Parsing;

/// <summary>A token as the generated parser sees it. The tokens of one statement are used again for the next.</summary>
internal sealed class GrammarToken : IToken
{
    private readonly GrammarTokenStream stream;

    public GrammarToken(GrammarTokenStream stream, int tokenIndex)
    {
        this.stream = stream;
        TokenIndex = tokenIndex;
    }

    /// <summary>The grammar's type. It may be mended to that of the word that was meant.</summary>
    public int Type { get; set; }

    /// <summary>Where it begins in the text.</summary>
    public int Start { get; set; }

    /// <summary>The first place after it.</summary>
    public int End { get; set; }

    /// <summary>Its place among the tokens of the tree; -1 for the end of the statement and for what was missing.</summary>
    public int Place { get; set; }

    /// <summary>Whether it is a number or text that cannot be taken as it stands; told already.</summary>
    public bool IsOdd { get; set; }

    public string Text => stream.Content[Start..End];

    public int TokenIndex { get; }

    public int Line => 0;

    public int Column => Start;

    public int Channel => TokenConstants.DefaultChannel;

    public int StartIndex => Start;

    public int StopIndex => End - 1;

    public ITokenSource TokenSource => null!;

    public ICharStream InputStream => null!;
}
