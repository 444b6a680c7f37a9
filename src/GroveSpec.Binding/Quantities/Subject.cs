using GroveSpec.Binding.Names;

namespace GroveSpec.Binding.Quantities;

/// <summary>What a number is, to begin a sentence; put into words only when a sentence is needed.</summary>
/// <param name="Words">Such as "The height of", or "The latitude".</param>
/// <param name="Name">The name that ends the phrase; null when the words are enough.</param>
internal readonly record struct Subject(string Words, string? Name)
{
    /// <summary>A subject without a name.</summary>
    public static implicit operator Subject(string words) => new(words, null);

    /// <inheritdoc/>
    public override string ToString() => Name is null ? Words : $"{Words} {Saying.Short(Name)}";
}
