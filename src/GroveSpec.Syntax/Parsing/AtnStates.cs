using Antlr4.Runtime.Atn;
using GroveSpec.Syntax.Parsing.Generated;

namespace GroveSpec.Syntax.Parsing;

/// <summary>What the grammar expects at one of its states.</summary>
internal static class AtnStates
{
    /// <summary>Whether what stands at the state carries a meaning of its own, so that nothing can be put in its place.</summary>
    public static bool TransitionSymbolIsName(this ATNState state) =>
        state.NumberOfTransitions != 1
        || state.Transition(0) is not AtomTransition atom
        || atom.token is Grove.WORD or Grove.UNIT or Grove.NUMBER or Grove.DATE or Grove.TEXT or Grove.STRAY;

    /// <summary>Whether the state waits for a closing brace.</summary>
    public static bool IsClosing(this ATNState state) =>
        state.NumberOfTransitions == 1 && state.Transition(0) is AtomTransition { token: Grove.CLOSE };
}
