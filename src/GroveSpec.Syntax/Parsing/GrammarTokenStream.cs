using Antlr4.Runtime;
using Antlr4.Runtime.Misc;

namespace GroveSpec.Syntax.Parsing;

/// <summary>The words, numbers and marks of one statement, as the generated parser reads them.</summary>
internal sealed class GrammarTokenStream : ITokenStream
{
    private readonly List<GrammarToken> pool = [];
    private int count;
    private int position;

    public GrammarTokenStream(string content) => Content = content;

    /// <summary>The whole text.</summary>
    public string Content { get; }

    public int Index => position;

    public int Size => count;

    public string SourceName => string.Empty;

    public ITokenSource TokenSource => null!;

    /// <summary>Forgets the statement before.</summary>
    public void Clear()
    {
        count = 0;
        position = 0;
    }

    /// <summary>Adds a token behind the others.</summary>
    public void Add(int type, int start, int end, int place, bool isOdd)
    {
        if (count == pool.Count)
        {
            pool.Add(new GrammarToken(this, count));
        }

        var token = pool[count++];
        token.Type = type;
        token.Start = start;
        token.End = end;
        token.Place = place;
        token.IsOdd = isOdd;
    }

    /// <summary>The token at a place, the end of the statement at the last.</summary>
    public GrammarToken At(int index) => pool[Math.Min(index, count - 1)];

    /// <summary>A token that stands for something missing at the place where the stream is now.</summary>
    public GrammarToken Missing(int type)
    {
        var at = At(position).Start;
        return new GrammarToken(this, -1) { Type = type, Start = at, End = at, Place = -1, IsOdd = true };
    }

    public IToken Get(int i) => At(i);

    public IToken LT(int k)
    {
        if (k > 0)
        {
            return At(position + k - 1);
        }

        return position + k < 0 ? null! : pool[position + k];
    }

    public int LA(int i)
    {
        if (i > 0)
        {
            return At(position + i - 1).Type;
        }

        return position + i < 0 ? TokenConstants.InvalidType : pool[position + i].Type;
    }

    public void Consume()
    {
        if (position < count - 1)
        {
            position++;
        }
    }

    public int Mark() => 0;

    public void Release(int marker)
    {
        // Everything is kept, so that there is nothing to let go of.
    }

    public void Seek(int index) => position = Math.Min(index, count - 1);

    public string GetText(Interval interval) => string.Empty;

    public string GetText() => string.Empty;

    public string GetText(RuleContext ctx) => string.Empty;

    public string GetText(IToken start, IToken stop) => string.Empty;
}
