using System.Collections.Immutable;
using System.Globalization;
using System.Xml.Linq;
using CsCheck;
using GroveSpec.Checks;
using GroveSpec.Drawing.Scene;
using GroveSpec.Drawing.Timeline;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Times;
using NodaTime;
using Xunit;

namespace GroveSpec.Drawing.Tests.Timeline;

public sealed class TimelinePlateTests
{
    private static readonly LocalDate Today = new(2026, 11, 25);

    [Fact]
    public void Each_task_with_a_date_has_one_row_with_its_origin()
    {
        var origins = Draw(SaltBank.Planting()).Descendants().Attributes("data-origin").Select(origin => origin.Value).Where(origin => origin.StartsWith("task:", StringComparison.Ordinal));
        Assert.Equal(["task:L1", "task:P1", "task:R1", "task:S1", "task:S2", "task:T1", "task:U1", "task:W1"], origins.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_window_reaches_from_its_earliest_to_its_latest_day()
    {
        var layout = new TimelineLayout(new DrawingSubject(SaltBank.Planting().StateOn(Today), []));
        var row = layout.Rows.FindIndex(candidate => candidate.Name == "U1");
        var place = new TaskMarks(layout.Axis!, Today).Place(layout.Rows[row].Dated, 0);
        Assert.Equal(layout.Axis!.At(new LocalDate(2026, 12, 13)), place.Left, 0.01);
        Assert.Equal(layout.Axis.At(new LocalDate(2027, 1, 26)), place.Right, 0.01);
    }

    [Fact]
    public void Repeats_are_beads_and_what_is_done_is_filled()
    {
        var planting = SaltBank.Planting();
        Assert.Equal(6, Row(Draw(planting), "L1").Elements().Count(element => element.Name.LocalName == "circle"));
        var done = planting with { Tasks = [.. planting.Tasks.Select(task => task.Name == "W1" ? task with { Done = [new(new(2026, 11, 20), new("done"))] } : task)] };
        Assert.Contains("gs-tl-due", Row(Draw(planting), "W1").ToString(), StringComparison.Ordinal);
        Assert.Contains("gs-tl-done", Row(Draw(done), "W1").ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_should_be_done_by_now_is_marked()
    {
        Assert.DoesNotContain("gs-tl-late\"", Row(Draw(SaltBank.Planting()), "U1").ToString(), StringComparison.Ordinal);
        var later = Draw(SaltBank.Planting(), new(2027, 3, 1));
        Assert.Contains("gs-tl-late\"", Row(later, "U1").ToString(), StringComparison.Ordinal);
        Assert.Contains("not marked done", Row(later, "U1").ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_day_itself_is_a_line_with_its_date()
    {
        Assert.Contains("25 November 2026", Draw(SaltBank.Planting()).Value, StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"gs-tl-day\"", TimelinePlate.Draw(new DrawingSubject(SaltBank.Planting().StateOn(null), []), DrawingOptions.Default), StringComparison.Ordinal);
    }

    [Fact]
    public void Tasks_without_a_date_are_told_below_with_the_reason()
    {
        var planting = SaltBank.Planting() with { Tasks = [SaltBank.Task("K1", TaskKind.Wire, null), SaltBank.Task("K2", TaskKind.Unwire, SaltBank.Of("K1"), new TimeClause.After(new Moment.OfTask("K1")) { Origin = new("x") })] };
        var text = string.Join(' ', Texts(Draw(planting)).Select(element => element.Value));
        Assert.Contains("Without a date yet: wire K1 (no time is written down); unwire K2 (waits on K1).", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_late_says_so_without_colour()
    {
        Assert.DoesNotContain(Texts(Draw(SaltBank.Planting())), text => text.Value.EndsWith("not marked done", StringComparison.Ordinal));
        Assert.Contains(Texts(Draw(SaltBank.Planting(), new(2027, 3, 1))), text => text.Value.EndsWith("not marked done", StringComparison.Ordinal));
    }

    [Fact]
    public void The_marks_that_are_drawn_are_explained_and_no_others()
    {
        var all = NotesOf(SaltBank.Planting());
        Assert.Contains("A leaf runs", all, StringComparison.Ordinal);
        Assert.Contains("Beads are", all, StringComparison.Ordinal);
        Assert.Contains("A tendril leads", all, StringComparison.Ordinal);
        Assert.DoesNotContain("What is filled is done", all, StringComparison.Ordinal);
        var one = NotesOf(SaltBank.Planting() with
        {
            Tasks = [SaltBank.Task("F", TaskKind.Feed, SaltBank.On("A"), new TimeClause.FromTo(new Moment.Day(new(2027, 5, 1)), new Moment.Day(new(2027, 6, 1))) { Origin = new("x") })],
        });
        Assert.Contains("A leaf runs", one, StringComparison.Ordinal);
        Assert.DoesNotContain("Beads are", one, StringComparison.Ordinal);
        Assert.DoesNotContain("A tendril leads", one, StringComparison.Ordinal);

        static string NotesOf(Planting planting) => string.Join(' ', new TimelineLayout(new DrawingSubject(planting.StateOn(Today), [])).NoteLines);
    }

    [Fact]
    public void A_long_kind_of_work_takes_two_lines_rather_than_lose_its_end()
    {
        var planting = SaltBank.Planting() with
        {
            Tasks = [SaltBank.Task("sand", TaskKind.Other, SaltBank.On("A"), new TimeClause.FromTo(new Moment.Day(new(2027, 5, 1)), new Moment.Day(new(2027, 6, 1))) { Origin = new("x") }) with { OtherKind = "sweep the path and renew its sand before spring comes" }],
        };
        Assert.Equal(["sweep the path and renew its sand", "before spring comes"], Texts(Draw(planting)).Where(text => (string?)text.Attribute("class") == "gs-tl-kind").Select(text => text.Value));
    }

    [Fact]
    public void A_planting_without_tasks_says_so()
    {
        var drawing = Draw(SaltBank.Planting() with { Tasks = [] });
        Assert.Contains("No work is written down yet.", drawing.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void A_finding_about_a_task_is_numbered_in_its_row_and_told_in_the_key()
    {
        var check = new CheckDescription { Name = "late-cut", Severity = Severity.Warning, Meaning = "", Explanation = "", Source = "" };
        var other = new Finding { Check = check, Severity = Severity.Warning, Place = default, Message = "About something else." };
        var finding = other with { Message = "U1 comes late.", Figures = [new Figure.Work("U1")] };
        var drawing = XElement.Parse(TimelinePlate.Draw(new DrawingSubject(SaltBank.Planting().StateOn(Today), [other, finding]), DrawingOptions.Default));
        Assert.Contains(Row(drawing, "U1").Elements(), element => element.Name.LocalName == "text" && element.Value == "2");
        Assert.Contains("U1 comes late.", drawing.Value, StringComparison.Ordinal);
        Assert.DoesNotContain("About something else.", drawing.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Months_give_way_to_seasons_and_seasons_to_years()
    {
        Assert.Contains("Nov", TextsOf(Spanning(new(2026, 11, 1), new(2028, 2, 1))));
        Assert.Contains("win.", TextsOf(Spanning(new(2026, 11, 1), new(2031, 6, 1))));
        Assert.DoesNotContain("Nov", TextsOf(Spanning(new(2026, 11, 1), new(2031, 6, 1))));
        var years = TextsOf(Spanning(new(2026, 11, 1), new(2042, 2, 1)));
        Assert.Contains("2030", years);
        Assert.DoesNotContain(years, text => text.StartsWith("win", StringComparison.Ordinal));
        Assert.Contains("9000", TextsOf(Spanning(new(1000, 1, 1), new(9500, 1, 1))));

        static Planting Spanning(LocalDate from, LocalDate to) => SaltBank.Planting() with
        {
            Tasks = [SaltBank.Task("F", TaskKind.Feed, SaltBank.On("A"), new TimeClause.FromTo(new Moment.Day(from), new Moment.Day(to)) { Origin = new("x") })],
        };

        static List<string> TextsOf(Planting planting) => [.. Texts(XElement.Parse(TimelinePlate.Draw(new DrawingSubject(planting.StateOn(null), []), DrawingOptions.Default))).Select(text => text.Value)];
    }

    [Fact]
    public void The_same_planting_gives_the_same_bytes() =>
        Assert.Equal(
            TimelinePlate.Draw(new DrawingSubject(SaltBank.Planting().StateOn(Today), []), DrawingOptions.Default),
            TimelinePlate.Draw(new DrawingSubject(SaltBank.Planting().StateOn(Today), []), DrawingOptions.Default));

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("]]>--><svg onload=x>\"'&#x0;")]
    [InlineData("\u202Eturned\u0000\u0007\uFFFF\uD800")]
    public void Text_from_the_file_is_text_in_the_drawing(string hostile)
    {
        var planting = SaltBank.Planting() with
        {
            Name = new(hostile, new(hostile)),
            Tasks =
            [
                SaltBank.Task(hostile, TaskKind.Other, SaltBank.On(hostile), SaltBank.In(SeasonPart.Whole, Season.Spring, 2027)) with { OtherKind = hostile, Note = new(hostile, new(hostile)) },
                SaltBank.Task(hostile + "2", TaskKind.Other, SaltBank.On(hostile)) with { OtherKind = hostile },
            ],
        };
        var drawing = Draw(planting);
        Assert.DoesNotContain(drawing.Descendants(), element => element.Name.LocalName == "script" || element.Attributes().Any(attribute => attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal)));
        Assert.Single(drawing.DescendantsAndSelf(), element => element.Name.LocalName == "svg");
    }

    [Fact]
    public void Names_of_ten_thousand_characters_are_shortened_to_their_room()
    {
        var vast = new string('w', 10_000);
        var planting = SaltBank.Planting() with
        {
            Name = new(vast, new("x")),
            Tasks = [SaltBank.Task(vast, TaskKind.Other, SaltBank.On(vast, vast), SaltBank.In(SeasonPart.Whole, Season.Spring, 2027)) with { OtherKind = vast }],
        };
        CheckLabels(Draw(planting));
    }

    [Fact]
    public void Labels_never_overlap_and_none_leaves_the_page()
    {
        CheckLabels(Draw(SaltBank.Planting()));
        GenTasks.Sample(
            planting => CheckLabels(Draw(planting, Today)),
            iter: 200,
            print: planting => $"{planting.Tasks.Length} tasks: {string.Join("; ", planting.Tasks.Select(task => task.Name))}");
    }

    /// <summary>1 to 60 tasks of all kinds over months to decades, with names of one to twenty letters, north and south.</summary>
    private static readonly Gen<Planting> GenTasks = Gen.Select(
        Gen.Int[1, 60],
        Gen.Int[1, 240],
        Gen.Bool,
        Gen.Int[0, 1_000_000]).Select((count, months, isSouthern, seed) =>
        {
            var random = new Random(seed);
            var tasks = ImmutableArray.CreateBuilder<PlantingTask>();
            for (var index = 0; index < count; index++)
            {
                var from = new LocalDate(2026, 1, 1).PlusDays(random.Next(months * 30));
                var origin = new Origin("x");
                TimeClause[] times = random.Next(7) switch
                {
                    0 => [new TimeClause.FromTo(new Moment.Day(from), new Moment.Day(from.PlusDays(random.Next(1, 400)))) { Origin = origin }],
                    1 => [new TimeClause.Every(random.Next(1, 9), (TimeUnit)random.Next(4)) { Origin = origin }, new TimeClause.FromTo(new Moment.Day(from), new Moment.Day(from.PlusDays(random.Next(1, 500)))) { Origin = origin }],
                    2 when index > 0 => [new TimeClause.Offset(1, random.Next(1, 12), TimeUnit.Weeks, random.Next(4) > 0, tasks[random.Next(index)].Name) { Origin = origin }],
                    3 => [new TimeClause.After(new Moment.StageOfYear((Stage)random.Next(7), from.Year)) { Origin = origin }],
                    4 => [new TimeClause.Before(new Moment.Day(from)) { Origin = origin }],
                    5 => [],
                    _ => [new TimeClause.During(new Moment.Month(new(from.Year, from.Month))) { Origin = origin }],
                };
                var name = new string((char)('a' + random.Next(26)), random.Next(1, 20)) + index;
                tasks.Add(SaltBank.Task(name, (TaskKind)random.Next(18), SaltBank.On([.. Enumerable.Range(0, random.Next(1, 6)).Select(letter => new string((char)('A' + letter), random.Next(1, 21)))]), times) with
                {
                    OtherKind = "tie to a stake and turn",
                    Done = random.Next(5) == 0 ? [new(from, origin)] : [],
                });
            }

            var site = SaltBank.Planting().Site!;
            return SaltBank.Planting() with
            {
                Site = isSouthern ? site with { Latitude = new(new Angle(-41), new("x")), LastFrost = new(new AnnualDate(9, 10), new("x")), FirstFrost = new(new AnnualDate(5, 20), new("x")) } : site,
                Tasks = tasks.ToImmutable(),
            };
        });

    private static XElement Draw(Planting planting, LocalDate? date = null) =>
        XElement.Parse(TimelinePlate.Draw(new DrawingSubject(planting.StateOn(date ?? Today), []), DrawingOptions.Default));

    private static XElement Row(XElement drawing, string name) =>
        drawing.Descendants().Single(element => element.Name.LocalName == "g" && element.Attribute("data-origin")?.Value == $"task:{name}");

    private static IEnumerable<XElement> Texts(XElement drawing) => drawing.Descendants().Where(element => element.Name.LocalName == "text");

    private static void CheckLabels(XElement drawing)
    {
        var size = drawing.Attribute("viewBox")!.Value.Split(' ').Select(number => double.Parse(number, CultureInfo.InvariantCulture)).ToList();
        var page = new Box(0, 0, size[2], size[3]);
        var boxes = Texts(drawing).Select(text => (Text: text.Value, Box: BoxOf(text))).ToList();
        foreach (var (text, box) in boxes)
        {
            Assert.True(page.Holds(box), $"“{text}” leaves the page: {box}");
        }

        for (var one = 0; one < boxes.Count; one++)
        {
            for (var two = one + 1; two < boxes.Count; two++)
            {
                Assert.False(boxes[one].Box.Overlaps(boxes[two].Box), $"“{boxes[one].Text}” at {boxes[one].Box} overlaps “{boxes[two].Text}” at {boxes[two].Box}");
            }
        }
    }

    // The text as EB Garamond sets it and a fifth over, from x-height to descender: what any usual serif face needs.
    private static Box BoxOf(XElement text)
    {
        var pixels = Number("font-size");
        var isItalic = text.Attribute("class")?.Value is "gs-remark" or "gs-tl-day-text";
        var written = string.Concat(text.Nodes().OfType<XText>().Select(node => node.Value));
        var width = TextMetrics.Width(written, pixels, isItalic ? Face.Italic : Face.Regular) * 1.2;
        var left = Number("x") - (text.Attribute("text-anchor")?.Value switch { "middle" => width / 2, "end" => width, _ => 0 });
        return new Box(left, Number("y") - (pixels * 0.62), left + width, Number("y") + (pixels * 0.2));

        double Number(string name) => double.Parse(text.Attribute(name)!.Value, CultureInfo.InvariantCulture);
    }
}
