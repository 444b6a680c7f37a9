using Antlr4.Runtime;
using Antlr4.Runtime.Atn;
using Antlr4.Runtime.Misc;
using GroveSpec.Syntax.Parsing.Generated;

namespace GroveSpec.Syntax.Parsing;

/// <summary>
/// Reads on past trouble: takes a misspelt word for the one that was meant, takes a word that is missing as given, and
/// otherwise skips the part in which the trouble is, so that its neighbours are read.
/// </summary>
internal sealed class ForgivingErrorStrategy : IAntlrErrorStrategy
{
    private readonly TroubleReport report;
    private RecognitionException? told;

    public ForgivingErrorStrategy(TroubleReport report) => this.report = report;

    public void Reset(Parser recognizer) => told = null;

    public bool InErrorRecoveryMode(Parser recognizer) => false;

    public void ReportMatch(Parser recognizer)
    {
        // Every trouble is told where it is met; there is no state to leave.
    }

    /// <summary>Called before each choice of the grammar.</summary>
    public void Sync(Parser recognizer)
    {
        var state = recognizer.Atn.states[recognizer.State];
        if (state.StateType is not (StateType.BlockStart or StateType.StarBlockStart or StateType.PlusBlockStart or StateType.StarLoopEntry or StateType.StarLoopBack or StateType.PlusLoopBack))
        {
            return;
        }

        var expected = recognizer.GetExpectedTokens();
        var token = Current(recognizer);
        if (expected.Contains(token.Type) || token.Type == TokenConstants.EOF || Mend(token, expected))
        {
            return;
        }

        if (Phrases.PartsOf(recognizer.Context.RuleIndex) is null
            || state.StateType is not (StateType.StarLoopEntry or StateType.StarLoopBack or StateType.PlusLoopBack))
        {
            return;
        }

        report.Tell(recognizer, token, expected);
        if (Vocabulary.BeginsStatement(token.Type))
        {
            // What follows belongs to the statement that should have a line of its own.
            SkipTo(recognizer, null);
            return;
        }

        recognizer.Consume();
        SkipTo(recognizer, expected);
    }

    /// <summary>Called where one certain token should stand and does not.</summary>
    public IToken RecoverInline(Parser recognizer)
    {
        var expected = recognizer.GetExpectedTokens();
        var token = Current(recognizer);
        if (Mend(token, expected))
        {
            recognizer.Consume();
            return token;
        }

        if (expected.Contains(Grove.BECAUSE) && MendNameBefore(recognizer))
        {
            return ((GrammarTokenStream)recognizer.InputStream).Missing(Grove.BECAUSE);
        }

        report.Tell(recognizer, token, expected);
        if (recognizer.Context.RuleIndex == Grove.RULE_statement)
        {
            SkipTo(recognizer, null);
            return token;
        }

        if (CanBeTakenAsGiven(recognizer, token))
        {
            var type = expected.MinElement;
            return ((GrammarTokenStream)recognizer.InputStream).Missing(type);
        }

        var trouble = new InputMismatchException(recognizer);
        told = trouble;
        throw trouble;
    }

    public void ReportError(Parser recognizer, RecognitionException e)
    {
        if (!ReferenceEquals(e, told))
        {
            told = e;
            report.Tell(recognizer, Current(recognizer), recognizer.GetExpectedTokens());
        }
    }

    public void Recover(Parser recognizer, RecognitionException e)
    {
        var rule = recognizer.Context.RuleIndex;
        if (Phrases.NamedBy(rule) is not null || rule == Grove.RULE_taskKind)
        {
            SkipWrongName(recognizer);
            return;
        }

        if (rule is Grove.RULE_reading or Grove.RULE_readingClause)
        {
            // A bare word would begin another row, but not on the line on which the trouble is.
            SkipTo(recognizer, new IntervalSet(Grove.CLOSE, Grove.ROW_END, Grove.DIAMETER, Grove.GIRTH, Grove.HEIGHT, Grove.CROWN));
            return;
        }

        if (Phrases.IsPart(rule) || (rule == Grove.RULE_day && recognizer.Context.Parent is Grove.MeasuredContext))
        {
            SkipTo(recognizer, FollowOf(recognizer));
            return;
        }

        if (recognizer.Context.Parent is { RuleIndex: Grove.RULE_statement })
        {
            SkipTo(recognizer, null);
            return;
        }

        throw e;
    }

