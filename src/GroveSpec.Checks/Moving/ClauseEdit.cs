using GroveSpec.Model;
using GroveSpec.Model.Trunks;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Checks.Moving;

/// <summary>Writes a clause of a trunk's statement.</summary>
public static class ClauseEdit
{
    /// <summary>The edit that writes a clause in place of the one there is, or behind the trunk's last.</summary>
    /// <param name="origins">Where facts were written.</param>
    /// <param name="trunk">The trunk.</param>
    /// <param name="clause">The origin of the clause there is; null where there is none.</param>
    /// <param name="text">The new clause.</param>
    /// <returns>The edit.</returns>
    public static TextEdit Write(IOriginTable origins, Trunk trunk, Origin? clause, string text)
    {
        ArgumentNullException.ThrowIfNull(origins);
        ArgumentNullException.ThrowIfNull(trunk);
        if (clause is { } known)
        {
            return new(origins.Locate(known), text);
        }

        var statement = origins.StatementOf(trunk.Origin);
        return new(statement with { Span = new(statement.Span.End, 0) }, "   " + text);
    }
}
