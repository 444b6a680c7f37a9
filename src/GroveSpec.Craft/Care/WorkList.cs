using System.Collections.Immutable;
using GroveSpec.Craft.Calendar;
using GroveSpec.Model;
using GroveSpec.Model.Roles;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Trunks;

namespace GroveSpec.Craft.Care;

/// <summary>The work of a planting, each task with what it is done to.</summary>
public static class WorkList
{
    private const int MostSteps = 64;

    /// <summary>All work.</summary>
    /// <param name="planting">The planting.</param>
    /// <param name="dated">Its tasks with their days.</param>
    /// <returns>One entry for each task, in the order of the file.</returns>
    public static ImmutableArray<Work> Of(Planting planting, ImmutableArray<DatedTask> dated)
    {
        if (planting.Tasks.IsEmpty)
        {
            return [];
        }

        var tasks = new Dictionary<string, PlantingTask>(planting.Tasks.Length, StringComparer.Ordinal);
        foreach (var task in planting.Tasks)
        {
            tasks.TryAdd(task.Name, task);
        }

        var kinds = new Dictionary<string, TreeKind>(StringComparer.Ordinal);
        var restrained = planting.Trunks.Where(trunk => planting.RoleOf(trunk) is { Vigour.Value: Vigour.Restrain }).Select(trunk => trunk.Name).ToHashSet(StringComparer.Ordinal);
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var index = 0; index < planting.Trunks.Length; index++)
        {
            places.TryAdd(planting.Trunks[index].Name, index);
        }

        var everyTrunk = new Targets(NamesOf(planting.Trunks), KindsOf(planting, planting.Trunks, kinds));
        var ofOne = new Dictionary<string, Targets>(StringComparer.Ordinal);
        var work = ImmutableArray.CreateBuilder<Work>(dated.Length);
        foreach (var one in dated)
        {
            var target = Followed(one.Task, tasks);
            var isOfAll = target is TaskTarget.OnAll;

            // Most work is done to one trunk, and much of it to the same.
            var only = target is TaskTarget.OnTrunks { Names: [var name] } ? name.Value : null;
            if (only is null || !ofOne.TryGetValue(only, out var targets))
            {
                targets = isOfAll ? everyTrunk : Found(planting, target, places, kinds);
                if (only is not null)
                {
                    ofOne.Add(only, targets);
                }
            }

            var (trunks, species) = targets;
            work.Add(new Work(one, trunks, isOfAll, species, restrained.Count > 0 ? [.. trunks.Where(restrained.Contains)] : []));
        }

        return work.MoveToImmutable();
    }

    /// <summary>What is known of a species of the planting.</summary>
    /// <param name="planting">The planting.</param>
    /// <param name="species">The name as written.</param>
    /// <returns>What is known.</returns>
    public static TreeKind KindOf(Planting planting, string? species) => new(species, planting.ProfileOf(species), TreeYear.Of(planting, species));

    private static TaskTarget? Followed(PlantingTask task, Dictionary<string, PlantingTask> tasks)
    {
        var target = task.Target;
        for (var step = 0; step < MostSteps && target is TaskTarget.OfTask of; step++)
        {
            target = tasks.TryGetValue(of.Name.Value, out var other) ? other.Target : null;
        }

        return target;
    }

    private static Targets Found(Planting planting, TaskTarget? target, Dictionary<string, int> places, Dictionary<string, TreeKind> kinds)
    {
        IEnumerable<Trunk> trunks = target switch
        {
            TaskTarget.OnTrunks on => on.Names.Where(name => places.ContainsKey(name.Value)).Select(name => places[name.Value]).Distinct().Select(place => planting.Trunks[place]),
            TaskTarget.OnRole role => planting.Trunks.Where(trunk => trunk.Role?.Value == role.Name.Value),
            _ => [],
        };
        ImmutableArray<Trunk> found = [.. trunks];
        return new Targets(NamesOf(found), KindsOf(planting, found, kinds));
    }

    // By name, so that the order in which a grower writes the trunks changes nothing that is told.
    private static ImmutableArray<string> NamesOf(ImmutableArray<Trunk> trunks) => [.. trunks.Select(trunk => trunk.Name).Order(StringComparer.Ordinal)];

    private static ImmutableArray<TreeKind> KindsOf(Planting planting, IEnumerable<Trunk> trunks, Dictionary<string, TreeKind> kinds)
    {
        var species = trunks.Select(planting.SpeciesOf).DefaultIfEmpty(planting.Species?.Value).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal);
        return
        [
            .. species.Select(name =>
            {
                if (!kinds.TryGetValue(name ?? "", out var kind))
                {
                    kinds.Add(name ?? "", kind = KindOf(planting, name));
                }

                return kind;
            }),
        ];
    }

    private readonly record struct Targets(ImmutableArray<string> Trunks, ImmutableArray<TreeKind> Kinds);
}
