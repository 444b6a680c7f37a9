namespace GroveSpec.Drawing.Scene;

/// <summary>What every plate has in common: its frame with title and description, its heading, its scale bar, its key.</summary>
internal static class Plate
{
    /// <summary>From the edge of the page to what is drawn, in pixels.</summary>
    public const double Margin = 60;

    /// <summary>The least size of letters, in pixels at the plate's own size.</summary>
    public const double SmallText = 12;

    /// <summary>Where the heading's rule runs, from the top.</summary>
    public const double HeadingFoot = 84;

    /// <summary>The size of the sentences in a key, and the step from line to line.</summary>
    public const double KeyText = 13.5;

    private const double KeyLine = 18;

    /// <summary>Writes the beginning of a plate: root, title, description, style and paper.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="name">The plate's name, a plain word such as plan.</param>
    /// <param name="width">Its width.</param>
    /// <param name="height">Its height.</param>
    /// <param name="title">Its title for those who do not see it, from anywhere.</param>
    /// <param name="description">What it shows, from anywhere.</param>
    /// <param name="style">Its style.</param>
    /// <param name="options">How it is drawn.</param>
    public static void Open(SvgWriter svg, string name, double width, double height, string title, string description, StyleSheet style, DrawingOptions options)
    {
        var prefix = options.IdPrefix.Length > 0 ? options.IdPrefix : name;
        svg.Raw("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"gs gs-");
        svg.Raw(name);
        svg.Raw("\" viewBox=\"0 0 ");
        svg.Number(width);
        svg.Raw(" ");
        svg.Number(height);
        svg.Raw("\"");
        svg.Attribute("width", width);
        svg.Attribute("height", height);
        svg.Raw(" font-family=\"");
        svg.Raw(TextMetrics.Families);
        svg.Raw("\" role=\"img\" aria-labelledby=\"");
        svg.Escaped(prefix);
        svg.Raw("-title ");
        svg.Escaped(prefix);
        svg.Raw("-desc\">\n<title id=\"");
        svg.Escaped(prefix);
        svg.Raw("-title\">");
        svg.Words(title);
        svg.Raw("</title>\n<desc id=\"");
        svg.Escaped(prefix);
        svg.Raw("-desc\">");
        svg.Words(description);
        svg.Raw("</desc>\n");
        style.WriteTo(svg, options.FaceRules, options.IsOnWhite ? Palette.White : Palette.Light);
        svg.Rectangle("gs-paper", new Box(0, 0, width, height));
    }

    /// <summary>Writes the end of a plate.</summary>
    /// <param name="svg">Where to.</param>
    public static void Close(SvgWriter svg) => svg.Raw("</svg>\n");

    /// <summary>Writes the heading: the planting's name, a line about it, and a rule below.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="width">The page's width.</param>
    /// <param name="name">The planting's name as written.</param>
    /// <param name="nameOrigin">Where it was written; null where nowhere.</param>
    /// <param name="remark">The line below, cleaned.</param>
    /// <param name="options">How the plate is drawn; a heading of theirs stands in the name's place.</param>
    public static void WriteHeading(SvgWriter svg, double width, string name, string? nameOrigin, string remark, DrawingOptions options)
    {
        var room = width - (2 * Margin);
        (name, nameOrigin) = options.Heading is { } heading ? (heading, null) : (name, nameOrigin);
        var clean = DrawnText.Isolated(name);
        var shown = DrawnText.Shortened(clean, room, 28);
        var shownRemark = DrawnText.Shortened(remark, room, 15, Face.Italic);
        svg.Text("gs-title", Margin, 52, 28, shown, origin: nameOrigin, title: shown == clean ? null : clean);
        svg.Text("gs-remark", Margin, 74, 15, shownRemark, title: shownRemark == remark ? null : remark);
        svg.Line("gs-rule", Margin, HeadingFoot, width - Margin, HeadingFoot);
    }

    /// <summary>The sentences of a key, broken into lines.</summary>
    /// <param name="width">The page's width.</param>
    /// <param name="sentences">A sentence for each mark, from anywhere.</param>
    /// <returns>The lines of each sentence.</returns>
    public static List<List<string>> LayOutKey(double width, IEnumerable<string> sentences) =>
        [.. sentences.Select(sentence => DrawnText.Wrapped(DrawnText.Clean(sentence), width - (2 * Margin) - 30, KeyText))];

    /// <summary>How much room a key takes from top to bottom.</summary>
    /// <param name="key">The lines of each sentence.</param>
    /// <returns>Pixels; 0 for none.</returns>
    public static double HeightOfKey(List<List<string>> key) => key.Sum(lines => (lines.Count * KeyLine) + 8);

    /// <summary>Writes a key: a ringed number and its sentence, one below the other.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="top">Its upper edge.</param>
    /// <param name="numbers">The number of each sentence.</param>
    /// <param name="key">The lines of each sentence.</param>
    /// <param name="cls">The class of the rings; that of the numbers has -number behind it. Null for sentences without numbers.</param>
    public static void WriteKey(SvgWriter svg, double top, IReadOnlyList<int> numbers, List<List<string>> key, string? cls = "gs-mark")
    {
        var left = cls is null ? Margin : Margin + 30;
        for (var i = 0; i < key.Count; i++)
        {
            if (cls is not null)
            {
                WriteMark(svg, Margin + 10, top + (KeyLine / 2), numbers[i], null, cls);
            }

            foreach (var line in key[i])
            {
                svg.Text("gs-key", left, top + (KeyLine / 2) + (KeyText * 0.33), KeyText, line);
                top += KeyLine;
            }

            top += 8;
        }
    }

    /// <summary>The radius of the ring round a finding's number.</summary>
    /// <param name="number">The number.</param>
    /// <returns>Pixels.</returns>
    public static double RadiusOfMark(int number) => number > 99 ? 12 : 9;

    /// <summary>Writes a finding's number in a ring.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="x">Its centre.</param>
    /// <param name="y">Its centre, downward.</param>
    /// <param name="number">The number, from 1.</param>
    /// <param name="origin">The id of what it stands for; null for none.</param>
    /// <param name="cls">The class of the ring; that of the number has -number behind it.</param>
    public static void WriteMark(SvgWriter svg, double x, double y, int number, string? origin, string cls = "gs-mark")
    {
        svg.Circle(cls, x, y, RadiusOfMark(number), origin);
        svg.Text(cls + "-number", x, y + 4, SmallText, number.ToString(), TextAnchor.Middle);
    }

    /// <summary>Writes a scale bar of a round length, its ends and middle named.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="left">Its left end.</param>
    /// <param name="y">Where it runs.</param>
    /// <param name="widthPixels">The most room it may take from end to end.</param>
    /// <param name="pixelsPerMillimetre">The plate's scale.</param>
    /// <param name="units">The units that are read.</param>
    /// <returns>The box it takes, its numbers in it.</returns>
    public static Box WriteScaleBar(SvgWriter svg, double left, double y, double widthPixels, double pixelsPerMillimetre, Model.Quantities.UnitSystem units)
    {
        var (lengthMillimetres, middle, end) = DrawnLength.RoundBar(widthPixels / pixelsPerMillimetre, units);
        var right = left + (lengthMillimetres * pixelsPerMillimetre);
        svg.BeginPath("gs-scale");
        svg.MoveTo(left, y - 4);
        svg.LineTo(left, y + 4);
        svg.MoveTo(left, y);
        svg.LineTo(right, y);
        svg.MoveTo(right, y - 4);
        svg.LineTo(right, y + 4);
        svg.MoveTo((left + right) / 2, y - 3);
        svg.LineTo((left + right) / 2, y + 3);
        svg.EndPath();
        svg.Text("gs-number", left, y + 18, SmallText, "0", TextAnchor.Middle);
        svg.Text("gs-number", (left + right) / 2, y + 18, SmallText, middle, TextAnchor.Middle);
        svg.Text("gs-number", right, y + 18, SmallText, end, TextAnchor.Middle);
        var overhang = TextMetrics.ReservedWidth(end, SmallText) / 2;
        return new Box(left - 6, y - 6, right + overhang, y + 24);
    }
}
