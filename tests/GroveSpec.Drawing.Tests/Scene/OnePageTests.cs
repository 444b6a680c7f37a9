using System.Text.RegularExpressions;
using System.Xml.Linq;
using GroveSpec.Drawing.Tests.Timeline;
using GroveSpec.Drawing.Timeline;
using GroveSpec.Drawing.Wire;
using NodaTime;
using Xunit;

namespace GroveSpec.Drawing.Tests.Scene;

/// <summary>Plates of several kinds stand in one page and share its style block, as in a book.</summary>
public sealed partial class OnePageTests
{
    private static readonly string[] Plates =
    [
        PlanPlate.Draw(Plantings.SaltBank(), DrawingOptions.Default),
        FrontPlate.Draw(Plantings.SaltBank(), DrawingOptions.Default),
        TimelinePlate.Draw(new DrawingSubject(SaltBank.Planting().StateOn(new LocalDate(2026, 11, 25)), []), DrawingOptions.Default),
        WirePlate.Draw(new DrawingSubject(SaltBank.Planting().StateOn(new LocalDate(2026, 11, 25)), []), DrawingOptions.Default),
    ];

    [Fact]
    public void A_class_means_the_same_on_every_plate()
    {
        var rules = Plates.Select(RulesOf).ToArray();
        for (var plate = 0; plate < Plates.Length; plate++)
        {
            Assert.True(rules[plate].Count > 10);
            var used = XElement.Parse(Plates[plate]).Descendants().Attributes("class").SelectMany(names => names.Value.Split(' ')).Distinct().ToArray();
            for (var other = 0; other < Plates.Length; other++)
            {
                foreach (var (selector, declarations) in rules[other])
                {
                    if (used.Contains(selector.TrimStart('.')))
                    {
                        Assert.True(rules[plate].TryGetValue(selector, out var own) && own == declarations, $"{selector} of one plate would change another.");
                    }
                }
            }
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void A_heading_stands_in_the_place_of_the_name_and_the_title_keeps_the_name(int plate)
    {
        var options = new DrawingOptions { Heading = "From a distance" };
        var drawing = XElement.Parse(plate == 0 ? PlanPlate.Draw(Plantings.SaltBank(), options) : FrontPlate.Draw(Plantings.SaltBank(), options));
        Assert.Equal("From a distance", drawing.Descendants().Single(element => (string?)element.Attribute("class") == "gs-title").Value);
        Assert.Contains("Salt Bank", drawing.Descendants().First(element => element.Name.LocalName == "title").Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Sentences_may_be_left_to_the_page_and_the_numbers_stay()
    {
        var subject = Plantings.SaltBank();
        var (whole, bare) = (PlanPlate.Draw(subject, DrawingOptions.Default), PlanPlate.Draw(subject, new DrawingOptions { TellsFindings = false }));
        Assert.Contains("class=\"gs-key\"", whole, StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"gs-key\"", bare, StringComparison.Ordinal);
        Assert.Contains("class=\"gs-mark-number\"", bare, StringComparison.Ordinal);
    }

    [Fact]
    public void On_a_white_sheet_the_paper_has_no_tint()
    {
        Assert.Contains(".gs-paper{fill:#fcfbf7;", PlanPlate.Draw(Plantings.SaltBank(), DrawingOptions.Default), StringComparison.Ordinal);
        Assert.Contains(".gs-paper{fill:#fff;", PlanPlate.Draw(Plantings.SaltBank(), new DrawingOptions { IsOnWhite = true }), StringComparison.Ordinal);
    }

    private static Dictionary<string, string> RulesOf(string svg)
    {
        var style = svg[svg.IndexOf("<style>", StringComparison.Ordinal)..svg.IndexOf("</style>", StringComparison.Ordinal)];
        return Rule().Matches(style).Where(rule => rule.Groups[1].Value != ".gs").ToDictionary(rule => rule.Groups[1].Value, rule => rule.Groups[2].Value);
    }

    [GeneratedRegex(@"^(\.gs-[\w-]+)\{([^}]*)\}", RegexOptions.Multiline)]
    private static partial Regex Rule();
}
