namespace GroveSpec.Editing.Deciding;

/// <summary>Something that a question asks for.</summary>
/// <param name="Name">Its name in what is sent.</param>
/// <param name="Label">What is written before it.</param>
/// <param name="Value">What was asked: as the grower wrote it, or what is usual.</param>
/// <param name="Hint">What can be written there, in a few words.</param>
/// <param name="Trouble">Why it could not be understood, in a sentence; null where it could. The usual then holds.</param>
public sealed record DecisionField(string Name, string Label, string Value, string Hint, string? Trouble = null);
