using GroveSpec.Craft.Year;
using GroveSpec.Model;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Times;
using NodaTime;

namespace GroveSpec.Craft.Calendar;

/// <summary>The days of the moments that a planting's tasks name: by the calendar, or by the year of the tree that a task is about.</summary>
/// <param name="planting">The planting.</param>
internal sealed class MomentDays(Planting planting)
{
    private readonly bool isSouthern = planting.Site?.IsSouthern ?? false;
    private readonly Dictionary<string, TreeYear> years = new(StringComparer.Ordinal);
    private Dictionary<string, string?>? speciesByTrunk;

    /// <summary>All the days of a moment.</summary>
    /// <param name="moment">A moment that is no task.</param>
    /// <param name="task">The task that names it.</param>
    /// <param name="asEnd">Whether it ends something: then a stage counts until it has surely begun, not until it is over.</param>
    /// <returns>The days, or why there are none.</returns>
    public (DateInterval? Days, UndatedReason? Undated) Of(Moment moment, PlantingTask task, bool asEnd = false)
    {
        if (moment is Moment.StageOfYear stage)
        {
            var year = YearOf(task);
            return (asEnd ? year.Onset(stage.Stage, stage.Number) : year.Days(stage.Stage, stage.Number)) is { } known ? (known, null) : (null, UndatedReason.UnknownStage);
        }

        return Reckoned(moment) is { } plain ? (plain, null) : (null, UndatedReason.OutOfCalendar);
    }

    /// <summary>The coming of a stage, of the tree that a task is about.</summary>
    /// <param name="stage">The stage and its year.</param>
    /// <param name="task">The task.</param>
    /// <returns>Its days with their source; null where the site or the species does not tell.</returns>
    public StageOnset? OnsetOf(Moment.StageOfYear stage, PlantingTask task) => YearOf(task).Coming(stage.Stage, stage.Number);

    /// <summary>The first day after a moment; a stage has come when it has surely begun.</summary>
    /// <param name="moment">A moment that is no task.</param>
    /// <param name="task">The task that names it.</param>
    /// <returns>The day, or why there is none.</returns>
    public (LocalDate? Day, UndatedReason? Undated) After(Moment moment, PlantingTask task)
    {
        if (moment is Moment.StageOfYear stage)
        {
            return YearOf(task).Onset(stage.Stage, stage.Number) is { } onset ? (onset.End, null) : (null, UndatedReason.UnknownStage);
        }

        var (days, undated) = Of(moment, task);
        return (days?.End.PlusDays(1), undated);
    }

    /// <summary>What a clause leaves of the calendar.</summary>
    /// <param name="clause">The clause.</param>
    /// <param name="task">The task that says it.</param>
    /// <returns>Its days; an end that another task sets, that the clause does not set, or that has no day is open.</returns>
    public TaskBound BoundOf(TimeClause clause, PlantingTask task)
    {
        return clause switch
        {
            TimeClause.During during => new(clause, Start(during.Moment), End(during.Moment)),
            TimeClause.FromTo span => new(clause, Start(span.Start), span.End is { } end ? End(end, asEnd: true) : null),
            TimeClause.After after => new(clause, after.Moment is Moment.OfTask ? null : After(after.Moment, task).Day, null),
            TimeClause.Before before => new(clause, null, Start(before.Moment)?.PlusDays(-1)),
            TimeClause.Until until => new(clause, null, End(until.Moment, asEnd: true)),
            _ => new(clause, null, null),
        };

        LocalDate? Start(Moment moment) => moment is Moment.OfTask ? null : Of(moment, task).Days?.Start;

        LocalDate? End(Moment moment, bool asEnd = false) => moment is Moment.OfTask ? null : Of(moment, task, asEnd).Days?.End;
    }

    /// <summary>Days of the calendar; years at its very ends are left out, so that a day before or after can always be named.</summary>
    private DateInterval? Reckoned(Moment moment) => moment switch
    {
        Moment.Day day when day.Date.Year is < 3 or > 9996 => null,
        Moment.Month month when month.Value.Year is < 3 or > 9996 => null,
        Moment.Year year when year.Number is < 3 or > 9996 => null,
        Moment.SeasonOfYear season when season.Number is < 4 or > 9996 => null,
        _ => SeasonCalendar.Days(moment, isSouthern),
    };

    /// <summary>The year of the tree a task is about: of the first trunk it names, else of the planting.</summary>
    private TreeYear YearOf(PlantingTask task)
    {
        var species = planting.Species?.Value;
        if (task.Target is TaskTarget.OnTrunks on)
        {
            speciesByTrunk ??= SpeciesByTrunk();
            species = on.Names.Select(name => speciesByTrunk.GetValueOrDefault(name.Value)).FirstOrDefault(own => own is not null) ?? species;
        }

        var key = species ?? "";
        if (!years.TryGetValue(key, out var year))
        {
            years.Add(key, year = TreeYear.Of(planting, species));
        }

        return year;
    }

    private Dictionary<string, string?> SpeciesByTrunk()
    {
        var map = new Dictionary<string, string?>(StringComparer.Ordinal);
        foreach (var trunk in planting.Trunks)
        {
            map.TryAdd(trunk.Name, planting.SpeciesOf(trunk));
        }

        return map;
    }
}
