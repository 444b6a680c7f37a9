using System.Diagnostics;
using System.Globalization;
using GroveSpec.Binding;
using GroveSpec.Binding.Use;
using GroveSpec.Checks;
using GroveSpec.Checks.Ground;
using GroveSpec.Checks.Judging;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;
using GroveSpec.Model.Trunks;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Benchmarks;

/// <summary>
/// Holds the judge of free ground to the checks themselves, run anew with the newcomer at each of a million places, one by one: the
/// whole of what the tests hold at some ten thousand. Places are spread over the samples and over plantings made at random.
/// </summary>
internal static class GroundAgreement
{
    private const int PlacesOfACase = 500;

    /// <summary>Runs it.</summary>
    /// <param name="words"><c>--places NUMBER</c>, a million without it; <c>--samples FOLDER</c>.</param>
    /// <param name="writer">Where the counts go.</param>
    /// <returns>0 when judge and checks agree at every place, 1 when they do not.</returns>
    public static int Run(string[] words, TextWriter writer)
    {
        var places = int.TryParse(CommandWords.Behind(words, "--places"), out var number) ? number : 1_000_000;
        string[] samples = CommandWords.Behind(words, "--samples") is { } folder
            ? [.. Directory.EnumerateFiles(folder, "*.grove", SearchOption.AllDirectories).Order(StringComparer.Ordinal).Select(File.ReadAllText)]
            : [];
        long free = 0, apart = 0, judged = 0;
        var watch = Stopwatch.StartNew();
        Parallel.For(0, (places + PlacesOfACase - 1) / PlacesOfACase, index =>
        {
            var random = new Random(index);
            var text = index < samples.Length * 20 ? samples[index % samples.Length] : Made(random);
            var context = Assessment.Of("made.grove", SourceText.FromText(text), new NoFiles(), null, UnitSystem.Metric).ToContext();
            if (context.State.Standing.Count() is 0 or >= FreeGround.MostTrunks)
            {
                context = Assessment.Of("made.grove", SourceText.FromText(Made(random)), new NoFiles(), null, UnitSystem.Metric).ToContext();
            }

            var ground = new GroundCase(context, Newcomer(random));
            var judge = new GroundJudge(ground);
            var bounds = new GroundBounds(ground);
            var before = Checker.Composition(ground.Without, CancellationToken.None).Select(Key).ToHashSet(StringComparer.Ordinal);
            for (var place = 0; place < PlacesOfACase; place++)
            {
                var at = PlanPoint.FromMillimetres(
                    Between(random, bounds.Least.X.Millimetres, bounds.Greatest.X.Millimetres), Between(random, bounds.Least.Y.Millimetres, bounds.Greatest.Y.Millimetres));
                var isFree = !Checker.Composition(ground.At(at), CancellationToken.None)
                    .Any(finding => !before.Contains(Key(finding)) && !ground.IsOfAnyPlace(finding.Check, ground.SetOf(finding.Trunks)!.Value));
                Interlocked.Increment(ref judged);
                Interlocked.Add(ref free, isFree ? 1 : 0);
                Interlocked.Add(ref apart, judge.IsFree(at) == isFree ? 0 : 1);
            }
        });
        writer.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{judged:N0} places judged one by one in {watch.Elapsed.TotalSeconds:0} s: {free:N0} free, {apart:N0} at which judge and checks differ."));
        return apart == 0 ? 0 : 1;
    }

    private static string Key(Finding finding) => Acceptances.Key(finding.Check.Name, finding.Trunks);

    private static double Between(Random random, double least, double most) => least + (random.NextDouble() * (most - least));

    private static TrunkState Newcomer(Random random) => new()
    {
        Trunk = new Trunk { Name = random.Next(2) == 0 ? "Q" : "b", Origin = Origin.Default },
        Presence = Presence.Standing,
        Place = PlanPoint.Origin,
        Diameter = new(Length.FromMillimetres(Math.Round(Between(random, 4, 40), 1)), Origin.Default),
        Height = random.Next(4) == 0 ? null : new(Length.FromMillimetres(Math.Round(Between(random, 50, 380))), Origin.Default),
    };

    /// <summary>A planting of 1 to 30 trunks scattered over an oval, half of them on whole millimetres of a lattice of 10 mm.</summary>
    private static string Made(Random random)
    {
        var pitch = random.Next(2) == 0 ? 10 : 0.1;
        var trunks = Enumerable.Range(0, 1 + random.Next(30)).Select(index =>
        {
            double angle = Between(random, 0, Math.Tau), share = Math.Sqrt(random.NextDouble());
            var (x, y) = (Math.Round(210 * share * Math.Cos(angle) / pitch) * pitch, Math.Round(130 * share * Math.Sin(angle) / pitch) * pitch);
            return string.Create(CultureInfo.InvariantCulture, $"trunk {(char)('A' + (index * 7 % 26))}{index} at {x:0.#}, {y:0.#} mm diameter {Between(random, 6, 34):0.0} mm height {Between(random, 60, 360):0} mm");
        });
        var depth = random.Next(3) switch { 0 => ", near", 1 => ", far", _ => "" };
        var eye = random.Next(4) == 0 ? "" : ", at 1200 mm, eye 180 mm";
        var container = random.Next(6) == 0 ? "" : "container oval 480 x 320 x 40 mm\n";
        return $"planting \"Made\"\nhabit {(random.Next(5) == 0 ? "clump" : "group")}\nspecies larix-kaempferi\n{container}viewed from {random.Next(4) * 90} deg{eye}{depth}\n" + string.Join('\n', trunks) + "\n";
    }
}
