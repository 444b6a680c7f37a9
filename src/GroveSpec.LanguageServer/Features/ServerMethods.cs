using System.Text.Json;
using GroveSpec.LanguageServer.Features.CodeActions;
using GroveSpec.LanguageServer.Features.CodeLenses;
using GroveSpec.LanguageServer.Features.Completions;
using GroveSpec.LanguageServer.Features.Configuration;
using GroveSpec.LanguageServer.Features.Deciding;
using GroveSpec.LanguageServer.Features.Diagnostics;
using GroveSpec.LanguageServer.Features.DocumentLinks;
using GroveSpec.LanguageServer.Features.DocumentSymbols;
using GroveSpec.LanguageServer.Features.Drawings;
using GroveSpec.LanguageServer.Features.Folding;
using GroveSpec.LanguageServer.Features.Formatting;
using GroveSpec.LanguageServer.Features.Hovers;
using GroveSpec.LanguageServer.Features.InlayHints;
using GroveSpec.LanguageServer.Features.Names;
using GroveSpec.LanguageServer.Features.Selections;
using GroveSpec.LanguageServer.Features.SemanticTokenizing;
using GroveSpec.LanguageServer.Features.Signatures;
using GroveSpec.LanguageServer.Features.WorkspaceFiles;
using GroveSpec.LanguageServer.Protocol;
using GroveSpec.LanguageServer.Sessions;
using GroveSpec.LanguageServer.Transport;

namespace GroveSpec.LanguageServer.Features;

/// <summary>Every method that the server knows, and what answers it.</summary>
/// <param name="session">The editor's session.</param>
/// <param name="version">The program's version.</param>
/// <param name="exit">Ends the server.</param>
internal sealed class ServerMethods(Session session, string version, Action exit)
{
    private static ProtocolContext Shapes => ProtocolContext.Default;

    /// <summary>The methods by name.</summary>
    /// <returns>Each name once.</returns>
    public IEnumerable<(string Name, Func<JsonElement?, CancellationToken, Task<JsonElement?>> Answer)> All()
    {
        foreach (var (name, answer) in Life())
        {
            yield return (name, answer);
        }

        foreach (var (name, answer) in Texts().Concat(Questions()).Concat(Pictures()))
        {
            yield return (name, (parameters, cancellation) => Check(name, parameters, answer, cancellation));
        }
    }

    private Task<JsonElement?> Check(string name, JsonElement? parameters, Func<JsonElement?, CancellationToken, Task<JsonElement?>> answer, CancellationToken cancellation) =>
        !session.IsInitialized ? throw new RequestException(RequestException.NotInitialized, $"{name} came before initialize: say hello first.")
        : session.IsShutDown ? throw new RequestException(RequestException.InvalidRequest, $"{name} came after shutdown: only exit is awaited now.")
        : answer(parameters, cancellation);

    private IEnumerable<(string Name, Func<JsonElement?, CancellationToken, Task<JsonElement?>> Answer)> Life()
    {
        yield return (MessageFormatter.Unreadable, (_, _) => throw new RequestException(RequestException.ParseError, "The message is no JSON that this server reads; it was left out."));
        yield return ("initialize", (parameters, _) => Begin(parameters));
        yield return ("initialized", (_, _) => Do(AskEditor));
        yield return ("shutdown", (_, _) => Do(ShutDown));
        yield return ("exit", (_, _) => Do(exit));
        yield return ("$/setTrace", (_, _) => Do(() => { }));
    }

    private Task<JsonElement?> Begin(JsonElement? parameters)
    {
        if (session.IsInitialized)
        {
            throw new RequestException(RequestException.InvalidRequest, "initialize came a second time: one connection is one session.");
        }

        session.Begin(Method.Read(parameters, Shapes.InitializeParams));
        return Task.FromResult<JsonElement?>(JsonSerializer.SerializeToElement(new InitializeResult(Abilities.Of(session), new("GroveSpec", version)), Shapes.InitializeResult));
    }

