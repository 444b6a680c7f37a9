using GroveSpec.LanguageServer.Protocol;

namespace GroveSpec.LanguageServer.Features.Drawings;

/// <summary>For which trunk guides are wanted.</summary>
internal sealed record GuidesParams(TextDocumentIdentifier TextDocument, int Version, string View, string Trunk);
