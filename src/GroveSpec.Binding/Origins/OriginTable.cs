using System.Globalization;
using System.Text;
using GroveSpec.Checks;
using GroveSpec.Model;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Binding.Origins;

/// <summary>
/// Gives statements their origins and finds them again. An origin is made of the statement's kind and names, so it stays
/// the same while other lines change; the parts of a statement are looked up only when somebody asks.
/// </summary>
/// <param name="file">The path of the planting's own file.</param>
/// <param name="expected">About how many statements there will be.</param>
internal sealed class OriginTable(string file, int expected = 0) : IOriginTable
{
    private readonly Dictionary<string, OriginEntry> entries = new(expected, StringComparer.Ordinal);
    private readonly Dictionary<string, int> repeats = new(StringComparer.Ordinal);

    /// <summary>A name as a piece of an origin: the marks that join pieces are written in another way.</summary>
    /// <param name="name">The name.</param>
    /// <returns>The piece.</returns>
    public static string Piece(string name) => name.AsSpan().IndexOfAny('~', '/') < 0
        ? name
        : name.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal);

    /// <summary>Gives a statement its origin.</summary>
    /// <param name="id">Its name; a second statement of the same name gets <c>~2</c> behind it, a third <c>~3</c>.</param>
    /// <param name="entry">What stands behind it.</param>
    /// <returns>The origin.</returns>
    public Origin Add(string id, OriginEntry entry)
    {
        if (entries.TryAdd(id, entry))
        {
            return new Origin(id);
        }

        var count = repeats.GetValueOrDefault(id, 1) + 1;
        repeats[id] = count;
        var own = string.Create(CultureInfo.InvariantCulture, $"{id}~{count}");
        entries[own] = entry;
        return new Origin(own);
    }

    /// <inheritdoc/>
    public SourceSpan Locate(Origin origin)
    {
        if (origin.Id is null || Find(origin.Id, out var part) is not { } entry)
        {
            return new SourceSpan(file, new TextSpan(0, 0));
        }

        return new SourceSpan(entry.File, PartPlaces.Find(entry, part));
    }

    /// <inheritdoc/>
    public SourceSpan StatementOf(Origin origin) => origin.Id is not null && Find(origin.Id, out _) is { } entry
        ? new SourceSpan(entry.File, entry.Row?.Span ?? entry.Statement.Span)
        : new SourceSpan(file, new TextSpan(0, 0));

    /// <inheritdoc/>
    public TextEdit WriteBehind(Origin origin, params ReadOnlySpan<string> lines)
    {
        if (origin.Id is null || Find(origin.Id, out _) is not { } entry)
        {
            return new TextEdit(new SourceSpan(file, new TextSpan(0, 0)), string.Concat(string.Join('\n', lines), "\n"));
        }

        var end = entry.Text.EndOfLine(entry.Statement.Span.End);
        var lineBreak = entry.Text.LineBreakAt(end);
        var written = new StringBuilder();
        foreach (var line in lines)
        {
            written.Append(lineBreak).Append(line);
        }

        return new TextEdit(new SourceSpan(entry.File, new TextSpan(end, 0)), written.ToString());
    }

    private OriginEntry? Find(string id, out string part)
    {
        part = "";
        if (entries.TryGetValue(id, out var entry))
        {
            return entry;
        }

        for (var slash = id.LastIndexOf('/'); slash > 0; slash = id.LastIndexOf('/', slash - 1))
        {
            if (entries.TryGetValue(id[..slash], out entry))
            {
                part = id[(slash + 1)..];
                return entry;
            }
        }

        return null;
    }
}
