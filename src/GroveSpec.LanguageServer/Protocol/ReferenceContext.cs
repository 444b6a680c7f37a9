namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Whether the place that gives the name counts.</summary>
internal sealed record ReferenceContext(bool IncludeDeclaration);
