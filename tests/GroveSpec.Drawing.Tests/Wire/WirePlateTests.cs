using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using GroveSpec.Checks;
using GroveSpec.Drawing.Tests.Timeline;
using GroveSpec.Drawing.Wire;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Tasks;
using NodaTime;
using Xunit;

namespace GroveSpec.Drawing.Tests.Wire;

public sealed partial class WirePlateTests
{
    private static readonly LocalDate Today = new(2026, 11, 25);

    [Fact]
    public void Each_wired_trunk_has_a_card_with_the_origins_of_task_and_trunk()
    {
        var cards = Draw(Wired(50, strands: 1)).Descendants().Where(element => (string?)element.Attribute("class") == "gs-wr-card").ToArray();
        Assert.Equal(["task:W1", "task:W1"], cards.Select(card => (string)card.Attribute("data-origin")!));
        Assert.Equal(["trunk:B", "trunk:C"], cards.Select(card => card.Descendants().Attributes("data-origin").First(origin => origin.Value.StartsWith("trunk:", StringComparison.Ordinal)).Value));
    }

    [Theory]
    [InlineData(30)]
    [InlineData(45)]
    [InlineData(50)]
    [InlineData(55)]
    [InlineData(65)]
    public void The_turns_stand_at_their_true_angle(double coil)
    {
        // Where a turn crosses the trunk's middle it is seen square on, and its slope on the page is the coil's angle from the axis.
        var planting = Wired(coil, strands: 1);
        var found = 0;
        var paths = Card(Draw(planting), "C").Descendants().Where(element => (string?)element.Attribute("class") == "gs-wr-edge").Select(PointsOf).ToArray();
        var widest = paths.SelectMany(points => points).ToArray();
        var axis = (widest.Min(point => point.X) + widest.Max(point => point.X)) / 2;
        foreach (var points in paths)
        {
            for (var index = 1; index < points.Count; index++)
            {
                var (from, to) = (points[index - 1], points[index]);
                if (from.X < axis && to.X >= axis)
                {
                    found++;
                    Assert.Equal(coil, Math.Atan2(to.X - from.X, from.Y - to.Y) * 180 / Math.PI, 1.5);
                }
            }
        }

        Assert.True(found >= 1);
    }

    [Fact]
    public void At_the_middle_of_the_bend_a_turn_lies_on_the_left_and_the_goal_leads_to_the_right()
    {
        var card = Card(Draw(Wired(50, strands: 1)), "C");
        var goal = PointsOf(card.Descendants().Single(element => (string?)element.Attribute("class") == "gs-wr-goal"));
        Assert.True(goal[^1].X > goal[0].X + 5);
        var ruler = card.Descendants().Where(element => (string?)element.Attribute("class") == "gs-wr-level").Select(PointsOf).Single();
        var wire = card.Descendants().Where(element => (string?)element.Attribute("class") == "gs-wr-edge").SelectMany(PointsOf).ToArray();
        var outermost = wire.Where(point => Math.Abs(point.Y - ruler[0].Y) < 40).MinBy(point => point.X);
        Assert.Equal(ruler[0].Y, outermost.Y, 6.0);
    }

    [Fact]
    public void Two_wires_are_drawn_side_by_side() =>
        Assert.Equal(
            2 * Card(Draw(Wired(50, strands: 1)), "C").Descendants().Count(element => (string?)element.Attribute("class") == "gs-wr-edge"),
            Card(Draw(Wired(50, strands: 2)), "C").Descendants().Count(element => (string?)element.Attribute("class") == "gs-wr-edge"),
            2.0);

