using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;

namespace GroveSpec.Cli.Tests;

public sealed class WiringCommandTests : IDisposable
{
    private const string Bench = """
        planting  "Quiet corner"
        habit     group
        species   acer-buergerianum
        container oval 360 x 240 x 40 mm
        site      latitude 51 N, zone 8b, last frost 3 May, first frost 1 November
        viewed    from 180 deg, at 1000 mm
        trunk A   at -58, -22 mm   diameter 33 mm   height 410 mm
        trunk B   at 41, 12 mm     diameter 21 mm   height 290 mm
        trunk C   at 92, -39 mm    diameter 13 mm   height 180 mm
        task W1   wire      on B    in early autumn 2027   with aluminium 4 mm, coil 45 deg, span 40 to 200 mm, bend 12 deg toward 90 deg over 120 mm
        task L1   look-over of W1   every 2 weeks until U1
        task U1   unwire    of W1   6 to 8 weeks after W1
        task W2   wire      on C    in early autumn 2027   span 90 to 150 mm
        task W3   wire      on A    in early autumn 2026   with 2 x copper 3.26 mm, coil 50 deg, span 20 to 200 mm   done 2026-09-12
        task U3   unwire    of W3   6 to 8 weeks after W3   done 2026-10-30

        """;

    private readonly Workplace work = new();

    public WiringCommandTests() => work.Write("a.grove", Bench);

    public void Dispose() => work.Dispose();

    [Fact]
    public void Each_wire_is_told_with_what_to_cut_and_what_to_buy()
    {
        var answer = work.Run("wiring", "a.grove", "--on", "2027-08-20");
        Assert.Equal(ExitStatus.Good, answer.Status);
        var said = answer.Output.ReplaceLineEndings(" ").Replace("  ", " ", StringComparison.Ordinal);
        while (said.Contains("  ", StringComparison.Ordinal))
        {
            said = said.Replace("  ", " ", StringComparison.Ordinal);
        }

        Assert.StartsWith("Quiet corner, its wire seen from 20 August 2027", said, StringComparison.Ordinal);

        // 160 mm at 45° are 160 × √2 = 226 mm; from 40 mm down are 57 mm, and 40 mm of soil.
        Assert.Contains("One wire of 330 mm: 226 mm round the trunk from 40 mm to 200 mm, and 97 mm from there down into the soil behind the trunk.", said, StringComparison.Ordinal);
        Assert.Contains("At the middle of the bend a turn lies on the outside, 270 deg, the left.", said, StringComparison.Ordinal);
        Assert.Contains("Aluminium of 2 mm is taken here, since the file names none.", said, StringComparison.Ordinal);
        Assert.Contains("for one and a half turns below as its hold", said, StringComparison.Ordinal);
        Assert.Contains("It was on from 12 September 2026 and came off on 30 October 2026.", said, StringComparison.Ordinal);
        Assert.Contains("To buy aluminium of 2 mm: 1 piece, ", said, StringComparison.Ordinal);
        Assert.Contains(" aluminium of 4 mm: 1 piece, 330 mm; 0.33 m in all, 11 g", said, StringComparison.Ordinal);
        Assert.DoesNotContain("copper of 3.26 mm: ", said, StringComparison.Ordinal);
        Assert.Contains("protect your eyes", said, StringComparison.Ordinal);
        Assert.Contains("no promise", said, StringComparison.Ordinal);
    }

    [Fact]
    public void No_line_is_wider_than_a_terminal() =>
        Assert.All(work.Run("wiring", "a.grove").Output.Split('\n'), line => Assert.True(line.Length <= 100, line));

