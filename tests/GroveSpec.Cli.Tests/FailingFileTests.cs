namespace GroveSpec.Cli.Tests;

/// <summary>A finding that fails the run fails it whichever command comes upon it.</summary>
public sealed class FailingFileTests : IDisposable
{
    /// <summary>A stands outside the container, an error.</summary>
    private const string Outside = """
        planting  "Out"
        habit     group
        container oval 600 x 400 x 40 mm
        viewed    from 180 deg, at 1200 mm, eye 160 mm
        trunk A   at 360, 20 mm    diameter 30 mm   height 300 mm
        trunk B   at -40, 25 mm    diameter 20 mm   height 200 mm
        trunk C   at -140, -60 mm  diameter 15 mm   height 150 mm

        """;

    private readonly Workplace work = new();

    public void Dispose() => work.Dispose();

    public static TheoryData<string> Commands() => new("check", "stand", "survey", "thin --keep=2", "fronts", "nudge", "ground --diameter=9mm", "draw --format=svg");

    [Theory]
    [MemberData(nameof(Commands))]
    public void An_error_of_the_file_fails_every_command(string command)
    {
        work.Write("out.grove", Outside);
        Assert.Equal(ExitStatus.Findings, work.Run([.. command.Split(' '), "out.grove"]).Status);
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void A_warning_fails_a_strict_run_of_every_command_and_no_other(string command)
    {
        work.Write("line.grove", Plantings.InLine);
        Assert.Equal(ExitStatus.Good, work.Run([.. command.Split(' '), "line.grove"]).Status);
        Assert.Equal(ExitStatus.Findings, work.Run([.. command.Split(' '), "line.grove", "--strict"]).Status);
    }
}
