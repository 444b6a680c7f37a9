using System.Diagnostics;
using System.Globalization;

namespace GroveSpec.Cli.Tests;

/// <summary>A file ten times as long may not take a hundred times as long. Nothing else runs beside these, and only a ratio counts.</summary>
[CollectionDefinition("alone", DisableParallelization = true)]
[Collection("alone")]
public sealed class ScalingTests : IDisposable
{
    private const int Few = 1_500;
    private const int Attempts = 4;

    private readonly Workplace work = new();

    public void Dispose() => work.Dispose();

    /// <summary>A statement of each kind, and those whose names or numbers are wrong on every line.</summary>
    public static TheoryData<string> Statements() => new(
        "mute check{0} because \"r\"",
        "tolerance check{0} 8 %",
        "accept even-gaps T{0} because \"r\"",
        "accept even-gaps A because \"r\"\nmute check{0} because \"r\"",
        "role r{0} {{ form stout }}",
        "role r {{ form stout }}",
        "trunk T{0} role r{0}",
        "trunk T{0} role " + new string('r', 200) + "{0}",
        "trunk T{0} role r{0}\nrole q{0} {{ form stout }}",
        "trunk T{0} species larix-{0}",
        "trunk A",
        "trunk T{0} diameter 9 mmm",
        "tape T{0} to A 8 mm",
        "tape A to A 8 mm",
        "task t{0} feed on T{0} after u{0}",
        "task t{0} feed on role r{0} on 2027-01-01",
        "task t{0} unwire of u{0} 6 to 8 weeks after u{0}",
        "task t{0} feed on all after t0",
        "task t feed on all after t",
        "measured 2027-01-01 {{ T{0} diameter 9 mm }}",
        "measured 2027-01-01 {{ A diameter 9 mm }}",
        "profile p{0} {{ leaf deciduous source \"s\" }}",
        "use \"u{0}.grove\"",
        "planting \"p{0}\"",
        "site latitude 40 N, zone 8b",
        "trnk{0} at");

    [Theory]
    [MemberData(nameof(Statements))]
    public void Ten_times_as_many_statements_do_not_take_a_hundred_times_as_long(string statement)
    {
        work.Write("few.grove", Repeated(statement, Few));
        work.Write("many.grove", Repeated(statement, 10 * Few));
        Elapsed("few.grove");
        var ratios = new List<double>();
        do
        {
            var few = Elapsed("few.grove");
            ratios.Add(Elapsed("many.grove") / few);
        }
        while (ratios[^1] > 50 && ratios.Count < Attempts);

        // Collecting memory, and whatever else the machine does, make it more than ten.
        Assert.True(ratios[^1] <= 50, string.Create(CultureInfo.InvariantCulture, $"{string.Join(", ", ratios)} times as long"));
    }

    private static string Repeated(string statement, int times) =>
        "planting \"P\"\nhabit group\ntrunk A at 1, 2 mm diameter 20 mm height 200 mm\n"
        + string.Concat(Enumerable.Range(0, times).Select(index => string.Format(CultureInfo.InvariantCulture, statement, index) + "\n"));

    private TimeSpan Elapsed(string name)
    {
        var watch = Stopwatch.StartNew();
        Assert.NotEqual(ExitStatus.Files, work.Run("check", name, "--as", "lines").Status);
        return watch.Elapsed;
    }
}
