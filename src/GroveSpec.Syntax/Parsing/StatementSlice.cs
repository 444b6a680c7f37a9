namespace GroveSpec.Syntax.Parsing;

/// <summary>The tokens of one statement.</summary>
/// <param name="FirstToken">The first of them.</param>
/// <param name="TokenCount">How many they are.</param>
/// <param name="Head">The type of the first that is neither blank nor comment; 0 when there is none.</param>
internal readonly record struct StatementSlice(int FirstToken, int TokenCount, int Head);
