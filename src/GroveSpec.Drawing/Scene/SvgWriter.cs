namespace GroveSpec.Drawing.Scene;

/// <summary>
/// Writes SVG: one element a line, numbers with at most two decimals and no trailing zeros,
/// the same bytes for the same calls. Coordinates are pixels at the plate's own size.
/// </summary>
internal sealed class SvgWriter
{
    private readonly MarkupBuffer markup;
    private long penX;
    private long penY;
    private long startX;
    private long startY;
    private char lastCommand;
    private double grain = 100;

    /// <summary>Starts an empty text.</summary>
    /// <param name="capacity">How many bytes are likely to be written.</param>
    public SvgWriter(int capacity = 1 << 15) => markup = new MarkupBuffer(capacity);

    /// <summary>How many bytes have been written.</summary>
    public int Length => markup.Length;

    /// <summary>Writes path coordinates in tenths of a pixel instead of hundredths, where many small things must stay small.</summary>
    public bool CoarsePaths
    {
        get => grain == 10;
        set => grain = value ? 10 : 100;
    }

    /// <summary>Takes the text and gives the buffer back; the writer is of no use afterwards.</summary>
    /// <returns>All that was written.</returns>
    public string Finish() => markup.Finish();

    /// <summary>Takes the text as it is stored in a file, and gives the buffer back; the writer is of no use afterwards.</summary>
    /// <returns>All that was written, in UTF-8 without a byte order mark.</returns>
    public byte[] FinishBytes() => markup.FinishBytes();

    /// <summary>Takes back all that was written since a place: an element that turned out to hold nothing.</summary>
    /// <param name="place">The <see cref="Length"/> to go back to.</param>
    public void TakeBack(int place) => markup.TakeBack(place);

    /// <summary>Writes markup as it is. Never give it text from a file.</summary>
    /// <param name="text">The markup.</param>
    public void Raw(ReadOnlySpan<char> text) => markup.Raw(text);

    /// <summary>Writes any text so that it is nothing but text, in an element or in a quoted attribute.</summary>
    /// <param name="text">The text; characters that XML 1.0 forbids become U+FFFD, line ends and tabs become spaces.</param>
    public void Escaped(ReadOnlySpan<char> text) => markup.Escaped(text);

    /// <summary>Writes a text that is read or heard, escaped, with what runs from right to left kept to itself; all words of a plate go through here.</summary>
    /// <param name="text">The text, from anywhere.</param>
    public void Words(string text) => Escaped(DirectedText.Of(text));

    /// <summary>Writes a number with at most two decimals; what is not a number becomes 0.</summary>
    /// <param name="value">The number; beyond a thousand million it is cut off there.</param>
    public void Number(double value) => markup.Hundredths(Rounded(value, 100));

    /// <summary>Writes an attribute that holds a number.</summary>
    /// <param name="name">The attribute's name, trusted.</param>
    /// <param name="value">Its value.</param>
    public void Attribute(string name, double value)
    {
        markup.One(' ');
        Raw(name);
        Raw("=\"");
        Number(value);
        markup.One('"');
    }

    /// <summary>Writes an attribute that holds text from anywhere.</summary>
    /// <param name="name">The attribute's name, trusted.</param>
    /// <param name="value">Its value.</param>
    public void Attribute(string name, ReadOnlySpan<char> value)
    {
        markup.One(' ');
        Raw(name);
        Raw("=\"");
        Escaped(value);
        markup.One('"');
    }

    /// <summary>Opens a group.</summary>
    /// <param name="cls">Its classes, trusted; empty for none.</param>
    /// <param name="origin">The id of the fact it stands for; null for none.</param>
    /// <param name="title">What a pointer that rests on it, or a screen reader, is told; null for nothing.</param>
    public void OpenGroup(string cls, string? origin = null, string? title = null)
    {
        Open("g", cls, origin);
        Raw(">");
        if (title is not null)
        {
            Raw("<title>");
            Words(title);
            Raw("</title>");
        }

        markup.One('\n');
    }

    /// <summary>Closes the group opened last.</summary>
    public void CloseGroup() => Raw("</g>\n");

