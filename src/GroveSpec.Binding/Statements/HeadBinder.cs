using GroveSpec.Binding.Names;
using GroveSpec.Binding.Quantities;
using GroveSpec.Checks;
using GroveSpec.Model;
using GroveSpec.Model.Containers;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Sites;
using GroveSpec.Model.Views;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Binding.Statements;

/// <summary>Binds the statements about the whole planting. Of two of a kind the first holds.</summary>
/// <param name="scope">The file.</param>
internal sealed class HeadBinder(BindingScope scope)
{
    private readonly Dictionary<string, Statement> seen = new(StringComparer.Ordinal);

    /// <summary>The name.</summary>
    public Stated<string>? Name { get; private set; }

    /// <summary>The habit.</summary>
    public Stated<Habit>? Habit { get; private set; }

    /// <summary>The species.</summary>
    public Stated<string>? Species { get; private set; }

    /// <summary>Where the species is named.</summary>
    public NameSyntax? SpeciesName { get; private set; }

    /// <summary>The container.</summary>
    public Container? Container { get; private set; }

    /// <summary>The site.</summary>
    public Site? Site { get; private set; }

    /// <summary>The viewpoint.</summary>
    public Viewpoint? Viewed { get; private set; }

    /// <summary>The concept.</summary>
    public Stated<string>? Concept { get; private set; }

    /// <summary>Binds a statement if it is one of the head.</summary>
    /// <param name="statement">The statement.</param>
    /// <returns>True when it was one.</returns>
    public bool Bind(Statement statement)
    {
        switch (statement)
        {
            case Statement.Planting { Name: { } name } planting:
                Name = First("planting", planting) ? new(name.Value, Origin("planting", planting)) : Name;
                return true;
            case Statement.Habit { Value: { } value } habit:
                BindHabit(habit, value);
                return true;
            case Statement.Species { Name: { } name } species:
                if (First("species", species))
                {
                    Species = new(name.Text, Origin("species", species));
                    SpeciesName = name;
                }

                return true;
            case Statement.Concept { Text: { } text } concept:
                Concept = First("concept", concept) ? new(text.Value, Origin("concept", concept)) : Concept;
                return true;
            case Statement.Container container:
                if (container.Shape is not null && First("container", container))
                {
                    Container = new ContainerBinder(scope).Bind(container, Origin("container", container));
                }

                return true;
            case Statement.Site site:
                if (First("site", site))
                {
                    Site = new SiteBinder(scope).Bind(site, Origin("site", site));
                }

                return true;
            case Statement.Viewed viewed:
                if (First("viewed", viewed))
                {
                    Viewed = BindView(viewed, Origin("viewed", viewed));
                }

                return true;
            default:
                return statement is Statement.Planting or Statement.Habit or Statement.Species or Statement.Concept or Statement.Use;
        }
    }

    private Origin Origin(string word, Statement statement) => scope.Origin("head:" + word, statement);

    private bool First(string word, Statement statement)
    {
        if (seen.TryAdd(word, statement))
        {
            return true;
        }

        var finding = scope.Tell(FileDescriptions.SaidTwice, statement.Span, $"\"{word}\" was said already, and the first holds; take one of the two out.");
        scope.Amend(finding with
        {
            Related = [new RelatedPlace(scope.Place(seen[word].Span), $"the first \"{word}\"")],
            Remedies = [scope.TakeOut("take the second out", statement.Span)],
        });
        return false;
    }

    private void BindHabit(Statement.Habit habit, NameSyntax value)
    {
        if (!First("habit", habit))
        {
            return;
        }

        var index = Words.IndexOf(Words.Habits, value.Text);
        if (index < 0)
        {
            scope.TellWord(value, "a habit", Words.Habits);
            return;
        }

        Habit = new((Habit)index, Origin("habit", habit));
    }

    private Viewpoint BindView(Statement.Viewed viewed, Origin origin)
    {
        var once = new OnlyOnce(scope, "viewed");
        Bearing? from = null;
        Length? distance = null;
        Length? eye = null;
        DepthOrder? depth = null;
        foreach (var clause in viewed.Clauses)
        {
            if (!once.Take(clause))
            {
                continue;
            }

            switch (clause)
            {
                case Clause.ViewedFrom view:
                    from = scope.Quantities.Bearing(view.Bearing, "The bearing of the viewer");
                    break;
                case Clause.ViewedAt view:
                    distance = scope.Quantities.Length(view.Distance, "The distance of the viewer", Bound.AboveZero);
                    break;
                case Clause.Eye view:
                    eye = scope.Quantities.Length(view.AboveSoil, "The height of the eye", Bound.Zero);
                    break;
                case Clause.Depth view:
                    var index = Words.IndexOf(Words.Depths, view.Word.Text);
                    if (index < 0)
                    {
                        scope.TellWord(view.Word, "a depth", Words.Depths);
                    }
                    else
                    {
                        depth = (DepthOrder)index;
                    }

                    break;
                default:
                    break;
            }
        }

        return new Viewpoint { Origin = origin, From = from ?? Bearing.Front, Distance = distance, EyeHeight = eye, Depth = depth };
    }
}
