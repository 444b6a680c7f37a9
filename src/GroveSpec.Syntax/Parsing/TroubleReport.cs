using Antlr4.Runtime;
using Antlr4.Runtime.Misc;
using GroveSpec.Syntax.Parsing.Generated;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Syntax.Parsing;

/// <summary>Turns a place where the grammar does not fit into a sentence for a grower.</summary>
internal sealed class TroubleReport
{
    private const int LongestQuoted = 40;
    private const int MostListed = 6;

    private readonly ProblemList problems;
    private readonly GrammarTokenStream stream;
    private int toldOfStatement;

    public TroubleReport(ProblemList problems, GrammarTokenStream stream)
    {
        this.problems = problems;
        this.stream = stream;
    }

    /// <summary>Whether the statement that is being read has something that could not be read.</summary>
    public bool IsBroken { get; set; }

    /// <summary>Begins a new statement.</summary>
    public void Clear()
    {
        IsBroken = false;
        toldOfStatement = 0;
    }

    /// <summary>Adds a problem of the statement.</summary>
    public void Add(SyntaxProblemKind kind, TextSpan span, string message, string? replacement = null)
    {
        IsBroken = true;
        if (toldOfStatement++ < Limits.ProblemsOfStatement)
        {
            problems.Add(kind, span, message, replacement);
        }
    }

    /// <summary>Tells that a word was taken for the one it is near to.</summary>
    public void TellMisspelt(IToken token, string meant)
    {
        var span = SpanOf(token);
        Add(
            SyntaxProblemKind.MisspeltWord,
            span,
            token.Text.Equals(meant, StringComparison.OrdinalIgnoreCase)
                ? $"The words of the language are written small; write {meant} for \"{token.Text}\"."
                : $"\"{Quote(token.Text)}\" is not a word of the language here; was {meant} meant?",
            meant);
    }

    /// <summary>Tells that a token does not fit where it stands.</summary>
    public void Tell(Parser recognizer, GrammarToken token, IntervalSet expected)
    {
        if (token.Type == Grove.STRAY && token.IsOdd)
        {
            // What is wrong with the character itself has been told.
            IsBroken = true;
            return;
        }

        var rule = InnermostPhrase(recognizer, out var phrase);
        var before = Before();
        if (TellNumberTrouble(token, before, rule) || TellNameTrouble(recognizer, token, rule) || TellPlaceTrouble(recognizer, token))
        {
            return;
        }

        if (TellTaskWithoutName(token, before) || TellSideForBearing(token, rule))
        {
            return;
        }

        var wanted = Wanted(recognizer, expected, phrase);
        var span = token.Type == TokenConstants.EOF || token.Type == Grove.ROW_END ? new TextSpan(before?.End ?? token.Start, 0) : SpanOf(token);
        var after = before is null ? "Here comes" : $"After \"{Quote(before.Text)}\" comes";
        Add(
            SyntaxProblemKind.NotUnderstood,
            span,
            token.Type == TokenConstants.EOF || token.Type == Grove.ROW_END ? $"{after} {wanted}; the line ends before it." : $"{after} {wanted}, not \"{Quote(token.Text)}\".");
    }

    private static TextSpan SpanOf(IToken token) => TextSpan.FromBounds(token.StartIndex, token.StopIndex + 1);

    private static string Quote(string text) => text.Length <= LongestQuoted ? text : string.Concat(text.AsSpan(0, LongestQuoted), "…");

    private static int InnermostPhrase(Parser recognizer, out string? phrase)
    {
        for (RuleContext? context = recognizer.Context; context is not null; context = context.Parent)
        {
            // A rule says what it reads only while nothing of it has been read.
            if (context is ParserRuleContext { Start: { } start } && start.TokenIndex != recognizer.InputStream.Index)
            {
                break;
            }

            if (Phrases.For(context.RuleIndex) is { } found)
            {
                phrase = found;
                return context.RuleIndex;
            }
        }

        phrase = null;
        return recognizer.Context.RuleIndex;
    }

    private GrammarToken? Before() => stream.Index > 0 ? stream.At(stream.Index - 1) : null;

