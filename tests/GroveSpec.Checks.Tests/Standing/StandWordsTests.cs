using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using GroveSpec.Checks.Standing;
using GroveSpec.Craft.Stand;
using Xunit;

namespace GroveSpec.Checks.Tests.Standing;

public sealed class StandWordsTests
{
    private static readonly StandDescription Seven = Described(7);

    [Theory]
    [InlineData(0.1701, 0.1749, "is 0.170; chance gives 0.175 to 0.560")]
    [InlineData(0.1701, 0.17012, "is 0.17010; chance gives 0.17012 to 0.56000")]
    [InlineData(0.16, 0.17, "is 0.16; chance gives 0.17 to 0.56")]
    [InlineData(0.1749, 0.1749, "is 0.17; chance gives 0.17 to 0.56")]
    [InlineData(0.17, 0.1700000009, "is 0.17; chance gives 0.17 to 0.56")]
    [InlineData(0.17, 0.1700000011, "is 0.170000000; chance gives 0.170000001 to 0.560000000")]
    public void A_value_beyond_chance_is_told_with_as_many_decimals_as_tell_it_from_the_limit(double value, double low, string expected)
    {
        var described = With(StandIndexKind.BasalAreaGini, value, low, 0.56);
        Assert.Contains(expected, StandWords.Tell(described, StandIndexKind.BasalAreaGini), StringComparison.Ordinal);
        Assert.Contains($"is {StandWords.Value(described.Index(StandIndexKind.BasalAreaGini))};", expected, StringComparison.Ordinal);
    }

    [Fact]
    public void A_value_above_chance_is_told_from_the_upper_limit() =>
        Assert.Contains("is 0.563; chance gives 0.170 to 0.562", StandWords.Tell(With(StandIndexKind.BasalAreaGini, 0.5631, 0.17, 0.5622), StandIndexKind.BasalAreaGini), StringComparison.Ordinal);

    [Fact]
    public void The_numbers_on_paper_say_what_the_reading_says() =>
        Gen.Select(Gen.Double[0.1, 0.2], Gen.Double[-11, -1], Gen.Bool).Sample((limit, exponent, isAbove) =>
        {
            var value = limit + ((isAbove ? 1 : -1) * Math.Pow(10, exponent));
            var described = With(StandIndexKind.SizeDominance, value, isAbove ? 0.01 : limit, isAbove ? limit : 0.9);
            var told = Regex.Match(StandWords.Tell(described, StandIndexKind.SizeDominance), @"is ([0-9.]+); chance gives ([0-9.]+) to ([0-9.]+)\.");
            var (shown, low, high) = (Number(1), Number(2), Number(3));
            Assert.Equal(described.Index(StandIndexKind.SizeDominance).Reading, shown < low ? StandReading.Below : shown > high ? StandReading.Above : StandReading.CannotTell);

            double Number(int group) => double.Parse(told.Groups[group].Value, CultureInfo.InvariantCulture);
        });

    [Fact]
    public void Why_an_index_tells_nothing_is_said_where_it_has_no_value_and_where_it_cannot_vary_and_nowhere_else()
    {
        var three = Described(3);
        Assert.Equal("Cannot tell: it asks four neighbours of each trunk, so that it takes five.", StandWords.WhyNot(three, StandIndexKind.UniformAngle));
        Assert.Equal("", StandWords.WhyNot(three, StandIndexKind.SizeDifferentiation));
        Assert.StartsWith("Cannot tell: each of five trunks", StandWords.WhyNot(Described(5), StandIndexKind.SizeDominance), StringComparison.Ordinal);
        Assert.All(Enum.GetValues<StandIndexKind>(), kind => Assert.Equal("", StandWords.WhyNot(Described(6), kind)));

        // Six stand, and of three or five of them the thickness is known.
        Assert.Equal("Cannot tell: it asks four neighbours of each trunk, so that it takes five whose thickness is known.", StandWords.WhyNot(Described(6, 3), StandIndexKind.SizeDominance));
        Assert.StartsWith("Cannot tell: each of five trunks whose thickness is known has", StandWords.WhyNot(Described(6, 5), StandIndexKind.SizeDominance), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(300, 0, "")]
    [InlineData(300.001, 0, "Cannot tell: E stands outside the container, where chance scatters none: measure its place again.")]
    [InlineData(0, -200.001, "Cannot tell: E stands outside the container, where chance scatters none: measure its place again.")]
    public void Spacing_is_not_told_of_trunks_outside_the_container(double x, double y, string expected)
    {
        // The container is 600 mm wide and 400 mm deep.
        var described = StandDescription.Of(Check.Of(FormattableString.Invariant($"trunk A at 0, 0 mm diameter 9 mm\ntrunk B at 90, 50 mm diameter 12 mm\ntrunk C at -80, 60 mm diameter 15 mm\ntrunk D at 40, -90 mm diameter 20 mm\ntrunk E at {x}, {y} mm diameter 25 mm\n")).State);
        Assert.Equal(expected, StandWords.WhyNot(described, StandIndexKind.ClarkEvans));
        Assert.Equal(expected.Length == 0, described.UncorrectedClarkEvans is not null);
        Assert.Equal("", StandWords.WhyNot(described, StandIndexKind.UniformAngle));
    }

    [Fact]
    public void Trunks_as_far_from_their_nearest_are_told_once()
    {
        var three = StandDescription.Of(Check.Of("trunk A at 0, 0 mm\ntrunk B at 100, 0 mm\ntrunk C at 200, 0 mm\n").State);
        Assert.Equal("From each trunk to its nearest it is 100 mm, centre to centre.", StandWords.Nearest(three, GroveSpec.Model.Quantities.UnitSystem.Metric));
    }

    private static StandDescription With(StandIndexKind kind, double value, double low, double high)
    {
        // Of 39 runs the least and the greatest are the limits.
        var chance = ChanceBand.Of([low, .. Enumerable.Repeat((low + high) / 2, 37), high]);
        return Seven with { Indices = Seven.Indices.SetItem((int)kind, new StandIndex(kind, value, chance)) };
    }

    private static StandDescription Described(int trunks, int measured = int.MaxValue) => StandDescription.Of(Check.Of(string.Concat(Enumerable.Range(0, trunks).Select(trunk =>
        $"trunk T{trunk} at {(trunk * 83 % 290) - 140}, {(trunk * 47 % 190) - 90} mm{(trunk < measured ? $" diameter {10 + (trunk * 7 % 11)} mm" : "")} height 200 mm\n"))).State);
}
