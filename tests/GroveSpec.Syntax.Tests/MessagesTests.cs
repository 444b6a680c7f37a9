using GroveSpec.Syntax.Parsing;
using GroveSpec.Syntax.Text;
using Xunit;

namespace GroveSpec.Syntax.Tests;

public sealed class MessagesTests
{
    [Theory]
    [InlineData("trunk D 10, 20 mm", "10", "\"10\" is not understood here. A place is written \"at 10, 20 mm\". A trunk takes at, diameter, girth, height, lean, line, crown, role, species, raised, planned, removed or fixed.", null)]
    [InlineData("trunk big tree at 10, 20 mm", "tree", "\"tree\" is not understood here. A name is one word, such as big-tree. A trunk takes at, diameter, girth, height, lean, line, crown, role, species, raised, planned, removed or fixed.", null)]
    [InlineData("task W1 wire A in autumn 2026", "A", "\"A\" is not understood here. Trunks are written \"on A\". A task takes on, of, in, from, after, before, every, until, with, coil, span, bend, low, middle, high, facing, done or a note in quote marks.", null)]
    [InlineData("species japanese larch", "larch", "\"larch\" is not understood here. The name of a species is one word, such as japanese-larch.", null)]
    [InlineData("task wire on A in late autumn 2026", "wire", "A task has a name of its own before its kind, such as task W1 wire.", null)]
    [InlineData("viewed from front", "front", "A bearing is written in degrees: the front is 180 deg.", "180 deg")]
    [InlineData("planting", "", "After \"planting\" comes a text in quote marks such as \"Salt Bank\"; the line ends before it.", null)]
    [InlineData("planting Salt", "Salt", "After \"planting\" comes a text in quote marks such as \"Salt Bank\", not \"Salt\".", null)]
    [InlineData("habit clmp", "clmp", "\"clmp\" is not a habit; was clump meant?", "clump")]
    [InlineData("habit role", "role", "After \"habit\" comes a habit: clump, group or raft, not \"role\".", null)]
    [InlineData("trunk at at 1, 2 mm", "at", "\"at\" is a word of the language and cannot name a trunk; write another name such as T1.", null)]
    [InlineData("trunk at 1, 2 mm", "at", "\"at\" is a word of the language and cannot name a trunk; write another name such as T1.", null)]
    [InlineData("trunk trunk at 1, 2 mm", "trunk", "\"trunk\" is a word of the language and cannot name a trunk; write another name such as T1.", null)]
    [InlineData("trunk at", "at", "\"at\" is a word of the language and cannot name a trunk; write another name such as T1.", null)]
    [InlineData("trunk 1A at 1, 2 mm height 3 mm", "1A", "The name of a trunk does not begin with a digit or a sign; write another name such as T1 for \"1A\".", null)]
    [InlineData("trunk A at 1 2 mm height 3 mm", "2", "After \"1\" comes a comma, not \"2\".", null)]
    [InlineData("trunk A diameter 1,5 mm height 3 mm", "1,5", "Decimals are written with a point; write 1.5 for \"1,5\".", "1.5")]
    [InlineData("trunk A diameter 1e999 mm height 3 mm", "1e999", "\"1e999\" is not a plain decimal number; write it with the digits 0 to 9 and at most one point, such as 12.5.", null)]
    [InlineData("trunk A diameter 0x10 mm height 3 mm", "0x10", "\"0x10\" is not a plain decimal number; write it with the digits 0 to 9 and at most one point, such as 12.5.", null)]
    [InlineData("trunk A diameter 1.5.2 mm", "1.5.2", "\"1.5.2\" is not a plain decimal number; write it with the digits 0 to 9 and at most one point, such as 12.5.", null)]
    [InlineData("trunk A diameter 1/2 in height 3 mm", "1/2", "\"1/2\" is a fraction; write it as a decimal number, 0.5.", "0.5")]
    [InlineData("trunk A diameter 1/0 mm", "1/0", "\"1/0\" is a fraction; write it as a decimal number such as 0.5.", null)]
    [InlineData("trunk A diameter NaN mm height 4", "NaN", "\"NaN\" is not a number; write a distance such as 12 mm.", null)]
    [InlineData("trunk A diameter ١٢ mm height 4", "١٢", "\"١٢\" is not written in the digits 0 to 9; write 12.", "12")]
    [InlineData("trunk A hieght 12 mm diametr 3 mm", "hieght", "\"hieght\" is not a word of the language here; was height meant?", "height")]
    [InlineData("trunk A hieght 12 mm diametr 3 mm", "diametr", "\"diametr\" is not a word of the language here; was diameter meant?", "diameter")]
    [InlineData("trunk A height 12 diametr 3 lean 7 deg to 65 deg", "diametr", "\"diametr\" is not a word of the language here; was diameter meant?", "diameter")]
    [InlineData("trunk A height 12 diametr 3 lean 7 deg to 65 deg", "to", "After \"deg\" comes the word \"toward\", not \"to\".", null)]
    [InlineData("trunk A height tall diameter 3 mm", "tall", "After \"height\" comes a distance such as 12 mm, not \"tall\".", null)]
    [InlineData("trunk A height", "", "After \"height\" comes a distance such as 12 mm; the line ends before it.", null)]
    [InlineData("trunk A lean 7 deg toward", "", "After \"toward\" comes a bearing such as 65 deg; the line ends before it.", null)]
    [InlineData("trunk A foo 3 mm height 4 mm", "foo", "\"foo\" is not understood here. A trunk takes at, diameter, girth, height, lean, line, crown, role, species, raised, planned, removed or fixed.", null)]
    [InlineData("trunk A at 1, 2 trunk B at 3, 4", "trunk", "\"trunk\" begins a new statement; write it on a line of its own.", null)]
    [InlineData("trnk A at 1, 2", "trnk", "\"trnk\" is not a word of the language here; was trunk meant?", "trunk")]
    [InlineData("foo bar", "foo", "\"foo\" begins no statement. A line begins with planting, habit, species, container, site, viewed, concept, use, trunk, tape, role, task, seen, measured, tolerance, accept, mute or profile.", null)]
    [InlineData("  height 33 mm", "height", "\"height\" begins no statement; write it on the line of the statement that it belongs to.", null)]
    [InlineData("tape A B 102", "B", "After \"A\" comes the word \"to\", not \"B\".", null)]
    [InlineData("tape A to B", "", "After \"B\" comes a distance such as 12 mm; the line ends before it.", null)]
    [InlineData("tape A to B 10 mm betwen bark", "betwen", "\"betwen\" is not a word of the language here; was between meant?", "between")]
    [InlineData("role lee", "", "After \"lee\" comes an opening brace {; the line ends before it.", null)]
    [InlineData("role lee { form stuot vigor push }", "stuot", "\"stuot\" is not a form; was stout meant?", "stout")]
    [InlineData("role lee { form stuot vigor push }", "vigor", "\"vigor\" is not a word of the language here; was vigour meant?", "vigour")]
    [InlineData("role lee { form stout", "{", "This block has no closing brace; write } where it ends.", null)]
    [InlineData("task W1 wyre on B C in late autmn 2026", "wyre", "\"wyre\" is not a kind of work; was wire meant?", "wire")]
    [InlineData("task W1 wyre on B C in late autmn 2026", "autmn", "\"autmn\" is not a season; was autumn meant?", "autumn")]
    [InlineData("task W1 wire on", "", "After \"on\" comes trunks' names such as B C, the word all, a role, or a day such as 2027-04-22; the line ends before it.", null)]
    [InlineData("task W1 wire in autumn", "", "After \"autumn\" comes a year such as 2027.", null)]
    [InlineData("task W1 wire in May 2027", "May 2027", "A month is written in digits; write 2027-05.", "2027-05")]
    [InlineData("task W1 wire in fall 2027", "fall", "The season is called autumn here; write autumn.", "autumn")]
    [InlineData("task W1 wire after leafout 2027", "leafout", "\"leafout\" is not a season or a stage of the year; was leaf-out meant?", "leaf-out")]
    [InlineData("task W1 other on A", "", "After \"other\" comes what is done, in quote marks, such as other \"air-layer\".", null)]
    [InlineData("task W1 wire on A at 2027", "at", "\"at\" is not understood here. A task takes on, of, in, from, after, before, every, until, with, coil, span, bend, low, middle, high, facing, done or a note in quote marks.", null)]
    [InlineData("measured 2026-10-30 {", "{", "This block has no closing brace; write } where it ends.", null)]
    [InlineData("  A diameter 3", "A", "\"A\" begins no statement. A line begins with planting, habit, species, container, site, viewed, concept, use, trunk, tape, role, task, seen, measured, tolerance, accept, mute or profile.", null)]
    [InlineData("  B foo 4", "B", "\"B\" begins no statement. A line begins with planting, habit, species, container, site, viewed, concept, use, trunk, tape, role, task, seen, measured, tolerance, accept, mute or profile.", null)]
    [InlineData("  C height 5 mm", "C", "\"C\" begins no statement. A line begins with planting, habit, species, container, site, viewed, concept, use, trunk, tape, role, task, seen, measured, tolerance, accept, mute or profile.", null)]
    [InlineData("}", "}", "This closing brace closes nothing; take it out.", null)]
    [InlineData("measured 2026-10 { A height 3 mm }", "2026-10", "A day is needed here, such as 2027-04-22, not \"2026-10\".", null)]
    [InlineData("site latitude 54.3 N zone 8 b", "8 b", "A hardiness zone is written as one word such as 8b, not \"8 b\".", null)]
    [InlineData("site latitude 54.3 E", "E", "\"E\" is not a hemisphere; write N or S.", null)]
    [InlineData("site last frost May 2", "May", "After \"frost\" comes a day of the year such as 2 May, not \"May\".", null)]
    [InlineData("tolerance even-gaps", "", "After \"even-gaps\" comes a limit such as 8 %; the line ends before it.", null)]
    [InlineData("accept three-in-line A B C", "", "After \"C\" comes the word \"because\"; the line ends before it.", null)]
    [InlineData("accept three-in-line A B becuase \"x\"", "becuase", "\"becuase\" is not a word of the language here; was because meant?", "because")]
    [InlineData("mute even-gaps \"x\"", "\"x\"", "After \"even-gaps\" comes the word \"because\", not \"\"x\"\".", null)]
    [InlineData("seen leaf-out 2027", "2027", "A day is needed here, such as 2027-04-22, not \"2027\".", null)]
    [InlineData("concept \"not closed # foo", "\"not closed # foo", "This text has no closing quote mark on its line; write \" where it ends.", null)]
    [InlineData("concept “curly”", "“curly”", "A text stands between straight quote marks; write \" at both its ends.", "\"curly\"")]
    [InlineData("container oval 420 x 300", "container oval 420 x 300", "An oval has three measures, width x breadth x depth, such as 420 x 300 x 60 mm.", null)]
    [InlineData("container round 420 × 300", "×", "Between measures stands the letter x; write x for \"×\".", "x")]
    [InlineData("container slab (1,2) (3,4)", "", "After \")\" comes a distance such as 12 mm; the line ends before it.", null)]
    [InlineData("use 'x'", "'x'", "After \"use\" comes a text in quote marks such as \"Salt Bank\", not \"'x'\".", null)]
    [InlineData("trunk A at +1, .5 mm", "+1", "A number needs no plus sign; write 1 for \"+1\".", "1")]
    [InlineData("trunk A at +1, .5 mm", ".5", "A number begins with a digit; write 0.5 for \".5\".", "0.5")]
    [InlineData("trunk B removed 2027/4/2", "2027/4/2", "A day is written year-month-day; write 2027-04-02 for \"2027/4/2\".", "2027-04-02")]
    [InlineData("trunk C removed 22.04.2027", "22.04.2027", "\"22.04.2027\" is no number and no day; a day is written year-month-day, such as 2027-04-22.", null)]
    [InlineData("trunk D raised 2014-05", "2014-05", "After \"raised\" comes a year such as 2031, not \"2014-05\".", null)]
    [InlineData("{", "{", "A block belongs to a role, to readings or to a profile; write their word before the brace.", null)]
    [InlineData("trunk E @ 3, 4", "@", "\"@\" has no meaning here; take it out, or write it within quote marks.", null)]
    [InlineData("habit group 5", "5", "Nothing more belongs to this statement; take out \"5\" or write it on a line of its own.", null)]
    [InlineData("Habit group", "Habit", "The words of the language are written small; write habit for \"Habit\".", "habit")]
    [InlineData("profile x { growth quick }", "quick", "\"quick\" is not a pace of growth; write slow, medium or fast.", null)]
    [InlineData("profile x { stage leaf-out 10 days before last frst to 3 days after last frost from memory }", "frst", "\"frst\" is not a word of the language here; was frost meant?", "frost")]
    [InlineData("role main { rank 1 { }", "{", "\"{\" is not understood here. A role takes form, vigour, aim, keep, rank or story.", null)]
    [InlineData("trunk A diameter −5 mm", "−5", "\"−5\" is not written in the digits 0 to 9; write -5.", "-5")]
    [InlineData("trunk A\u202EB at 1, 2 mm", "\u202E", "A mark that turns the direction of writing (U+202E) stands here; what is read may not be what is seen. Take it out.", null)]
    [InlineData("trunk A\u200BB at 1, 2 mm", "\u200B", "A character that cannot be seen (U+200B) stands here; take it out.", null)]
    [InlineData("concept \"turned \u202E round\"", "\u202E", "A mark that turns the direction of writing (U+202E) stands here; what is read may not be what is seen. Take it out.", null)]
    [InlineData("container round 420 × 60 mm", "×", "Between measures stands the letter x; write x for \"×\".", "x")]
    [InlineData("seen leafout 2027-04-22", "leafout", "\"leafout\" is not a stage of the year; was leaf-out meant?", "leaf-out")]
    [InlineData("habit heap", "heap", "\"heap\" is not a habit; write clump, group or raft.", null)]
    [InlineData("task W1 wire on A with alluminium 3 mm", "alluminium", "\"alluminium\" is not a metal for wire; was aluminium meant?", "aluminium")]
    [InlineData("task W1 prune on A facing bak", "bak", "\"bak\" is not a side; was back meant?", "back")]
    [InlineData("lean 3", "lean", "\"lean\" begins no statement; write it on the line of the statement that it belongs to.", null)]
    [InlineData("site zone", "", "After \"zone\" comes a hardiness zone such as 8b; the line ends before it.", null)]
    [InlineData("site last frost 2 Mai", "Mai", "\"Mai\" is not a month; write January, February, March, April, May, June, July, August, September, October, November, December, Jan, Feb, Mar, Apr, Jun, Jul, Aug, Sep, Oct, Nov or Dec.", null)]
    [InlineData("trunk A lean 7 deg 65 deg", "65", "After \"deg\" comes the word \"toward\", not \"65\".", null)]
    [InlineData("tape A to B 9 miles extra", "extra", "Nothing more belongs to this statement; take out \"extra\" or write it on a line of its own.", null)]
    public void A_mistake_is_told_in_the_growers_words_with_what_would_be_right(string source, string place, string message, string? replacement)
    {
        var tree = GroveParser.Parse(SourceText.FromText(source));
        Assert.Contains(tree.Problems, problem =>
            problem.Message == message && tree.Text.Slice(problem.Span) == place
            && (replacement is null || problem.Replacement == replacement));
    }

