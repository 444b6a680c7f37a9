using CsCheck;
using GroveSpec.Publishing.Raster;
using SkiaSharp;
using Xunit;

namespace GroveSpec.Publishing.Tests.Raster;

/// <summary>Expected orders follow Unicode Standard Annex 9; a browser's own were compared by eye.</summary>
public sealed class VisualOrderTests
{
    [Theory]
    [InlineData("A and B 12 mm", "A and B 12 mm")]
    [InlineData("\u2068שקד\u2069 stands 1.4 mm off", "שקד| stands 1.4 mm off")]
    [InlineData("12 \u2068שקד\u2069, \u2068תמר\u2069: 1.4 mm", "12 |שקד|, |תמר|: 1.4 mm")]
    [InlineData("\u2068רימון12\u2069", "12|רימון")]
    [InlineData("\u2068חורשה 12 קטנה\u2069", "קטנה| |12| |חורשה")]
    [InlineData("\u2068نخلة12\u2069, \u2068زيتون\u2069 T", "12|نخلة|, |زيتون| T")]
    [InlineData("\u2068רימון (תמר)\u2069 abc", "(תמר)| |רימון| abc")]
    [InlineData("שקד, תמר", "תמר| |שקד,")]
    [InlineData("a שקד 12% b", "a 12%| |שקד| b")]
    [InlineData("a \u2067שקד x1 תמר\u2069 b", "a |תמר| |x1| |שקד| b")]
    [InlineData("שָׁלוֹם 3.5", "3.5| |שָׁלוֹם")]
    public void A_line_is_parted_in_the_order_in_which_it_is_seen(string line, string expected) =>
        Assert.Equal(expected, string.Join('|', VisualOrder.Of(line).Select(piece => piece.Text)));

    [Fact]
    public void Every_sign_of_a_line_is_seen_once() =>
        Gen.String[Gen.Frequency((3, Gen.Char['א', 'ת']), (2, Gen.Char['ا', 'ي']), (3, Gen.Char['a', 'z']), (2, Gen.Const(' ')), (2, Gen.Char['0', '9']), (1, Gen.Char['!', '/']), (1, Gen.Char['\u2066', '\u2069'])), 0, 40].Sample(line =>
        {
            var seen = string.Concat(VisualOrder.Of(line).Select(piece => piece.Text));
            return Sorted(seen) == Sorted(string.Concat(line.Where(c => c is not (>= '\u2066' and <= '\u2069'))));

            // A bracket among letters that run leftward may be seen as its mirror image.
            static string Sorted(string text) => string.Concat(text.Select(c => c == ')' ? '(' : c).Order());
        });

    [Fact]
    public void A_picture_shows_names_from_the_right_and_numbers_in_the_same_order_in_which_a_reader_expects_them()
    {
        // The same line, once as it is read and once put in order by hand.
        var read = Draw("<text x=\"10\" y=\"40\" font-size=\"28\">\u2068שקד\u2069 stands 1.4 mm off \u2068רימון7\u2069: 12 mm</text>");
        var ordered = Draw("<text x=\"10\" y=\"40\" font-size=\"28\"><tspan font-family=\"Frank Ruhl Libre\">שקד</tspan><tspan> stands 1.4 mm off </tspan><tspan>7</tspan><tspan font-family=\"Frank Ruhl Libre\">רימון</tspan><tspan>: 12 mm</tspan></text>");
        Assert.Equal(ordered, read);
    }

    [Theory]
    [InlineData("שקד", "תמר")]
    [InlineData("نخلة", "زيتون")]
    public void Letters_from_the_right_are_drawn_and_not_left_as_empty_boxes(string one, string other)
    {
        var both = new[] { one, other }.Select(name => string.Concat(name.Where(char.IsLetter).Take(3)));
        Assert.Equal(2, both.Select(name => Convert.ToHexString(Draw($"<text x=\"10\" y=\"40\" font-size=\"28\">{name}</text>"))).Distinct().Count());
    }

    [Fact]
    public void The_halo_of_one_piece_does_not_cover_the_letters_of_the_next()
    {
        const string Halo = "stroke=\"#fff\" stroke-width=\"4\" paint-order=\"stroke\"";
        var with = Draw($"<rect width=\"600\" height=\"60\" fill=\"#fff\"/><text {Halo} x=\"10\" y=\"40\" font-size=\"28\">רימון7</text>");
        var without = Draw("<rect width=\"600\" height=\"60\" fill=\"#fff\"/><text x=\"10\" y=\"40\" font-size=\"28\">רימון7</text>");
        Assert.InRange(Ink(with), Ink(without) * 0.98, Ink(without) * 1.06);

        static double Ink(byte[] bytes) => bytes.Where((_, index) => index % 4 == 0).Sum(red => 255 - red);
    }

    private static byte[] Draw(string text)
    {
        using var picture = SKBitmap.Decode(PngWriter.Write($"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"600\" height=\"60\" font-family=\"EB Garamond\">{text}</svg>", 1));
        return picture.Bytes;
    }
}
