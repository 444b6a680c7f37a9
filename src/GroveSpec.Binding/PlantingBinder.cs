using System.Collections.Immutable;
using GroveSpec.Binding.Names;
using GroveSpec.Binding.Origins;
using GroveSpec.Binding.Profiles;
using GroveSpec.Binding.Statements;
using GroveSpec.Binding.Use;
using GroveSpec.Checks;
using GroveSpec.Model;
using GroveSpec.Model.Judgement;
using GroveSpec.Model.Readings;
using GroveSpec.Model.Roles;
using GroveSpec.Model.Sites;
using GroveSpec.Model.Species;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Trunks;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Binding;

/// <summary>Binds one file: first the head and every name, so that a name may be used before it is given, then the rest.</summary>
internal sealed class PlantingBinder
{
    private readonly SyntaxTree tree;
    private readonly string file;
    private readonly List<Finding> findings = [];
    private readonly OriginTable origins;
    private readonly BindingScope scope;
    private readonly FileNames names;
    private readonly HeadBinder head;
    private readonly bool[] isNamed;
    private readonly HashSet<string> usedPaths = new(StringComparer.Ordinal);

    private readonly ImmutableArray<Trunk>.Builder trunks = ImmutableArray.CreateBuilder<Trunk>();
    private readonly ImmutableArray<TapeReading>.Builder tapes = ImmutableArray.CreateBuilder<TapeReading>();
    private readonly ImmutableArray<Role>.Builder roles = ImmutableArray.CreateBuilder<Role>();
    private readonly ImmutableArray<PlantingTask>.Builder tasks = ImmutableArray.CreateBuilder<PlantingTask>();
    private readonly ImmutableArray<SeenStage>.Builder seen = ImmutableArray.CreateBuilder<SeenStage>();
    private readonly ImmutableArray<MeasuredDay>.Builder measured = ImmutableArray.CreateBuilder<MeasuredDay>();
    private readonly ImmutableArray<Tolerance>.Builder tolerances = ImmutableArray.CreateBuilder<Tolerance>();
    private readonly ImmutableArray<AcceptedFinding>.Builder accepted = ImmutableArray.CreateBuilder<AcceptedFinding>();
    private readonly ImmutableArray<MutedCheck>.Builder muted = ImmutableArray.CreateBuilder<MutedCheck>();
    private readonly ImmutableArray<SpeciesProfile>.Builder profiles = ImmutableArray.CreateBuilder<SpeciesProfile>();

    /// <summary>Begins to bind a file.</summary>
    /// <param name="tree">Its tree.</param>
    /// <param name="file">Its path.</param>
    public PlantingBinder(SyntaxTree tree, string file)
    {
        this.tree = tree;
        this.file = file;
        origins = new OriginTable(file, tree.Statements.Length);
        scope = new BindingScope(tree, file, origins, findings, "");
        names = new FileNames(scope);
        head = new HeadBinder(scope);
        isNamed = new bool[tree.Statements.Length];
    }

    /// <summary>Binds it.</summary>
    /// <param name="reader">What reads the files that it uses.</param>
    /// <returns>What came of it.</returns>
    public BoundPlanting Bind(IFileReader reader)
    {
        SyntaxFindings.Add(tree, file, findings);
        for (var index = 0; index < tree.Statements.Length; index++)
        {
            isNamed[index] = !head.Bind(tree.Statements[index]) && TakeName(tree.Statements[index]);
        }

        names.Trunks.OfferFreeNames(scope);
        names.Roles.OfferFreeNames(scope);
        names.Tasks.OfferFreeNames(scope);
        var used = UsedFiles.Follow(tree, file, reader, findings);
        var shared = new List<(BindingScope Scope, Statement Statement)>();
        foreach (var one in used)
        {
            TakeShared(one, shared);
        }

        var isSouthern = head.Site?.IsSouthern ?? false;
        var trunkBinder = new TrunkBinder(scope, names.Role, isSouthern);
        BindStatements(trunkBinder, isSouthern);
        foreach (var (from, statement) in shared)
        {
            BindShared(from, statement);
        }

        BindSpecies(trunkBinder, used);
        TellNoPlanting();
        return new BoundPlanting(Planting(), origins, [.. findings], [.. used]);
    }

