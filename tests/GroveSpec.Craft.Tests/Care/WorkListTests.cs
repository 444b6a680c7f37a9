using GroveSpec.Craft.Calendar;
using GroveSpec.Craft.Care;
using GroveSpec.Model;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Times;
using GroveSpec.Model.Trunks;
using NodaTime;
using Xunit;

namespace GroveSpec.Craft.Tests.Care;

public sealed class WorkListTests
{
    private static readonly Origin Here = new("test");

    [Fact]
    public void A_task_is_done_to_the_trunks_it_names_to_all_to_those_of_a_role_or_to_those_of_another_task()
    {
        var planting = new Planting
        {
            Trunks = [Trunk("C", "lee"), Trunk("B", null), Trunk("A", "lee")],
            Tasks =
            [
                Task("named") with { Target = new TaskTarget.OnTrunks([new("C", Here), new("gone", Here), new("A", Here), new("C", Here)]) },
                Task("all") with { Target = new TaskTarget.OnAll() },
                Task("role") with { Target = new TaskTarget.OnRole(new("lee", Here)) },
                Task("of") with { Target = new TaskTarget.OfTask(new("role", Here)) },
                Task("of-of") with { Target = new TaskTarget.OfTask(new("of", Here)) },
                Task("circle") with { Target = new TaskTarget.OfTask(new("circle", Here)) },
                Task("none"),
            ],
        };
        var work = WorkList.Of(planting, TaskDates.Of(planting));
        Assert.Equal(["A C", "A B C", "A C", "A C", "A C", "", ""], work.Select(one => string.Join(' ', one.Trunks)));
    }

    [Fact]
    public void The_days_of_work_are_those_it_was_done_on_and_those_to_come()
    {
        var span = new TimeClause.FromTo(new Moment.Day(new(2027, 5, 1)), new Moment.Day(new(2027, 5, 31))) { Origin = Here };
        var weekly = new TimeClause.Every(2, Model.Quantities.TimeUnit.Weeks) { Origin = Here };
        Check("2027-05-01/2027-05-31", "2027-05-01/2027-05-31", Task("T", span));
        Check("", "2027-05-04/2027-05-04", Task("T", span) with { Done = [new(new(2027, 5, 4), Here)] });
        Check("2027-05-01/2027-05-01 2027-05-15/2027-05-15 2027-05-29/2027-05-29", "2027-05-01/2027-05-01 2027-05-15/2027-05-15 2027-05-29/2027-05-29", Task("T", span, weekly));
        Check("2027-05-18/2027-05-18", "2027-05-04/2027-05-04 2027-05-18/2027-05-18", Task("T", span, weekly) with { Done = [new(new(2027, 5, 4), Here)] });
        Check("", "", Task("T"));
    }

    private static void Check(string toCome, string all, PlantingTask task)
    {
        var planting = new Planting { Tasks = [task] };
        var work = Assert.Single(WorkList.Of(planting, TaskDates.Of(planting)));
        Assert.Equal(toCome, string.Join(' ', work.ToCome.Select(Said)));
        Assert.Equal(all, string.Join(' ', work.AllDays.Select(Said)));
    }

    private static string Said(DateInterval days) => $"{NodaTime.Text.LocalDatePattern.Iso.Format(days.Start)}/{NodaTime.Text.LocalDatePattern.Iso.Format(days.End)}";

    private static PlantingTask Task(string name, params TimeClause[] times) => new() { Name = name, Origin = Here, Kind = new(TaskKind.Prune, Here), Times = [.. times] };

    private static Trunk Trunk(string name, string? role) => new() { Name = name, Origin = Here, Role = role is null ? null : new(role, Here) };
}
