using GroveSpec.Syntax.Parsing;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;
using Xunit;

namespace GroveSpec.Syntax.Tests;

public sealed class StatementsTests
{
    [Theory]
    [InlineData("planting \"Salt \\\"Bank\\\"\\n\\\\\"", "(Planting \"Salt \"Bank\"\n\\\")")]
    [InlineData("habit clump", "(Habit clump)")]
    [InlineData("species acer", "(Species acer)")]
    [InlineData("container oval 420 x 300 x 60 mm", "(Container oval [420 300 60mm] [] -)")]
    [InlineData("container rectangle 420x300x60mm", "(Container rectangle [420 300 60mm] [] -)")]
    [InlineData("container round 32 x 5 cm", "(Container round [32 5cm] [] -)")]
    [InlineData("container slab (-230,-90) (1, 2) (3,4) in, 22 in deep", "(Container slab [] [(PlanPoint -230 -90) (PlanPoint 1 2) (PlanPoint 3 4in)] 22in)")]
    [InlineData("site latitude 54.3 N, zone 8b, last frost 2 May, first frost 9 Nov", "(Site [(Latitude 54.3 N) (Zone 8b) (Frost yes (AnnualDate 2 May)) (Frost no (AnnualDate 9 Nov))])")]
    [InlineData("site latitude -33 deg sun from 0 means 1 -2 3.5 C", "(Site [(Latitude -33deg -) (Sun 0) (Means [1 -2 3.5C])])")]
    [InlineData("site latitude 33 deg S zone 10", "(Site [(Latitude 33deg S) (Zone 10)])")]
    [InlineData("viewed from 180 deg, at 1100 mm, eye 160 mm, near", "(Viewed [(ViewedFrom 180deg) (ViewedAt 1100mm) (Eye 160mm) (Depth near)])")]
    [InlineData("concept \"\"", "(Concept \"\")")]
    [InlineData("use \"a/b.grove\"", "(Use \"a/b.grove\")")]
    [InlineData("trunk B at 22, 18 mm girth 88 mm role main lean 7 deg toward 65 deg", "(Trunk B [(At (PlanPoint 22 18mm)) (Thickness yes 88mm) (Role main) (Lean 7deg 65deg)])")]
    [InlineData("trunk B line (0,0,0) (1,2,3) cm crown 80 fixed species acer raised 2014", "(Trunk B [(Line [(SpacePoint 0 0 0) (SpacePoint 1 2 3cm)]) (Crown 80) (Fixed) (Species acer) (Raised 2014)])")]
    [InlineData("trunk B planned spring 2028 removed 2030-03", "(Trunk B [(Planned (Season - spring 2028)) (Removed (Date 2030-03))])")]
    [InlineData("trunk B height 5 in diameter 2 in", "(Trunk B [(Height 5in) (Thickness no 2in)])")]
    [InlineData("trunk B at -0, -.5", "!(Trunk B [])")]
    [InlineData("trunk B at -0, 12mm", "(Trunk B [(At (PlanPoint -0 12mm))])")]
    [InlineData("trunk B height 12 MM", "(Trunk B [(Height 12MM)])")]
    [InlineData("tape A to B 102.5 mm", "(Tape A B 102.5mm no)")]
    [InlineData("tape A to B 102.5 mm between bark", "(Tape A B 102.5mm yes)")]
    [InlineData("role lee { form stout vigour push aim height 3 in by 2031 keep diameter under 4 rank 2 story \"s\" }", "(Role lee [(Form stout) (Vigour push) (Aim height 3in 2031) (Keep diameter 4) (Rank 2) (Story \"s\")])")]
    [InlineData("role lee {\n form stout # c\n\n vigour push }", "(Role lee [(Form stout) (Vigour push)])")]
    [InlineData("role lee\n{ form stout }", "(Role lee [(Form stout)])")]
    [InlineData("role lee {}", "(Role lee [])")]
    [InlineData("task W1 wire on B C in late autumn 2026 with 2 x copper 3.5, coil 50 deg", "(Task W1 wire - (OnTrunks [B C]) [(During (Season late autumn 2026)) (WithWire 2 copper 3.5) (Coil 50deg)])")]
    [InlineData("task W1 wire span 40 to 260 mm, bend 12 deg toward 90 deg over 120 mm", "(Task W1 wire - - [(Stretch 40 260mm) (Bend 12deg 90deg 120mm)])")]
    [InlineData("task W1 wire with aluminium 3.5 in late autumn 2026", "(Task W1 wire - - [(WithWire - aluminium 3.5) (During (Season late autumn 2026))])")]
    [InlineData("task W1 wire span 1 in to 5 in, coil 50", "(Task W1 wire - - [(Stretch 1in 5in) (Coil 50)])")]
    [InlineData("task U1 unwire of W1 6 to 8 weeks after W1", "(Task U1 unwire - (OfTask W1) [(Offset 6 8weeks yes W1)])")]
    [InlineData("task U1 unwire of W1 2 days before W2 done 2027-01-02 done 2027-01-05", "(Task U1 unwire - (OfTask W1) [(Offset - 2days no W2) (Done (Date 2027-01-02)) (Done (Date 2027-01-05))])")]
    [InlineData("task L1 look-over on role lee every 2 weeks until U1", "(Task L1 look-over - (OnRole lee) [(Every 2weeks) (Until (Task U1))])")]
    [InlineData("task R1 disbud on all after leaf-out 2027 \"keep\"", "(Task R1 disbud - (OnAll) [(After (Stage leaf-out 2027)) (Note \"keep\")])")]
    [InlineData("task S1 sacrifice on B, C from leaf-out to leaf-fall 2029 low, facing back", "(Task S1 sacrifice - (OnTrunks [B C]) [(FromTo (Stage leaf-out -) (Stage leaf-fall 2029)) (Position low) (Facing back -)])")]
    [InlineData("task S1 prune on 2027-05-02 facing 270 deg before 2028", "(Task S1 prune - - [(During (Date 2027-05-02)) (Facing - 270deg) (Before (Date 2028))])")]
    [InlineData("task X other \"air-layer\" on all", "(Task X other \"air-layer\" (OnAll) [])")]
    [InlineData("task X repot \"gently\"", "(Task X repot - - [(Note \"gently\")])")]
    [InlineData("seen leaf-out 2027-04-22", "(Seen leaf-out (Date 2027-04-22))")]
    [InlineData("measured 2026-10-30 {\n A diameter 33\n B girth 8 cm, height 2 ft crown 4\n}", "(Measured (Date 2026-10-30) [(Reading A [(Thickness no 33)]) (Reading B [(Thickness yes 8cm) (Height 2ft) (Crown 4)])])")]
    [InlineData("measured 2026-10-30 { A diameter 33 mm B girth 8 cm }", "(Measured (Date 2026-10-30) [(Reading A [(Thickness no 33mm)]) (Reading B [(Thickness yes 8cm)])])")]
    [InlineData("tolerance even-gaps 8 %", "(Tolerance even-gaps 8%)")]
    [InlineData("tolerance three-in-line 0.4", "(Tolerance three-in-line 0.4)")]
    [InlineData("accept three-in-line A, B C because \"wall\"", "(Accept three-in-line [A B C] \"wall\")")]
    [InlineData("accept even-count because \"two\"", "(Accept even-count [] \"two\")")]
    [InlineData("mute even-count because \"\"", "(Mute even-count \"\")")]
    [InlineData("profile p { hardiness 2a to 7 source \"s\"\n leaves deciduous-conifer, from memory\n bend-limit 1.5 % }", "(Profile p [(ProfileEntry hardiness [2a 7] \"s\") (ProfileEntry leaves [deciduous-conifer] \"from memory\") (ProfileEntry bend-limit [1.5%] -)])")]
    [InlineData("profile p { stage leaf-out 10 days before last frost to 12 days after solstice common practice }", "(Profile p [(ProfileEntry stage [leaf-out 10days before last frost 12days after solstice] \"common practice\")])")]
    [InlineData("profile p { botanical \"b\" common \"c\" common practice growth fast flush single caution \"x\" }", "(Profile p [(ProfileEntry botanical [\"b\"] -) (ProfileEntry common [\"c\"] \"common practice\") (ProfileEntry growth [fast] -) (ProfileEntry flush [single] -) (ProfileEntry caution [\"x\"] -)])")]
    public void A_statement_is_read_with_all_that_it_says(string source, string expected) => Assert.Equal(expected, Shown.Statements(source));

