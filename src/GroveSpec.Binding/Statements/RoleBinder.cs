using System.Collections.Immutable;
using GroveSpec.Binding.Names;
using GroveSpec.Binding.Origins;
using GroveSpec.Binding.Quantities;
using GroveSpec.Checks;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Roles;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Binding.Statements;

/// <summary>Binds roles.</summary>
/// <param name="scope">The file.</param>
/// <param name="isShared">Whether it is a used file.</param>
internal sealed class RoleBinder(BindingScope scope, bool isShared)
{
    /// <summary>Binds a role.</summary>
    /// <param name="statement">The statement.</param>
    /// <param name="name">Its name.</param>
    /// <returns>The role, with what could be taken.</returns>
    public Role Bind(Statement.Role statement, NameSyntax name)
    {
        var origin = scope.Origin("role:" + OriginTable.Piece(name.Text), statement);
        var once = new OnlyOnce(scope, $"the role {Saying.Short(name.Text)}");
        var role = new Role { Name = name.Text, Origin = origin, IsShared = isShared };
        var aims = ImmutableArray.CreateBuilder<Aim>();
        var ceilings = ImmutableArray.CreateBuilder<Ceiling>();
        var aimCount = 0;
        var keepCount = 0;
        foreach (var clause in statement.Clauses)
        {
            switch (clause)
            {
                case Clause.Aim aim:
                    if (BindAim(aim, origin.Part(PartPlaces.Repeated("aim", ++aimCount))) is { } bound)
                    {
                        aims.Add(bound);
                    }

                    break;
                case Clause.Keep keep:
                    if (BindKeep(keep, origin.Part(PartPlaces.Repeated("keep", ++keepCount))) is { } ceiling)
                    {
                        ceilings.Add(ceiling);
                    }

                    break;
                default:
                    role = once.Take(clause) ? WithClause(role, clause, origin) : role;
                    break;
            }
        }

        TellAimsAbove(statement, name, aims, ceilings);
        return role with { Aims = aims.ToImmutable(), Ceilings = ceilings.ToImmutable() };
    }

    private Role WithClause(Role role, Clause clause, Origin origin)
    {
        switch (clause)
        {
            case Clause.Form form:
                return Choose(form.Value, "a form", Words.Forms) is { } index ? role with { Form = new((Form)index, origin.Part("form")) } : role;
            case Clause.Vigour vigour:
                return Choose(vigour.Value, "a vigour", Words.Vigours) is { } strength ? role with { Vigour = new((Vigour)strength, origin.Part("vigour")) } : role;
            case Clause.Rank rank:
                return scope.Quantities.Count(rank.Number, "The rank", 1, 1000) is { } number ? role with { Rank = new(number, origin.Part("rank")) } : role;
            case Clause.Story story:
                return role with { Story = new(story.Text.Value, origin.Part("story")) };
            default:
                return role;
        }
    }

    private Aim? BindAim(Clause.Aim aim, Origin origin)
    {
        var dimension = Choose(aim.Dimension, "a size", Words.Dimensions);
        var target = scope.Quantities.Length(aim.Quantity, "The aim", Bound.AboveZero);
        var year = scope.Dates.Year(aim.Year);
        return dimension is { } index && target is { } length && year is { } by ? new Aim((Dimension)index, length, by, origin) : null;
    }

    private Ceiling? BindKeep(Clause.Keep keep, Origin origin)
    {
        var dimension = Choose(keep.Dimension, "a size", Words.Dimensions);
        var limit = scope.Quantities.Length(keep.Quantity, "The size to stay under", Bound.AboveZero);
        return dimension is { } index && limit is { } length ? new Ceiling((Dimension)index, length, origin) : null;
    }

    private void TellAimsAbove(Statement.Role statement, NameSyntax name, ImmutableArray<Aim>.Builder aims, ImmutableArray<Ceiling>.Builder ceilings)
    {
        if (aims.Count == 0 || ceilings.Count == 0)
        {
            return;
        }

        foreach (var dimension in (ReadOnlySpan<Dimension>)[Dimension.Diameter, Dimension.Height])
        {
            Ceiling? lowest = null;
            foreach (var ceiling in ceilings)
            {
                lowest = ceiling.Dimension == dimension && (lowest is null || ceiling.Limit < lowest.Limit) ? ceiling : lowest;
            }

            foreach (var aim in aims)
            {
                if (lowest is not null && aim.Dimension == dimension && aim.Target >= lowest.Limit)
                {
                    var finding = scope.Tell(
                        FileDescriptions.Contradiction,
                        PartPlaces.NameOf(statement),
                        $"The role {Saying.Short(name.Text)} aims at a {Words.Dimensions[(int)dimension]} of {LengthWording.Say(aim.Target, UnitSystem.Metric)} and is kept under {LengthWording.Say(lowest.Limit, UnitSystem.Metric)}.");
                    scope.Amend(finding with
                    {
                        Place = scope.Origins.Locate(aim.Origin),
                        Related = [new RelatedPlace(scope.Origins.Locate(lowest.Origin), "the size to stay under")],
                    });
                    break;
                }
            }
        }
    }

    private int? Choose(NameSyntax word, string what, IReadOnlyList<string> words)
    {
        var index = Words.IndexOf(words, word.Text);
        if (index >= 0)
        {
            return index;
        }

        scope.TellWord(word, what, words);
        return null;
    }
}
