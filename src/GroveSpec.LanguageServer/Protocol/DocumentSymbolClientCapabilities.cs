namespace GroveSpec.LanguageServer.Protocol;

/// <summary>How the editor shows an outline.</summary>
internal sealed record DocumentSymbolClientCapabilities(bool? HierarchicalDocumentSymbolSupport = null);
