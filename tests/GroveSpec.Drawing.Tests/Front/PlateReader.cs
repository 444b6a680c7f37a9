using System.Globalization;
using System.Xml.Linq;
using GroveSpec.Drawing.Scene;

namespace GroveSpec.Drawing.Tests.Front;

/// <summary>Reads a plate back as a renderer would: its labels as boxes, its page, its leaders.</summary>
internal sealed class PlateReader
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private readonly XElement root;

    public PlateReader(string svg)
    {
        root = XDocument.Parse(svg).Root!;
        var size = root.Attribute("viewBox")!.Value.Split(' ').Select(Number).ToArray();
        Page = new Box(0, 0, size[2], size[3]);
    }

    public Box Page { get; }

    public XElement Root => root;

    public IEnumerable<(string Text, string Class, Box Box)> Labels => root.Descendants(Svg + "text").Select(Label);

    public IEnumerable<XElement> Of(string cls) =>
        root.Descendants().Where(element => (element.Attribute("class")?.Value ?? "").Split(' ').Contains(cls));

    /// <summary>The straight pieces of a path, curves left out.</summary>
    public static List<(double FromX, double FromY, double ToX, double ToY)> Pieces(string data)
    {
        var pieces = new List<(double, double, double, double)>();
        var numbers = new List<double>();
        var (x, y) = (0.0, 0.0);
        var command = ' ';
        for (var index = 0; index < data.Length;)
        {
            if (char.IsAsciiLetter(data[index]))
            {
                command = data[index++];
                continue;
            }

            var end = index + 1;
            while (end < data.Length && (char.IsAsciiDigit(data[end]) || data[end] == '.'))
            {
                end++;
            }

            numbers.Add(Number(data[index..end].Trim()));
            index = end;
            if (numbers.Count < 2)
            {
                continue;
            }

            var (toX, toY) = command == 'M' ? (numbers[0], numbers[1]) : (x + numbers[0], y + numbers[1]);
            if (command == 'l')
            {
                pieces.Add((x, y, toX, toY));
            }

            command = command is 'M' or 'm' ? 'l' : command;
            (x, y) = (toX, toY);
            numbers.Clear();
        }

        return pieces;
    }

    private static (string Text, string Class, Box Box) Label(XElement element)
    {
        var text = string.Concat(element.Nodes().OfType<XText>().Select(node => node.Value));
        var cls = element.Attribute("class")?.Value ?? "";
        var size = Number(element.Attribute("font-size")!.Value);
        var turn = element.Attribute("transform")?.Value.Split(' ', '(', ')');
        var (x, y) = turn is null ? (Number(element.Attribute("x")!.Value), Number(element.Attribute("y")!.Value)) : (0, 0);
        var face = cls.Contains("name", StringComparison.Ordinal) || cls.Contains("remark", StringComparison.Ordinal) ? Face.Italic : Face.Regular;
        var width = TextMetrics.ReservedWidth(text, size, face);
        var left = element.Attribute("text-anchor")?.Value switch { "middle" => x - (width / 2), "end" => x - width, _ => x };
        var box = new Box(left, y - (size * TextMetrics.Ascent), left + width, y + (size * TextMetrics.Descent));
        return (text, cls, turn is null ? box : Turned(box, Number(turn[1]), Number(turn[2]), Number(turn[5])));
    }

    // translate(x y) rotate(degrees): the upright box round the turned one.
    private static Box Turned(Box box, double x, double y, double degrees)
    {
        var (sine, cosine) = Math.SinCos(degrees * Math.PI / 180);
        var corners = new[] { (box.Left, box.Top), (box.Right, box.Top), (box.Right, box.Bottom), (box.Left, box.Bottom) }
            .Select(corner => (X: x + (corner.Item1 * cosine) - (corner.Item2 * sine), Y: y + (corner.Item1 * sine) + (corner.Item2 * cosine))).ToArray();
        return new Box(corners.Min(c => c.X), corners.Min(c => c.Y), corners.Max(c => c.X), corners.Max(c => c.Y));
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