    [Fact]
    public void Inches_are_spoken_where_they_are_asked_for()
    {
        var output = work.Run("wiring", "a.grove", "--units", "inch").Output;
        Assert.Contains("0.157 in", output, StringComparison.Ordinal);
        Assert.DoesNotContain(" mm", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_tells_the_same_in_numbers()
    {
        var planting = JsonNode.Parse(work.Run("wiring", "a.grove", "--json", "--on", "2027-08-20").Output)!["plantings"]![0]!;
        var wires = planting["wires"]!.AsArray();
        Assert.Equal("W1 B, W2 C, W3 A", string.Join(", ", wires.Select(wire => $"{wire!["task"]} {wire["trunk"]}")));
        var first = wires[0]!;
        Assert.Equal(160 * Math.Sqrt(2), (double)first["winding"]!["helixMm"]!, 1e-6);
        Assert.Equal(330, (double)first["winding"]!["cutMm"]!);
        Assert.Equal("soil", (string)first["winding"]!["anchor"]!);
        Assert.Equal(270, (double)first["bend"]!["loopSideDeg"]!);

        // Plastic moment of 4 mm of 34 MPa, and a radius of 120 mm over 12°.
        Assert.Equal(34 * 64 / 6.0, (double)first["bend"]!["wireMomentNmm"]!, 1e-9);
        Assert.Equal(120 / (12 * Math.PI / 180), (double)first["bend"]!["radiusMm"]!, 1e-5);
        Assert.Equal((double)first["thicknessMm"]! / 2 / (double)first["bend"]!["radiusMm"]! * 100, (double)first["bend"]!["strainPercent"]!, 1e-5);
        Assert.False((bool)wires[1]!["isWireStated"]!);
        Assert.Null(wires[1]!["bend"]);
        Assert.Equal("turns", (string)wires[1]!["winding"]!["anchor"]!);
        Assert.True((bool)wires[2]!["watch"]!["isOff"]!);
        Assert.Equal(2, planting["toBuy"]!.AsArray().Count);
    }

    [Theory]
    [InlineData(Bench)]
    [InlineData(Plantings.Quiet)]
    [InlineData(Plantings.Broken)]
    [InlineData("")]
    [InlineData("trunk A\ntask W wire on A B with copper 0.00001 mm coil 89.9999 deg span 0 to 900 m bend 180 deg toward 9 deg over 0.000001 mm")]
    [InlineData("trunk A diameter 900 m height 0.001 mm\ntask W wire on all with 20 x copper 900 m coil 0 deg span 0 to 900 m bend 0 deg toward 9 deg\nlook-over")]
    [InlineData("trunk \"\u0000\u202e<script>\" diameter 9 mm\ntask \"\u001b[31m\" wire on all in 9999 span 1 to 9 mm \"\u001b[31m\"")]
    public void Json_is_as_its_schema_says(string text)
    {
        work.Write("one.grove", text);
        var answer = work.Run("wiring", "one.grove", "gone.grove", "--json");
        Assert.Equal(ExitStatus.Files, answer.Status);
        Assert.True(Schema().Evaluate(JsonDocument.Parse(answer.Output).RootElement).IsValid, answer.Output);
        Assert.Equal("gone.grove", (string)JsonNode.Parse(answer.Output)!["unreadable"]![0]!["file"]!);
        var told = work.Run("wiring", "one.grove");
        Assert.True(told.Status is ExitStatus.Good or ExitStatus.Findings, told.Errors);
        Assert.DoesNotContain('\u001b', told.Output);
    }

    [Fact]
    public void Json_of_every_sample_is_as_its_schema_says() =>
        Assert.True(Schema().Evaluate(JsonDocument.Parse(work.Run("wiring", Project.Path("samples"), "--json").Output).RootElement).IsValid);

    [Fact]
    public void The_sheet_is_the_one_that_draw_draws()
    {
        Assert.Equal(ExitStatus.Good, work.Run("wiring", "a.grove", "--sheet", "bench.svg").Status);
        Assert.Equal(work.Run("draw", "a.grove", "--view", "wiring").Output, work.Read("bench.svg"));
        Assert.Equal(work.Read("bench.svg"), work.Run("wiring", "a.grove", "--sheet", "-").Output);
        work.Run("wiring", "a.grove", "--sheet", "bench.pdf", "--paper", "a4");
        Assert.Equal("%PDF"u8.ToArray(), File.ReadAllBytes(work["bench.pdf"])[..4]);
        work.Write("b.grove", Bench);
        work.Run("wiring", "a.grove", "b.grove", "--sheet", "benches");
        Assert.Equal(work.Read("bench.svg"), work.Read("benches/b-wiring.svg"));
    }

    [Fact]
    public void A_planting_without_wire_says_how_to_write_one_in_words_that_can_be_read()
    {
        work.Write("b.grove", Plantings.Quiet);
        var output = work.Run("wiring", "b.grove").Output.ReplaceLineEndings(" ");
        var task = output[output.IndexOf("task W1", StringComparison.Ordinal)..].Replace("  ", " ", StringComparison.Ordinal).Trim();
        Assert.Equal(ExitStatus.Good, work.RunWithInput(Plantings.Quiet + task.Replace("  ", " ", StringComparison.Ordinal) + "\n", "check", "-").Status);
    }

    [Theory]
    [InlineData("--sheet", "a.grove")]
    [InlineData("--output", "a.grove")]
    [InlineData("--sheet", "x.svg", "--output", "x.svg")]
    [InlineData("--sheet", "-", "--json")]
    [InlineData("--sheet", "bench.txt")]
    [InlineData("--sheet", "bench.svg", "--paper", "a4")]
    [InlineData("--units", "ells")]
    [InlineData("--on", "yesterday")]
    public void What_cannot_be_meant_so_is_refused_and_nothing_is_lost(params string[] options)
    {
        Assert.Equal(ExitStatus.Usage, work.Run(["wiring", "a.grove", .. options]).Status);
        Assert.Equal(Bench, work.Read("a.grove"));
        Assert.Equal(["a.grove"], Directory.GetFileSystemEntries(work.Folder).Select(Path.GetFileName));
    }

    private static JsonSchema Schema() => JsonSchema.FromText(File.ReadAllText(Project.Path("docs/wiring.schema.json")));
}
