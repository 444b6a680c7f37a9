using GroveSpec.Syntax.Parsing.Generated;

namespace GroveSpec.Syntax.Parsing;

/// <summary>What each rule of the grammar reads, as a grower would say it.</summary>
internal static class Phrases
{
    /// <summary>What a rule reads; null for rules that only gather others.</summary>
    public static string? For(int rule) => rule switch
    {
        Grove.RULE_text => "a text in quote marks such as \"Salt Bank\"",
        Grove.RULE_habitWord => "a habit: clump, group or raft",
        Grove.RULE_speciesName => "a species' name such as larix-kaempferi",
        Grove.RULE_containerShape => "a shape: oval, rectangle, round or slab",
        Grove.RULE_container => "the container's size, such as 420 x 300 x 60 mm",
        Grove.RULE_corner => "a corner such as (-230,-90)",
        Grove.RULE_latitude or Grove.RULE_degrees => "a latitude such as 54.3 N",
        Grove.RULE_hemisphere => "N or S",
        Grove.RULE_zone or Grove.RULE_zoneNumber => "a hardiness zone such as 8b",
        Grove.RULE_dayOfYear => "a day of the year such as 2 May",
        Grove.RULE_month => "a month such as May",
        Grove.RULE_temperature => "a temperature such as 4.5 C",
        Grove.RULE_place => "a place such as -68, -31 mm",
        Grove.RULE_coordinate or Grove.RULE_distance => "a distance such as 12 mm",
        Grove.RULE_angle => "an angle such as 7 deg",
        Grove.RULE_bearing => "a bearing such as 65 deg",
        Grove.RULE_spacePoint => "a point such as (0, 0, 120)",
        Grove.RULE_trunkName => "a trunk's name such as A",
        Grove.RULE_roleName => "a role's name such as main",
        Grove.RULE_taskName => "a task's name such as W1",
        Grove.RULE_checkName => "a check's name such as even-gaps",
        Grove.RULE_year => "a year such as 2031",
        Grove.RULE_moment => "a time such as 2027-04-22, late autumn 2026, leaf-out 2027 or a task's name",
        Grove.RULE_day => "a day such as 2027-04-22",
        Grove.RULE_stage => "a stage of the year: bud-break, leaf-out, harden-off, midsummer, leaf-colour, leaf-fall or dormant",
        Grove.RULE_timeSpan => "a span of time such as 6 weeks",
        Grove.RULE_anchor => "last frost, first frost or solstice",
        Grove.RULE_formWord => "a form: balanced, stout or slender",
        Grove.RULE_vigourWord => "a vigour: push, steady or restrain",
        Grove.RULE_dimension => "diameter or height",
        Grove.RULE_taskKind => "a kind of work such as wire, prune or repot",
        Grove.RULE_on => "trunks' names such as B C, the word all, a role, or a day such as 2027-04-22",
        Grove.RULE_metal => "a metal: aluminium or copper",
        Grove.RULE_side or Grove.RULE_facing => "a side: back, front, left, right, or a bearing such as 65 deg",
        Grove.RULE_amount => "a limit such as 8 %",
        Grove.RULE_share => "a share such as 1.5 %",
        Grove.RULE_wholeNumber => "a whole number such as 2",
        Grove.RULE_leafHabit => "a leaf habit: deciduous, deciduous-conifer, semi-evergreen, evergreen, conifer or tropical",
        Grove.RULE_pace => "a pace of growth: slow, medium or fast",
        Grove.RULE_flushWord => "a flush: single, partial, repeated or continuous",
        Grove.RULE_entrySource => "where it comes from: source \"…\", from memory or common practice",
        _ => null,
    };

    /// <summary>Whose name a rule reads, with its article; null for other rules.</summary>
    public static string? NamedBy(int rule) => rule switch
    {
        Grove.RULE_trunkName => "a trunk",
        Grove.RULE_roleName => "a role",
        Grove.RULE_taskName => "a task",
        Grove.RULE_speciesName => "a species",
        Grove.RULE_checkName => "a check",
        _ => null,
    };

    /// <summary>A name that would do.</summary>
    public static string SampleName(int rule) => rule switch
    {
        Grove.RULE_trunkName => "T1",
        Grove.RULE_roleName => "R1",
        Grove.RULE_taskName => "W1",
        Grove.RULE_speciesName => "larix-kaempferi",
        _ => "even-gaps",
    };

    /// <summary>Whether a rule reads a number with or without a unit.</summary>
    public static bool ReadsNumber(int rule) => rule is Grove.RULE_coordinate or Grove.RULE_distance or Grove.RULE_angle or Grove.RULE_bearing
        or Grove.RULE_degrees or Grove.RULE_temperature or Grove.RULE_timeSpan or Grove.RULE_amount or Grove.RULE_share or Grove.RULE_wholeNumber
        or Grove.RULE_zoneNumber or Grove.RULE_dayOfYear or Grove.RULE_year;

    /// <summary>What a statement with a list of parts is called, and what it takes; null for other rules.</summary>
    public static (string What, string Parts)? PartsOf(int rule) => rule switch
    {
        Grove.RULE_trunk => ("A trunk", "at, diameter, girth, height, lean, line, crown, role, species, raised, planned, removed or fixed"),
        Grove.RULE_role => ("A role", "form, vigour, aim, keep, rank or story"),
        Grove.RULE_task => ("A task", "on, of, in, from, after, before, every, until, with, coil, span, bend, low, middle, high, facing, done or a note in quote marks"),
        Grove.RULE_site => ("A site", "latitude, zone, last frost, first frost, means or sun"),
        Grove.RULE_viewed => ("A view", "from, at, eye, near or far"),
        Grove.RULE_measured => ("A row of readings", "a trunk's name with diameter, girth, height or crown"),
        Grove.RULE_reading => ("A row of readings", "a trunk's name with diameter, girth, height or crown"),
        Grove.RULE_profile => ("A profile", "botanical, common, leaves, hardiness, growth, flush, bend-limit, stage or caution"),
        _ => null,
    };

    /// <summary>Whether a rule is a part of a statement that may be skipped so that its neighbours are read.</summary>
    public static bool IsPart(int rule) => rule is Grove.RULE_trunkClause or Grove.RULE_roleClause or Grove.RULE_taskClause or Grove.RULE_siteClause
        or Grove.RULE_viewedClause or Grove.RULE_readingClause or Grove.RULE_reading or Grove.RULE_entry;
}
