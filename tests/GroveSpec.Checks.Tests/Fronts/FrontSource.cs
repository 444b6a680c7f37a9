using GroveSpec.Checks.Tests.Choosing;

namespace GroveSpec.Checks.Tests.Fronts;

/// <summary>Plantings made at random from a seed: all that the choice of a front can depend on, now there and now not.</summary>
internal static class FrontSource
{
    /// <summary>A planting.</summary>
    /// <param name="seed">Which one.</param>
    /// <param name="trunks">How many trunks stand and have a place.</param>
    /// <returns>The text of its file.</returns>
    public static string Of(int seed, int trunks)
    {
        var random = new Random(-1 - seed);
        var source = StoolSource.Of(seed, trunks);
        source = random.Next(8) switch
        {
            // No view at all, or one from among the trunks, some of which are then not seen.
            0 => string.Concat(source.Split('\n').Where(line => !line.StartsWith("viewed", StringComparison.Ordinal)).Select(line => line + "\n")),
            1 => source.Replace(", at 1200 mm", ", at 180 mm", StringComparison.Ordinal),
            _ => source,
        };
        if (random.Next(4) == 0)
        {
            source += $"task S1 sacrifice on {StoolSource.Name(0)} from leaf-out 2027 to leaf-fall 2029 facing {random.Next(360)} deg\n";
            source += $"task S2 sacrifice on {StoolSource.Name(1)} from leaf-out 2027 to leaf-fall 2029 facing {random.Next(4) * 90} deg\n";
            source += random.Next(2) == 0 ? $"accept sacrifice-in-front {StoolSource.Name(0)} because \"so\"\n" : "";
        }

        source += random.Next(8) switch
        {
            0 => "mute even-gaps-in-view because \"so\"\n",
            1 => "mute level-tops because \"so\"\n",
            2 => "mute centred-main because \"so\"\n",
            3 => "tolerance level-tops 9 %\n",
            4 => "tolerance centred-main 2 %\n",
            5 => "tolerance hidden-trunk 100 %\n",
            _ => "",
        };
        if (random.Next(3) > 0)
        {
            return source;
        }

        var found = FrontScoreTests.Found(ContextOf(source), new(random.Next(360))).Where(finding => !finding.Trunks.IsEmpty && finding.Check.Name != "sacrifice-in-front").Take(4);
        return source + string.Concat(found.Select(finding => $"accept {finding.Check.Name} {string.Join(' ', finding.Trunks)} because \"so\"\n"));
    }

    /// <summary>What a source gives the checks to look at.</summary>
    /// <param name="source">The source.</param>
    /// <returns>The planting.</returns>
    public static CheckContext ContextOf(string source) => ThinningScoreTests.ContextOf(source);
}
