using System.Text;
using GroveSpec.Publishing.Raster;
using SkiaSharp;
using Xunit;

namespace GroveSpec.Publishing.Tests.Raster;

public sealed class PictureTests
{
    private const string Words = """
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 400 200" width="400" height="200" font-family="'EB Garamond', Georgia, serif">
        <style>
        .sheet { fill: #fcfbf7 } .ink { fill: #26302b } .line { stroke: #26302b; fill: none; stroke-width: 2 }
        @media (prefers-color-scheme: dark) { .sheet { fill: #191d1a } .ink { fill: #e8e6dd } }
        </style>
        <rect class="sheet" width="400" height="200"/>
        <text class="ink" x="20" y="50" font-size="28">Windward 1234567890</text>
        <text class="ink" x="20" y="100" font-size="28" font-style="italic">in the lee</text>
        <text class="ink" x="20" y="150" font-size="28" font-weight="500">Salt Bank</text>
        <path class="line" d="M20 180H380"/>
        </svg>
        """;

    [Theory]
    [InlineData(20, 25, 300, 55)]
    [InlineData(20, 75, 120, 105)]
    [InlineData(20, 125, 140, 155)]
    public void Text_is_drawn_where_a_label_stands(int left, int top, int right, int bottom)
    {
        using var picture = SKBitmap.Decode(PngWriter.Write(Words, 1));
        Assert.True(Dark(picture, left, top, right, bottom) > 150, "no ink where a label should stand");
    }

    [Fact]
    public void The_light_palette_is_used_on_paper()
    {
        using var picture = SKBitmap.Decode(PngWriter.Write(Words, 1));
        Assert.Equal(new SKColor(0xfc, 0xfb, 0xf7), picture.GetPixel(2, 2));
    }

    [Fact]
    public void Numerals_are_lining_so_that_all_are_as_high_as_each_other()
    {
        var heights = Enumerable.Range(0, 10).Select(digit =>
        {
            var svg = $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"100\" height=\"140\" font-family=\"EB Garamond\"><text x=\"10\" y=\"110\" font-size=\"100\">{digit}</text></svg>";
            using var picture = SKBitmap.Decode(PngWriter.Write(svg, 1));
            var rows = Enumerable.Range(0, picture.Height).Where(y => Dark(picture, 0, y, picture.Width, y + 1) > 0).ToList();
            return (Top: rows[0], Bottom: rows[^1]);
        }).ToList();

        // Old-style numerals differ by a fifth of the type size and more, above (6, 8) or below (3, 4, 5, 7, 9).
        Assert.True(heights.Max(digit => digit.Top) - heights.Min(digit => digit.Top) <= 6);
        Assert.True(heights.Max(digit => digit.Bottom) - heights.Min(digit => digit.Bottom) <= 6);
    }

    [Theory]
    [InlineData(1, 400, 200)]
    [InlineData(2, 800, 400)]
    [InlineData(0.5, 200, 100)]
    [InlineData(4, 1600, 800)]
    public void The_scale_gives_the_size_of_the_picture(double scale, int width, int height)
    {
        using var picture = SKBitmap.Decode(PngWriter.Write(Words, scale));
        Assert.Equal((width, height), (picture.Width, picture.Height));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(21)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_scale_out_of_range_is_refused(double scale) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PngWriter.Write(Words, scale));

    [Fact]
    public void A_vast_drawing_is_drawn_at_the_scale_that_fits()
    {
        const string Vast = "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"40000\" height=\"40\"><rect width=\"40000\" height=\"40\"/></svg>";
        using var picture = SKBitmap.Decode(PngWriter.Write(Vast, 2));
        Assert.Equal(PngWriter.LargestSide, picture.Width);
    }

    [Theory]
    [InlineData("")]
    [InlineData("no drawing at all")]
    [InlineData("<svg")]
    [InlineData("<svg xmlns=\"http://www.w3.org/2000/svg\"><text>unclosed</svg>")]
    public void What_is_no_drawing_is_refused(string text)
    {
        Assert.ThrowsAny<ArgumentException>(() => PngWriter.Write(text));
        Assert.ThrowsAny<ArgumentException>(() => PdfWriter.Write(text));
    }

    [Fact]
    public void The_same_drawing_gives_the_same_bytes()
    {
        Assert.Equal(PngWriter.Write(Words), PngWriter.Write(Words));
        Assert.Equal(PdfWriter.Write(Words), PdfWriter.Write(Words));
        Assert.Equal(PdfWriter.Write(Words, PdfPage.A4), PdfWriter.Write(Words, PdfPage.A4));
    }

    [Theory]
    [InlineData(PdfPage.Drawing, 300, 150)]
    [InlineData(PdfPage.A4, 841.89, 595.28)]
    [InlineData(PdfPage.Letter, 792, 612)]
    public void A_page_has_the_size_asked_for(PdfPage page, double width, double height)
    {
        var text = Encoding.Latin1.GetString(PdfWriter.Write(Words, page));
        Assert.StartsWith("%PDF-", text, StringComparison.Ordinal);
        var box = text[(text.IndexOf("/MediaBox [", StringComparison.Ordinal) + 11)..];
        var numbers = box[..box.IndexOf(']', StringComparison.Ordinal)].Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(double.Parse).ToList();
        // Skia writes pages in whole points.
        Assert.Equal(width, numbers[2], 0.5);
        Assert.Equal(height, numbers[3], 0.5);
    }

    [Fact]
    public void Text_in_a_page_stays_text_in_embedded_faces()
    {
        var text = Encoding.Latin1.GetString(PdfWriter.Write(Words));
        Assert.Contains("EBGaramond", text, StringComparison.Ordinal);
        Assert.Contains("/FontFile2", text, StringComparison.Ordinal);
        Assert.Contains("/ToUnicode", text, StringComparison.Ordinal);
        Assert.DoesNotContain("/Subtype /Image", text, StringComparison.Ordinal);
    }

    private static int Dark(SKBitmap picture, int left, int top, int right, int bottom)
    {
        var dark = 0;
        for (var y = top; y < bottom; y++)
        {
            for (var x = left; x < right; x++)
            {
                var pixel = picture.GetPixel(x, y);
                dark += pixel.Red + pixel.Green + pixel.Blue < 384 ? 1 : 0;
            }
        }

        return dark;
    }
}
