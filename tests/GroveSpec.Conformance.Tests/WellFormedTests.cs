using System.Xml;
using System.Xml.Linq;
using GroveSpec.Conformance.Tests.Drawn;
using Xunit;

namespace GroveSpec.Conformance.Tests;

public sealed class WellFormedTests
{
    private const string Hostile =
        """<script>alert(1)</script> ]]> --><svg onload=x> & &#x0; javascript:x \" ' ‮ right to left""";

    [Fact]
    public void Every_drawing_of_every_sample_is_well_formed()
    {
        foreach (var drawing in SampleDrawings.All)
        {
            var root = Read(drawing.Svg);
            Assert.Equal("svg", root.Name.LocalName);
            Assert.NotNull(root.Attribute("viewBox"));
            Assert.Contains(root.Elements(), child => child.Name.LocalName == "title");
            Assert.Contains(root.Elements(), child => child.Name.LocalName == "desc");
        }
    }

    [Fact]
    public void Generated_plantings_give_well_formed_drawings()
    {
        for (var seed = 0; seed < 200; seed++)
        {
            var subject = Plates.SubjectOf(GeneratedPlanting.Text(seed));
            foreach (var view in Plates.Views)
            {
                Read(Plates.Draw(view, subject));
            }
        }
    }

    [Fact]
    public void Markup_in_names_and_notes_is_drawn_as_text()
    {
        var subject = Plates.SubjectOf($$"""
            planting "{{Hostile}}"
            species  acer-palmatum
            container oval 400 x 300 x 40 mm
            concept  "{{Hostile}}"
            trunk A at -60, -20 mm diameter 30 mm height 300 mm role r
            trunk B at 40, 10 mm diameter 20 mm height 240 mm role r
            trunk C at 90, -50 mm diameter 12 mm height 150 mm
            role r { story "{{Hostile}}" }
            task t other "{{Hostile}}" on A on 2027-03-01 "{{Hostile}}"
            """);
        foreach (var view in Plates.Views)
        {
            var root = Read(Plates.Draw(view, subject));
            Assert.DoesNotContain(root.DescendantsAndSelf(), element => element.Name.LocalName is "script" or "foreignObject" or "a" or "image");
            Assert.DoesNotContain(root.DescendantsAndSelf().Attributes(), attribute => attribute.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase));
            Assert.Single(root.DescendantsAndSelf(), element => element.Name.LocalName == "svg");
        }
    }

    [Fact]
    public void The_same_planting_is_drawn_with_the_same_bytes()
    {
        foreach (var drawing in SampleDrawings.All)
        {
            Assert.Equal(drawing.Svg, Plates.Draw(drawing.View, Plates.SubjectOfFile(SampleFile.Named(drawing.Sample).Path)));
        }
    }

    private static XElement Read(string svg)
    {
        using var reader = XmlReader.Create(new StringReader(svg), new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit });
        return XDocument.Load(reader).Root!;
    }
}
