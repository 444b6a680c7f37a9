using System.Collections.Immutable;
using System.Diagnostics;
using System.Diagnostics.CodeAnalysis;
using System.Runtime.InteropServices;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Syntax.Parsing;

/// <summary>Makes of statements the same ones elsewhere in a text.</summary>
/// <param name="by">By how many UTF-16 code units farther from the start they stand.</param>
/// <param name="byTokens">By how many tokens.</param>
internal sealed partial class MovedStatement(int by, int byTokens)
{
    /// <summary>The same statement at its new place.</summary>
    /// <param name="statement">A statement.</param>
    /// <returns>It, with its parts and tokens where they are now; the very same one where nothing moves.</returns>
    public Statement Of(Statement statement)
    {
        if (by == 0)
        {
            return byTokens == 0 ? statement : statement with { FirstToken = statement.FirstToken + byTokens };
        }

        var (span, first) = (statement.Span.Moved(by), statement.FirstToken + byTokens);
        return statement switch
        {
            Statement.Empty empty => empty with { Span = span, FirstToken = first },
            Statement.Unknown unknown => unknown with { Span = span, FirstToken = first },
            Statement.Planting planting => planting with { Span = span, FirstToken = first, Name = Of(planting.Name) },
            Statement.Habit habit => habit with { Span = span, FirstToken = first, Value = Of(habit.Value) },
            Statement.Species species => species with { Span = span, FirstToken = first, Name = Of(species.Name) },
            Statement.Container container => container with { Span = span, FirstToken = first, Shape = Of(container.Shape), Dimensions = All(container.Dimensions, Of), Corners = All(container.Corners, Of), Depth = Of(container.Depth) },
            Statement.Site site => site with { Span = span, FirstToken = first, Clauses = All(site.Clauses, Of) },
            Statement.Viewed viewed => viewed with { Span = span, FirstToken = first, Clauses = All(viewed.Clauses, Of) },
            Statement.Concept concept => concept with { Span = span, FirstToken = first, Text = Of(concept.Text) },
            Statement.Use use => use with { Span = span, FirstToken = first, Path = Of(use.Path) },
            Statement.Trunk trunk => trunk with { Span = span, FirstToken = first, Name = Of(trunk.Name), Clauses = All(trunk.Clauses, Of) },
            Statement.Tape tape => tape with { Span = span, FirstToken = first, From = Of(tape.From), To = Of(tape.To), Distance = Of(tape.Distance) },
            Statement.Role role => role with { Span = span, FirstToken = first, Name = Of(role.Name), Clauses = All(role.Clauses, Of) },
            Statement.Task task => task with { Span = span, FirstToken = first, Name = Of(task.Name), Kind = Of(task.Kind), OtherKind = Of(task.OtherKind), Target = Of(task.Target), Clauses = All(task.Clauses, Of) },
            Statement.Seen seen => seen with { Span = span, FirstToken = first, Stage = Of(seen.Stage), Date = Of(seen.Date) },
            Statement.Measured measured => measured with { Span = span, FirstToken = first, Date = Of(measured.Date), Readings = All(measured.Readings, Of) },
            Statement.Tolerance tolerance => tolerance with { Span = span, FirstToken = first, Check = Of(tolerance.Check), Limit = Of(tolerance.Limit) },
            Statement.Accept accept => accept with { Span = span, FirstToken = first, Check = Of(accept.Check), Trunks = All(accept.Trunks, Of), Reason = Of(accept.Reason) },
            Statement.Mute mute => mute with { Span = span, FirstToken = first, Check = Of(mute.Check), Reason = Of(mute.Reason) },
            Statement.Profile profile => profile with { Span = span, FirstToken = first, Name = Of(profile.Name), Entries = All(profile.Entries, Of) },
            _ => throw new UnreachableException(),
        };
    }

    private static ImmutableArray<T> All<T>(ImmutableArray<T> parts, Func<T, T> moved)
    {
        if (parts.IsDefaultOrEmpty)
        {
            return parts;
        }

        var all = new T[parts.Length];
        for (var index = 0; index < all.Length; index++)
        {
            all[index] = moved(parts[index]);
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(all);
    }

    [return: NotNullIfNotNull(nameof(name))]
    private NameSyntax? Of(NameSyntax? name) => name is null ? null : name with { Span = name.Span.Moved(by) };

    [return: NotNullIfNotNull(nameof(text))]
    private TextSyntax? Of(TextSyntax? text) => text is null ? null : text with { Span = text.Span.Moved(by) };

    [return: NotNullIfNotNull(nameof(quantity))]
    private QuantitySyntax? Of(QuantitySyntax? quantity) => quantity is null ? null : quantity with { Span = quantity.Span.Moved(by), Unit = Of(quantity.Unit) };

    private PlanPointSyntax Of(PlanPointSyntax point) => point with { Span = point.Span.Moved(by), X = Of(point.X), Y = Of(point.Y) };

    private SpacePointSyntax Of(SpacePointSyntax point) => point with { Span = point.Span.Moved(by), X = Of(point.X), Y = Of(point.Y), Z = Of(point.Z) };

    private AnnualDateSyntax Of(AnnualDateSyntax date) => date with { Span = date.Span.Moved(by), Month = Of(date.Month) };

    private ReadingSyntax Of(ReadingSyntax reading) => reading with { Span = reading.Span.Moved(by), Trunk = Of(reading.Trunk), Values = All(reading.Values, Of) };

    private ProfileEntrySyntax Of(ProfileEntrySyntax entry) => entry with { Span = entry.Span.Moved(by), Keyword = Of(entry.Keyword), Values = All(entry.Values, OfValue), Source = Of(entry.Source) };

    /// <summary>A value of a profile's entry.</summary>
    private SyntaxNode OfValue(SyntaxNode value) => value switch
    {
        NameSyntax name => Of(name),
        TextSyntax text => Of(text),
        QuantitySyntax quantity => Of(quantity),
        _ => throw new UnreachableException(),
    };

    private MomentSyntax.Date? Of(MomentSyntax.Date? date) => date is null ? null : date with { Span = date.Span.Moved(by) };

    [return: NotNullIfNotNull(nameof(moment))]
    private MomentSyntax? Of(MomentSyntax? moment)
    {
        if (moment is null)
        {
            return null;
        }

        var span = moment.Span.Moved(by);
        return moment switch
        {
            MomentSyntax.Date date => date with { Span = span },
            MomentSyntax.Season season => season with { Span = span, Part = Of(season.Part), Name = Of(season.Name), Year = Of(season.Year) },
            MomentSyntax.Stage stage => stage with { Span = span, Name = Of(stage.Name), Year = Of(stage.Year) },
            MomentSyntax.Task task => task with { Span = span, Name = Of(task.Name) },
            _ => throw new UnreachableException(),
        };
    }

    private TargetSyntax? Of(TargetSyntax? target)
    {
        if (target is null)
        {
            return null;
        }

        var span = target.Span.Moved(by);
        return target switch
        {
            TargetSyntax.OnTrunks on => on with { Span = span, Names = All(on.Names, Of) },
            TargetSyntax.OnAll all => all with { Span = span },
            TargetSyntax.OnRole on => on with { Span = span, Name = Of(on.Name) },
            TargetSyntax.OfTask of => of with { Span = span, Name = Of(of.Name) },
            _ => throw new UnreachableException(),
        };
    }
}
