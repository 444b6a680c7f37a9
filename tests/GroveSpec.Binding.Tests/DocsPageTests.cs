using GroveSpec.Checks;
using Xunit;

namespace GroveSpec.Binding.Tests;

public sealed class DocsPageTests
{
    public static TheoryData<string> FileChecks => [.. Catalogue.All.Where(check => !check.IsComposition).Select(check => check.Name)];

    [Theory]
    [MemberData(nameof(FileChecks))]
    public void The_page_says_what_the_catalogue_says(string name)
    {
        var check = Catalogue.Find(name)!;
        var page = File.ReadAllText(Path.Combine(Root(), check.Page));
        Assert.StartsWith($"# {name}\n\n{check.Meaning}\n", page, StringComparison.Ordinal);
        Assert.Contains(check.Explanation, page, StringComparison.Ordinal);
        Assert.EndsWith($"## Source\n\n{char.ToUpperInvariant(check.Source[0])}{check.Source[1..]}.\n", page, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(FileChecks))]
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