    private static GrammarToken Current(Parser recognizer) => (GrammarToken)((ITokenStream)recognizer.InputStream).LT(1);

    /// <summary>Gives a misspelt word the type of the word that it is near to, where that word may stand here.</summary>
    private bool Mend(GrammarToken token, IntervalSet expected)
    {
        if (token.Type is not (Grove.WORD or Grove.UNIT))
        {
            return false;
        }

        var words = new List<string>();
        foreach (var type in expected.ToArray())
        {
            if (Vocabulary.IsWordOfLanguage(type))
            {
                words.Add(Vocabulary.TextOf(type));
            }
        }

        var text = token.Text;
        var meant = words.Find(word => word.Equals(text, StringComparison.OrdinalIgnoreCase)) ?? Nearness.Nearest(text, words);
        if (meant is null)
        {
            return false;
        }

        report.TellMisspelt(token, meant);
        token.Type = Vocabulary.TypeOf(meant);
        return true;
    }

    /// <summary>A misspelt "because" has been read as the last of the trunks' names before it.</summary>
    private bool MendNameBefore(Parser recognizer)
    {
        if (((ITokenStream)recognizer.InputStream).LT(-1) is not GrammarToken { Type: Grove.WORD } before
            || Nearness.Nearest(before.Text, ["because"]) is not { } meant)
        {
            return false;
        }

        report.TellMisspelt(before, meant);
        before.IsOdd = true;
        return true;
    }

    /// <summary>Whether what stands here could come right behind the missing token.</summary>
    private static bool CanBeTakenAsGiven(Parser recognizer, GrammarToken token)
    {
        var state = recognizer.Atn.states[recognizer.State];
        if (token.Type == TokenConstants.EOF || state.TransitionSymbolIsName())
        {
            return token.Type == TokenConstants.EOF && state.IsClosing();
        }

        var next = state.Transition(0).target;
        return recognizer.Atn.NextTokens(next, recognizer.Context).Contains(token.Type);
    }

    /// <summary>A word of the language that stands for a name is skipped when what follows it could follow a name.</summary>
    private static void SkipWrongName(Parser recognizer)
    {
        var token = Current(recognizer);
        var follow = FollowOf(recognizer);
        var next = ((GrammarTokenStream)recognizer.InputStream).LA(2);
        if (token.Type == TokenConstants.EOF || token.Type is Grove.OPEN or Grove.CLOSE or Grove.ROW_END or Grove.COMMA)
        {
            return;
        }

        var isWord = Vocabulary.IsWordOfLanguage(token.Type);
        if (isWord && follow.Contains(token.Type) && !(follow.Contains(next) || next == TokenConstants.EOF))
        {
            return;
        }

        recognizer.Consume();
        token = Current(recognizer);
        if (!isWord && token.Type == Grove.UNIT)
        {
            var before = (GrammarToken)((ITokenStream)recognizer.InputStream).LT(-1);
            if (before.End == token.Start)
            {
                recognizer.Consume();
            }
            else
            {
                token.Type = Grove.WORD;
            }
        }
    }

    /// <summary>Skips to a token that may follow: not to a number, and to a comma only where something that may follow comes behind it.</summary>
    private static void SkipTo(Parser recognizer, IntervalSet? follow)
    {
        var stream = recognizer.InputStream;
        for (var type = stream.LA(1); type != TokenConstants.EOF; type = stream.LA(1))
        {
            if (follow?.Contains(type) == true && type != Grove.NUMBER && (type != Grove.COMMA || follow.Contains(stream.LA(2))))
            {
                return;
            }

            recognizer.Consume();
        }
    }

    /// <summary>All tokens that may follow the rule that is being read, or one of those round it.</summary>
    private static IntervalSet FollowOf(Parser recognizer)
    {
        var follow = new IntervalSet();
        for (RuleContext? context = recognizer.Context; context is { invokingState: >= 0 }; context = context.Parent)
        {
            var transition = (RuleTransition)recognizer.Atn.states[context.invokingState].Transition(0);
            follow.AddAll(recognizer.Atn.NextTokens(transition.followState));
        }

        follow.Remove(TokenConstants.EPSILON);
        return follow;
    }
}
