using System.Collections.Immutable;
using GroveSpec.Binding.Names;
using GroveSpec.Binding.Origins;
using GroveSpec.Binding.Quantities;
using GroveSpec.Checks;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Times;
using GroveSpec.Model.Trunks;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Binding.Statements;

/// <summary>Binds trunks.</summary>
/// <param name="scope">The file.</param>
/// <param name="roleName">Finds the name of a role as its own statement spells it, and tells when there is none.</param>
/// <param name="isSouthern">Whether the seasons are those of the south.</param>
internal sealed class TrunkBinder(BindingScope scope, Func<NameSyntax, string> roleName, bool isSouthern)
{
    private static readonly Length Rounding = new(Length.NanometresPerMillimetre);

    /// <summary>Where a species is named by a trunk, one place for each species.</summary>
    public Dictionary<string, NameSyntax> Species { get; } = new(StringComparer.Ordinal);

    /// <summary>A diameter from a girth: girth/π, rounded to the nearest nanometre.</summary>
    /// <param name="girth">The girth.</param>
    /// <returns>The diameter.</returns>
    public static Length DiameterOf(Length girth) => new((long)Math.Round(girth.Nanometres / Math.PI, MidpointRounding.AwayFromZero));

    /// <summary>Binds a trunk.</summary>
    /// <param name="statement">The statement.</param>
    /// <param name="name">Its name.</param>
    /// <returns>The trunk, with what could be taken.</returns>
    public Trunk Bind(Statement.Trunk statement, NameSyntax name)
    {
        var origin = scope.Origin("trunk:" + OriginTable.Piece(name.Text), statement);
        var facts = new Facts();
        foreach (var clause in statement.Clauses)
        {
            Take(ref facts, clause, origin, name);
        }

        return Complete(ref facts, name, origin);
    }

    private void Take(ref Facts facts, Clause clause, Origin origin, NameSyntax name)
    {
        switch (clause)
        {
            case Clause.Thickness thickness:
                TakeThickness(ref facts, thickness, origin, name);
                return;
            case Clause.Height height when Once(ref facts.HeightClause, clause, name):
                facts.Height = State(scope.Quantities.Length(height.Quantity, new Subject("The height of", name.Text), Bound.AboveZero), origin, "height");
                return;
            case Clause.At at when Once(ref facts.AtClause, clause, name):
                facts.At = Place(at.Point, name) is { } place ? new Stated<PlanPoint>(place, origin.Part("at")) : null;
                return;
            case Clause.Role role when Once(ref facts.RoleClause, clause, name):
                facts.Role = new Stated<string>(roleName(role.Name), origin.Part("role"));
                return;
            case Clause.Crown crown when Once(ref facts.CrownClause, clause, name):
                facts.Crown = State(scope.Quantities.Length(crown.Radius, new Subject("The crown of", name.Text), Bound.AboveZero), origin, "crown");
                return;
            case Clause.Lean lean when Once(ref facts.LeanClause, clause, name):
                facts.Lean = scope.Quantities.Angle(lean.Angle, new Subject("The lean of", name.Text), 0, 90, isMostIncluded: false) is { } angle
                    && scope.Quantities.Bearing(lean.Toward, new Subject("The bearing of the lean of", name.Text)) is { } toward
                        ? new Stated<Lean>(new Lean(angle, toward), origin.Part("lean"))
                        : null;
                return;
            case Clause.Line line when Once(ref facts.LineClause, clause, name):
                facts.Line = Run(line, name);
                return;
            case Clause.Species species when Once(ref facts.SpeciesClause, clause, name):
                facts.Species = new Stated<string>(species.Name.Text, origin.Part("species"));
                Species.TryAdd(species.Name.Text, species.Name);
                return;
            case Clause.Raised raised when Once(ref facts.RaisedClause, clause, name):
                facts.Raised = scope.Dates.Year(raised.Year) is { } year ? new Stated<int>(year, origin.Part("raised")) : null;
                return;
            case Clause.Planned planned when Once(ref facts.PlannedClause, clause, name):
                facts.Planned = scope.Dates.Moment(planned.Moment) is { } due ? new Stated<Moment>(due, origin.Part("planned")) : null;
                return;
            case Clause.Removed removed when Once(ref facts.RemovedClause, clause, name):
                facts.Removed = scope.Dates.Moment(removed.Moment) is { } gone ? new Stated<Moment>(gone, origin.Part("removed")) : null;
                return;
            case Clause.Fixed when Once(ref facts.FixedClause, clause, name):
                facts.Fixed = origin.Part("fixed");
                return;
            default:
                return;
        }
    }

