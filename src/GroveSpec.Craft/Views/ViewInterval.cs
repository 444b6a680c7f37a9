using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Views;

/// <summary>What a trunk's base covers of the picture's width.</summary>
/// <param name="Left">Its left edge.</param>
/// <param name="Right">Its right edge, not left of the left one.</param>
public readonly record struct ViewInterval(Length Left, Length Right)
{
    /// <summary>From edge to edge.</summary>
    public Length Width => Right - Left;

    /// <summary>How much of it another interval covers.</summary>
    /// <param name="other">The other interval.</param>
    /// <returns>The common width; none when they are apart.</returns>
    public Length Common(ViewInterval other)
    {
        var left = Left > other.Left ? Left : other.Left;
        var right = Right < other.Right ? Right : other.Right;
        return right > left ? right - left : Length.Zero;
    }
}
