using System.Text;
using GroveSpec.Binding;
using GroveSpec.Binding.Use;
using GroveSpec.Drawing;
using GroveSpec.Drawing.Timeline;
using GroveSpec.Drawing.Wire;
using GroveSpec.Syntax.Parsing;
using GroveSpec.Syntax.Printing;
using GroveSpec.Syntax.Text;
using Xunit;

namespace GroveSpec.Fuzz.Tests;

public sealed class WholeWayTests
{
    private const int Runs = 100_000;
    private const int Seed = 77_000_000;

    // Drawing takes far longer than reading and checking, so that one file in so many is drawn.
    private const int OneDrawnIn = 50;

    private static byte[][] Originals { get; } = [Encoding.UTF8.GetBytes(EveryStatement.Text), .. Repository.Samples.Select(File.ReadAllBytes)];

    [Fact]
    public void A_hundred_thousand_damaged_files_are_bound_checked_and_drawn_without_an_exception()
    {
        Parallel.For(0, Runs, run =>
        {
            var bytes = Mutation.Of(Originals[run % Originals.Length], new Random(Seed + run));
            try
            {
                var text = SourceText.FromBytes(bytes);
                var assessment = Assessment.Of("damaged.grove", text, new NoFiles());
                foreach (var finding in assessment.Findings)
                {
                    Assert.False(string.IsNullOrWhiteSpace(finding.Message));
                }

                if (run % OneDrawnIn == 0)
                {
                    var subject = new DrawingSubject(assessment.State, assessment.Findings);
                    Assert.EndsWith("</svg>", PlanPlate.Draw(subject, DrawingOptions.Default).TrimEnd(), StringComparison.Ordinal);
                    Assert.EndsWith("</svg>", FrontPlate.Draw(subject, DrawingOptions.Default).TrimEnd(), StringComparison.Ordinal);
                    Assert.EndsWith("</svg>", WirePlate.Draw(subject, DrawingOptions.Default).TrimEnd(), StringComparison.Ordinal);
                    Assert.EndsWith("</svg>", TimelinePlate.Draw(subject, DrawingOptions.Default).TrimEnd(), StringComparison.Ordinal);
                }
            }
            catch (Exception exception)
            {
                throw new InvalidOperationException($"Seed {Seed + run}, file {run % Originals.Length}:\n{Encoding.Latin1.GetString(bytes)}", exception);
            }
        });
    }

    [Fact]
    public void Tidying_ten_thousand_generated_files_changes_no_bound_planting()
    {
        Parallel.For(Seed, Seed + 10_000, seed =>
        {
            var content = GeneratedFile.Of(seed);
            try
            {
                AssertSamePlanting("generated.grove", SourceText.FromText(content), new NoFiles());
            }
            catch (Exception exception)
            {
                throw new InvalidOperationException($"Seed {seed}:\n{content}", exception);
            }
        });
    }

    [Fact]
    public void Tidying_a_sample_changes_no_bound_planting()
    {
        Assert.NotEmpty(Repository.Samples);
        foreach (var path in Repository.Samples)
        {
            AssertSamePlanting(path, SourceText.FromBytes(File.ReadAllBytes(path)), new FolderFiles());
        }
    }

    [Fact]
    public void Tidying_a_damaged_file_changes_no_bound_planting()
    {
        Parallel.For(0, 5_000, run =>
        {
            var bytes = Mutation.Of(Originals[run % Originals.Length], new Random(Seed - 1 - run));
            try
            {
                AssertSamePlanting("damaged.grove", SourceText.FromBytes(bytes), new NoFiles());
            }
            catch (Exception exception)
            {
                throw new InvalidOperationException($"Seed {Seed - 1 - run}, file {run % Originals.Length}:\n{Encoding.Latin1.GetString(bytes)}", exception);
            }
        });
    }

    private static void AssertSamePlanting(string file, SourceText text, IFileReader reader)
    {
        var tree = GroveParser.Parse(text);
        var before = Binder.Bind(tree, file, reader).Planting;
        var after = Binder.Bind(GroveParser.Parse(SourceText.FromText(Tidy.Format(tree))), file, reader).Planting;
        Assert.Equal(ModelOutline.Of(before), ModelOutline.Of(after));
    }
}