    [Fact]
    public void Every_line_of_the_corpus_is_read_without_a_problem()
    {
        foreach (var line in Corpus.Lines)
        {
            Assert.Empty(GroveParser.Parse(SourceText.FromText(line)).Problems);
        }
    }

    [Theory]
    [InlineData("é")]
    [InlineData("松")]
    [InlineData("🌲")]
    [InlineData("👩‍🌾")]
    [InlineData("o'neil_2-b")]
    [InlineData("near")]
    [InlineData("first")]
    [InlineData("x")]
    public void A_name_may_be_any_word_that_does_not_begin_with_a_digit(string name)
    {
        var tree = GroveParser.Parse(SourceText.FromText($"trunk {name} at 1, 2 mm"));
        Assert.Empty(tree.Problems);
        Assert.Equal($"(Trunk {name} [(At (PlanPoint 1 2mm))])", Shown.Statements(tree));
        Assert.Equal(TokenKind.Word, tree.Tokens[2].Kind);
    }

    [Fact]
    public void A_span_covers_a_part_without_the_blanks_and_comments_round_it()
    {
        var tree = GroveParser.Parse(SourceText.FromText("  trunk A  height 26 mm   fixed  # note\n"));
        var trunk = Assert.IsType<Statement.Trunk>(tree.Statements[0]);
        Assert.Equal("trunk A  height 26 mm   fixed", tree.Text.Slice(trunk.Span));
        Assert.Equal(["height 26 mm", "fixed"], trunk.Clauses.Select(clause => tree.Text.Slice(clause.Span)));
        Assert.Equal("A", tree.Text.Slice(trunk.Name!.Span));
    }
}
