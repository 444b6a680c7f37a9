using GroveSpec.Syntax.Text;
using Xunit;

namespace GroveSpec.Syntax.Tests;

public sealed class TextEditsTests
{
    [Fact]
    public void Edits_replace_what_they_cover_and_insert_where_they_cover_nothing() =>
        Assert.Equal("xaBBc", TextEdits.Apply("abc", [Edit(0, 0, "x"), Edit(1, 1, "BB")]));

    [Fact]
    public void No_edit_changes_nothing() => Assert.Equal("a\r\nb", TextEdits.Apply("a\r\nb", []));

    [Fact]
    public void The_whole_text_can_be_replaced_and_written_behind() => Assert.Equal("zy", TextEdits.Apply("abc", [Edit(0, 3, "z"), Edit(3, 0, "y")]));

    private static TextEdit Edit(int start, int length, string text) => new(new("a.grove", new(start, length)), text);
}
