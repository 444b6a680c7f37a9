namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Another place that a finding is about.</summary>
internal sealed record DiagnosticRelatedInformation(Location Location, string Message);