    private void TakeThickness(ref Facts facts, Clause.Thickness thickness, Origin origin, NameSyntax name)
    {
        if (facts.ThicknessClause is { } earlier && earlier.IsGirth == thickness.IsGirth)
        {
            Clause? first = earlier;
            Once(ref first, thickness, name);
            return;
        }

        var read = scope.Quantities.Length(thickness.Quantity, thickness.IsGirth ? new Subject("The girth of", name.Text) : new Subject("The diameter of", name.Text), Bound.AboveZero);
        var diameter = read is { } girth && thickness.IsGirth ? DiameterOf(girth) : read;
        if (facts.ThicknessClause is null)
        {
            facts.ThicknessClause = thickness;
            facts.Diameter = State(diameter, origin, "diameter");
        }
        else if (diameter is { } second && facts.Diameter is { } held && Disagree(held.Value, second))
        {
            Contradict(
                name,
                thickness.Span,
                facts.ThicknessClause.Span,
                thickness.IsGirth
                    ? $"{Short(name)} is {Say(held.Value)} thick by its diameter but {Say(second)} by its girth (girth/π); the first holds."
                    : $"{Short(name)} is {Say(held.Value)} thick by its girth (girth/π) but {Say(second)} by its diameter; the first holds.",
                "the other measure");
        }
    }

    private Trunk Complete(ref Facts facts, NameSyntax name, Origin origin)
    {
        if (!facts.Line.IsDefaultOrEmpty)
        {
            CompleteFromLine(ref facts, name, origin);
        }

        if (facts.Planned is { } planned && facts.Removed is { } removed && IsAfter(planned.Value, removed.Value))
        {
            Contradict(name, facts.RemovedClause!.Span, facts.PlannedClause!.Span, $"{Short(name)} is removed before it is planned to be there.", "when it is planned");
        }

        if (facts.Raised is { } raised && facts.Removed is { } gone && SeasonCalendar.Days(gone.Value, isSouthern) is { } days && days.End.Year < raised.Value)
        {
            Contradict(name, facts.RemovedClause!.Span, facts.RaisedClause!.Span, $"{Short(name)} is removed before the year in which it was raised.", "when it was raised");
        }

        return new Trunk
        {
            Name = name.Text,
            Origin = origin,
            At = facts.At,
            Diameter = facts.Diameter,
            IsGirth = facts.ThicknessClause is { IsGirth: true },
            Height = facts.Height,
            Lean = facts.Lean,
            Line = facts.Line.IsDefault ? [] : facts.Line,
            LineOrigin = facts.Line.IsDefaultOrEmpty ? null : origin.Part("line"),
            Crown = facts.Crown,
            Role = facts.Role,
            Species = facts.Species,
            Raised = facts.Raised,
            Planned = facts.Planned,
            Removed = facts.Removed,
            Fixed = facts.Fixed,
        };
    }

    /// <summary>A run gives the place of the base and the height of the tip too, so what is stated beside it must agree.</summary>
    private void CompleteFromLine(ref Facts facts, NameSyntax name, Origin origin)
    {
        var foot = facts.Line[0].Plan;
        var tip = facts.Line[^1].Z;
        if (facts.At is { } at && at.Value.DistanceTo(foot) > Rounding)
        {
            Contradict(name, facts.LineClause!.Span, facts.AtClause!.Span, $"The line of {Short(name)} begins {Say(at.Value.DistanceTo(foot))} from where it stands by its \"at\", which holds.", "where it stands");
        }

        facts.At ??= new Stated<PlanPoint>(foot, origin.Part("line"));
        if (facts.Height is { } height && Disagree(height.Value, tip))
        {
            Contradict(name, facts.LineClause!.Span, facts.HeightClause!.Span, $"The line of {Short(name)} ends {Say(tip)} above the soil, but its height is {Say(height.Value)}, which holds.", "its height");
        }

        if (facts.Height is null && tip > Length.Zero)
        {
            facts.Height = new Stated<Length>(tip, origin.Part("line"));
        }

        if (facts.Lean is not null)
        {
            Contradict(name, facts.LeanClause!.Span, facts.LineClause!.Span, $"{Short(name)} has a lean and a line: the line says already how it leans, and holds.", "its line");
            facts.Lean = null;
        }
    }

