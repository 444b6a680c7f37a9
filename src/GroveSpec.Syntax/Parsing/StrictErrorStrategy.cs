using Antlr4.Runtime;
using Antlr4.Runtime.Misc;

namespace GroveSpec.Syntax.Parsing;

/// <summary>Stops at the first trouble, so that text without any is read as fast as can be.</summary>
internal sealed class StrictErrorStrategy : IAntlrErrorStrategy
{
    public void Reset(Parser recognizer)
    {
        // Nothing is remembered.
    }

    public IToken RecoverInline(Parser recognizer) => throw new ParseCanceledException();

    public void Recover(Parser recognizer, RecognitionException e) => throw new ParseCanceledException();

    public void Sync(Parser recognizer)
    {
        // The match that follows finds the trouble.
    }

    public bool InErrorRecoveryMode(Parser recognizer) => false;

    public void ReportMatch(Parser recognizer)
    {
        // Nothing is remembered.
    }

    public void ReportError(Parser recognizer, RecognitionException e)
    {
        // The forgiving reading that follows tells it.
    }
}
