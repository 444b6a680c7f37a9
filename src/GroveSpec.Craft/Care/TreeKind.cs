using GroveSpec.Craft.Calendar;
using GroveSpec.Model.Species;

namespace GroveSpec.Craft.Care;

/// <summary>What is known of one species of a planting.</summary>
/// <param name="Species">Its name as written; null when none is named.</param>
/// <param name="Profile">Its profile; null when there is none, and then nothing is known of it.</param>
/// <param name="Year">Its year on the site.</param>
public sealed record TreeKind(string? Species, SpeciesProfile? Profile, TreeYear Year)
{
    /// <summary>When it carries leaves; null when not known.</summary>
    public LeafHabit? Habit => Profile?.Leaves?.Value;

    /// <summary>How often it shoots in a year; null when not known.</summary>
    public Flush? Flush => Profile?.Flush?.Value;

    /// <summary>What a grower calls it: its common name, else the name as written, else "the tree".</summary>
    public string Said => Profile?.Common?.Value ?? Species ?? "the tree";

    /// <summary>Whether it is an elm or a zelkova, by its botanical name or the name as written.</summary>
    public bool IsElmKin => IsOf("ulmus") || IsOf("zelkova");

    private bool IsOf(string genus) =>
        (Profile?.Botanical?.Value ?? Species ?? "").StartsWith(genus, StringComparison.OrdinalIgnoreCase)
        || (Species ?? "").StartsWith(genus, StringComparison.OrdinalIgnoreCase);
}
