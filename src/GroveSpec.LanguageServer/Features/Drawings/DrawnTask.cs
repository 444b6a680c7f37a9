namespace GroveSpec.LanguageServer.Features.Drawings;

/// <summary>A task of a timeline: its name, the mark of its parts, a sentence about it, and the middle of its mark in the picture, where it is taken hold of.</summary>
internal sealed record DrawnTask(string Name, string Origin, string Summary, double X, double Y);