    /// <summary>A comma for a point, "NaN", and words where a number belongs.</summary>
    private bool TellNumberTrouble(GrammarToken token, GrammarToken? before, int rule)
    {
        if (token.Type == Grove.NUMBER && before is { Type: Grove.COMMA } && before.End == token.Start && stream.Index > 1
            && stream.At(stream.Index - 2) is { Type: Grove.NUMBER } whole && whole.End == before.Start
            && !whole.Text.Contains('.', StringComparison.Ordinal) && char.IsAsciiDigit(token.Text[0]))
        {
            whole.IsOdd = true;
            Add(
                SyntaxProblemKind.OddNumber,
                TextSpan.FromBounds(whole.Start, token.End),
                $"Decimals are written with a point; write {Quote(whole.Text)}.{Quote(token.Text)} for \"{Quote(whole.Text)},{Quote(token.Text)}\".",
                $"{whole.Text}.{token.Text}");
            return true;
        }

        if (Phrases.ReadsNumber(rule) && token.Type is Grove.WORD or Grove.UNIT
            && (token.Text.Equals("nan", StringComparison.OrdinalIgnoreCase) || token.Text.StartsWith("inf", StringComparison.OrdinalIgnoreCase)))
        {
            Add(SyntaxProblemKind.OddNumber, SpanOf(token), $"\"{Quote(token.Text)}\" is not a number; write {Phrases.For(rule)}.");
            return true;
        }

        return false;
    }

    private bool TellNameTrouble(Parser recognizer, GrammarToken token, int rule)
    {
        if (Phrases.NamedBy(rule) is not { } named)
        {
            return false;
        }

        if (Vocabulary.IsReserved(token.Type))
        {
            Add(
                SyntaxProblemKind.NotUnderstood,
                SpanOf(token),
                $"\"{token.Text}\" is a word of the language and cannot name {named}; write another name such as {Phrases.SampleName(rule)}.");
            return true;
        }

        if (token.Type is Grove.NUMBER or Grove.DATE)
        {
            var end = token.End;
            if (stream.At(stream.Index + 1) is { Type: Grove.UNIT } unit && unit.Start == end)
            {
                end = unit.End;
            }

            var text = recognizer.InputStream is GrammarTokenStream own ? own.Content[token.Start..end] : token.Text;
            Add(
                SyntaxProblemKind.NotUnderstood,
                TextSpan.FromBounds(token.Start, end),
                $"The name of {named} does not begin with a digit or a sign; write another name such as {Phrases.SampleName(rule)} for \"{Quote(text)}\".");
            return true;
        }

        return false;
    }

    /// <summary>A task that begins with its kind.</summary>
    private bool TellTaskWithoutName(GrammarToken token, GrammarToken? before)
    {
        if (stream.At(0).Type != Grove.TASK || stream.Index != 2 || before is null || !KnownWords.TaskKinds.Contains(before.Text, StringComparer.Ordinal))
        {
            return false;
        }

        Add(SyntaxProblemKind.NotUnderstood, SpanOf(before), $"A task has a name of its own before its kind, such as task W1 {before.Text}.");
        return true;
    }

    /// <summary>A side of the planting where a bearing belongs.</summary>
    private bool TellSideForBearing(GrammarToken token, int rule)
    {
        var degrees = token.Text switch
        {
            "back" => 0,
            "right" => 90,
            "front" => 180,
            "left" => 270,
            _ => -1,
        };
        if (rule != Grove.RULE_bearing || degrees < 0)
        {
            return false;
        }

        Add(SyntaxProblemKind.NotUnderstood, SpanOf(token), $"A bearing is written in degrees: the {token.Text} is {degrees} deg.", $"{degrees} deg");
        return true;
    }

