namespace GroveSpec.Cli.Reports;

/// <summary>Running text on a terminal.</summary>
internal static class Paragraph
{
    private const int LeastRoom = 20;

    /// <summary>Writes a text in lines that fit, broken at blanks where there are any.</summary>
    /// <param name="writer">Where to.</param>
    /// <param name="text">The text, harmless and in one line.</param>
    /// <param name="lead">What the first line begins with; the others are indented as far.</param>
    /// <param name="width">How many characters fit into a line.</param>
    public static void Write(TextWriter writer, string text, string lead, int width)
    {
        var indent = new string(' ', lead.Length);
        var next = lead;
        var rest = text.AsSpan();
        while (!rest.IsEmpty)
        {
            var room = Math.Max(width - lead.Length, LeastRoom);
            var take = rest.Length;
            if (rest.Length > room)
            {
                take = rest[..room].LastIndexOf(' ');
                take = take > 0 ? take : room - (char.IsHighSurrogate(rest[room - 1]) ? 1 : 0);
            }

            writer.Write(next);
            writer.Write(rest[..take]);
            writer.Write('\n');
            rest = rest[take..].TrimStart(' ');
            next = indent;
        }
    }
}
