using GroveSpec.Conformance.Tests.Drawn;
using GroveSpec.Conformance.Tests.Outside;
using GroveSpec.Publishing.Book;
using Xunit;

namespace GroveSpec.Conformance.Tests;

/// <summary>
/// The book is one page that asks for nothing. Its own security policy allows nothing from outside, and Chromium tells on its console
/// of anything that breaks the policy; so a silent console says that nothing was asked for.
/// </summary>
public sealed class BookTests
{
    [Fact]
    public void No_book_of_a_sample_asks_for_anything_or_breaks_its_policy()
    {
        OutsideProgram.Chromium.Require();
        using var scratch = new ScratchFolder();
        foreach (var sample in SampleFile.All)
        {
            var page = BookOf(sample);
            Assert.Contains("Content-Security-Policy", page, StringComparison.Ordinal);
            Assert.Contains("default-src 'none'", page, StringComparison.Ordinal);
            var visit = Browser.Visit(scratch.Write(sample.Name + ".html", page));
            Assert.Empty(visit.Console);
            Assert.Contains("</html>", visit.Page, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_page_that_asks_for_something_is_noticed()
    {
        OutsideProgram.Chromium.Require();
        using var scratch = new ScratchFolder();
        var page = BookOf(SampleFile.All[0]).Replace("</body>", "<img src=\"https://example.org/leaf.png\"/><script>1</script></body>", StringComparison.Ordinal);
        Assert.Equal(2, Browser.Visit(scratch.Write("page.html", page)).Console.Count);
    }

    private static string BookOf(SampleFile sample) => BookWriter.Write([Plates.AssessmentOfFile(sample.Path)], BookOptions.Default);
}
