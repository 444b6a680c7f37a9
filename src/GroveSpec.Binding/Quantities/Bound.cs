namespace GroveSpec.Binding.Quantities;

/// <summary>The least that a length may be.</summary>
internal enum Bound
{
    /// <summary>It may be negative.</summary>
    None,

    /// <summary>It may be zero.</summary>
    Zero,

    /// <summary>It is above zero.</summary>
    AboveZero,
}