    private Planting Planting() => new()
    {
        Name = head.Name,
        Habit = head.Habit,
        Species = head.Species,
        Container = head.Container,
        Site = head.Site,
        Viewed = head.Viewed,
        Concept = head.Concept,
        Trunks = trunks.DrainToImmutable(),
        Tapes = tapes.DrainToImmutable(),
        Roles = roles.DrainToImmutable(),
        Tasks = tasks.DrainToImmutable(),
        Seen = seen.DrainToImmutable(),
        Measured = measured.DrainToImmutable(),
        Tolerances = tolerances.DrainToImmutable(),
        Accepted = accepted.DrainToImmutable(),
        Muted = muted.DrainToImmutable(),
        Profiles = profiles.DrainToImmutable(),
    };

    private void TellNoPlanting()
    {
        if (trunks.Count == 0)
        {
            return;
        }

        foreach (var statement in tree.Statements)
        {
            if (statement is Statement.Planting)
            {
                return;
            }
        }

        var start = new TextSpan(tree.Text.Content.StartsWith('\uFEFF') ? 1 : 0, 0);
        var finding = scope.Tell(FileDescriptions.NoPlanting, start, "This planting has no name: begin the file with planting \"…\".");
        scope.Amend(finding with
        {
            Remedies = [new Remedy("name the planting", [new TextEdit(scope.Place(start), "planting \"Unnamed\"" + tree.Text.LineBreakAt(start.Start))])],
        });
    }

    /// <summary>Takes the name that a statement gives.</summary>
    /// <returns>True when the statement gives a name that is new.</returns>
    private bool TakeName(Statement statement)
    {
        var isNew = statement switch
        {
            Statement.Trunk { Name: { } name } => names.Trunks.Add(name, scope),
            Statement.Role { Name: { } name } => names.Roles.Add(name, scope),
            Statement.Task { Name: { } name } => names.Tasks.Add(name, scope),
            Statement.Profile { Name: { } name } => names.Profiles.Add(name, scope),
            _ => false,
        };
        if (statement is Statement.Role)
        {
            names.RoleEndsAt(statement.Span.End);
        }

        return isNew;
    }

    private void BindStatements(TrunkBinder trunkBinder, bool isSouthern)
    {
        var taskBinder = new TaskBinder(scope, names, isSouthern);
        var readingBinder = new ReadingBinder(scope, names);
        var judgementBinder = new JudgementBinder(scope);
        var roleBinder = new RoleBinder(scope, isShared: false);
        var profileBinder = new ProfileBinder(scope);
        for (var index = 0; index < tree.Statements.Length; index++)
        {
            var statement = tree.Statements[index];
            switch (statement)
            {
                case Statement.Trunk { Name: { } name } trunk when isNamed[index]:
                    trunks.Add(trunkBinder.Bind(trunk, name));
                    break;
                case Statement.Tape tape:
                    Add(tapes, readingBinder.Tape(tape));
                    break;
                case Statement.Role { Name: { } name } role when isNamed[index]:
                    roles.Add(roleBinder.Bind(role, name));
                    break;
                case Statement.Task { Name: { } name } task when isNamed[index]:
                    Add(tasks, taskBinder.Bind(task, name));
                    break;
                case Statement.Seen stage:
                    Add(seen, readingBinder.Seen(stage));
                    break;
                case Statement.Measured day:
                    Add(measured, readingBinder.Measured(day));
                    break;
                case Statement.Tolerance tolerance:
                    Add(tolerances, judgementBinder.Tolerance(tolerance));
                    break;
                case Statement.Accept accept:
                    Add(accepted, judgementBinder.Accept(accept, names.Trunks));
                    break;
                case Statement.Mute mute:
                    Add(muted, judgementBinder.Mute(mute));
                    break;
                case Statement.Profile { Name: { } name } profile when isNamed[index]:
                    profiles.Add(profileBinder.Bind(profile, name));
                    break;
                default:
                    break;
            }
        }
    }