    private void AskEditor()
    {
        WatchedFiles.Ask(session);
        SettingsRequest.AskForChanges(session);
        SettingsRequest.Ask(session);
    }

    private void ChangeFolders(WorkspaceFoldersChangeEvent change)
    {
        session.ChangeFolders(change);
        SettingsRequest.Ask(session);
    }

    private void ShutDown()
    {
        if (!session.IsInitialized)
        {
            throw new RequestException(RequestException.NotInitialized, "shutdown came before initialize.");
        }

        session.ShutDown();
    }

    private static Task<JsonElement?> Do(Action action)
    {
        action();
        return Task.FromResult<JsonElement?>(null);
    }

    private IEnumerable<(string Name, Func<JsonElement?, CancellationToken, Task<JsonElement?>> Answer)> Texts()
    {
        yield return ("textDocument/didOpen", Method.Told(static () => Shapes.DidOpenTextDocumentParams, opened => session.Open(opened.TextDocument)));
        yield return ("textDocument/didChange", Method.Told(static () => Shapes.DidChangeTextDocumentParams, session.Change));
        yield return ("textDocument/didClose", Method.Told(static () => Shapes.DidCloseTextDocumentParams, closed => session.Close(closed.TextDocument.Uri)));
        yield return ("textDocument/didSave", Method.Told(static () => Shapes.DidSaveTextDocumentParams, _ => { }));
        yield return ("workspace/didChangeConfiguration", Method.Told(static () => Shapes.DidChangeConfigurationParams, changed => SettingsRequest.Take(session, changed)));
        yield return ("workspace/didChangeWorkspaceFolders", Method.Told(static () => Shapes.DidChangeWorkspaceFoldersParams, changed => ChangeFolders(changed.Event)));
        yield return ("window/workDoneProgress/cancel", Method.Told(static () => Shapes.WorkDoneProgressCancelParams, calledOff => WorkProgress.CallOff(session, calledOff)));
        yield return ("workspace/didChangeWatchedFiles", Method.Told(static () => Shapes.DidChangeWatchedFilesParams, changed => WatchedFiles.Take(session, changed)));
    }

