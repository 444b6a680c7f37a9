namespace GroveSpec.Syntax.Tests;

/// <summary>One line of every statement, with all its parts.</summary>
internal static class Corpus
{
    public static IReadOnlyList<string> Lines { get; } =
    [
        "planting \"Salt Bank\"",
        "habit group",
        "species larix-kaempferi",
        "container oval 420 x 300 x 60 mm",
        "container slab (-230,-90) (90,-140) (0,120) mm, 22 mm deep",
        "site latitude 54.3 N, zone 8b, last frost 2 May, first frost 9 Nov, means 1 2 3 4 5 6 7 8 9 10 11 12 C, sun from 180 deg",
        "viewed from 180 deg, at 1100 mm, eye 160 mm, near",
        "concept \"low and thick\"",
        "use \"roles.grove\"",
        "trunk A at -68, -31 mm diameter 33 mm height 260 mm role lee raised 2014 lean 7 deg toward 65 deg crown 80 mm species acer fixed planned spring 2028 removed 2030-03-14",
        "trunk B girth 88 mm line (0,0,0) (10,5,100) mm",
        "tape A to B 102.5 mm between bark",
        "role lee { form slender vigour steady aim diameter 38 mm by 2031 keep height under 300 mm rank 1 story \"s\" }",
        "task W1 wire on B C in late autumn 2026 with 2 x aluminium 3.5 mm, coil 50 deg, span 40 to 260 mm, bend 12 deg toward 90 deg over 120 mm",
        "task U1 unwire of W1 6 to 8 weeks after W1 done 2027-01-03 \"note\"",
        "task P1 pinch on role lee every 3 weeks, from harden-off 2027 to midsummer 2027 until 2028-02 low, facing back",
        "task X1 other \"air-layer\" on all after leaf-out 2027 before X2",
        "seen leaf-out 2027-04-22",
        "measured 2026-10-30 { A diameter 33.1 mm height 258 mm }",
        "tolerance even-gaps 8 %",
        "accept three-in-line A B C because \"the wall\"",
        "mute even-count because \"two\"",
        "profile acer { botanical \"Acer\" source \"a flora\" leaves deciduous from memory hardiness 4 to 7 growth fast flush single bend-limit 1.5 % stage leaf-out 10 days before last frost to 12 days after last frost common practice caution \"c\" }",
    ];
}
