using System.Xml;
using System.Xml.Linq;
using GroveSpec.Publishing.Faces;

namespace GroveSpec.Publishing.Raster;

/// <summary>
/// Makes a drawing ready for Skia, whose reader of SVG turns a whole line round that begins with a letter written from right to left, and
/// numbers among such letters with it: each such line is parted into pieces in the order in which they are seen, each of which runs one way
/// and is set in a face that has its letters.
/// </summary>
internal static class SeenOrder
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    /// <summary>Rewrites a drawing's texts.</summary>
    /// <param name="svg">The drawing's text.</param>
    /// <returns>The same where nothing in it runs leftward.</returns>
    /// <exception cref="XmlException">The text is not well formed.</exception>
    public static string Of(string svg)
    {
        if (!Drawing.LeftwardWriting.Holds(svg))
        {
            return svg;
        }

        var drawing = XDocument.Parse(svg, LoadOptions.PreserveWhitespace);
        foreach (var text in drawing.Descendants(Svg + "text").Where(text => text.Nodes().OfType<XText>().Any(words => Drawing.LeftwardWriting.Holds(words.Value))).ToList())
        {
            foreach (var words in text.Nodes().OfType<XText>().ToList())
            {
                words.ReplaceWith(VisualOrder.Of(words.Value).Select(piece => new XElement(Svg + "tspan", Family(piece.Text), piece.Text)));
            }

            // The halo of each piece would lie on the letters of the piece before, so all halos are drawn first and then all letters.
            if (text.Elements(Svg + "tspan").Skip(1).Any())
            {
                var letters = new XElement(text);
                letters.SetAttributeValue("style", "stroke:none");
                text.AddAfterSelf(letters);
                text.SetAttributeValue("style", "fill:none");
            }
        }

        return drawing.ToString(SaveOptions.DisableFormatting);
    }

    private static XAttribute? Family(string piece)
    {
        foreach (var rune in piece.EnumerateRunes())
        {
            var family = rune.Value switch
            {
                (>= 0x0590 and <= 0x05FF) or (>= 0xFB1D and <= 0xFB4F) => FaceLibrary.HebrewFamilyName,
                (>= 0x0600 and <= 0x06FF) or (>= 0x0750 and <= 0x077F) or (>= 0x0870 and <= 0x08FF) or (>= 0xFB50 and <= 0xFDFF) or (>= 0xFE70 and <= 0xFEFE) => FaceLibrary.ArabicFamilyName,
                _ => null,
            };
            if (family is not null)
            {
                return new XAttribute("font-family", family);
            }
        }

        return null;
    }
}
