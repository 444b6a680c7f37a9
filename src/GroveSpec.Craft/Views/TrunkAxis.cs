using System.Collections.Immutable;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;
using GroveSpec.Model.Trunks;

namespace GroveSpec.Craft.Views;

/// <summary>The middle line of a trunk in space, from the soil to the tip.</summary>
public sealed class TrunkAxis
{
    private static readonly Length FarthestTip = Length.FromMillimetres(1e9);

    private readonly double[] alongMillimetres;

    private TrunkAxis(ImmutableArray<SpacePoint> points)
    {
        Points = points;
        alongMillimetres = new double[points.Length];
        for (var index = 1; index < points.Length; index++)
        {
            var (x, y, z) = (
                (points[index].X - points[index - 1].X).Millimetres,
                (points[index].Y - points[index - 1].Y).Millimetres,
                (points[index].Z - points[index - 1].Z).Millimetres);
            alongMillimetres[index] = alongMillimetres[index - 1] + Math.Sqrt((x * x) + (y * y) + (z * z));
        }
    }

    /// <summary>The places it runs through, at least two, the base first; between them it is straight.</summary>
    public ImmutableArray<SpacePoint> Points { get; }

    /// <summary>Where it leaves the soil.</summary>
    public SpacePoint Base => Points[0];

    /// <summary>Its tip.</summary>
    public SpacePoint Tip => Points[^1];

    /// <summary>From the soil to the tip along the trunk.</summary>
    public Length Run => Length.FromMillimetres(alongMillimetres[^1]);

    /// <summary>The axis of a trunk on a day.</summary>
    /// <param name="trunk">The trunk.</param>
    /// <returns>Its axis; null while its place is not known, or neither its height nor its run is.</returns>
    public static TrunkAxis? Of(TrunkState trunk)
    {
        if (trunk.Place is not { } place)
        {
            return null;
        }

        if (trunk.Trunk.Line.Length > 0)
        {
            return Through(place, trunk.Trunk.Line, trunk.Height?.Value);
        }

        return trunk.Height is { } height ? Straight(place, height.Value, trunk.Trunk.Lean?.Value) : null;
    }

    /// <summary>The tip of a trunk's axis, which for a straight trunk needs no axis.</summary>
    /// <param name="trunk">The trunk.</param>
    /// <returns>Its tip; null when its place is not known, or neither its height nor its line.</returns>
    public static SpacePoint? TipOf(TrunkState trunk) =>
        trunk.Place is { } place ? TipOf(trunk, place) : null;

    /// <summary>The tip of a trunk's axis if the trunk stood at another place.</summary>
    /// <param name="trunk">The trunk.</param>
    /// <param name="place">The centre of its base there.</param>
    /// <returns>Its tip; null when neither its height nor its line is known.</returns>
    public static SpacePoint? TipOf(TrunkState trunk, PlanPoint place) =>
        trunk.Trunk.Line.Length > 0 ? Through(place, trunk.Trunk.Line, trunk.Height?.Value).Tip
            : trunk.Height is not { } height ? null
            : trunk.Trunk.Lean is { } lean ? Straight(place, height.Value, lean.Value).Tip
            : new SpacePoint(place.X, place.Y, height.Value);

    /// <summary>A straight trunk of an upright height.</summary>
    /// <param name="place">The centre of its base.</param>
    /// <param name="height">From the soil to the tip, upright.</param>
    /// <param name="lean">How far and which way it leans; null when it stands upright.</param>
    /// <returns>
    /// Its axis. The tip lies height × tan(lean) away from the base; a lean so near to level that this
    /// passes a thousand kilometres is held there.
    /// </returns>
    public static TrunkAxis Straight(PlanPoint place, Length height, Lean? lean)
    {
        var foot = new SpacePoint(place.X, place.Y, Length.Zero);
        if (lean is not { } leaning)
        {
            return new TrunkAxis([foot, foot with { Z = height }]);
        }

        var offset = Length.FromMillimetres(
            Math.Clamp(height.Millimetres * Math.Tan(leaning.FromUpright.Radians), 0, FarthestTip.Millimetres));
        return new TrunkAxis([foot, new SpacePoint(
            place.X + (offset * leaning.Toward.Rightward),
            place.Y + (offset * leaning.Toward.Backward),
            height)]);
    }

