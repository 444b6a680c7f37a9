using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class TaskCircleTests
{
    [Fact]
    public void A_task_after_itself_is_told()
    {
        var assessment = Planted.Under("task T feed on all after T");
        var finding = assessment.Only("task-circle");
        Assert.Equal("after T", assessment.Underlined(finding));
        Assert.Contains("waits on itself", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_tasks_that_wait_on_each_other_are_told_once()
    {
        var assessment = Planted.Under("task S feed on all after T\ntask T repot on all after S");
        var finding = assessment.Only("task-circle");
        Assert.Equal("after T", assessment.Underlined(finding));
        Assert.Contains("S and T wait on each other", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_task_of_itself_is_told()
    {
        var assessment = Planted.Under("task T unwire of T");
        var finding = assessment.Only("task-circle");
        Assert.Equal("T", assessment.Underlined(finding));
        Assert.Contains("of itself", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_chain_of_tasks_is_not_told() => Assert.Empty(Planted.Under("task A repot on all in spring 2027\ntask B feed on all 6 weeks after A\ntask C prune on all after B").Found("task-circle"));

    [Fact]
    public void Watching_wire_until_it_comes_off_is_no_circle() => Assert.Empty(Planted.Under("task W wire on all in autumn 2026\ntask L look-over of W every 2 weeks until U\ntask U unwire of W 6 to 8 weeks after W").Found("task-circle"));

    [Fact]
    public void A_circle_of_a_hundred_tasks_is_told_once()
    {
        var tasks = string.Concat(Enumerable.Range(0, 100).Select(index => $"task T{index} feed on all after T{(index + 1) % 100}\n"));
        var finding = Planted.Under(tasks).Only("task-circle");
        Assert.Equal(100, finding.Measured);
        Assert.Contains("T0, T1, T2, T3, T4, T5 and 94 more", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_chain_of_ten_thousand_tasks_is_walked()
    {
        var tasks = string.Concat(Enumerable.Range(0, 10_000).Select(index => $"task T{index} feed on all after T{index + 1}\n"));
        Assert.Empty(Planted.Under(tasks + "task T10000 repot on all in spring 2027").Found("task-circle"));
    }

    [Fact]
    public void Before_turns_a_link_round()
    {
        var finding = Planted.Under("task S feed on all before T\ntask T repot on all before S\n").Only("task-circle");
        Assert.Contains("S and T", finding.Message, StringComparison.Ordinal);
    }
}
