using System.Diagnostics;
using System.Globalization;
using System.Text;
using GroveSpec.Cli.Files;

namespace GroveSpec.Cli.Tests;

/// <summary>The memory for a large file is taken beforehand; what is drawn does not depend on whether it could be.</summary>
public sealed class RoomInMemoryTests : IDisposable
{
    private readonly Workplace work = new();

    public void Dispose() => work.Dispose();

    [Theory]
    [InlineData(30)]
    [InlineData(600)]
    public void A_file_and_the_same_text_from_standard_input_for_which_no_room_is_taken_give_the_same_drawing(int trunks)
    {
        work.Write("wood.grove", Wood(trunks));
        var drawn = work.Run("draw", "wood.grove");
        Assert.Equal(ExitStatus.Good, drawn.Status);
        Assert.Equal(work.RunWithInput(Wood(trunks), "draw", "-").Bytes, drawn.Bytes);
    }

    [Fact]
    public void Asking_again_and_for_more_than_there_is_does_no_harm()
    {
        RoomInMemory.Take(long.MaxValue);
        RoomInMemory.Take(1024 * 1024);
        work.Write("quiet.grove", Plantings.Quiet);
        Assert.Equal(ExitStatus.Good, work.Run("draw", "quiet.grove").Status);
    }

    // How much memory the native program's collector may have at most, in bytes as its settings take them: hexadecimal.
    [Theory]
    [InlineData("1000000")]
    [InlineData("2000000")]
    [InlineData("4000000")]
    [InlineData("8000000")]
    [InlineData("A000000")]
    [InlineData("C000000")]
    public void Where_the_room_cannot_be_had_the_native_program_draws_the_same(string most)
    {
        var program = Environment.GetEnvironmentVariable("GROVESPEC_PROGRAM");
        Assert.SkipWhen(string.IsNullOrEmpty(program), "GROVESPEC_PROGRAM names no native program; bash tests/run.sh makes one.");
        work.Write("wood.grove", Wood(1_500));
        Assert.Equal(work.Run("draw", "wood.grove").Output, Native(program!, most));
    }

    private string Native(string program, string most)
    {
        var start = new ProcessStartInfo(program, ["draw", work["wood.grove"]]) { RedirectStandardOutput = true, StandardOutputEncoding = Encoding.UTF8 };
        start.Environment["DOTNET_GCHeapHardLimit"] = most;
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.Equal(0, process.ExitCode);
        return output;
    }

    private static string Wood(int trunks)
    {
        var text = new StringBuilder("planting \"Wood\"\nhabit group\nspecies larix-kaempferi\ncontainer rectangle 2600 x 2600 x 40 mm\nviewed from 180 deg, at 6000 mm\n");
        var chance = new Random(trunks);
        for (var index = 0; index < trunks; index++)
        {
            text.Append(CultureInfo.InvariantCulture, $"trunk T{index} at {((index % 40) * 60) - 1200 + chance.Next(-15, 16)}, {((index / 40) * 60) - 1200 + chance.Next(-15, 16)} mm diameter {chance.Next(8, 24)} mm height {chance.Next(90, 250)} mm\n");
        }

        return text.ToString();
    }
}