    /// <summary>What stands where nothing of its kind belongs: a second statement on a line, an open block, a stray character.</summary>
    private bool TellPlaceTrouble(Parser recognizer, GrammarToken token)
    {
        var rule = recognizer.Context.RuleIndex;
        if (token.Type == TokenConstants.EOF && rule is Grove.RULE_role or Grove.RULE_measured or Grove.RULE_profile && BlockOpening() is { } opening && !IsAfterClose())
        {
            Add(SyntaxProblemKind.NotClosed, SpanOf(opening), "This block has no closing brace; write } where it ends.");
            return true;
        }

        if (token.Type == Grove.ROW_END && rule == Grove.RULE_statement && BlockOpening() is { } open)
        {
            Add(SyntaxProblemKind.NotClosed, SpanOf(open), "This block has no closing brace; write } where it ends.");
            return true;
        }

        if (token.Type == Grove.STRAY)
        {
            Add(SyntaxProblemKind.NotUnderstood, SpanOf(token), $"\"{Quote(token.Text)}\" has no meaning here; take it out, or write it within quote marks.");
            return true;
        }

        if (Vocabulary.BeginsStatement(token.Type) && (rule == Grove.RULE_statement || (Phrases.PartsOf(rule) is not null && stream.Index > 1)))
        {
            Add(SyntaxProblemKind.NotUnderstood, SpanOf(token), $"\"{token.Text}\" begins a new statement; write it on a line of its own.");
            return true;
        }

        if (rule == Grove.RULE_statement && recognizer.Context.ChildCount > 0)
        {
            var last = Phrases.PartsOf(((ParserRuleContext)recognizer.Context.GetChild(0)).RuleIndex);
            Add(
                SyntaxProblemKind.NotUnderstood,
                SpanOf(token),
                last is { } parts
                    ? $"\"{Quote(token.Text)}\" is not understood here. {Meant(token)}{parts.What} takes {parts.Parts}."
                    : Meant(token) is { Length: > 0 } meant
                    ? $"\"{Quote(token.Text)}\" is not understood here. {meant.TrimEnd()}"
                    : $"Nothing more belongs to this statement; take out \"{Quote(token.Text)}\" or write it on a line of its own.");
            return true;
        }

        if (Phrases.PartsOf(rule) is { } list && stream.Index > 1 && token.Type != TokenConstants.EOF && !IsMissingOpening(recognizer))
        {
            Add(SyntaxProblemKind.NotUnderstood, SpanOf(token), $"\"{Quote(token.Text)}\" is not understood here. {Meant(token)}{list.What} takes {list.Parts}.");
            return true;
        }

        return false;
    }

    /// <summary>What was most likely meant by a word or number that stands bare in a trunk, a species or a task.</summary>
    private string Meant(GrammarToken token) => (stream.At(0).Type, token.Type, stream.Index) switch
    {
        (Grove.TRUNK, Grove.NUMBER, 2) => "A place is written \"at 10, 20 mm\". ",
        (Grove.TRUNK, Grove.WORD, 2) when stream.At(3).Type != Grove.NUMBER => $"A name is one word, such as {Quote(stream.At(1).Text)}-{Quote(token.Text)}. ",
        (Grove.SPECIES, Grove.WORD, 2) => $"The name of a species is one word, such as {Quote(stream.At(1).Text)}-{Quote(token.Text)}. ",
        (Grove.TASK, Grove.WORD, 3) => $"Trunks are written \"on {Quote(token.Text)}\". ",
        _ => "",
    };

    private static bool IsMissingOpening(Parser recognizer) => recognizer.GetExpectedTokens() is var expected && expected.Count == 1;

    private GrammarToken? BlockOpening()
    {
        for (var index = 0; index < stream.Size; index++)
        {
            if (stream.At(index).Type == Grove.OPEN)
            {
                return stream.At(index);
            }
        }

        return null;
    }

    private bool IsAfterClose() => stream.Index > 0 && stream.At(stream.Index - 1).Type == Grove.CLOSE;

    private static string Wanted(Parser recognizer, IntervalSet expected, string? phrase)
    {
        if (phrase is not null)
        {
            return phrase;
        }

        var words = new List<string>();
        foreach (var type in expected.ToArray())
        {
            if (type is Grove.COMMA && expected.Count > 1)
            {
                continue;
            }

            switch (type)
            {
                case Grove.COMMA:
                    words.Add("a comma");
                    break;
                case Grove.OPEN:
                    words.Add("an opening brace {");
                    break;
                case Grove.CLOSE:
                    words.Add("a closing brace }");
                    break;
                case Grove.LEFT:
                    words.Add("an opening parenthesis (");
                    break;
                case Grove.RIGHT:
                    words.Add("a closing parenthesis )");
                    break;
                default:
                    if (Vocabulary.IsWordOfLanguage(type))
                    {
                        words.Add($"{(words.Count == 0 ? "the word " : string.Empty)}\"{Vocabulary.TextOf(type)}\"");
                    }

                    break;
            }
        }

        if (words.Count is > 0 and <= MostListed)
        {
            return KnownWords.Listed(words);
        }

        for (RuleContext? context = recognizer.Context; context is not null; context = context.Parent)
        {
            if (Phrases.For(context.RuleIndex) is { } whole)
            {
                return whole;
            }

            if (Phrases.PartsOf(context.RuleIndex) is { } parts)
            {
                return parts.Parts;
            }
        }

        return "something else";
    }
}
