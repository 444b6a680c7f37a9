using System.Globalization;
using System.Text;

namespace GroveSpec.Publishing.Book;

/// <summary>A small drawing of what each check of the composition means, always the same, whatever the planting.</summary>
internal static class Vignettes
{
    /// <summary>The drawing for a check.</summary>
    /// <param name="check">The check's name.</param>
    /// <returns>An SVG of 136 by 96, hidden from screen readers since the text beside it says the same; null for a check that has none.</returns>
    public static string? Draw(string check)
    {
        var picture = new Sketch();
        switch (check)
        {
            case "three-in-line":
                picture.Section(26, 70, 11).Section(66, 50, 8).Section(108, 26, 6).Mark("M6 79 132 14");
                break;
            case "even-gaps":
                picture.Section(24, 60, 8).Section(68, 38, 11).Section(112, 60, 7).Mark("M34 63Q52 62 60 49").Mark("M76 49Q84 62 103 63").Dot(48, 59).Dot(88, 59);
                break;
            case "even-gaps-in-view":
                picture.Ground(80).Trunk(28, 80, 9, 56).Trunk(68, 80, 6, 44).Trunk(108, 80, 7, 62).Mark("M33 89H63").Mark("M73 89H103").Dot(48, 89).Dot(88, 89);
                break;
            case "twin-diameters":
                picture.Section(42, 48, 15).Section(94, 48, 15).Mark("M42 20V33M42 63V76M94 20V33M94 63V76");
                break;
            case "twin-heights":
                picture.Ground(84).Trunk(46, 84, 12, 62).Trunk(92, 84, 7, 62).Mark("M16 22H122");
                break;
            case "wide-but-short":
                picture.Ground(84).Trunk(42, 84, 20, 34).Trunk(94, 84, 9, 64).Mark("M22 44H62").Dot(42, 44);
                break;
            case "thin-but-tall":
                picture.Ground(84).Trunk(44, 84, 17, 42).Trunk(94, 84, 5, 70).Mark("M78 10H110").Dot(94, 10);
                break;
            case "hidden-trunk":
                picture.Ground(84).Gone("M62 82C64 60 66 40 67 22L71 22C72 40 74 60 76 82").Trunk(70, 84, 20, 46).Mark("M52 16H88").Dot(70, 16);
                break;
            case "depth-reversed":
                picture.Section(52, 28, 13).Section(92, 32, 11).Section(46, 58, 6).Section(80, 62, 5).Eye(68, 86).Mark("M110 66V24M105 31 110 22 115 31");
                break;
            case "level-tops":
                picture.Ground(84).Trunk(28, 84, 9, 50).Trunk(64, 84, 11, 57).Trunk(104, 84, 8, 65).Mark("M10 38 126 15");
                break;
            case "centred-main":
                picture.Pot().Section(68, 46, 13).Section(36, 40, 6).Section(104, 54, 5).Mark("M68 6V90");
                break;
            case "even-count":
                picture.Section(30, 38, 10).Section(62, 62, 7).Section(88, 34, 8).Section(112, 62, 6).Dot(30, 80).Dot(54, 80).Dot(78, 80).Dot(102, 80);
                break;
            case "touching":
                picture.Section(56, 48, 20).Section(90, 48, 15).Mark("M75 22V74");
                break;
            case "near-rim":
                picture.Rim().Section(98, 48, 11).Mark("M111 48H119");
                break;
            case "off-container":
                picture.Rim().Section(116, 48, 12).Mark("M98 24 134 72M134 24 98 72");
                break;
            default:
                return null;
        }

        return picture.ToString();
    }

    /// <summary>The pen for them.</summary>
    private sealed class Sketch
    {
        private readonly StringBuilder svg = new("<svg viewBox=\"0 0 136 96\" width=\"136\" height=\"96\" aria-hidden=\"true\">");

        /// <summary>A trunk cut across, with two rings.</summary>
        public Sketch Section(double x, double y, double radius) =>
            Circle("v-wood", x, y, radius).Circle("v-thin", x - (radius * .06), y + (radius * .05), radius * .62).Circle("v-thin", x - (radius * .1), y + (radius * .08), radius * .28);

        /// <summary>A trunk seen from the front, with its flare.</summary>
        public Sketch Trunk(double x, double foot, double width, double height)
        {
            var half = width / 2;
            var top = foot - height;
            return Path("v-wood", string.Create(
                CultureInfo.InvariantCulture,
                $"M{x - (half * 1.5):0.#} {foot}Q{x - half:0.#} {foot - 4} {x - (half * .92):0.#} {foot - (height * .25):0.#}L{x - Math.Max(.8, half * .16):0.#} {top}H{x + Math.Max(.8, half * .16):0.#}L{x + (half * .92):0.#} {foot - (height * .25):0.#}Q{x + half:0.#} {foot - 4} {x + (half * 1.5):0.#} {foot}Z"));
        }

        public Sketch Ground(double y) => Path("v-ink", string.Create(CultureInfo.InvariantCulture, $"M8 {y}Q68 {y + 4} 128 {y}"));

        public Sketch Pot() => Path("v-ink", "M10 48C10 22 36 12 68 12S126 22 126 48 100 84 68 84 10 74 10 48Z");

        public Sketch Rim() => Path("v-ink", "M112 4Q128 48 112 92").Path("v-thin", "M107 4Q122 48 107 92");

        public Sketch Eye(double x, double y) =>
            Path("v-ink", string.Create(CultureInfo.InvariantCulture, $"M{x - 12} {y}Q{x} {y - 8} {x + 12} {y}Q{x} {y + 8} {x - 12} {y}Z")).Circle("v-ink", x, y, 2.4);

        public Sketch Gone(string path) => Path("v-gone", path);

        public Sketch Mark(string path) => Path("v-mark", path);

        public Sketch Dot(double x, double y) => Circle("v-dot", x, y, 2.2);

        public override string ToString() => svg + "</svg>\n";

        private Sketch Path(string style, string path)
        {
            svg.Append("<path class=\"").Append(style).Append("\" d=\"").Append(path).Append("\"/>");
            return this;
        }

        private Sketch Circle(string style, double x, double y, double radius)
        {
            svg.Append(CultureInfo.InvariantCulture, $"<circle class=\"{style}\" cx=\"{x:0.##}\" cy=\"{y:0.##}\" r=\"{radius:0.##}\"/>");
            return this;
        }
    }
}
