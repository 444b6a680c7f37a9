using GroveSpec.Model;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Checks.Tests;

/// <summary>A table of origins that counts how often it is asked.</summary>
internal sealed class CountedOrigins(IOriginTable table) : IOriginTable
{
    /// <summary>How often it was asked.</summary>
    public int Asked { get; private set; }

    /// <inheritdoc/>
    public SourceSpan Locate(Origin origin)
    {
        Asked++;
        return table.Locate(origin);
    }

    /// <inheritdoc/>
    public SourceSpan StatementOf(Origin origin)
    {
        Asked++;
        return table.StatementOf(origin);
    }

    /// <inheritdoc/>
    public TextEdit WriteBehind(Origin origin, params ReadOnlySpan<string> lines)
    {
        Asked++;
        return table.WriteBehind(origin, lines);
    }
}
