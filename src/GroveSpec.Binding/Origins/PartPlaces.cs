using System.Collections.Immutable;
using System.Globalization;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Binding.Origins;

/// <summary>The names of a statement's parts, and where a part stands.</summary>
internal static class PartPlaces
{
    /// <summary>The name of a clause within its statement.</summary>
    /// <param name="clause">The clause.</param>
    /// <returns>A word.</returns>
    public static string NameOf(Clause clause) => clause switch
    {
        Clause.At => "at",
        Clause.Thickness => "diameter",
        Clause.Height => "height",
        Clause.Lean => "lean",
        Clause.Line => "line",
        Clause.Crown => "crown",
        Clause.Role => "role",
        Clause.Species => "species",
        Clause.Raised => "raised",
        Clause.Planned => "planned",
        Clause.Removed => "removed",
        Clause.Fixed => "fixed",
        Clause.Form => "form",
        Clause.Vigour => "vigour",
        Clause.Aim => "aim",
        Clause.Keep => "keep",
        Clause.Rank => "rank",
        Clause.Story => "story",
        Clause.Latitude => "latitude",
        Clause.Zone => "zone",
        Clause.Frost { IsLast: true } => "last-frost",
        Clause.Frost => "first-frost",
        Clause.Means => "means",
        Clause.Sun => "sun",
        Clause.ViewedFrom => "from",
        Clause.ViewedAt => "at",
        Clause.Eye => "eye",
        Clause.Depth => "depth",
        Clause.During => "during",
        Clause.FromTo => "from-to",
        Clause.After => "after",
        Clause.Before => "before",
        Clause.Offset => "offset",
        Clause.Every => "every",
        Clause.Until => "until",
        Clause.WithWire => "with",
        Clause.Coil => "coil",
        Clause.Stretch => "span",
        Clause.Bend => "bend",
        Clause.Position => "position",
        Clause.Facing => "facing",
        Clause.Done => "done",
        _ => "note",
    };

    /// <summary>Where a part of a statement stands.</summary>
    /// <param name="entry">The statement, or a row of it.</param>
    /// <param name="part">The part's name; empty for the name of the whole.</param>
    /// <returns>Its place; where there is no such part, the place of the statement's name.</returns>
    public static TextSpan Find(OriginEntry entry, string part)
    {
        var statement = entry.Statement;
        if (entry.Row is { } row)
        {
            return ClausePlace(row.Values, part) ?? row.Trunk.Span;
        }

        var place = part.Length == 0 ? null : statement switch
        {
            Statement.Trunk trunk => ClausePlace(trunk.Clauses, part),
            Statement.Role role => ClausePlace(role.Clauses, part),
            Statement.Site site => ClausePlace(site.Clauses, part),
            Statement.Viewed viewed => ClausePlace(viewed.Clauses, part),
            Statement.Task task => TaskPlace(task, part),
            Statement.Profile profile => EntryPlace(profile.Entries, part),
            Statement.Tape tape => part switch
            {
                "from" => tape.From?.Span,
                "to" => tape.To?.Span,
                "distance" => tape.Distance?.Span,
                _ => null,
            },
            Statement.Tolerance tolerance => part == "limit" ? tolerance.Limit?.Span : tolerance.Check?.Span,
            Statement.Accept accept => part switch
            {
                "check" => accept.Check?.Span,
                "reason" => accept.Reason?.Span,
                _ => Numbered(accept.Trunks, part, "trunk"),
            },
            Statement.Mute mute => part == "reason" ? mute.Reason?.Span : mute.Check?.Span,
            Statement.Container container => part == "depth" ? container.Depth?.Span : null,
            _ => null,
        };
        return place ?? NameOf(statement);
    }

    /// <summary>The word that names a statement, or the whole statement where none does.</summary>
    /// <param name="statement">The statement.</param>
    /// <returns>Its place.</returns>
    public static TextSpan NameOf(Statement statement) => statement switch
    {
        Statement.Trunk { Name: { } name } => name.Span,
        Statement.Role { Name: { } name } => name.Span,
        Statement.Task { Name: { } name } => name.Span,
        Statement.Profile { Name: { } name } => name.Span,
        Statement.Measured { Date: { } date } => date.Span,
        Statement.Accept { Check: { } check } => check.Span,
        Statement.Mute { Check: { } check } => check.Span,
        Statement.Tolerance { Check: { } check } => check.Span,
        Statement.Use { Path: { } path } => path.Span,
        Statement.Planting { Name: { } name } => name.Span,
        Statement.Habit { Value: { } value } => value.Span,
        Statement.Species { Name: { } name } => name.Span,
        Statement.Concept { Text: { } text } => text.Span,
        _ => statement.Span,
    };

    /// <summary>The name of a part that may stand several times.</summary>
    /// <param name="name">The part's name.</param>
    /// <param name="count">Which of them, from 1.</param>
    /// <returns>The name itself for the first, with <c>~2</c> behind it for the second.</returns>
    public static string Repeated(string name, int count) => count == 1 ? name : string.Create(CultureInfo.InvariantCulture, $"{name}~{count}");

    private static TextSpan? TaskPlace(Statement.Task task, string part)
    {
        switch (part)
        {
            case "kind":
                return task.Kind?.Span;
            case "target":
                return task.Target?.Span;
            case "of" when task.Target is TargetSyntax.OfTask of:
                return of.Name.Span;
            case "on-role" when task.Target is TargetSyntax.OnRole role:
                return role.Name.Span;
            default:
                return task.Target is TargetSyntax.OnTrunks on && Numbered(on.Names, part, "on") is { } place
                    ? place
                    : ClausePlace(task.Clauses, part);
        }
    }

    private static TextSpan? ClausePlace(ImmutableArray<Clause> clauses, string part)
    {
        var (name, wanted) = Split(part);
        var count = 0;
        foreach (var clause in clauses)
        {
            if (NameOf(clause) == name && ++count == wanted)
            {
                return clause.Span;
            }
        }

        return null;
    }

    private static TextSpan? EntryPlace(ImmutableArray<ProfileEntrySyntax> entries, string part)
    {
        var (name, wanted) = Split(part);
        var count = 0;
        foreach (var entry in entries)
        {
            if (entry.Keyword.Text == name && ++count == wanted)
            {
                return entry.Span;
            }
        }

        return null;
    }

    private static TextSpan? Numbered(ImmutableArray<NameSyntax> names, string part, string prefix)
    {
        var (name, wanted) = Split(part);
        return name == prefix && wanted <= names.Length ? names[wanted - 1].Span : null;
    }

    private static (string Name, int Count) Split(string part)
    {
        var mark = part.LastIndexOf('~');
        return mark > 0 && int.TryParse(part.AsSpan(mark + 1), NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count > 0
            ? (part[..mark], count)
            : (part, 1);
    }
}
