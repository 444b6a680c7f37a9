using System.Globalization;
using NodaTime;
using NodaTime.Text;
using Xunit;

namespace GroveSpec.Conformance.Tests.Outside;

/// <summary>What the npm library astronomy-engine says of the sun over a hundred years. Skips the test where it is not installed.</summary>
internal sealed class Sky
{
    private static readonly Lazy<Sky?> Known = new(Look);

    private Sky(List<(int Year, Instant[] Moments)> turns, List<(double Latitude, LocalDate Day, double Hours)> days) => (Turns, Days) = (turns, days);

    /// <summary>March, June, September and December of each year.</summary>
    public IReadOnlyList<(int Year, Instant[] Moments)> Turns { get; }

    /// <summary>Hours from sunrise to sunset, at latitudes from 66 degrees south to 66 north.</summary>
    public IReadOnlyList<(double Latitude, LocalDate Day, double Hours)> Days { get; }

    /// <summary>What it says.</summary>
    /// <returns>The figures.</returns>
    public static Sky Require()
    {
        OutsideProgram.Node.Require();
        Assert.SkipWhen(Known.Value is null, "the astronomical library is not installed (npm ci, in tests/astronomy)");
        return Known.Value!;
    }

    private static Sky? Look()
    {
        if (!Directory.Exists(Repository.Path("tests", "astronomy", "node_modules", "astronomy-engine")))
        {
            return null;
        }

        var turns = new List<(int, Instant[])>();
        var days = new List<(double, LocalDate, double)>();
        foreach (var line in OutsideProgram.Node.Run([Repository.Path("tests", "astronomy", "sky.mjs")]).Output.Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            var columns = line.Split(' ');
            if (columns[0] == "turns")
            {
                turns.Add((int.Parse(columns[1], CultureInfo.InvariantCulture), [.. columns.Skip(2).Select(text => InstantPattern.ExtendedIso.Parse(text).Value)]));
            }
            else
            {
                days.Add((double.Parse(columns[1], CultureInfo.InvariantCulture), LocalDatePattern.Iso.Parse(columns[2]).Value, double.Parse(columns[3], CultureInfo.InvariantCulture)));
            }
        }

        return new Sky(turns, days);
    }
}