    /// <summary>A straight trunk of a length measured along it.</summary>
    /// <param name="place">The centre of its base.</param>
    /// <param name="run">From the soil to the tip along the trunk.</param>
    /// <param name="lean">How far and which way it leans.</param>
    /// <returns>Its axis. The tip lies run × sin(lean) away from the base and run × cos(lean) above the soil.</returns>
    public static TrunkAxis OfRun(PlanPoint place, Length run, Lean lean)
    {
        var offset = run * Math.Sin(lean.FromUpright.Radians);
        return new TrunkAxis([
            new SpacePoint(place.X, place.Y, Length.Zero),
            new SpacePoint(
                place.X + (offset * lean.Toward.Rightward),
                place.Y + (offset * lean.Toward.Backward),
                run * Math.Cos(lean.FromUpright.Radians))]);
    }

    /// <summary>A trunk whose run was given.</summary>
    /// <param name="place">The centre of its base; the axis starts here, whether or not the run does.</param>
    /// <param name="line">The run from soil to tip; its first place is left out when it is at or below the soil.</param>
    /// <param name="height">
    /// The newest height; null when none is known. Where it differs from the run's own tip, the run is drawn out or in
    /// from the base, so that the tip stands at this height.
    /// </param>
    /// <returns>Its axis; a run that never leaves the soil gives an upright axis of the height, or of nothing.</returns>
    public static TrunkAxis Through(PlanPoint place, ImmutableArray<SpacePoint> line, Length? height)
    {
        var foot = new SpacePoint(place.X, place.Y, Length.Zero);
        var start = line[0].Z <= Length.Zero ? 1 : 0;
        if (start == line.Length || line[^1].Z <= Length.Zero)
        {
            return new TrunkAxis([foot, foot with { Z = height ?? Length.Zero }]);
        }

        var factor = height is { } newest && newest > Length.Zero ? newest / line[^1].Z : 1;
        var points = ImmutableArray.CreateBuilder<SpacePoint>(line.Length - start + 1);
        points.Add(foot);
        for (var index = start; index < line.Length; index++)
        {
            points.Add(factor == 1 ? line[index] : new SpacePoint(
                foot.X + Stretch(line[index].X - foot.X, factor),
                foot.Y + Stretch(line[index].Y - foot.Y, factor),
                Stretch(line[index].Z, factor)));
        }

        return new TrunkAxis(points.DrainToImmutable());
    }

    /// <summary>A place along the axis.</summary>
    /// <param name="share">How far along the trunk, 0 at the soil and 1 at the tip; held between these.</param>
    /// <returns>The place.</returns>
    public SpacePoint At(double share)
    {
        var along = Math.Clamp(share, 0, 1) * alongMillimetres[^1];
        var index = 1;
        while (index < Points.Length - 1 && alongMillimetres[index] < along)
        {
            index++;
        }

        var span = alongMillimetres[index] - alongMillimetres[index - 1];
        var part = span > 0 ? (along - alongMillimetres[index - 1]) / span : 0;
        var (from, to) = (Points[index - 1], Points[index]);
        return new SpacePoint(
            from.X + ((to.X - from.X) * part),
            from.Y + ((to.Y - from.Y) * part),
            from.Z + ((to.Z - from.Z) * part));
    }

    private static Length Stretch(Length value, double factor) =>
        Length.FromMillimetres(Math.Clamp(value.Millimetres * factor, -FarthestTip.Millimetres, FarthestTip.Millimetres));
}
