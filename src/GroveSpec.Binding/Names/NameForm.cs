namespace GroveSpec.Binding.Names;

/// <summary>The form of a name by which it is compared.</summary>
internal static class NameForm
{
    /// <summary>The name itself.</summary>
    /// <param name="name">The name.</param>
    /// <returns>Its form.</returns>
    public static string Of(string name) => name;
}
