using System.Collections.Immutable;
using GroveSpec.Model.Containers;
using GroveSpec.Model.Judgement;
using GroveSpec.Model.Readings;
using GroveSpec.Model.Roles;
using GroveSpec.Model.Sites;
using GroveSpec.Model.Species;
using GroveSpec.Model.States;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Trunks;
using GroveSpec.Model.Views;
using NodaTime;

namespace GroveSpec.Model;

/// <summary>One planting as written: every fact in the order of the file, each with its origin. It never changes.</summary>
public sealed record Planting
{
    /// <summary>The planting's name; null when the file does not give one.</summary>
    public Stated<string>? Name { get; init; }

    /// <summary>How the trunks belong together; null when left out, see <see cref="EffectiveHabit"/>.</summary>
    public Stated<Habit>? Habit { get; init; }

    /// <summary>The species of all trunks that name none; null when left out.</summary>
    public Stated<string>? Species { get; init; }

    /// <summary>What it stands in; null when left out.</summary>
    public Container? Container { get; init; }

    /// <summary>Where it is kept; null when left out.</summary>
    public Site? Site { get; init; }

    /// <summary>Where it is seen from; null when left out.</summary>
    public Viewpoint? Viewed { get; init; }

    /// <summary>The story it tells; null when left out.</summary>
    public Stated<string>? Concept { get; init; }

    /// <summary>The trunks.</summary>
    public ImmutableArray<Trunk> Trunks { get; init; } = [];

    /// <summary>Distances between trunks.</summary>
    public ImmutableArray<TapeReading> Tapes { get; init; } = [];

    /// <summary>The roles, those of used files last.</summary>
    public ImmutableArray<Role> Roles { get; init; } = [];

    /// <summary>The work.</summary>
    public ImmutableArray<PlantingTask> Tasks { get; init; } = [];

    /// <summary>Stages of the year as they came.</summary>
    public ImmutableArray<SeenStage> Seen { get; init; } = [];

    /// <summary>What was read and when.</summary>
    public ImmutableArray<MeasuredDay> Measured { get; init; } = [];

    /// <summary>Limits set for checks; where one check has several, the file's own comes before a used one.</summary>
    public ImmutableArray<Tolerance> Tolerances { get; init; } = [];

    /// <summary>Findings that are let stand.</summary>
    public ImmutableArray<AcceptedFinding> Accepted { get; init; } = [];

    /// <summary>Checks that are turned off.</summary>
    public ImmutableArray<MutedCheck> Muted { get; init; } = [];

    /// <summary>Species profiles: the file's own, then used ones, then the built-in ones that the planting names.</summary>
    public ImmutableArray<SpeciesProfile> Profiles { get; init; } = [];

    /// <summary>The habit that holds: separate trees when the file does not say.</summary>
    public Habit EffectiveHabit => Habit?.Value ?? Model.Habit.Group;

    /// <summary>The species of a trunk, or none known.</summary>
    /// <param name="trunk">A trunk of this planting.</param>
    /// <returns>The species' name as written, or null.</returns>
    public string? SpeciesOf(Trunk trunk) => (trunk.Species ?? Species)?.Value;

    /// <summary>The profile of a species, or none known.</summary>
    /// <param name="species">The species' name as written.</param>
    /// <returns>The first profile of that name, or null.</returns>
    public SpeciesProfile? ProfileOf(string? species) => species is null ? null : Profiles.FirstOrDefault(profile => profile.Name == species);

    /// <summary>The role a trunk plays, or none known.</summary>
    /// <param name="trunk">A trunk of this planting.</param>
    /// <returns>The role, or null where the trunk has none or its name is unknown.</returns>
    public Role? RoleOf(Trunk trunk) => trunk.Role is { } role ? Roles.FirstOrDefault(candidate => candidate.Name == role.Value) : null;

    /// <summary>Whether a trunk's base may not be moved: it says so, or the planting is a clump or raft.</summary>
    /// <param name="trunk">A trunk of this planting.</param>
    /// <returns>True when no suggestion may move it.</returns>
    public bool IsFixed(Trunk trunk) => trunk.Fixed is not null || EffectiveHabit != Model.Habit.Group;

    /// <summary>
    /// The day to show when nobody names one: the newest reading, the newest day on which a task was done,
    /// or the newest day on which a stage was seen; null where the file holds none of these.
    /// </summary>
    public LocalDate? NewestDay
    {
        get
        {
            LocalDate? newest = null;
            foreach (var day in Measured.Select(day => day.Date)
                .Concat(Tasks.SelectMany(task => task.Done).Select(done => done.Value))
                .Concat(Seen.Select(seen => seen.Date)))
            {
                newest = newest is null || day > newest ? day : newest;
            }

            return newest;
        }
    }

    /// <summary>The planting as it is on a day.</summary>
    /// <param name="date">The day; null for all that is stated with no regard to time: removed trunks are out, planned ones planned.</param>
    /// <returns>Its state.</returns>
    public PlantingState StateOn(LocalDate? date) => PlantingState.Of(this, date);
}
