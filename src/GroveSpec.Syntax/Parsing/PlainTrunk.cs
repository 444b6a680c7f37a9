using System.Collections.Immutable;
using GroveSpec.Syntax.Parsing.Generated;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Syntax.Parsing;

/// <summary>
/// Reads a trunk that has only the usual clauses and no trouble, which is what most lines of a large planting are,
/// several times as fast as the generated parser. Whatever is not plain is left to it; a test holds both to the same tree.
/// </summary>
internal sealed class PlainTrunk
{
    private const int LongestKept = 8;

    private readonly string?[] kept = new string?[1024];
    private readonly string content;
    private readonly ImmutableArray<SyntaxToken> tokens;
    private readonly List<byte> types;
    private readonly ImmutableArray<Clause>.Builder clauses = ImmutableArray.CreateBuilder<Clause>(8);
    private int index;
    private int end;
    private int lastEnd;

    public PlainTrunk(string content, Scanner scanner)
    {
        this.content = content;
        tokens = scanner.Tokens;
        types = scanner.Types;
    }

    /// <summary>Reads a statement that begins with <c>trunk</c>.</summary>
    /// <returns>The trunk; null when the statement is not plain.</returns>
    public Statement.Trunk? Read(StatementSlice slice)
    {
        index = slice.FirstToken;
        end = slice.FirstToken + slice.TokenCount;
        clauses.Clear();
        SkipBlanks();
        var start = tokens[index].Span.Start;
        Take();
        if (TakeWord() is not { } name)
        {
            return null;
        }

        while (Current() is var type && type != 0)
        {
            if (type == Grove.COMMA)
            {
                Take();
            }

            if (Clause() is not { } clause)
            {
                return null;
            }

            clauses.Add(clause);
        }

        return new Statement.Trunk(name, clauses.ToImmutable())
        {
            Span = TextSpan.FromBounds(start, lastEnd),
            FirstToken = slice.FirstToken,
            TokenCount = slice.TokenCount,
        };
    }

    private Clause? Clause()
    {
        var type = Current();
        var start = type == 0 ? 0 : tokens[index].Span.Start;
        switch (type)
        {
            case Grove.AT:
                Take();
                return Place() is { } place ? new Clause.At(place) { Span = From(start) } : null;
            case Grove.DIAMETER or Grove.GIRTH:
                Take();
                return Quantity() is { } thickness ? new Clause.Thickness(type == Grove.GIRTH, thickness) { Span = From(start) } : null;
            case Grove.HEIGHT:
                Take();
                return Quantity() is { } height ? new Clause.Height(height) { Span = From(start) } : null;
            case Grove.CROWN:
                Take();
                return Quantity() is { } crown ? new Clause.Crown(crown) { Span = From(start) } : null;
            case Grove.LEAN:
                Take();
                return Lean(start);
            case Grove.ROLE:
                Take();
                return TakeWord() is { } role ? new Clause.Role(role) { Span = From(start) } : null;
            case Grove.SPECIES:
                Take();
                return TakeWord() is { } species ? new Clause.Species(species) { Span = From(start) } : null;
            case Grove.FIXED:
                Take();
                return new Clause.Fixed { Span = From(start) };
            default:
                return null;
        }
    }

    private Clause.Lean? Lean(int start)
    {
        if (Quantity() is not { } angle || Current() != Grove.TOWARD)
        {
            return null;
        }

        Take();
        return Quantity() is { } toward ? new Clause.Lean(angle, toward) { Span = From(start) } : null;
    }

    private PlanPointSyntax? Place()
    {
        if (Quantity() is not { } x || Current() != Grove.COMMA)
        {
            return null;
        }

        Take();
        return Quantity() is { } y ? new PlanPointSyntax(x, y) { Span = From(x.Span.Start) } : null;
    }

    private QuantitySyntax? Quantity()
    {
        if (Current() != Grove.NUMBER)
        {
            return null;
        }

        var number = tokens[index].Span;
        Take();
        NameSyntax? unit = null;
        if (Current() is Grove.UNIT or Grove.PERCENT)
        {
            // A word of the language that stands as a unit becomes a plain word, which the tree's builder sees to.
            if (tokens[index].Kind == TokenKind.Keyword)
            {
                return null;
            }

            unit = Name();
        }

        return new QuantitySyntax(Text(number), unit) { Span = From(number.Start) };
    }

    private NameSyntax? TakeWord() => Current() == Grove.WORD ? Name() : null;

    private NameSyntax Name()
    {
        var span = tokens[index].Span;
        Take();
        return new NameSyntax(Text(span)) { Span = span };
    }

    /// <summary>The text of a span. Numbers, units and roles come again and again, so a short one is often there already.</summary>
    private string Text(TextSpan span)
    {
        var text = content.AsSpan(span.Start, span.Length);
        if (text.Length > LongestKept)
        {
            return text.ToString();
        }

        var hash = 0;
        foreach (var unit in text)
        {
            hash = (hash * 31) + unit;
        }

        ref var slot = ref kept[hash & (kept.Length - 1)];
        return slot is { } known && text.SequenceEqual(known) ? known : slot = text.ToString();
    }

    private TextSpan From(int start) => TextSpan.FromBounds(start, lastEnd);

    /// <summary>The type of the next token that counts; 0 at the end. An odd one has a type that nothing expects.</summary>
    private int Current()
    {
        SkipBlanks();
        return index < end ? types[index] : 0;
    }

    private void Take()
    {
        lastEnd = tokens[index].Span.End;
        index++;
    }

    private void SkipBlanks()
    {
        while (index < end && types[index] == 0)
        {
            index++;
        }
    }
}
