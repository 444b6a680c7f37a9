namespace GroveSpec.Conformance.Tests.Pictures;

/// <summary>
/// How far two pictures of one drawing are apart. The stated difference within which two renderers draw the same: on shades of 0 to 255,
/// blurred over five pixels, the mean differs by less than <see cref="MeanLimit"/>, and the ink of no tile of 32 by 32 pixels
/// by more than <see cref="TileLimit"/>. A single missing trunk exceeds that.
/// </summary>
/// <param name="Mean">The mean difference of shade after blurring, over the whole picture.</param>
/// <param name="WorstTile">The largest difference of ink in any tile.</param>
internal sealed record PictureDifference(double Mean, double WorstTile)
{
    /// <summary>The side of a tile, in pixels: about as wide as a trunk with its name.</summary>
    public const int TileSide = 32;

    /// <summary>The largest mean difference between renderers.</summary>
    public const double MeanLimit = 1.5;

    /// <summary>The largest difference of ink in a tile between renderers.</summary>
    public const double TileLimit = 8;

    private const int BlurRadius = 2;

    /// <summary>Whether both are within the stated difference.</summary>
    public bool IsAlike => Mean < MeanLimit && WorstTile <= TileLimit;

    /// <summary>Compares two pictures. Renderers round a drawing's height to a whole pixel in different ways: a row more or less is left out.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">The other.</param>
    /// <returns>How far they are apart.</returns>
    /// <exception cref="ArgumentException">Their sizes differ by more than one pixel.</exception>
    public static PictureDifference Between(GreyPicture left, GreyPicture right)
    {
        if (Math.Abs(left.Width - right.Width) > 1 || Math.Abs(left.Height - right.Height) > 1)
        {
            throw new ArgumentException($"One picture has {left.Width} by {left.Height} pixels, the other {right.Width} by {right.Height}.", nameof(right));
        }

        var (width, height) = (Math.Min(left.Width, right.Width), Math.Min(left.Height, right.Height));
        (left, right) = (left.Cut(width, height), right.Cut(width, height));
        var (smoothLeft, smoothRight) = (left.Blurred(BlurRadius), right.Blurred(BlurRadius));
        double sum = 0;
        for (var i = 0; i < smoothLeft.Shades.Length; i++)
        {
            sum += Math.Abs(smoothLeft.Shades[i] - smoothRight.Shades[i]);
        }

        double worst = 0;
        for (var top = 0; top < left.Height; top += TileSide)
        {
            for (var x = 0; x < left.Width; x += TileSide)
            {
                worst = Math.Max(worst, Math.Abs(left.Ink(x, top, TileSide) - right.Ink(x, top, TileSide)));
            }
        }

        return new PictureDifference(sum / smoothLeft.Shades.Length, worst);
    }
}
