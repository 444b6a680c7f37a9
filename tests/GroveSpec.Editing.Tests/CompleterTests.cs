using GroveSpec.Binding;
using GroveSpec.Binding.Use;
using GroveSpec.Editing.Completing;
using GroveSpec.Syntax.Text;
using Xunit;

namespace GroveSpec.Editing.Tests;

public sealed class CompleterTests
{
    private const string Head = "planting \"P\"\ntrunk A at 0, 0 mm diameter 20 mm\n";

    [Theory]
    [InlineData("trunk B at ")]
    [InlineData("trunk B at 0, 0 mm diameter ")]
    [InlineData("trunk B height 3 mm lean 5 deg toward ")]
    [InlineData("trunk B planned spring ")]
    [InlineData("role main { rank ")]
    [InlineData("role main { aim diameter ")]
    [InlineData("role main { keep diameter under ")]
    [InlineData("measured 2026-10-30 {\n  A height ")]
    [InlineData("task W1 wire on A with aluminium 3 mm, coil ")]
    [InlineData("task W1 wire on A in late autumn ")]
    [InlineData("task W1 look-over on A every ")]
    public void Where_only_a_number_can_stand_no_word_is_offered(string line) => Assert.Empty(Labels(line));

    [Theory]
    [InlineData("trunk B at 0, 0 ", "mm")]
    [InlineData("trunk B at 0, 0 mm ", "diameter")]
    [InlineData("trunk B diameter 12 mm ", "at")]
    [InlineData("role main { keep diameter ", "under")]
    [InlineData("task W1 wire on A in late autumn 2026 ", "with")]
    [InlineData("task W1 look-over on A every 2 ", "weeks")]
    public void Behind_the_number_its_unit_or_the_next_part_is_offered(string line, string expected) => Assert.Contains(expected, Labels(line));

    private static IEnumerable<string> Labels(string line)
    {
        var text = Head + line;
        return Completer.At(Assessment.Of("/a.grove", SourceText.FromText(text), new NoFiles()), text.Length).Completions.Select(completion => completion.Label);
    }
}
