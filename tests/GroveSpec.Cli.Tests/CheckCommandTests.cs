using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;

namespace GroveSpec.Cli.Tests;

public sealed class CheckCommandTests : IDisposable
{
    private readonly Workplace work = new();

    public void Dispose() => work.Dispose();

    [Fact]
    public void A_planting_with_nothing_amiss_ends_with_0()
    {
        work.Write("quiet.grove", Plantings.Quiet);
        var answer = work.Run("check", "quiet.grove");
        Assert.Equal(ExitStatus.Good, answer.Status);
        Assert.StartsWith("quiet.grove: 3 trunks", answer.Output, StringComparison.Ordinal);
        Assert.Empty(answer.Errors);
    }

    [Fact]
    public void Warnings_fail_only_a_strict_run()
    {
        work.Write("fence.grove", Plantings.InLine);
        Assert.Equal(ExitStatus.Good, work.Run("check", "fence.grove").Status);
        Assert.Equal(ExitStatus.Findings, work.Run("check", "fence.grove", "--strict").Status);
    }

    [Fact]
    public void Errors_fail_every_run()
    {
        work.Write("torn.grove", Plantings.Broken);
        Assert.Equal(ExitStatus.Findings, work.Run("check", "torn.grove").Status);
    }

    [Fact]
    public void A_file_that_is_not_there_ends_with_3_and_the_others_are_checked()
    {
        work.Write("fence.grove", Plantings.InLine);
        var answer = work.Run("check", "gone.grove", "fence.grove");
        Assert.Equal(ExitStatus.Files, answer.Status);
        Assert.Contains("gone.grove: it cannot be read: there is no such file.", answer.Errors, StringComparison.Ordinal);
        Assert.Contains("three-in-line", answer.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_place_is_marked_under_the_line_it_lies_in()
    {
        work.Write("fence.grove", Plantings.InLine);
        var lines = work.Run("check", "fence.grove").Output.Split('\n');
        var at = Array.FindIndex(lines, line => line.Contains("three-in-line, line ", StringComparison.Ordinal));
        Assert.StartsWith("    trunk ", lines[at + 1], StringComparison.Ordinal);
        var mark = lines[at + 2];
        Assert.Matches("^ +~+$", mark);
        Assert.StartsWith("at ", lines[at + 1][mark.IndexOf('~', StringComparison.Ordinal)..], StringComparison.Ordinal);
    }

    [Fact]
    public void Standard_input_is_read_as_a_dash()
    {
        var answer = work.RunWithInput(Plantings.InLine, "check", "-", "--as", "lines");
        Assert.Equal(ExitStatus.Good, answer.Status);
        Assert.Matches("(?m)^-:[678]:\\d+: warning: .* \\[three-in-line\\]$", answer.Output);
    }

    [Fact]
    public void Lines_have_path_line_column_severity_message_and_check()
    {
        work.Write("torn.grove", Plantings.Broken);
        foreach (var line in work.Run("check", "torn.grove", "--as", "lines").Output.TrimEnd('\n').Split('\n'))
        {
            Assert.Matches(@"^torn\.grove:\d+:\d+: (error|warning|hint): \S.*\S \[[a-z-]+\]$", line);
        }
    }

    [Fact]
    public void Colour_comes_only_on_a_terminal_and_never_instead_of_words()
    {
        work.Write("fence.grove", Plantings.InLine);
        var plain = work.Run("check", "fence.grove").Output;
        var coloured = work.RunWatched("check", "fence.grove").Output;
        Assert.DoesNotContain('\u001b', plain);
        Assert.Contains('\u001b', coloured);
        Assert.Equal(plain, System.Text.RegularExpressions.Regex.Replace(coloured, "\u001b\\[[0-9;]*m", ""));
        work.Run("", new Workplace.Watching(Output: true, Colour: true), "check", "fence.grove", "--output", "found.txt");
        Assert.DoesNotContain('\u001b', work.Read("found.txt"));
    }

    [Fact]
    public void Explaining_tells_the_meaning_of_each_check_once()
    {
        work.Write("fence.grove", Plantings.InLine);
        var meaning = Checks.Catalogue.Find("three-in-line")!.Meaning;
        Assert.DoesNotContain(meaning, work.Run("check", "fence.grove").Output, StringComparison.Ordinal);
        var output = work.Run("check", "fence.grove", "--explain").Output;
        Assert.Equal(2, output.Split(meaning).Length);
        Assert.Contains("docs/checks/three-in-line.md", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Plantings.Quiet)]
    [InlineData(Plantings.InLine)]
    [InlineData(Plantings.Broken)]
    [InlineData("")]
    [InlineData("trunk \"\u0000\u202e<script>\"")]
    public void Json_is_as_its_schema_says(string text)
    {
        work.Write("one.grove", text);
        var answer = work.Run("check", "one.grove", "gone.grove", "--json");
        Assert.True(Schema("check").Evaluate(Parse(answer)).IsValid, answer.Output);
    }

    [Fact]
    public void Json_of_every_sample_is_as_its_schema_says()
    {
        var answer = work.Run("check", Project.Path("samples"), "--json");
        Assert.NotEqual(ExitStatus.Files, answer.Status);
        Assert.True(Schema("check").Evaluate(Parse(answer)).IsValid);
        Assert.True(JsonNode.Parse(answer.Output)!["files"]!.AsArray().Count >= 8);
    }

    [Fact]
    public void A_finding_in_json_counts_line_and_character_from_0_in_utf16()
    {
        // Two UTF-16 code units each for the signs before the trunk's clause, as language servers count.
        work.Write("fence.grove", Plantings.InLine.Replace("trunk B ", "trunk 😀 ", StringComparison.Ordinal));
        var finding = JsonNode.Parse(work.Run("check", "fence.grove", "--json").Output)!["findings"]!.AsArray()
            .First(one => (string)one!["check"]! == "three-in-line")!;
        var start = finding["range"]!["start"]!;
        var line = (int)start["line"]!;
        var text = work.Read("fence.grove").Split('\n')[line];
        Assert.StartsWith("at ", text[(int)start["character"]!..], StringComparison.Ordinal);
        Assert.Equal(line, (int)finding["range"]!["end"]!["line"]!);
        Assert.Equal(JsonValueKind.Number, finding["measured"]!.GetValueKind());
        Assert.Equal(3, finding["trunks"]!.AsArray().Count);
    }

    [Fact]
    public void Sarif_holds_what_json_holds()
    {
        work.Write("fence.grove", Plantings.InLine);
        var findings = JsonNode.Parse(work.Run("check", "fence.grove", "--json").Output)!["findings"]!.AsArray();
        var run = JsonNode.Parse(work.Run("check", "fence.grove", "--as", "sarif").Output)!["runs"]![0]!;
        var results = run["results"]!.AsArray();
        Assert.Equal(findings.Count, results.Count);
        for (var index = 0; index < results.Count; index++)
        {
            var region = results[index]!["locations"]![0]!["physicalLocation"]!["region"]!;
            Assert.Equal((string)findings[index]!["check"]!, (string)results[index]!["ruleId"]!);
            Assert.Equal((int)findings[index]!["range"]!["start"]!["line"]! + 1, (int)region["startLine"]!);
            Assert.Equal((int)findings[index]!["range"]!["start"]!["character"]! + 1, (int)region["startColumn"]!);
            Assert.Equal((string)results[index]!["ruleId"]!, (string)run["tool"]!["driver"]!["rules"]![(int)results[index]!["ruleIndex"]!]!["id"]!);
        }
    }

    [Fact]
    public void Sarif_is_as_the_schema_of_oasis_says()
    {
        var reference = Environment.GetEnvironmentVariable("GROVESPEC_REFERENCE");
        Assert.SkipWhen(string.IsNullOrEmpty(reference), "GROVESPEC_REFERENCE names no folder with schemas/sarif-schema-2.1.0.json, the schema that OASIS publishes.");

        // The schema uses nothing that draft 4 and draft 7 differ in but the name of its own id; the reader knows only the later one.
        var schema = JsonSchema.FromText(File.ReadAllText(Path.Combine(reference!, "schemas", "sarif-schema-2.1.0.json"))
            .Replace("http://json-schema.org/draft-04/schema#", "http://json-schema.org/draft-07/schema#", StringComparison.Ordinal)
            .Replace("\"id\": \"https://", "\"$id\": \"https://", StringComparison.Ordinal));
        work.Write("a b#c/fence.grove", Plantings.InLine);
        work.Write("torn.grove", Plantings.Broken);
        foreach (var names in new string[][] { [work.Folder], ["torn.grove", "gone.grove"], [Project.Path("samples")] })
        {
            var answer = work.Run(["check", .. names, "--as", "sarif"]);
            var result = schema.Evaluate(Parse(answer), new EvaluationOptions { OutputFormat = OutputFormat.List });
            Assert.True(result.IsValid, string.Join('\n', (result.Details ?? []).Where(one => one.Errors is { Count: > 0 }).Select(one => $"{one.InstanceLocation}: {string.Join(", ", one.Errors!.Values)}")));
        }
    }

    [Fact]
    public void The_same_input_gives_the_same_bytes()
    {
        work.Write("b/fence.grove", Plantings.InLine);
        work.Write("a/torn.grove", Plantings.Broken);
        foreach (var form in new[] { "text", "lines", "json", "sarif" })
        {
            Assert.Equal(work.Run("check", ".", "--as", form).Bytes, work.Run("check", ".", "--as", form).Bytes);
        }
    }

    [Fact]
    public void The_day_decides_which_trunks_stand()
    {
        work.Write("fence.grove", Plantings.InLine.Replace("height 180 mm", "height 180 mm   removed 2026-03-14", StringComparison.Ordinal));
        Assert.Contains("three-in-line", work.Run("check", "fence.grove", "--on", "2026-03-13", "--as", "lines").Output, StringComparison.Ordinal);
        Assert.DoesNotContain("three-in-line", work.Run("check", "fence.grove", "--on", "2026-03-14", "--as", "lines").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2026-03-13", "fence.grove: 4 trunks as on 2026-03-13")]
    [InlineData("2026-03-14", "fence.grove: 4 trunks, 3 standing as on 2026-03-14")]
    public void How_many_stand_is_told_where_not_all_do(string day, string expected)
    {
        work.Write("fence.grove", Plantings.InLine.Replace("height 180 mm", "height 180 mm   removed 2026-03-14", StringComparison.Ordinal) + "trunk late at -150, 60 mm\n");
        Assert.StartsWith(expected, work.Run("check", "fence.grove", "--on", day).Output, StringComparison.Ordinal);
    }

    private static JsonElement Parse(Answer answer)
    {
        using var document = JsonDocument.Parse(answer.Bytes);
        return document.RootElement.Clone();
    }

    private static JsonSchema Schema(string name) => JsonSchema.FromText(File.ReadAllText(Project.Path($"docs/{name}.schema.json")));
}