    private IEnumerable<(string Name, Func<JsonElement?, CancellationToken, Task<JsonElement?>> Answer)> Questions()
    {
        yield return ("textDocument/diagnostic", Method.OfDocument(session, static () => Shapes.DocumentDiagnosticParams, static () => Shapes.DocumentDiagnosticReport, asked => asked.TextDocument.Uri, (document, asked, _) => PulledDiagnostics.Of(session, document, asked)));
        yield return ("workspace/diagnostic", Method.Asked(static () => Shapes.WorkspaceDiagnosticParams, static () => Shapes.WorkspaceDiagnosticReport, (asked, ended) => PulledDiagnostics.OfWorkspace(session, asked, ended)));
        yield return ("textDocument/completion", Method.OfDocument(session, static () => Shapes.CompletionParams, static () => Shapes.CompletionList, asked => asked.TextDocument.Uri, (document, asked, _) => CompletionAnswer.Of(session, document, asked.Position)));
        yield return ("textDocument/hover", Method.OfDocument(session, static () => Shapes.TextDocumentPositionParams, static () => Shapes.Hover, asked => asked.TextDocument.Uri, (document, asked, _) => HoverAnswer.Of(session, document, asked.Position)));
        yield return ("textDocument/signatureHelp", Method.OfDocument(session, static () => Shapes.SignatureHelpParams, static () => Shapes.SignatureHelp, asked => asked.TextDocument.Uri, (document, asked, _) => SignatureAnswer.Of(document, asked.Position)));
        yield return ("textDocument/definition", Method.OfDocument(session, static () => Shapes.TextDocumentPositionParams, static () => Shapes.LocationArray, asked => asked.TextDocument.Uri, (document, asked, _) => NameAnswers.Definition(document, asked.Position)));
        yield return ("textDocument/references", Method.OfDocument(session, static () => Shapes.ReferenceParams, static () => Shapes.LocationArray, asked => asked.TextDocument.Uri, (document, asked, ended) => NameAnswers.References(session, document, asked, ended)));
        yield return ("textDocument/documentHighlight", Method.OfDocument(session, static () => Shapes.TextDocumentPositionParams, static () => Shapes.DocumentHighlightArray, asked => asked.TextDocument.Uri, (document, asked, _) => NameAnswers.Highlights(document, asked.Position)));
        yield return ("textDocument/prepareRename", Method.OfDocument(session, static () => Shapes.TextDocumentPositionParams, static () => Shapes.PrepareRenameResult, asked => asked.TextDocument.Uri, (document, asked, _) => NameAnswers.PrepareRename(document, asked.Position)));
        yield return ("textDocument/rename", Method.OfDocument(session, static () => Shapes.RenameParams, static () => Shapes.WorkspaceEdit, asked => asked.TextDocument.Uri, (document, asked, ended) => NameAnswers.Rename(session, document, asked, ended)));
        yield return ("textDocument/documentSymbol", Symbols());
        yield return ("workspace/symbol", Method.Asked(static () => Shapes.WorkspaceSymbolParams, static () => Shapes.WorkspaceSymbolArray, (asked, ended) => SymbolAnswers.OfWorkspace(session, asked, ended)));
        yield return ("textDocument/foldingRange", Method.OfDocument(session, static () => Shapes.FoldingRangeParams, static () => Shapes.FoldingRangeArray, asked => asked.TextDocument.Uri, (document, _, _) => FoldingAnswer.Of(document)));
        yield return ("textDocument/selectionRange", Method.OfDocument(session, static () => Shapes.SelectionRangeParams, static () => Shapes.SelectionRangeArray, asked => asked.TextDocument.Uri, (document, asked, _) => SelectionAnswer.Of(document, asked.Positions)));
        yield return ("textDocument/semanticTokens/full", Method.OfDocument(session, static () => Shapes.SemanticTokensParams, static () => Shapes.SemanticTokens, asked => asked.TextDocument.Uri, (document, _, _) => session.Tokens.Full(document)));
        yield return ("textDocument/semanticTokens/full/delta", Method.OfDocument(session, static () => Shapes.SemanticTokensDeltaParams, static () => Shapes.SemanticTokensOrDelta, asked => asked.TextDocument.Uri, (document, asked, _) => session.Tokens.Delta(document, asked.PreviousResultId)));
        yield return ("textDocument/semanticTokens/range", Method.OfDocument(session, static () => Shapes.SemanticTokensRangeParams, static () => Shapes.SemanticTokens, asked => asked.TextDocument.Uri, (document, asked, _) => TokenCache.OfRange(document, asked.Range)));
        yield return ("textDocument/inlayHint", Method.OfDocument(session, static () => Shapes.InlayHintParams, static () => Shapes.InlayHintArray, asked => asked.TextDocument.Uri, (document, asked, _) => InlayHintAnswer.Of(document, asked.Range)));
        yield return ("textDocument/codeLens", Method.OfDocument(session, static () => Shapes.CodeLensParams, static () => Shapes.CodeLensArray, asked => asked.TextDocument.Uri, (document, _, _) => CodeLensAnswer.Of(document)));
        yield return ("textDocument/formatting", Method.OfDocument(session, static () => Shapes.DocumentFormattingParams, static () => Shapes.TextEditArray, asked => asked.TextDocument.Uri, (document, _, _) => FormattingAnswer.Of(document, null)));
        yield return ("textDocument/rangeFormatting", Method.OfDocument(session, static () => Shapes.DocumentRangeFormattingParams, static () => Shapes.TextEditArray, asked => asked.TextDocument.Uri, (document, asked, _) => FormattingAnswer.Of(document, document.Positions.SpanOf(asked.Range))));
        yield return ("textDocument/onTypeFormatting", Method.OfDocument(session, static () => Shapes.DocumentOnTypeFormattingParams, static () => Shapes.TextEditArray, asked => asked.TextDocument.Uri, (document, asked, _) => FormattingAnswer.OnType(document, asked.Position, asked.Ch)));
        yield return ("textDocument/documentLink", Method.OfDocument(session, static () => Shapes.DocumentLinkParams, static () => Shapes.DocumentLinkArray, asked => asked.TextDocument.Uri, (document, _, _) => DocumentLinkAnswer.Of(document)));
        yield return ("textDocument/codeAction", Method.OfDocument(session, static () => Shapes.CodeActionParams, static () => Shapes.CodeActionArray, asked => asked.TextDocument.Uri, (document, asked, ended) => CodeActionAnswer.Of(session, document, asked, ended)));
    }

