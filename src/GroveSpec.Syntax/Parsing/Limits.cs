namespace GroveSpec.Syntax.Parsing;

/// <summary>How much is read. The bounds are far beyond any planting; they keep a wrong file from taking a machine's memory.</summary>
internal static class Limits
{
    /// <summary>How many UTF-16 code units of a file are read.</summary>
    public const int Characters = 4 * 1024 * 1024;

    /// <summary>How many lines of a file are read.</summary>
    public const int Lines = 120_000;

    /// <summary>How many UTF-16 code units of a line are read.</summary>
    public const int LineCharacters = 100_000;

    /// <summary>How many UTF-16 code units a word or number may have.</summary>
    public const int WordCharacters = 10_000;

    /// <summary>How many problems of a file are told one by one.</summary>
    public const int Problems = 1_000;

    /// <summary>After so many problems a statement that does not fit the grammar is only counted, and nothing of it is read.</summary>
    public const int ProblemsReadOn = 5_000;

    /// <summary>How many problems of one statement are told.</summary>
    public const int ProblemsOfStatement = 20;
}
