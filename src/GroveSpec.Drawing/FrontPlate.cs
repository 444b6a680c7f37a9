using GroveSpec.Craft.Views;
using GroveSpec.Drawing.Front;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing;

/// <summary>The planting as its viewer sees it, in perspective: an ink plate of 800 px width whose height follows what it holds.</summary>
public static class FrontPlate
{
    private const double NoteLine = 17;
    private const double NoteSize = 13;
    private const double PageEdge = 26;
    private const double WidestName = 260;
    private const double WidestNameOfMany = 170;
    private const int MostNames = 120;

    /// <summary>Draws the plate.</summary>
    /// <param name="subject">What is drawn.</param>
    /// <param name="options">How.</param>
    /// <returns>
    /// A whole SVG document, the same bytes for the same subject and options. Trunks behind the eye or without a place are
    /// named in a remark; sizes that are not known are assumed by <see cref="ShownSizes"/> and said so; a planting without
    /// standing trunks gives its container and a sentence. From more than 120 trunks on, names are left out.
    /// </returns>
    public static string Draw(DrawingSubject subject, DrawingOptions options)
    {
        var state = subject.State;
        var view = FrontView.Of(state);
        var scene = FrontScene.Of(state, view);
        var marks = new FindingMarks(subject);
        var names = Names.Of(scene);
        var (gaps, bands) = marks.LayOutGaps(names.DropOf, FrontScene.PictureRight);

        var foot = Math.Max(scene.Picture.Bottom, scene.Ground?.Bottom ?? 0);
        var bandTop = foot + 10;
        var nameTop = bandTop + (bands * FindingMarks.BandHeight);
        var notesTop = nameTop + names.Height + 22;
        var hidden = Hidden(view, marks, options.ShowHidden);
        var notes = NoteLines(FrontWords.Notes(state, view, hidden.Count > 0, names.Any));
        var keyTop = notesTop + (notes.Count * NoteLine) + (notes.Count > 0 ? 8 : 0);
        var key = Plate.LayOutKey(FrontScene.PageWidth, options.TellsFindings ? marks.Sentences : []);
        var height = keyTop + Plate.HeightOfKey(key) + 34;

        var svg = new SvgWriter();
        var hasScale = scene.Trees.Count + scene.Others.Count > 0;
        Open(svg, subject, options, view, scene, hasScale, height);
        var tallest = scene.TallestMillimetres;
        if (hasScale)
        {
            HeightScale.DrawLevels(svg, scene.Stage, tallest, FrontScene.PictureRight, options.Units);
        }

        var fullness = FrontScene.FullnessFor(scene.Trees.Count);
        svg.CoarsePaths = true;
        if (scene.Ground is { } ground)
        {
            GroundInk.Draw(svg, ground, scene.IsPatch, fullness);
        }

        names.DrawLeaders(svg, bandTop, nameTop);
        DrawTrunks(svg, scene, fullness, hidden);
        svg.CoarsePaths = false;
        if (hasScale)
        {
            HeightScale.Draw(svg, scene.Stage, tallest, options.Units);
        }

        var figures = scene.Trees.ToDictionary(tree => tree.Trunk.Trunk.Name, tree => tree.Trunk, StringComparer.Ordinal);
        marks.DrawOver(
            svg,
            new Box(FrontScene.PictureLeft, Plate.HeadingFoot + 4, FrontScene.PageWidth - 14, foot),
            name => figures.GetValueOrDefault(name),
            CentreOf(scene),
            scene.Picture with { Bottom = scene.Ground?.Rim.Max(spot => spot.Y) ?? scene.Picture.Bottom });
        FindingMarks.DrawGaps(svg, gaps, bandTop);
        names.Draw(svg, nameTop);
        for (var line = 0; line < notes.Count; line++)
        {
            svg.Text("gs-remark", Plate.Margin, notesTop + (line * NoteLine) + NoteSize, NoteSize, notes[line]);
        }

        Plate.WriteKey(svg, keyTop, marks.Numbers, key);
        Plate.Close(svg);
        return svg.Finish();
    }

    private static void Open(
        SvgWriter svg, DrawingSubject subject, DrawingOptions options, FrontView view, FrontScene scene, bool hasScale, double height)
    {
        var state = subject.State;
        var name = FrontWords.NameOf(state);
        Plate.Open(
            svg,
            "front",
            FrontScene.PageWidth,
            height,
            $"{DrawnText.Isolated(name)}, from the front",
            FrontWords.Describe(state, view, options.Units),
            FrontStyle.Sheet(),
            options);
        var unit = hasScale ? HeightScale.UnitOf(scene.TallestMillimetres, options.Units) : null;
        Plate.WriteHeading(svg, FrontScene.PageWidth, name, state.Planting.Name?.Origin.Id, FrontWords.Remark(view.Frame, unit, options.Units), options);
    }

    private static void DrawTrunks(SvgWriter svg, FrontScene scene, double fullness, HashSet<string> hidden)
    {
        var painter = new TrunkPainter(svg, fullness);

        foreach (var other in scene.Others.Where(other => other.Trunk.Trunk.Presence == Presence.Removed))
        {
            painter.DrawRemoved(other.Trunk);
        }

        foreach (var tree in scene.Trees)
        {
            painter.Draw(tree.Trunk, tree.Crown, tree.Shade);
        }

        // What is only planned lets all show through, so it is laid over the rest.
        foreach (var other in scene.Others.Where(other => other.Trunk.Trunk.Presence == Presence.Planned))
        {
            painter.DrawPlanned(other.Trunk, other.Crown);
        }

        foreach (var tree in scene.Trees.Where(tree => hidden.Contains(tree.Trunk.Trunk.Name)))
        {
            painter.DrawHidden(tree.Trunk);
        }
    }

