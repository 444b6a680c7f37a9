using System.Text.Json;
using GroveSpec.Editing.Fixing;
using GroveSpec.LanguageServer.Features.Diagnostics;
using GroveSpec.LanguageServer.Protocol;
using GroveSpec.LanguageServer.Sessions;
using TextEdit = GroveSpec.LanguageServer.Protocol.TextEdit;

namespace GroveSpec.LanguageServer.Features.CodeActions;

/// <summary>Offers fixes.</summary>
internal static class CodeActionAnswer
{
    private const string QuickFix = "quickfix";
    private const string FixAll = "source.fixAll";

    /// <summary>The fixes at a place.</summary>
    /// <param name="session">The session.</param>
    /// <param name="document">The document.</param>
    /// <param name="asked">The place, and which kinds are wanted.</param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>The fixes, the best first.</returns>
    /// <exception cref="OperationCanceledException">The search was ended.</exception>
    public static CodeAction[] Of(Session session, OpenDocument document, CodeActionParams asked, CancellationToken cancellation)
    {
        var actions = new List<CodeAction>();
        if (IsWanted(asked.Context.Only, QuickFix))
        {
            foreach (var fix in Fixes.At(document.Assessment, document.Positions.SpanOf(asked.Range), finding => IsMeant(asked.Context.Diagnostics, DiagnosticList.Of(document, finding)), cancellation))
            {
                actions.Add(new(fix.Title, QuickFix, [DiagnosticList.Of(document, fix.Finding)], fix.IsBest ? true : null, Edit(session, document, fix.Edits)));
            }
        }

        if (asked.Context.Only is not null && IsWanted(asked.Context.Only, FixAll) && Fixes.Plain(document.Assessment) is { Length: > 0 } plain)
        {
            actions.Add(new("Correct all spellings and units that can only mean one thing", FixAll, Edit: Edit(session, document, plain)));
        }

        return [.. actions];
    }

    private static bool IsWanted(string[]? only, string kind) => only is null || only.Length == 0 || only.Any(wanted => kind == wanted || kind.StartsWith(wanted + ".", StringComparison.Ordinal));

    /// <summary>An editor that names findings at the place wants their fixes; one that names none wants those of all that is about it.</summary>
    private static bool IsMeant(Diagnostic[]? named, Diagnostic finding) =>
        named is null || named.Length == 0 || named.Any(one => one.Code is { ValueKind: JsonValueKind.String } code && code.ValueEquals(finding.Code!.Value.GetString()) && one.Range == finding.Range && one.Message == finding.Message);

    private static WorkspaceEdit Edit(Session session, OpenDocument document, IEnumerable<Syntax.Text.TextEdit> edits) => EditWording.Of(session, edits
        .GroupBy(edit => edit.Place.File, StringComparer.Ordinal)
        .Select(file =>
        {
            var isHere = file.Key == document.Key;
            var map = isHere ? document.Positions : new PositionMap(document.Assessment.TextOf(file.Key), document.Positions.IsUtf8);
            var uri = isHere ? document.Uri : DocumentAddress.UriOf(Path.GetFullPath(file.Key));
            return (uri, session.Find(uri)?.Version, (IReadOnlyList<TextEdit>)[.. file.Select(edit => new TextEdit(map.RangeOf(edit.Place.Span), edit.NewText))]);
        }));
}
