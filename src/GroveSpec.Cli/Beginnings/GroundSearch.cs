using System.Collections.Immutable;
using GroveSpec.Binding;
using GroveSpec.Binding.Use;
using GroveSpec.Checks;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Cli.Beginnings;

/// <summary>Finds places for the trunks of a first planting, one after the other, each where check has nothing to say against it.</summary>
internal static class GroundSearch
{
    private const int TriesForTrunk = 300;
    private const int MostBeginnings = 40;
    private const double ShareOfContainer = 0.8;

    /// <summary>How wide a container suits so many trunks, in millimetres.</summary>
    /// <param name="trunks">The number of trunks.</param>
    /// <returns>The width.</returns>
    public static int WidthFor(int trunks) => 260 + (20 * trunks);

    /// <summary>How deep it is, in millimetres.</summary>
    /// <param name="trunks">The number of trunks.</param>
    /// <returns>The depth.</returns>
    public static int DepthFor(int trunks) => WidthFor(trunks) * 7 / 10 / 10 * 10;

    /// <summary>Finds the places.</summary>
    /// <param name="trunks">How many.</param>
    /// <param name="assemble">Writes the planting with so many of its trunks.</param>
    /// <returns>The places in millimetres from the container's centre, the same for the same planting.</returns>
    /// <exception cref="InvalidOperationException">None were found; tests hold that this does not come about.</exception>
    public static ImmutableArray<(int Right, int Back)> Place(int trunks, Func<ImmutableArray<(int Right, int Back)>, string> assemble)
    {
        for (uint beginning = 0; beginning < MostBeginnings; beginning++)
        {
            var chance = new Chance((uint)trunks + (beginning * 97));
            var places = ImmutableArray<(int Right, int Back)>.Empty;
            while (places.Length < trunks && Next(places, trunks, chance, assemble) is { } next)
            {
                places = places.Add(next);
            }

            if (places.Length == trunks)
            {
                return places;
            }
        }

        throw new InvalidOperationException($"No places were found for {trunks} trunks.");
    }

    private static (int Right, int Back)? Next(ImmutableArray<(int Right, int Back)> places, int trunks, Chance chance, Func<ImmutableArray<(int Right, int Back)>, string> assemble)
    {
        for (var attempt = 0; attempt < TriesForTrunk; attempt++)
        {
            var (right, back) = (chance.Next(), chance.Next());
            if ((right * right) + (back * back) > 1)
            {
                continue;
            }

            var place = (
                (int)Math.Round(right * ShareOfContainer * WidthFor(trunks) / 2),
                (int)Math.Round(back * ShareOfContainer * DepthFor(trunks) / 2));
            if (IsGood(assemble(places.Add(place))))
            {
                return place;
            }
        }

        return null;
    }

    private static bool IsGood(string text)
    {
        foreach (var finding in Assessment.Of("planting", SourceText.FromText(text), new NoFiles()).Findings)
        {
            if (finding.Severity != Severity.Hint)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Numbers that look like chance and are the same each time: a multiplicative congruential generator (Lehmer 1951, with the multiplier of Park and Miller 1993).</summary>
    private sealed class Chance(uint seed)
    {
        private ulong state = seed + 1;

        /// <summary>The next number.</summary>
        /// <returns>From -1 to 1.</returns>
        public double Next()
        {
            state = state * 48271 % 2147483647;
            return (state / 1073741823.5) - 1;
        }
    }
}
