namespace GroveSpec.LanguageServer.Protocol;

/// <summary>One change: of a run of text, or of the whole where no run is given.</summary>
internal sealed record TextDocumentContentChangeEvent(string Text, Range? Range = null);