    private void TakeShared(UsedFile one, List<(BindingScope Scope, Statement Statement)> shared)
    {
        SyntaxFindings.Add(one.Tree, one.Path, findings);
        usedPaths.Add(one.Path);
        var own = new BindingScope(one.Tree, one.Path, origins, findings, "@" + OriginTable.Piece(one.Path));
        Statement? odd = null;
        var oddCount = 0;
        foreach (var statement in one.Tree.Statements)
        {
            switch (statement)
            {
                case Statement.Role { Name: { } name }:
                    if (names.Roles.AddShared(name, own, usedPaths.Contains))
                    {
                        shared.Add((own, statement));
                    }

                    break;
                case Statement.Profile { Name: { } name }:
                    if (names.Profiles.AddShared(name, own, usedPaths.Contains))
                    {
                        shared.Add((own, statement));
                    }

                    break;
                case Statement.Tolerance:
                    shared.Add((own, statement));
                    break;
                case Statement.Empty or Statement.Unknown or Statement.Use or Statement.Role or Statement.Profile:
                    break;
                default:
                    odd ??= statement;
                    oddCount++;
                    break;
            }
        }

        if (odd is not null)
        {
            own.Tell(
                FileDescriptions.NotShared,
                odd.Span,
                "Only roles, tolerances and species profiles are taken from a used file; this is left out" + (oddCount == 1 ? "." : $", and so are {oddCount - 1} more statements of the file."));
        }
    }

    private void BindShared(BindingScope from, Statement statement)
    {
        switch (statement)
        {
            case Statement.Role { Name: { } name } role:
                roles.Add(new RoleBinder(from, isShared: true).Bind(role, name));
                break;
            case Statement.Profile { Name: { } name } profile:
                profiles.Add(new ProfileBinder(from).Bind(profile, name));
                break;
            case Statement.Tolerance tolerance:
                Add(tolerances, new JudgementBinder(from).Tolerance(tolerance));
                break;
            default:
                break;
        }
    }

    /// <summary>Takes the built-in profile of each species that is named and has no profile yet; the built-in text is read only then.</summary>
    private void BindSpecies(TrunkBinder trunkBinder, List<UsedFile> used)
    {
        if (head.SpeciesName is { } main)
        {
            BindSpecies(main, used);
        }

        foreach (var word in trunkBinder.Species.Values)
        {
            if (word.Text != head.SpeciesName?.Text)
            {
                BindSpecies(word, used);
            }
        }
    }

    private void BindSpecies(NameSyntax word, List<UsedFile> used)
    {
        if (names.Profiles.Has(word.Text))
        {
            return;
        }

        if (BuiltInProfiles.Find(word.Text) is { } builtIn)
        {
            used.Add(builtIn);
            var own = new BindingScope(builtIn.Tree, builtIn.Path, origins, findings, "@built-in");
            foreach (var statement in builtIn.Tree.Statements)
            {
                if (statement is Statement.Profile { Name: { } name } profile)
                {
                    profiles.Add(new ProfileBinder(own).Bind(profile, name));
                }
            }

            return;
        }

        if (scope.IsTold(word.Span))
        {
            return;
        }

        var near = scope.Near(word.Text, names.Profiles.All.Concat(BuiltInProfiles.Names));
        scope.Tell(
            FileDescriptions.UnknownSpecies,
            word.Span,
            near is null
                ? $"No profile describes {Saying.Short(word.Text)}, so nothing is known of its year and its wood; add a profile if you have one."
                : $"No profile describes {Saying.Short(word.Text)}; perhaps {near} is meant.",
            near);
    }

    private static void Add<T>(ImmutableArray<T>.Builder list, T? item)
        where T : class
    {
        if (item is not null)
        {
            list.Add(item);
        }
    }
}
