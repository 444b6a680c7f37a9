namespace GroveSpec.LanguageServer.Protocol;

/// <summary>One part of a form, as a run of its label.</summary>
internal sealed record ParameterInformation(int[] Label, MarkupContent? Documentation = null);
