using System.Collections.Immutable;
using CsCheck;

namespace GroveSpec.Checks.Tests;

/// <summary>
/// A planting made at random, on purpose with ties: places on a lattice, few sizes, and more trunks than any list of the
/// worst holds. It can be turned, moved and mirrored with its viewpoint and container.
/// </summary>
internal sealed record GeneratedPlanting(ImmutableArray<GeneratedTrunk> Trunks)
{
    private static readonly ImmutableArray<string> Roles = ["role lanky { form slender }", "role squat { form stout }", "role plain { form balanced }"];

    /// <summary>A slab that is hollow at the back, as an outline that is not the same from any two sides.</summary>
    private static readonly ImmutableArray<(int X, int Y)> Slab = [(-260, -160), (240, -180), (280, 150), (20, 60), (-240, 170)];

    /// <summary>The bearing at which the viewer stands.</summary>
    public int From { get; init; } = 180;

    /// <summary>near, far or nothing.</summary>
    public string Depth { get; init; } = "near";

    /// <summary>What the trunks grow from.</summary>
    public string Habit { get; init; } = "group";

    /// <summary>The corners of the slab, or none where there is no container.</summary>
    public ImmutableArray<(int X, int Y)> Corners { get; init; } = Slab;

    /// <summary>Further statements.</summary>
    public string Besides { get; init; } = "";

    /// <summary>Plantings of up to 80 trunks: scattered, on a lattice of 40 mm, on a narrow one, and in heaps.</summary>
    public static Gen<GeneratedPlanting> Any { get; } =
        Gen.Select(Gen.OneOf(1, 5, 23, 40, 40), Gen.OneOf("near", "far", ""), Gen.OneOf("group", "group", "group", "clump"), Gen.Bool)
            .SelectMany((pitch, depth, habit, hasContainer) => TrunksOf(pitch).Select(trunks => new GeneratedPlanting(trunks)
            {
                Depth = depth,
                Habit = habit,
                Corners = hasContainer ? Slab : [],
            }));

    /// <summary>The text of its file.</summary>
    public string Text => $"""
        planting "Made at random"
        habit {Habit}
        species larix-kaempferi

        """ + (Corners.IsEmpty ? "" : $"container slab {string.Join(' ', Corners.Select(corner => $"({corner.X},{corner.Y})"))} mm, 30 mm deep\n")
        + $"viewed from {From} deg, at 1500 mm, eye 200 mm{(Depth.Length > 0 ? ", " + Depth : "")}\n"
        + string.Join('\n', Trunks.Select(trunk => trunk.ToString()).Concat(Roles)) + "\n" + Besides;

    /// <summary>The same planting, its trunks written in another order.</summary>
    /// <param name="seed">Which order.</param>
    public GeneratedPlanting Shuffled(int seed)
    {
        var trunks = Trunks.ToArray();
        new Random(seed).Shuffle(trunks);
        return this with { Trunks = [.. trunks] };
    }

    /// <summary>The planting turned a quarter clockwise, with the place where the viewer stands.</summary>
    public GeneratedPlanting Turned() => Moved((x, y) => (y, -x)) with { From = (From + 90) % 360 };

    /// <summary>The planting as a looking glass at its side shows it.</summary>
    public GeneratedPlanting Mirrored() => Moved((x, y) => (-x, y)) with { From = (360 - From) % 360 };

    /// <summary>The planting measured from another mark.</summary>
    public GeneratedPlanting MeasuredFrom(int x, int y) => Moved((oldX, oldY) => (oldX - x, oldY - y));

    private static Gen<ImmutableArray<GeneratedTrunk>> TrunksOf(int pitch) => Gen.Select(
        Gen.Int[-240 / pitch, 240 / pitch],
        Gen.Int[-140 / pitch, 140 / pitch],
        Gen.OneOf<int>(Gen.Int[4, 30], Gen.OneOf(8, 8, 16)),
        Gen.OneOf<int>(Gen.Int[60, 260], Gen.OneOf(120, 120, 200)),
        Gen.OneOf<string?>(null, null, null, null, null, null, "lanky", "squat", "plain"),
        Gen.Int[0, 20]).Array[3, 80].Select(all => all
            .Select((trunk, index) => (Trunk: new GeneratedTrunk(Name(index), trunk.Item1 * pitch, trunk.Item2 * pitch, trunk.Item3, trunk.Item4, trunk.Item5), MayShare: trunk.Item6 == 0))

            // Two in one place are an error that few have: of twenty that would share a place one does.
            .DistinctBy(one => (one.Trunk.X, one.Trunk.Y, one.MayShare ? one.Trunk.Name : ""))
            .Select(one => one.Trunk)
            .ToImmutableArray());

    private GeneratedPlanting Moved(Func<int, int, (int X, int Y)> move) => this with
    {
        Trunks = [.. Trunks.Select(trunk => trunk with { X = move(trunk.X, trunk.Y).X, Y = move(trunk.X, trunk.Y).Y })],
        Corners = [.. Corners.Select(corner => move(corner.X, corner.Y))],
    };

    /// <summary>Names whose order is not the order of the file.</summary>
    private static string Name(int index) => $"{(char)('A' + (index * 7 % 26))}{index}";
}