    /// <summary>Writes a circle.</summary>
    /// <param name="cls">Its classes.</param>
    /// <param name="x">Centre.</param>
    /// <param name="y">Centre, downward.</param>
    /// <param name="radius">Radius.</param>
    /// <param name="origin">The id of the fact it stands for; null for none.</param>
    /// <param name="strokeWidth">Its weight where the class does not say; 0 for the class's own.</param>
    public void Circle(string cls, double x, double y, double radius, string? origin = null, double strokeWidth = 0)
    {
        Open("circle", cls, origin);
        if (strokeWidth > 0)
        {
            Attribute("stroke-width", strokeWidth);
        }

        Attribute("cx", x);
        Attribute("cy", y);
        Attribute("r", radius);
        Raw("/>\n");
    }

    /// <summary>Writes a rectangle.</summary>
    /// <param name="cls">Its classes.</param>
    /// <param name="box">Where.</param>
    /// <param name="origin">The id of the fact it stands for; null for none.</param>
    public void Rectangle(string cls, Box box, string? origin = null)
    {
        Open("rect", cls, origin);
        Attribute("x", box.Left);
        Attribute("y", box.Top);
        Attribute("width", box.Width);
        Attribute("height", box.Height);
        Raw("/>\n");
    }

    /// <summary>Writes a straight line.</summary>
    /// <param name="cls">Its classes.</param>
    /// <param name="fromX">One end.</param>
    /// <param name="fromY">One end, downward.</param>
    /// <param name="toX">The other end.</param>
    /// <param name="toY">The other end, downward.</param>
    /// <param name="origin">The id of the fact it stands for; null for none.</param>
    /// <param name="strokeWidth">Its weight where the class does not say; 0 for the class's own.</param>
    public void Line(string cls, double fromX, double fromY, double toX, double toY, string? origin = null, double strokeWidth = 0)
    {
        BeginPath(cls, origin, strokeWidth);
        MoveTo(fromX, fromY);
        LineTo(toX, toY);
        EndPath();
    }

    /// <summary>Writes one line of text.</summary>
    /// <param name="cls">Its classes.</param>
    /// <param name="x">Where it is anchored.</param>
    /// <param name="baseline">Where its letters stand, downward.</param>
    /// <param name="sizePixels">The size of its letters.</param>
    /// <param name="text">What it says, from anywhere; see <see cref="DrawnText"/> for making it fit first.</param>
    /// <param name="anchor">Which end of it stands at x.</param>
    /// <param name="origin">The id of the fact it stands for; null for none.</param>
    /// <param name="turnDegrees">How far it is turned clockwise about its anchor.</param>
    /// <param name="title">The whole of what was shortened; null where nothing was.</param>
    public void Text(
        string cls, double x, double baseline, double sizePixels, string text, TextAnchor anchor = TextAnchor.Start, string? origin = null, double turnDegrees = 0, string? title = null)
    {
        Open("text", cls, origin);
        if (turnDegrees == 0)
        {
            Attribute("x", x);
            Attribute("y", baseline);
        }
        else
        {
            Raw(" transform=\"translate(");
            Number(x);
            markup.One(' ');
            Number(baseline);
            Raw(") rotate(");
            Number(turnDegrees);
            Raw(")\"");
        }

        Attribute("font-size", sizePixels);
        if (anchor != TextAnchor.Start)
        {
            Raw(anchor == TextAnchor.Middle ? " text-anchor=\"middle\"" : " text-anchor=\"end\"");
        }

        markup.One('>');
        if (title is not null)
        {
            Raw("<title>");
            Words(title);
            Raw("</title>");
        }

        Words(text);
        Raw("</text>\n");
    }

    /// <summary>Begins a path; its commands follow, then <see cref="EndPath"/>.</summary>
    /// <param name="cls">Its classes.</param>
    /// <param name="origin">The id of the fact it stands for; null for none.</param>
    /// <param name="strokeWidth">Its weight where the class does not say; 0 for the class's own.</param>
    public void BeginPath(string cls, string? origin = null, double strokeWidth = 0)
    {
        Open("path", cls, origin);
        if (strokeWidth > 0)
        {
            Attribute("stroke-width", strokeWidth);
        }

        Raw(" d=\"");
        penX = penY = startX = startY = 0;
        lastCommand = '\0';
    }