    [Fact]
    public void No_message_names_a_token_or_a_rule()
    {
        var names = string.Join('\n', File.ReadAllLines(Path.Combine(Repository.Root, "grammar", "Grove.g4")).Where(static line => line.Contains(':', StringComparison.Ordinal)).Select(static line => line.Split(':')[0].Trim()));
        var inner = names.Split('\n').Where(static name => name.Length > 1 && name.Any(char.IsUpper) && name.All(char.IsLetter)).ToHashSet(StringComparer.Ordinal);
        Assert.Contains("trunkName", inner);
        foreach (var source in EveryMistake())
        {
            foreach (var problem in GroveParser.Parse(SourceText.FromText(source)).Problems)
            {
                Assert.DoesNotContain(problem.Message.Split(' ', ',', ';', '.', '"', ':'), inner.Contains);
                Assert.DoesNotContain("EOF", problem.Message, StringComparison.Ordinal);
            }
        }
    }

    /// <summary>Every statement of a small corpus cut off behind each of its words.</summary>
    private static IEnumerable<string> EveryMistake()
    {
        foreach (var line in Corpus.Lines)
        {
            var words = line.Split(' ');
            for (var count = 1; count < words.Length; count++)
            {
                yield return string.Join(' ', words.Take(count));
                yield return string.Join(' ', words.Take(count)) + " ?";
                yield return string.Join(' ', words.Take(count - 1).Concat(words.Skip(count)));
            }
        }
    }
}
