using SkiaSharp;

namespace GroveSpec.Conformance.Tests.Pictures;

/// <summary>A picture in shades of grey, 0 black to 255 white, row after row.</summary>
/// <param name="Width">Pixels across.</param>
/// <param name="Height">Pixels down.</param>
/// <param name="Shades">One shade a pixel.</param>
internal sealed record GreyPicture(int Width, int Height, float[] Shades)
{
    /// <summary>Reads a PNG file; what is not covered is white.</summary>
    /// <param name="bytes">The file's bytes.</param>
    /// <returns>The picture.</returns>
    public static GreyPicture FromPng(byte[] bytes)
    {
        using var bitmap = SKBitmap.Decode(bytes) ?? throw new InvalidOperationException("The renderer gave no PNG picture.");
        var shades = new float[bitmap.Width * bitmap.Height];
        for (var y = 0; y < bitmap.Height; y++)
        {
            for (var x = 0; x < bitmap.Width; x++)
            {
                var colour = bitmap.GetPixel(x, y);
                var cover = colour.Alpha / 255f;

                // Luma weights of ITU-R BT.601.
                shades[(y * bitmap.Width) + x] = (((0.299f * colour.Red) + (0.587f * colour.Green) + (0.114f * colour.Blue)) * cover) + (255 * (1 - cover));
            }
        }

        return new GreyPicture(bitmap.Width, bitmap.Height, shades);
    }

    /// <summary>The upper left part of the picture.</summary>
    /// <param name="width">How many pixels across are kept.</param>
    /// <param name="height">How many down.</param>
    /// <returns>The part.</returns>
    public GreyPicture Cut(int width, int height)
    {
        if (width == Width && height == Height)
        {
            return this;
        }

        var shades = new float[width * height];
        for (var y = 0; y < height; y++)
        {
            Array.Copy(Shades, y * Width, shades, y * width, width);
        }

        return new GreyPicture(width, height, shades);
    }

    /// <summary>The same picture, each pixel the mean of the square round it, so that half a pixel's difference in an edge says little.</summary>
    /// <param name="radius">Half the square's side, in pixels.</param>
    /// <returns>The blurred picture.</returns>
    public GreyPicture Blurred(int radius) => this with { Shades = Blur(Blur(Shades, Width, Height, 1, Width, radius), Height, Width, Width, 1, radius) };

    /// <summary>How much ink a tile of the picture carries: 0 for paper as light as the lightest of the picture, 255 for black.</summary>
    /// <param name="left">The tile's left edge.</param>
    /// <param name="top">Its top edge.</param>
    /// <param name="side">Its side; what reaches over the picture's edge is left out.</param>
    /// <returns>The mean darkness.</returns>
    public double Ink(int left, int top, int side)
    {
        double sum = 0;
        var count = 0;
        for (var y = top; y < Math.Min(top + side, Height); y++)
        {
            for (var x = left; x < Math.Min(left + side, Width); x++)
            {
                sum += 255 - Shades[(y * Width) + x];
                count++;
            }
        }

        return count == 0 ? 0 : sum / count;
    }

    private static float[] Blur(float[] from, int lineLength, int lines, int step, int lineStep, int radius)
    {
        var to = new float[from.Length];
        for (var line = 0; line < lines; line++)
        {
            var start = line * lineStep;
            for (var i = 0; i < lineLength; i++)
            {
                var first = Math.Max(0, i - radius);
                var last = Math.Min(lineLength - 1, i + radius);
                float sum = 0;
                for (var j = first; j <= last; j++)
                {
                    sum += from[start + (j * step)];
                }

                to[start + (i * step)] = sum / (last - first + 1);
            }
        }

        return to;
    }
}
