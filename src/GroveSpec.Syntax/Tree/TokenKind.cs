namespace GroveSpec.Syntax.Tree;

/// <summary>What a token is, as far as colouring and printing need to know.</summary>
public enum TokenKind
{
    /// <summary>A word that begins a statement or a clause.</summary>
    Keyword,

    /// <summary>Another word: a name, a unit, a season.</summary>
    Word,

    /// <summary>A number.</summary>
    Number,

    /// <summary>A date in digits.</summary>
    Date,

    /// <summary>A text in quotes.</summary>
    Text,

    /// <summary>A brace, parenthesis, comma or percent sign.</summary>
    Mark,

    /// <summary>Blanks and tabs within a line, and a byte order mark.</summary>
    Blank,

    /// <summary>From <c>#</c> to the end of the line.</summary>
    Comment,

    /// <summary>The end of a line: LF, CR LF or CR.</summary>
    LineEnd,

    /// <summary>Anything the language has no place for.</summary>
    Stray,
}
