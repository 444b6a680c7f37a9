using GroveSpec.Craft.Calendar;
using GroveSpec.Model;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Times;

namespace GroveSpec.Checks.Rules;

/// <summary>Tasks that wait on each other, or are done to each other's trunks, in a circle.</summary>
internal sealed class TaskCircle : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "task-circle",
        Severity = Severity.Error,
        Meaning = "Tasks wait on each other in a circle, or one waits on itself.",
        Explanation = "None of them can ever begin. Take one of the links out.",
        Source = "the language",
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        var tasks = context.Planting.Tasks;
        if (tasks.IsEmpty)
        {
            return [];
        }

        var places = new Dictionary<string, int>(tasks.Length, StringComparer.Ordinal);
        for (var index = 0; index < tasks.Length; index++)
        {
            places.TryAdd(tasks[index].Name, index);
        }

        var waits = new List<(int To, Origin Origin)>[tasks.Length];
        var belongs = new List<(int To, Origin Origin)>[tasks.Length];
        for (var index = 0; index < tasks.Length; index++)
        {
            waits[index] = [];
            belongs[index] = [];
        }

        for (var index = 0; index < tasks.Length; index++)
        {
            if (tasks[index].Target is TaskTarget.OfTask of && places.TryGetValue(of.Name.Value, out var to))
            {
                belongs[index].Add((to, of.Name.Origin));
            }

            foreach (var time in tasks[index].Times)
            {
                Link(waits, places, index, time);
            }
        }

        return
        [
            .. Circles.Of(waits).Select(circle => Told(context, circle, "wait on each other in a circle, so none of them can begin", "waits on itself, so it can never begin")),
            .. Circles.Of(belongs).Select(circle => Told(context, circle, "are done to each other's trunks in a circle, so none says to which trunks", "is said to be of itself, so it does not say to which trunks it is done")),
        ];
    }

    private static void Link(List<(int To, Origin Origin)>[] waits, Dictionary<string, int> places, int task, TimeClause time)
    {
        if (WaitingOrder.LinkOf(time) is not var (other, isWaitedOn) || !places.TryGetValue(other, out var place))
        {
            return;
        }

        if (isWaitedOn)
        {
            waits[task].Add((place, time.Origin));
        }
        else
        {
            waits[place].Add((task, time.Origin));
        }
    }

    private Finding Told(CheckContext context, List<(int From, Origin Origin)> circle, string together, string alone)
    {
        var names = new List<string>();
        foreach (var (from, _) in circle)
        {
            names.Add(context.Planting.Tasks[from].Name);
        }

        return new Finding
        {
            Check = Description,
            Severity = Description.Severity,
            Place = context.Origins.Locate(circle[0].Origin),
            Message = names.Count == 1
                ? $"The task {Wording.Name(names[0])} {alone}: take this out."
                : $"The tasks {Wording.List(names)} {together}: take one of the links out.",
            Measured = names.Count,
            Unit = "tasks",
            Related = [.. circle.Skip(1).Take(8).Select(link => new RelatedPlace(context.Origins.Locate(link.Origin), $"the link of {Wording.Name(context.Planting.Tasks[link.From].Name)}"))],
        };
    }
}
