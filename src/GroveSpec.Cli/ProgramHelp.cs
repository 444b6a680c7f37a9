namespace GroveSpec.Cli;

/// <summary>What <c>grovespec --help</c> tells.</summary>
internal static class ProgramHelp
{
    /// <summary>The text.</summary>
    public const string Text = """
        grovespec: writes down, checks and draws clump and group plantings

          grovespec start first.grove                    write a first planting to change
          grovespec check first.grove                    what is wrong with its composition
          grovespec draw  first.grove --output first.svg  the plan, seen from above
          grovespec book  first.grove --output first.html everything on one page to print

        A planting is a text file, one fact a line:

          planting  "Three by the wall"
          container oval 320 x 220 x 40 mm
          viewed    from 180 deg, at 900 mm
          trunk A   at -38, 22 mm   diameter 30 mm   height 420 mm
          trunk B   at 19, -17 mm   diameter 21 mm   height 350 mm
          trunk C   at 92, 34 mm    diameter 14 mm   height 220 mm

        x runs to the right and y to the back, seen from where the viewer stands.

        Commands
          check     tells what is wrong with plantings
          draw      draws them: plan, front, timeline
          calendar  tells what is due, and writes it for a telephone
          wiring    tells what wire to cut, how to wind it, and when to look
          stand     tells how natural spacing and sizes are
          thin      tells which trunks of a stool to keep
          nudge     finds the smallest moves that clear the findings
          ground    finds free ground for one more trunk
          fronts    finds the sides from which they are best seen
          survey    finds where trunks stand from tape readings
          book      makes one page of everything, ready to print
          tidy      prints them in the usual layout
          start     writes a first planting
          language-server   serves an editor

        The first twelve take files, or folders searched for .grove; - reads standard
        input.
        grovespec COMMAND --help tells more; grovespec --version names the version.

        Ends with 0 when nothing fails the run, 1 when findings do, 2 when the
        command was not understood or names a trunk that no planting has, 3 when a
        file cannot be read or written.

        """;
}