    // An editor that does not say that it can show a tree is sent a list.
    private Func<JsonElement?, CancellationToken, Task<JsonElement?>> Symbols()
    {
        var tree = Method.OfDocument(session, static () => Shapes.DocumentSymbolParams, static () => Shapes.DocumentSymbolArray, asked => asked.TextDocument.Uri, (document, _, _) => SymbolAnswers.OfDocument(document));
        var list = Method.OfDocument(session, static () => Shapes.DocumentSymbolParams, static () => Shapes.SymbolInformationArray, asked => asked.TextDocument.Uri, (document, _, _) => SymbolAnswers.ListOfDocument(document));
        return (asked, ended) => session.Capabilities.TextDocument?.DocumentSymbol?.HierarchicalDocumentSymbolSupport == true ? tree(asked, ended) : list(asked, ended);
    }

    private IEnumerable<(string Name, Func<JsonElement?, CancellationToken, Task<JsonElement?>> Answer)> Pictures()
    {
        yield return ("grovespec/draw", Method.OfDocument(session, static () => DrawingContext.Default.DrawParams, static () => DrawingContext.Default.DrawResult, asked => asked.TextDocument.Uri, (document, asked, _) => DrawAnswer.Of(document, asked)));
        yield return ("grovespec/decide", Method.OfDocument(session, static () => DecidingContext.Default.DecideParams, static () => DecidingContext.Default.DecideResult, asked => asked.TextDocument.Uri, DecideAnswer.Of));
        yield return ("grovespec/guides", Method.OfDocument(session, static () => DrawingContext.Default.GuidesParams, static () => DrawingContext.Default.GuidesResult, asked => asked.TextDocument.Uri, (document, asked, cancellation) => GuidesAnswer.Of(document, asked, cancellation)));
        yield return ("grovespec/drag", Method.OfDocument(session, static () => DrawingContext.Default.DragParams, static () => DrawingContext.Default.DragResult, asked => asked.TextDocument.Uri, (document, asked, _) => DragAnswer.Of(document, asked)));
        yield return ("grovespec/step", Method.OfDocument(session, static () => DrawingContext.Default.StepParams, static () => DrawingContext.Default.DragResult, asked => asked.TextDocument.Uri, (document, asked, _) => DragAnswer.Of(document, asked)));
        yield return ("grovespec/dragTask", Method.OfDocument(session, static () => DrawingContext.Default.TaskDragParams, static () => DrawingContext.Default.DragResult, asked => asked.TextDocument.Uri, (document, asked, _) => TaskDragAnswer.Of(document, asked)));
        yield return ("grovespec/stepTask", Method.OfDocument(session, static () => DrawingContext.Default.TaskStepParams, static () => DrawingContext.Default.DragResult, asked => asked.TextDocument.Uri, (document, asked, _) => TaskDragAnswer.Of(document, asked)));
    }
}