    /// <summary>The trunks to draw broken over what hides them: all that are hidden on request, else those that a finding is about.</summary>
    private static HashSet<string> Hidden(FrontView view, FindingMarks marks, bool showsAll)
    {
        var told = marks.HiddenTrunks.ToHashSet(StringComparer.Ordinal);
        return view.Trunks
            .Where(trunk => trunk.Hidden is { Share: > 0 } && (showsAll || told.Contains(trunk.Name)))
            .Select(trunk => trunk.Name)
            .ToHashSet(StringComparer.Ordinal);
    }

    private static double CentreOf(FrontScene scene) => scene is { Ground: { } ground, IsPatch: false }
        ? (ground.Left + ground.Right) / 2
        : scene.Stage.Left;

    private static List<string> NoteLines(List<string> notes) =>
        [.. notes.SelectMany(note => DrawnText.Wrapped(note, FrontScene.PageWidth - (2 * Plate.Margin), NoteSize, Face.Italic))];

    /// <summary>The names below the picture and their leaders.</summary>
    private sealed class Names
    {
        private readonly List<FrontScene.Standing> trees;
        private readonly string[] shown;
        private readonly NameRows.Place[] places;
        private readonly int rows;
        private readonly double size;
        private readonly Dictionary<string, double> drops = new(StringComparer.Ordinal);

        private Names(List<FrontScene.Standing> trees)
        {
            this.trees = trees;
            var names = trees.Select(tree => DrawnText.Clean(tree.Trunk.Trunk.Name)).ToList();

            // Letters shrink for many names and for long ones before any name is cut short.
            var longest = names.Select(name => TextMetrics.ReservedWidth(name, 1, Face.Italic)).DefaultIfEmpty(0).Max();
            var widest = trees.Count <= 30 ? WidestName : WidestNameOfMany;
            var (wanted, largest) = trees.Count switch { <= 7 => (260, 20), <= 12 => (200, 20), <= 30 => (150, 16), _ => (60, 14) };
            size = Math.Clamp(Math.Floor(wanted / Math.Max(1, longest)), Plate.SmallText, largest);
            shown = [.. names.Select(name => DrawnText.Shortened(name, widest, size, Face.Italic))];
            (places, rows) = NameRows.Arrange(
                [.. trees.Select(tree => tree.Trunk.Foot.X)],
                [.. shown.Select(name => TextMetrics.ReservedWidth(name, size, Face.Italic))],
                PageEdge,
                FrontScene.PageWidth - PageEdge);
            for (var index = 0; index < places.Length; index++)
            {
                drops[trees[index].Trunk.Trunk.Name] = places[index].Drop;
            }
        }

        public bool Any => trees.Count > 0;

        private double Row => size * 1.32;

        /// <summary>How far leaders slant before the first row.</summary>
        private double Slant => Any ? 16 + Math.Min(44, places.Max(place => Math.Abs(place.Leader - place.Drop)) * 0.3) : 0;

        public double Height => Any ? Slant + 6 + (rows * Row) : 0;

        public static Names Of(FrontScene scene)
        {
            var all = scene.Trees.Concat(scene.Others).OrderBy(tree => tree.Trunk.Foot.X).ThenBy(tree => tree.Trunk.Trunk.Name, StringComparer.Ordinal).ToList();
            return new Names(all.Count <= MostNames ? all : []);
        }

        public double? DropOf(string name) => drops.TryGetValue(name, out var drop) ? drop : null;

        public void DrawLeaders(SvgWriter svg, double dropTo, double top)
        {
            if (!Any)
            {
                return;
            }

            var turn = Math.Max(dropTo, top - 2);
            svg.BeginPath("gs-thread");
            for (var index = 0; index < trees.Count; index++)
            {
                var place = places[index];
                svg.MoveTo(place.Drop, trees[index].Trunk.Bottom + 3);
                svg.LineTo(place.Drop, turn);
                svg.LineTo(place.Leader, top + Slant);
                if (place.Row > 0)
                {
                    svg.LineTo(place.Leader, top + Slant + (place.Row * Row));
                }
            }

            svg.EndPath();
        }

        public void Draw(SvgWriter svg, double top)
        {
            for (var index = 0; index < trees.Count; index++)
            {
                var (place, trunk) = (places[index], trees[index].Trunk.Trunk);
                var baseline = top + Slant + (place.Row * Row) + 3 + (size * TextMetrics.Ascent);
                var title = shown[index] == trunk.Name ? null : DrawnText.Clean(trunk.Name);
                var width = TextMetrics.ReservedWidth(shown[index], size, Face.Italic);
                var cls = trunk.Presence == Presence.Standing ? "gs-name" : "gs-other-name";
                if (rows == 1)
                {
                    svg.Text(cls, place.Left + (width / 2), baseline, size, shown[index], TextAnchor.Middle, trunk.Trunk.Origin.Id, title: title);
                }
                else
                {
                    svg.Text(cls, place.Left, baseline, size, shown[index], origin: trunk.Trunk.Origin.Id, title: title);
                }
            }
        }
    }
}