    /// <summary>Lifts the pen to a place.</summary>
    /// <param name="x">To the right.</param>
    /// <param name="y">Downward.</param>
    public void MoveTo(double x, double y)
    {
        Command(lastCommand == '\0' ? 'M' : 'm');
        Step(x, y);
        (startX, startY) = (penX, penY);
    }

    /// <summary>Draws straight to a place.</summary>
    /// <param name="x">To the right.</param>
    /// <param name="y">Downward.</param>
    public void LineTo(double x, double y)
    {
        Command('l');
        Step(x, y);
    }

    /// <summary>Draws a cubic curve to a place.</summary>
    /// <param name="firstX">The control point of the start.</param>
    /// <param name="firstY">The same, downward.</param>
    /// <param name="secondX">The control point of the end.</param>
    /// <param name="secondY">The same, downward.</param>
    /// <param name="x">The end.</param>
    /// <param name="y">The end, downward.</param>
    public void CurveTo(double firstX, double firstY, double secondX, double secondY, double x, double y)
    {
        Command('c');
        Offset(firstX, firstY);
        Offset(secondX, secondY);
        Step(x, y);
    }

    /// <summary>Draws a quadratic curve to a place.</summary>
    /// <param name="controlX">The control point.</param>
    /// <param name="controlY">The same, downward.</param>
    /// <param name="x">The end.</param>
    /// <param name="y">The end, downward.</param>
    public void QuadraticTo(double controlX, double controlY, double x, double y)
    {
        Command('q');
        Offset(controlX, controlY);
        Step(x, y);
    }

    /// <summary>Draws a piece of a circle to a place.</summary>
    /// <param name="radius">The circle's radius.</param>
    /// <param name="isLarge">Whether it goes the long way round.</param>
    /// <param name="isClockwise">Whether it turns clockwise on the page.</param>
    /// <param name="x">The end.</param>
    /// <param name="y">The end, downward.</param>
    public void ArcTo(double radius, bool isLarge, bool isClockwise, double x, double y)
    {
        Command('a');
        Separate();
        markup.Hundredths(Rounded(radius, grain) * (grain == 10 ? 10 : 1));
        markup.One(' ');
        markup.Hundredths(Rounded(radius, grain) * (grain == 10 ? 10 : 1));
        Raw(isLarge ? " 0 1" : " 0 0");
        Raw(isClockwise ? " 1" : " 0");
        Step(x, y);
    }

    /// <summary>Draws back to where the pen was last put down.</summary>
    public void ClosePath()
    {
        markup.One('z');
        lastCommand = 'z';
        (penX, penY) = (startX, startY);
    }

    /// <summary>Ends the path.</summary>
    public void EndPath() => Raw("\"/>\n");

    private void Open(string element, string cls, string? origin)
    {
        markup.One('<');
        Raw(element);
        if (cls.Length > 0)
        {
            Raw(" class=\"");
            Raw(cls);
            markup.One('"');
        }

        if (origin is not null)
        {
            Attribute("data-origin", origin);
        }
    }

    // A command letter is left out where the last one still holds; after a move-to that would mean a line-to, so lines leave theirs out too.
    private void Command(char command)
    {
        var repeats = command == lastCommand && command != 'm' && command != 'M';
        if (!repeats && !(command == 'l' && lastCommand is 'm'))
        {
            markup.One(command);
            lastCommand = command;
            return;
        }

        lastCommand = command;
    }

    private void Step(double x, double y)
    {
        var toX = Rounded(x, grain);
        var toY = Rounded(y, grain);
        Pair(toX - penX, toY - penY);
        (penX, penY) = (toX, toY);
    }

    private void Offset(double x, double y) => Pair(Rounded(x, grain) - penX, Rounded(y, grain) - penY);

    private void Pair(long x, long y)
    {
        var factor = grain == 10 ? 10 : 1;
        Separate(x);
        markup.Hundredths(x * factor);
        Separate(y);
        markup.Hundredths(y * factor);
    }

    // A minus sign parts two numbers by itself, and so does the letter before the first one.
    private void Separate(long next = 0)
    {
        if (next >= 0 && !char.IsAsciiLetter(markup.Last) && markup.Last != '"')
        {
            markup.One(' ');
        }
    }

    private static long Rounded(double value, double grain) =>
        double.IsNaN(value) ? 0 : (long)Math.Round(Math.Clamp(value, -1e9, 1e9) * grain, MidpointRounding.AwayFromZero);
}
