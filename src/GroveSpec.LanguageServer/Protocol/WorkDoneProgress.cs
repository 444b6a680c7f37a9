namespace GroveSpec.LanguageServer.Protocol;

/// <summary>How far a piece of work has come.</summary>
internal sealed record WorkDoneProgress(string Kind, string? Title = null, string? Message = null, int? Percentage = null, bool? Cancellable = null);