    private PlanPoint? Place(PlanPointSyntax point, NameSyntax name)
    {
        var x = scope.Quantities.Length(point.X, new Subject("The place to the right of", name.Text), Bound.None, point.Y.Unit);
        var y = scope.Quantities.Length(point.Y, new Subject("The place to the back of", name.Text));
        return x is { } right && y is { } back ? new PlanPoint(right, back) : null;
    }

    private ImmutableArray<SpacePoint> Run(Clause.Line line, NameSyntax name)
    {
        if (line.Points.Length < 2)
        {
            if (!scope.IsTold(line.Span))
            {
                scope.Tell(FileDescriptions.OutOfRange, line.Span, $"The line of {Short(name)} needs at least two points, from the soil to the tip.");
            }

            return [];
        }

        var points = new SpacePoint[line.Points.Length];
        NameSyntax? unit = null;
        var areAllKnown = true;
        for (var index = points.Length - 1; index >= 0; index--)
        {
            var point = line.Points[index];
            unit = point.Z.Unit ?? unit;
            var x = scope.Quantities.Length(point.X, new Subject("The line of", name.Text), Bound.None, point.X.Unit ?? unit);
            var y = scope.Quantities.Length(point.Y, new Subject("The line of", name.Text), Bound.None, point.Y.Unit ?? unit);
            var z = scope.Quantities.Length(point.Z, new Subject("The line of", name.Text), Bound.None, unit);
            areAllKnown &= x is not null && y is not null && z is not null;
            points[index] = new SpacePoint(x ?? Length.Zero, y ?? Length.Zero, z ?? Length.Zero);
        }

        return areAllKnown ? [.. points] : [];
    }

    private bool Once(ref Clause? slot, Clause clause, NameSyntax name)
    {
        if (slot is null)
        {
            slot = clause;
            return true;
        }

        var part = PartPlaces.NameOf(clause);
        var finding = scope.Tell(FileDescriptions.SaidTwice, clause.Span, $"\"{part}\" was said already of {Short(name)}, and the first holds; take one of the two out.");
        scope.Amend(finding with
        {
            Trunks = [name.Text],
            Related = [new RelatedPlace(scope.Place(slot.Span), $"the first \"{part}\"")],
            Remedies = [scope.TakeOut("take the second out", clause.Span)],
        });
        return false;
    }

    private void Contradict(NameSyntax name, TextSpan span, TextSpan related, string message, string relation)
    {
        var finding = scope.Tell(FileDescriptions.Contradiction, span, message);
        scope.Amend(finding with { Trunks = [name.Text], Related = [new RelatedPlace(scope.Place(related), relation)] });
    }

    private bool IsAfter(Moment left, Moment right) =>
        SeasonCalendar.Days(left, isSouthern) is { } first && SeasonCalendar.Days(right, isSouthern) is { } second && first.Start > second.End;

    /// <summary>Two measures of one size disagree beyond 2 % and beyond a millimetre: a tape round a trunk and a rule across it are each read to about half a millimetre (common practice).</summary>
    private static bool Disagree(Length left, Length right)
    {
        var difference = Math.Abs(left.Nanometres - right.Nanometres);
        return difference > Rounding.Nanometres && difference > Math.Max(left.Nanometres, right.Nanometres) * 0.02;
    }

    private static Stated<Length>? State(Length? length, Origin origin, string part) => length is { } known ? new Stated<Length>(known, origin.Part(part)) : null;

    private static string Short(NameSyntax name) => Saying.Short(name.Text);

    private static string Say(Length length) => LengthWording.Say(length, UnitSystem.Metric);

    /// <summary>What was read of a trunk so far, each with the clause that said it.</summary>
    private struct Facts
    {
        public Stated<PlanPoint>? At;
        public Clause? AtClause;
        public Stated<Length>? Diameter;
        public Clause.Thickness? ThicknessClause;
        public Stated<Length>? Height;
        public Clause? HeightClause;
        public Stated<Lean>? Lean;
        public Clause? LeanClause;
        public ImmutableArray<SpacePoint> Line;
        public Clause? LineClause;
        public Stated<Length>? Crown;
        public Clause? CrownClause;
        public Stated<string>? Role;
        public Clause? RoleClause;
        public Stated<string>? Species;
        public Clause? SpeciesClause;
        public Stated<int>? Raised;
        public Clause? RaisedClause;
        public Stated<Moment>? Planned;
        public Clause? PlannedClause;
        public Stated<Moment>? Removed;
        public Clause? RemovedClause;
        public Origin? Fixed;
        public Clause? FixedClause;
    }
}
