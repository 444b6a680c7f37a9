namespace GroveSpec.Syntax.Printing;

/// <summary>One line of the tidy form before its columns are set.</summary>
internal sealed class TidyLine
{
    /// <summary>Lines of the same layout that follow each other share their columns; null for lines that have none.</summary>
    public TidyLayout? Layout { get; init; }

    /// <summary>How many blanks stand before it.</summary>
    public int Indent { get; init; }

    /// <summary>The text of each column that it has, in rising order of columns.</summary>
    public List<(int Column, string Text)> Cells { get; } = [];

    /// <summary>The comment at its end, with its sign; null when there is none.</summary>
    public string? Comment { get; set; }

    /// <summary>The line exactly as it was written, for what could not be read; null otherwise.</summary>
    public string? Verbatim { get; init; }

    /// <summary>Whether what was written brings its own line end, as the rest of a file does that is too large to be read.</summary>
    public bool HasLineEnd { get; init; }

    /// <summary>Whether nothing stands on it.</summary>
    public bool IsBlank => Cells.Count == 0 && Comment is null && Verbatim is null;

    /// <summary>Whether a comment is all that stands on it.</summary>
    public bool IsComment => Cells.Count == 0 && Comment is not null;
}
