using GroveSpec.Drawing.Scene;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing.Front;

/// <summary>Draws trunks with their crowns, one element a texture.</summary>
/// <param name="svg">Where to.</param>
/// <param name="fullness">How much texture: 1 for few trunks, less for many, 0 for a thousand.</param>
internal sealed class TrunkPainter(SvgWriter svg, double fullness)
{
    /// <summary>How many shades of distance the ink has.</summary>
    public const int Shades = 6;

    /// <summary>Draws a standing trunk.</summary>
    /// <param name="trunk">The trunk.</param>
    /// <param name="crown">Its crown; null for none.</param>
    /// <param name="shade">How far it is, 0 for the nearest.</param>
    public void Draw(TrunkFigure trunk, CrownFigure? crown, int shade)
    {
        svg.OpenGroup($"gs-tree gs-far{shade}", trunk.Trunk.Trunk.Origin.Id, fullness > 0 ? DrawnText.Clean(trunk.Trunk.Name) : null);
        if (crown is not null)
        {
            Path("gs-foliage", pen => CrownInk.Mass(pen, crown, fullness >= 0.5 ? 1 : 1 + ((0.5 - fullness) * 2.4)));
            if (fullness > 0.05 && trunk.Thick > 0.7)
            {
                Path("gs-branch", pen => CrownInk.Branches(pen, crown));
            }
        }

        DrawTrunk(trunk);
        if (crown is not null && fullness > 0.05)
        {
            Path("gs-masses", pen => CrownInk.Masses(pen, crown, fullness));
            Path("gs-leaves", pen => CrownInk.Leaves(pen, crown, fullness));
        }

        svg.CloseGroup();
    }

    /// <summary>Draws a trunk that is planned: thin and broken, without bark.</summary>
    /// <param name="trunk">The trunk.</param>
    /// <param name="crown">Its crown; null for none.</param>
    public void DrawPlanned(TrunkFigure trunk, CrownFigure? crown)
    {
        svg.OpenGroup("gs-tree gs-tree-planned", trunk.Trunk.Trunk.Origin.Id, DrawnText.Clean(trunk.Trunk.Name));
        if (crown is not null)
        {
            Path("gs-planned-crown", pen => CrownInk.Mass(pen, crown, 1));
        }

        Path("gs-planned-trunk", pen => TrunkInk.Outline(pen, trunk));
        svg.CloseGroup();
    }

    /// <summary>Draws what is left of a trunk that was taken out.</summary>
    /// <param name="trunk">The trunk.</param>
    public void DrawRemoved(TrunkFigure trunk)
    {
        svg.OpenGroup("gs-tree gs-tree-removed", trunk.Trunk.Trunk.Origin.Id, DrawnText.Clean(trunk.Trunk.Name));
        Path("gs-stump", pen => TrunkInk.Stump(pen, trunk));
        svg.CloseGroup();
    }

    /// <summary>Draws a trunk's outline broken, over what hides it.</summary>
    /// <param name="trunk">The trunk.</param>
    public void DrawHidden(TrunkFigure trunk) => Path("gs-hidden", pen => TrunkInk.Outline(pen, trunk));

    /// <summary>How a trunk is drawn on its day.</summary>
    /// <param name="presence">Whether it is there.</param>
    /// <returns>Its part of the key; null for one that stands.</returns>
    public static string? KeyOf(Presence presence) => presence switch
    {
        Presence.Planned => "A thin broken outline is planned.",
        Presence.Removed => "A low stump was taken out.",
        _ => null,
    };

    private void DrawTrunk(TrunkFigure trunk)
    {
        var weight = Math.Clamp(0.7 + (trunk.Thick * 0.035), 0.7, 1.7);
        if (fullness <= 0.05)
        {
            svg.BeginPath("gs-bole");
            TrunkInk.PlainOutline(new Pen(svg), trunk);
            svg.EndPath();
            return;
        }

        svg.BeginPath("gs-bole", trunk.Trunk.Diameter?.Origin.Id, weight);
        TrunkInk.Outline(new Pen(svg), trunk);
        svg.EndPath();
        if (trunk.Thick > 1)
        {
            Path("gs-furrow", pen => TrunkInk.Bark(pen, trunk, fullness));
            Path("gs-fissure", pen => TrunkInk.Fissures(pen, trunk));
            Path("gs-hatch", pen => TrunkInk.Shadow(pen, trunk));
            Path("gs-root", pen => TrunkInk.Roots(pen, trunk));
        }
    }

    // A path that draws nothing leaves nothing behind.
    private void Path(string cls, Action<Pen> draw)
    {
        var before = svg.Length;
        svg.BeginPath(cls);
        var begun = svg.Length;
        draw(new Pen(svg));
        if (svg.Length == begun)
        {
            svg.TakeBack(before);
            return;
        }

        svg.EndPath();
    }
}
