using System.Collections.Immutable;
using System.Globalization;
using GroveSpec.Binding;
using GroveSpec.Checks;
using GroveSpec.Checks.Moving;
using GroveSpec.Craft.Views;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;
using GroveSpec.Model.Trunks;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Editing.Placing;

/// <summary>Writes into the text where a trunk was moved by hand: to the whole millimetre, or the twentieth of an inch.</summary>
public static class TrunkPlacing
{
    private const double SteepestLean = 85;

    /// <summary>Moves a trunk's foot; a run that is written out goes with it.</summary>
    /// <param name="assessment">The file.</param>
    /// <param name="name">The trunk.</param>
    /// <param name="to">Where to.</param>
    /// <returns>The edits of its <c>at</c> and its <c>line</c>, whichever it has; a refusal where it has no place of its own, may not be moved, or tape readings place others from it.</returns>
    public static Placement Move(Assessment assessment, string name, PlanPoint to)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        if (Find(assessment, name) is not { } trunk)
        {
            return Placement.Refuse($"There is no trunk {name} in this text any more.");
        }

        if (trunk.Trunk.Fixed is not null)
        {
            return Placement.Refuse($"{name} is fixed: take the word out of its line to move it.");
        }

        if (assessment.Planting.IsFixed(trunk.Trunk))
        {
            return Placement.Refuse($"{name} cannot be moved: the trunks of a {assessment.Planting.EffectiveHabit.ToString().ToLowerInvariant()} stand on one root.");
        }

        if (trunk.Trunk.At is not { } at)
        {
            return Placement.Refuse(trunk.Place is null
                ? $"{name} has no place yet: write at into its line first."
                : $"{name} is placed by tape readings: change those, or write at into its line.");
        }

        var context = assessment.ToContext();
        if (TapeTies.WhyNotMoved(context, name, $"so {name} stays where it is") is { } why)
        {
            return Placement.Refuse(why);
        }

        var place = new PlanPoint(HandStep.Nearest(to.X, assessment.Units), HandStep.Nearest(to.Y, assessment.Units));
        return new(
            place == at.Value ? [] : FootEdits.Of(context, trunk.Trunk, place),
            $"{name} {PlaceWording.Say(place, assessment.Units)}",
            IsRefused: false,
            new(place.X, place.Y, Length.Zero));
    }

    /// <summary>Moves a trunk's top: its height and its lean follow.</summary>
    /// <param name="assessment">The file.</param>
    /// <param name="name">The trunk.</param>
    /// <param name="top">Where the top is to be.</param>
    /// <returns>The edits of its <c>height</c> and <c>lean</c>, in whole degrees; a refusal where its run is written out.</returns>
    public static Placement Reshape(Assessment assessment, string name, SpacePoint top)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        if (Find(assessment, name) is not { Place: { } foot } trunk)
        {
            return Placement.Refuse($"{name} has no place in this text.");
        }

        if (!trunk.Trunk.Line.IsEmpty)
        {
            return Placement.Refuse($"The run of {name} is written out point by point: change its line in the text.");
        }

        var isRead = trunk.Height is { } known && known != trunk.Trunk.Height;
        var step = HandStep.Of(assessment.Units);
        var height = isRead ? trunk.Height!.Value.Value : HandStep.Nearest(top.Z < step ? step : top.Z, assessment.Units);
        double right = (top.X - foot.X).Millimetres, back = (top.Y - foot.Y).Millimetres;
        var degrees = Math.Round(Math.Min(SteepestLean, Math.Atan2(Math.Sqrt((right * right) + (back * back)), Math.Max(height.Millimetres, 1e-6)) * 180 / Math.PI));
        Lean? lean = degrees < 1 ? null : new(new(degrees), new(Math.Round(Bearing.Of(right, back).Degrees) % 360));
        var edits = ImmutableArray.CreateBuilder<TextEdit>();
        if (!isRead && trunk.Trunk.Height?.Value != height)
        {
            Write(assessment, trunk.Trunk, trunk.Trunk.Height?.Origin, $"height {Say(height, assessment.Units)}", edits);
        }

        if (lean != trunk.Trunk.Lean?.Value)
        {
            Write(assessment, trunk.Trunk, trunk.Trunk.Lean?.Origin, lean is { } leaning ? Invariant($"lean {leaning.FromUpright.Degrees} deg toward {leaning.Toward.Degrees} deg") : "", edits);
        }

        var told = lean is { } shown ? Invariant($"leans {shown.FromUpright.Degrees} deg toward {shown.Toward.Degrees} deg") : "stands upright";
        return new(
            edits.ToImmutable(),
            isRead ? $"{name} {told}; its height of {Say(height, assessment.Units)} was read on a day and stays" : $"{name} is {Say(height, assessment.Units)} high and {told}",
            IsRefused: false,
            TrunkAxis.Straight(foot, height, lean).Tip);
    }

    /// <summary>The top of a trunk, as it is drawn.</summary>
    /// <param name="assessment">The file.</param>
    /// <param name="name">The trunk.</param>
    /// <returns>Its top; null where its place or its height is not known.</returns>
    public static SpacePoint? TopOf(Assessment assessment, string name)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        return Find(assessment, name) is { } trunk ? TrunkAxis.TipOf(trunk) : null;
    }

    /// <summary>The foot of a trunk.</summary>
    /// <param name="assessment">The file.</param>
    /// <param name="name">The trunk.</param>
    /// <returns>Its place; null where it is not known.</returns>
    public static PlanPoint? FootOf(Assessment assessment, string name)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        return Find(assessment, name)?.Place;
    }

    private static TrunkState? Find(Assessment assessment, string name) => assessment.State.Trunks.FirstOrDefault(trunk => trunk.Name == name);

    /// <summary>Writes a clause, or takes the one there is out with the blanks before it where the new one is empty.</summary>
    private static void Write(Assessment assessment, Trunk trunk, Origin? origin, string clause, ImmutableArray<TextEdit>.Builder edits)
    {
        var edit = ClauseEdit.Write(assessment.Origins, trunk, origin, clause);
        if (clause.Length == 0)
        {
            var text = assessment.TextOf(edit.Place.File).Content;
            var start = edit.Place.Span.Start;
            while (start > 0 && text[start - 1] is ' ' or '\t')
            {
                start--;
            }

            edit = edit with { Place = edit.Place with { Span = TextSpan.FromBounds(start, edit.Place.Span.End) } };
        }

        edits.Add(edit);
    }

    private static string Say(Length length, UnitSystem units) => units == UnitSystem.Inch ? $"{LengthWording.Say(length.Inches, 5)} in" : $"{LengthWording.Say(length.Millimetres, 3)} mm";

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
