namespace GroveSpec.LanguageServer.Protocol;

/// <summary>How texts are kept in step.</summary>
internal sealed record TextDocumentSyncOptions(bool? OpenClose = null, int? Change = null, SaveOptions? Save = null);
