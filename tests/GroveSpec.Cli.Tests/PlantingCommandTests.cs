using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;

namespace GroveSpec.Cli.Tests;

/// <summary>What holds of every command that finds something in plantings: its JSON is as its schema says, whatever it reads, and the same each time.</summary>
public abstract class PlantingCommandTests : IDisposable
{
    private readonly string command;
    private readonly string own;

    private protected PlantingCommandTests(string command, string own)
    {
        (this.command, this.own) = (command, own);
        Work.Write("a.grove", own);
    }

    private protected Workplace Work { get; } = new();

    /// <summary>Ways to ask it something, each with the options that it takes; the first is asked of the samples.</summary>
    private protected virtual string[][] Questions => [[]];

    public void Dispose()
    {
        Dispose(true);
        GC.SuppressFinalize(this);
    }

    [Theory]
    [InlineData(null)]
    [InlineData(Plantings.Quiet)]
    [InlineData(Plantings.Broken)]
    [InlineData("")]
    [InlineData("trunk \"\u0000\u202e<script>\" at 1, 2 mm\ntrunk \u001b[31m at 3, 4 mm diameter 9 mm\ntrunk 😀 at 5, 6 mm diameter 9 mm\n")]
    [InlineData("trunk \"\u0000\u202e<script>\" at 1, 2 mm\ntrunk \u001b[31m at 3, 4 mm diameter 9 mm\ntrunk 😀 diameter 9 mm\n")]
    public void Json_is_as_its_schema_says(string? text) => ExpectJsonAsItsSchemaSays(text ?? own);

    [Fact]
    public void Json_of_every_sample_is_as_its_schema_says_and_the_same_each_time()
    {
        string[] words = [command, Project.Path("samples"), .. Questions[0], "--json"];
        var answer = Work.Run(words);
        Assert.True(IsAsItsSchemaSays(answer));
        var plantings = JsonNode.Parse(answer.Output)!["plantings"]!.AsArray();
        Assert.True(plantings.Count >= 8, $"{plantings.Count} plantings");
        ExpectOfSamples(plantings);
        Assert.Equal(answer.Output, Work.Run(words).Output);
    }

    protected virtual void Dispose(bool isDisposing)
    {
        if (isDisposing)
        {
            Work.Dispose();
        }
    }

    private protected void ExpectJsonAsItsSchemaSays(string text)
    {
        Work.Write("one.grove", text);
        foreach (var question in Questions)
        {
            var answer = Work.Run([command, "one.grove", "gone.grove", .. question, "--json"]);
            Assert.Equal(ExitStatus.Files, answer.Status);
            Assert.True(IsAsItsSchemaSays(answer), answer.Output);
            Assert.Equal("gone.grove", (string)JsonNode.Parse(answer.Output)!["unreadable"]![0]!["file"]!);
        }
    }

    /// <summary>What is to be found in the samples, so that not all of them tell nothing.</summary>
    private protected virtual void ExpectOfSamples(JsonArray plantings)
    {
    }

    /// <summary>A report as one line, to look for sentences in.</summary>
    private protected static string Flowing(string report) => string.Join(' ', report.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private protected JsonNode Json(string file, params string[] options) => JsonNode.Parse(Work.Run([command, file, .. options, "--json"]).Output)!["plantings"]![0]!;

    private bool IsAsItsSchemaSays(Answer answer)
    {
        using var document = JsonDocument.Parse(answer.Bytes);
        return JsonSchema.FromText(File.ReadAllText(Project.Path($"docs/{command}.schema.json"))).Evaluate(document.RootElement).IsValid;
    }
}
