using System.Diagnostics;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Syntax.Parsing;

/// <summary>Clauses.</summary>
internal sealed partial class MovedStatement
{
    private Clause Of(Clause clause)
    {
        var span = clause.Span.Moved(by);
        return clause switch
        {
            Clause.At at => at with { Span = span, Point = Of(at.Point) },
            Clause.Thickness thickness => thickness with { Span = span, Quantity = Of(thickness.Quantity) },
            Clause.Height height => height with { Span = span, Quantity = Of(height.Quantity) },
            Clause.Lean lean => lean with { Span = span, Angle = Of(lean.Angle), Toward = Of(lean.Toward) },
            Clause.Line line => line with { Span = span, Points = All(line.Points, Of) },
            Clause.Crown crown => crown with { Span = span, Radius = Of(crown.Radius) },
            Clause.Role role => role with { Span = span, Name = Of(role.Name) },
            Clause.Species species => species with { Span = span, Name = Of(species.Name) },
            Clause.Raised raised => raised with { Span = span, Year = Of(raised.Year) },
            Clause.Planned planned => planned with { Span = span, Moment = Of(planned.Moment) },
            Clause.Removed removed => removed with { Span = span, Moment = Of(removed.Moment) },
            Clause.Fixed held => held with { Span = span },
            Clause.Form form => form with { Span = span, Value = Of(form.Value) },
            Clause.Vigour vigour => vigour with { Span = span, Value = Of(vigour.Value) },
            Clause.Aim aim => aim with { Span = span, Dimension = Of(aim.Dimension), Quantity = Of(aim.Quantity), Year = Of(aim.Year) },
            Clause.Keep keep => keep with { Span = span, Dimension = Of(keep.Dimension), Quantity = Of(keep.Quantity) },
            Clause.Rank rank => rank with { Span = span, Number = Of(rank.Number) },
            Clause.Story story => story with { Span = span, Text = Of(story.Text) },
            Clause.Latitude latitude => latitude with { Span = span, Quantity = Of(latitude.Quantity), Hemisphere = Of(latitude.Hemisphere) },
            Clause.Zone zone => zone with { Span = span, Value = Of(zone.Value) },
            Clause.Frost frost => frost with { Span = span, Date = Of(frost.Date) },
            Clause.Means means => means with { Span = span, Temperatures = All(means.Temperatures, Of) },
            Clause.Sun sun => sun with { Span = span, From = Of(sun.From) },
            Clause.ViewedFrom viewed => viewed with { Span = span, Bearing = Of(viewed.Bearing) },
            Clause.ViewedAt at => at with { Span = span, Distance = Of(at.Distance) },
            Clause.Eye eye => eye with { Span = span, AboveSoil = Of(eye.AboveSoil) },
            Clause.Depth depth => depth with { Span = span, Word = Of(depth.Word) },
            _ => OfTask(clause),
        };
    }

    /// <summary>A clause of a task.</summary>
    private Clause OfTask(Clause clause)
    {
        var span = clause.Span.Moved(by);
        return clause switch
        {
            Clause.During during => during with { Span = span, Moment = Of(during.Moment) },
            Clause.FromTo fromTo => fromTo with { Span = span, Start = Of(fromTo.Start), End = Of(fromTo.End) },
            Clause.After after => after with { Span = span, Moment = Of(after.Moment) },
            Clause.Before before => before with { Span = span, Moment = Of(before.Moment) },
            Clause.Offset offset => offset with { Span = span, Least = Of(offset.Least), Most = Of(offset.Most), Task = Of(offset.Task) },
            Clause.Every every => every with { Span = span, Interval = Of(every.Interval) },
            Clause.Until until => until with { Span = span, Moment = Of(until.Moment) },
            Clause.WithWire wire => wire with { Span = span, Strands = Of(wire.Strands), Metal = Of(wire.Metal), Diameter = Of(wire.Diameter) },
            Clause.Coil coil => coil with { Span = span, Angle = Of(coil.Angle) },
            Clause.Stretch stretch => stretch with { Span = span, From = Of(stretch.From), To = Of(stretch.To) },
            Clause.Bend bend => bend with { Span = span, Angle = Of(bend.Angle), Toward = Of(bend.Toward), Over = Of(bend.Over) },
            Clause.Position position => position with { Span = span, Word = Of(position.Word) },
            Clause.Facing facing => facing with { Span = span, Word = Of(facing.Word), Bearing = Of(facing.Bearing) },
            Clause.Done done => done with { Span = span, Date = (MomentSyntax.Date)Of((MomentSyntax)done.Date) },
            Clause.Note note => note with { Span = span, Text = Of(note.Text) },
            _ => throw new UnreachableException(),
        };
    }
}
