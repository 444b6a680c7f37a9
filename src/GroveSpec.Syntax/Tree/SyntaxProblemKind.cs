namespace GroveSpec.Syntax.Tree;

/// <summary>Which kind of trouble a text has. Each is a check of the catalogue.</summary>
public enum SyntaxProblemKind
{
    /// <summary>The words do not make a statement: <c>not-understood</c>.</summary>
    NotUnderstood,

    /// <summary>A word is close to a known one: <c>misspelt-word</c>.</summary>
    MisspeltWord,

    /// <summary>A text in quotes or a block has no end: <c>not-closed</c>.</summary>
    NotClosed,

    /// <summary>Characters that cannot be seen or are not UTF-8: <c>odd-character</c>.</summary>
    OddCharacter,

    /// <summary>A number that is not written in plain decimal digits: <c>odd-number</c>.</summary>
    OddNumber,

    /// <summary>A file, line or word beyond what is read: <c>too-large</c>.</summary>
    TooLarge,
}
