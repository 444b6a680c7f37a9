namespace GroveSpec.Fuzz.Tests;

/// <summary>A file that has every statement and clause of the language.</summary>
internal static class EveryStatement
{
    public const string Text = """
        # Every statement and clause once, so that mutations reach them all
        planting  "Gravel Bar"
        habit     clump
        species   betula-pendula
        container oval 420 x 300 x 60 mm   # a tray
        container slab (-230,-90) (-120,-150) (90,-140), 22 mm deep
        site      latitude 54.3 N, zone 8b, last frost 2 May, first frost 9 November, means -1 0 3.5 7 11 15 17 16 13 9 4 1 C, sun from 180 deg
        viewed    from 180 deg, at 1100 mm, eye 160 mm, far
        concept   "A \"bank\" of gravel,\nand what grows on it."
        use       "roles.grove"

        trunk A   at -68, -31 mm   diameter 33 mm   height 260 mm   role low-side   raised 2014
        trunk B   at 2.2, 1.8 cm   girth 88 mm      height 16 in    role main       lean 7 deg toward 65 deg   species alnus-glutinosa
        trunk é-1 at 71, 52        diameter 19      height 335      crown 80 mm     planned late winter 2028
        trunk 松'  line (0,0,0) (10,5,100) (30,10,220) mm   diameter 12 mm   fixed   removed 2026-03-14

        tape      A to B 102.5 mm
        tape      A to é-1 78 mm between bark

        role low-side { form stout  vigour restrain, aim height 300 mm by 2031  keep diameter under 40 mm  rank 2  story "kept low" }
        role main
        {
          # the tallest
          vigour push   # lets it run
          form slender

          aim diameter 40 mm by 2030
        }

        task W1   wire on A B, in late autumn 2026, with 2 x aluminium 3.5 mm, coil 50 deg, span 40 to 260 mm, bend 12 deg toward 90 deg over 120 mm
        task L1   look-over of W1 every 2 weeks until U1
        task U1   unwire of W1 6 to 8 weeks after W1 done 2027-01-03 done 2027-01-09
        task P1   pinch on role main every 3 weeks, from harden-off 2027 to midsummer 2027
        task S1   sacrifice on B from leaf-out 2027 low, facing back "let it run"
        task S2   remove-sacrifice of S1 before 2030-02 high facing 270 deg
        task X1   other "air-layer" on all on 2027-05-02 "above the flare"
        task R1   repot on all 2 months before X1 after bud-break 2028 middle

        seen      leaf-out 2027-04-22
        measured 2026-10-30 {
          A  diameter 33.1 mm, height 258 mm   # wet
          B  girth 89 mm   height 408 mm   crown 70 mm
        }
        measured 2027-10-30 { A height 261 mm }

        tolerance even-gaps 8 %
        accept    three-in-line A B é-1 because "the bar runs along them"
        mute      even-count because "two is what there is"

        profile betula-pendula {
          botanical "Betula pendula" common practice
          common "silver birch", from memory
          leaves deciduous source "a flora"
          hardiness 2a to 7
          growth fast from memory
          flush partial from memory
          bend-limit 1.5 % from memory
          stage leaf-out 10 days before last frost to 12 days after last frost from memory
          stage midsummer 0 days before solstice to 1 day after solstice common practice
          caution "bleeds when cut in spring" common practice
        }
        """;
}
