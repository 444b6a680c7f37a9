using GroveSpec.LanguageServer.Protocol;

namespace GroveSpec.LanguageServer.Features.Drawings;

/// <summary>By how many days a task is to be moved, negative to earlier.</summary>
internal sealed record TaskStepParams(TextDocumentIdentifier TextDocument, int Version, string Task, int Days);