    [Fact]
    public void Findings_about_the_wire_are_numbered_and_told()
    {
        var finding = new Finding
        {
            Check = Catalogue.Find("coil-angle")!,
            Severity = Severity.Hint,
            Place = default,
            Message = "Wound too close.",
            Trunks = ["C"],
            Figures = [new Figure.Work("W1")],
        };
        var svg = Draw(Wired(50, strands: 1), finding);
        Assert.Single(Card(svg, "C").Descendants(), element => (string?)element.Attribute("class") == "gs-mark");
        Assert.DoesNotContain(Card(svg, "B").Descendants(), element => (string?)element.Attribute("class") == "gs-mark");
        Assert.Contains("Wound too close.", svg.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_wire_the_sheet_says_so() =>
        Assert.Contains("No wire is planned.", Draw(SaltBank.Planting() with { Tasks = [] }).Value, StringComparison.Ordinal);

    [Fact]
    public void A_wire_of_which_no_part_is_named_is_told_without_a_drawing()
    {
        var svg = Draw(SaltBank.Planting());
        Assert.Contains("which part of the trunk is wired", svg.Value.Replace('\n', ' '), StringComparison.Ordinal);
        Assert.DoesNotContain(svg.Descendants(), element => (string?)element.Attribute("class") == "gs-wr-bole");
    }

    [Fact]
    public void The_same_planting_gives_the_same_bytes() =>
        Assert.Equal(WirePlate.Draw(Subject(Wired(50, strands: 2)), DrawingOptions.Default), WirePlate.Draw(Subject(Wired(50, strands: 2)), DrawingOptions.Default));

    /// <summary>Salt Bank with all that is said of the wire on B and C; C has no height, so that it is as thick all along.</summary>
    private static Planting Wired(double coil, int strands)
    {
        var planting = SaltBank.Planting();
        var origin = new Origin("task:W1");
        return planting with
        {
            Trunks = [.. planting.Trunks.Select(trunk => trunk.Name == "C" ? trunk with { Height = null } : trunk)],
            Tasks =
            [
                .. planting.Tasks.Select(task => task.Name != "W1" ? task : task with
                {
                    Details =
                    [
                        new TaskDetail.WithWire(WireMetal.Aluminium, Length.FromMillimetres(5), strands) { Origin = origin },
                        new TaskDetail.Coil(new Angle(coil)) { Origin = origin },
                        new TaskDetail.Span(Length.FromMillimetres(60), Length.FromMillimetres(260)) { Origin = origin },
                        new TaskDetail.Bend(new Angle(20), Bearing.Right, Length.FromMillimetres(120)) { Origin = origin },
                    ],
                }),
            ],
        };
    }

    private static DrawingSubject Subject(Planting planting, params Finding[] findings) => new(planting.StateOn(Today), [.. findings]);

    private static XElement Draw(Planting planting, params Finding[] findings) => XElement.Parse(WirePlate.Draw(Subject(planting, findings), DrawingOptions.Default));

    private static XElement Card(XElement svg, string trunk) =>
        svg.Descendants().Single(element => (string?)element.Attribute("class") == "gs-wr-card" && element.Descendants().Attributes("data-origin").Any(origin => origin.Value == "trunk:" + trunk));

    /// <summary>Where the pieces of a path end; the writer writes all but the first step relative to the one before.</summary>
    private static List<(double X, double Y)> PointsOf(XElement path)
    {
        var points = new List<(double X, double Y)>();
        var (x, y, command) = (0.0, 0.0, 'M');
        var numbers = new List<double>();
        foreach (Match token in Tokens().Matches((string)path.Attribute("d")!))
        {
            if (char.IsLetter(token.Value[0]))
            {
                command = token.Value[0];
                numbers.Clear();
                continue;
            }

            numbers.Add(double.Parse(token.Value, CultureInfo.InvariantCulture));
            var wanted = command switch
            {
                'c' => 6,
                'q' => 4,
                'h' or 'v' => 1,
                _ => 2,
            };
            if (numbers.Count == wanted)
            {
                (x, y) = command switch
                {
                    'M' => (numbers[0], numbers[1]),
                    'h' => (x + numbers[0], y),
                    'v' => (x, y + numbers[0]),
                    _ => (x + numbers[^2], y + numbers[^1]),
                };
                points.Add((x, y));
                numbers.Clear();
            }
        }

        return points;
    }

    [GeneratedRegex("[A-Za-z]|-?(?:[0-9]+(?:\\.[0-9]+)?|\\.[0-9]+)")]
    private static partial Regex Tokens();
}
