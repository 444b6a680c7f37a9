using System.Diagnostics.CodeAnalysis;

namespace GroveSpec.LanguageServer.Tests;

/// <summary>Compares addresses by the file they name, whichever characters they escape.</summary>
internal sealed class Addresses : IEqualityComparer<string?>
{
    public static readonly Addresses AreSame = new();

    public bool Equals(string? x, string? y) => (x is null ? null : new Uri(x).LocalPath) == (y is null ? null : new Uri(y).LocalPath);

    public int GetHashCode([DisallowNull] string? obj) => new Uri(obj).LocalPath.GetHashCode(StringComparison.Ordinal);
}
