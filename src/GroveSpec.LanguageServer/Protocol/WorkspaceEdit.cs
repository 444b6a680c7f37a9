namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Replacements in documents: by version where the editor knows versions, else by address.</summary>
internal sealed record WorkspaceEdit(Dictionary<string, TextEdit[]>? Changes = null, TextDocumentEdit[]? DocumentChanges = null);
