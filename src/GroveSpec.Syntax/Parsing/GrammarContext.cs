using Antlr4.Runtime;

namespace GroveSpec.Syntax.Parsing;

/// <summary>
/// What the generated parser reads a rule into. Its base finds parts by generic virtual methods, which a program of machine
/// code has to build while it runs, one for each kind of part: that touched an eighth of the memory pages of a small check.
/// These hide them and are bound when the program is built.
/// </summary>
internal abstract class GrammarContext : ParserRuleContext
{
    /// <summary>Of no parent.</summary>
    protected GrammarContext()
    {
    }

    /// <summary>Of a parent.</summary>
    /// <param name="parent">What it is a part of.</param>
    /// <param name="invokingState">The parser's state there.</param>
    protected GrammarContext(ParserRuleContext? parent, int invokingState)
        : base(parent, invokingState)
    {
    }

    /// <summary>A part.</summary>
    /// <typeparam name="T">The rule that it was read by.</typeparam>
    /// <param name="index">Which of those, from 0.</param>
    /// <returns>The part; null when there are not so many.</returns>
    public new T? GetRuleContext<T>(int index)
        where T : ParserRuleContext
    {
        for (var child = 0; child < ChildCount; child++)
        {
            if (children[child] is T part && index-- == 0)
            {
                return part;
            }
        }

        return null;
    }

    /// <summary>All parts.</summary>
    /// <typeparam name="T">The rule that they were read by.</typeparam>
    /// <returns>The parts, in order.</returns>
    public new T[] GetRuleContexts<T>()
        where T : ParserRuleContext
    {
        var parts = new List<T>();
        for (var child = 0; child < ChildCount; child++)
        {
            if (children[child] is T part)
            {
                parts.Add(part);
            }
        }

        return [.. parts];
    }
}
