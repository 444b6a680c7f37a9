using GroveSpec.Editing.Straightening;
using GroveSpec.LanguageServer.Protocol;
using GroveSpec.LanguageServer.Sessions;
using GroveSpec.Syntax.Text;
using TextEdit = GroveSpec.LanguageServer.Protocol.TextEdit;

namespace GroveSpec.LanguageServer.Features.Formatting;

/// <summary>Sets lines straight, as tidy does.</summary>
internal static class FormattingAnswer
{
    /// <summary>The edits that set lines straight. How far a tab goes is not the editor's to choose: the language has one form.</summary>
    /// <param name="document">The document.</param>
    /// <param name="within">The lines; null for all.</param>
    /// <returns>The edits; none where all is tidy.</returns>
    public static TextEdit[] Of(OpenDocument document, TextSpan? within) =>
        [.. TidyEdits.Of(document.Tree, within).Select(document.Positions.EditOf)];

    /// <summary>The edits after a character was typed: the line that was ended, or the block that was closed, is set straight. The line of the caret stays as it is.</summary>
    /// <param name="document">The document.</param>
    /// <param name="position">The caret, behind the character.</param>
    /// <param name="typed">The character.</param>
    /// <returns>The edits.</returns>
    public static TextEdit[] OnType(OpenDocument document, Position position, string typed)
    {
        var line = typed == "}" ? position.Line : position.Line - 1;
        if (line < 0)
        {
            return [];
        }

        var start = document.Positions.OffsetOf(new(line, 0));
        var edits = Of(document, new TextSpan(start, Math.Max(0, document.Positions.OffsetOf(new(line, int.MaxValue)) - start)));
        return [.. edits.Where(edit => edit.Range.Start.Line == line && edit.Range.End.Line <= line + 1)];
    }
}
