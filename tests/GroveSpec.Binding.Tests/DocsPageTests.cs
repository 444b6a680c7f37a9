using GroveSpec.Checks;
using GroveSpec.Model.Judgement;
using Xunit;

namespace GroveSpec.Binding.Tests;

public sealed class DocsPageTests
{
    public static TheoryData<string> Checks => [.. Catalogue.All.Select(check => check.Name)];

    [Theory]
    [MemberData(nameof(Checks))]
    public void The_page_says_what_the_catalogue_says(string name)
    {
        var check = Catalogue.Find(name)!;
        var page = File.ReadAllText(Path.Combine(Root(), check.Page));
        Assert.StartsWith($"# {name}\n\n{check.Meaning}\n", page, StringComparison.Ordinal);
        Assert.Contains($"\nSeverity: {check.Severity.ToString().ToLowerInvariant()}.{LimitOf(check)}\n", page, StringComparison.Ordinal);
        Assert.Contains(check.Explanation, page, StringComparison.Ordinal);
        Assert.EndsWith($"## Source\n\n{char.ToUpperInvariant(check.Source[0])}{check.Source[1..]}.\n", page, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Checks))]
    public void The_example_on_the_page_raises_the_check(string name)
    {
        const string Fence = "```grove\n";
        var page = File.ReadAllText(Path.Combine(Root(), Catalogue.Find(name)!.Page));
        var start = page.IndexOf(Fence, StringComparison.Ordinal);
        if (start < 0)
        {
            // Some need several files or a very large one, and are described in words.
            Assert.Contains(name, (string[])["too-large", "use-circle", "use-too-large", "use-too-deep", "not-shared", "broken-check"]);
            return;
        }

        start += Fence.Length;
        var assessment = Planted.Of(page[start..page.IndexOf("```", start, StringComparison.Ordinal)]);
        Assert.True(assessment.Found(name).Length > 0, Planted.All(assessment));
    }

    [Fact]
    public void The_table_of_checks_lists_every_check_with_its_severity_and_limit()
    {
        var rows = File.ReadAllLines(Path.Combine(Root(), "docs", "checks", "README.md")).Where(line => line.StartsWith("| [", StringComparison.Ordinal));
        var expected = Catalogue.All.OrderByDescending(check => check.IsComposition).ThenBy(check => check.IsComposition ? "" : check.Name, StringComparer.Ordinal)
            .Select(check => $"| [{check.Name}]({check.Name}.md) | {check.Severity.ToString().ToLowerInvariant()} | {(check.Limit is null ? "" : Amount(check.Limit))} | {check.Meaning} |");
        Assert.Equal(expected, rows);
    }

    private static string LimitOf(CheckDescription check) => check.Limit is not { } limit
        ? ""
        : $" Limit: {Amount(limit)}; a file may set any from {limit.Smallest} to {Amount(limit with { Amount = limit.Largest })} with `tolerance`.";

    private static string Amount(CheckLimit limit) => limit.Amount + limit.Unit switch
    {
        ToleranceUnit.Percent => " %",
        ToleranceUnit.Millimetres => " mm",
        ToleranceUnit.Degrees => " deg",
        ToleranceUnit.Days => " days",
        _ => "",
    };

    private static string Root()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "GroveSpec.sln")))
        {
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("The project's folder is not above the tests.");
        }

        return folder;
    }
}
