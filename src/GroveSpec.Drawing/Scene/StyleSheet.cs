namespace GroveSpec.Drawing.Scene;

/// <summary>
/// The one style block of a plate. Each colour is written twice: as itself, for renderers without custom properties,
/// and as a property such as <c>--gs-ink</c> that a page's theme can set on <c>svg.gs</c>.
/// </summary>
internal sealed class StyleSheet
{
    private readonly List<(string Selector, string Declarations)> rules =
    [
        // On the root, to be inherited: a rule on the text elements would outweigh those on their classes.
        (".gs", "font-variant-numeric:lining-nums;fill:$ink"),
        (".gs-paper", "fill:$paper"),
        (".gs-title", "fill:$ink"),
        (".gs-remark", "font-style:italic;fill:$soft"),
        (".gs-rule", "fill:none;stroke:$soft;stroke-width:1"),
        (".gs-number", "fill:$soft"),
        (".gs-key", "fill:$ink"),
        (".gs-name", "font-style:italic;fill:$ink;stroke:$paper;stroke-width:4;stroke-linejoin:round;paint-order:stroke"),
        (".gs-leader", "fill:none;stroke:$soft;stroke-width:.6"),
        (".gs-finding", "fill:none;stroke:$attention;stroke-width:1.1;stroke-dasharray:14 4 2 4"),
        (".gs-mark", "fill:$paper;stroke:$attention;stroke-width:1"),
        (".gs-mark-number", "fill:$attention"),
        (".gs-scale", "fill:none;stroke:$ink;stroke-width:1"),
    ];

    /// <summary>Adds a rule.</summary>
    /// <param name="selector">A selector on classes that begin with <c>gs-</c>; the same name means the same on every plate, since one page may hold several.</param>
    /// <param name="declarations">Declarations parted by semicolons; a colour is a <c>$role</c> of <see cref="Palette"/>.</param>
    /// <returns>This sheet.</returns>
    public StyleSheet Rule(string selector, string declarations)
    {
        rules.Add((selector, declarations));
        return this;
    }

    /// <summary>Adds the rules for numbered rings of one kind, beside those of the findings.</summary>
    /// <param name="cls">Their class; that of the numbers has -number behind it.</param>
    /// <returns>This sheet.</returns>
    public StyleSheet NumberedRing(string cls) => Rule("." + cls, "fill:$paper;stroke:$ink;stroke-width:1").Rule($".{cls}-number", "fill:$ink");

    /// <summary>Writes the style element.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="faceRules">Rules that go first, trusted.</param>
    /// <param name="light">The colours that hold unless the page is dark or printed.</param>
    public void WriteTo(SvgWriter svg, string faceRules, string[] light)
    {
        svg.Raw("<style>\n");
        if (faceRules.Length > 0)
        {
            svg.Raw(faceRules);
            svg.Raw("\n");
        }

        WriteColours(svg, light);
        svg.Raw("@media (prefers-color-scheme:dark){");
        WriteColours(svg, Palette.Dark);
        svg.Raw("}\n@media print{");
        WriteColours(svg, Palette.Print);
        svg.Raw("}\n");
        foreach (var (selector, declarations) in rules)
        {
            svg.Raw(selector);
            svg.Raw("{");
            var rest = declarations.AsSpan();
            while (rest.Length > 0)
            {
                var end = rest.IndexOf(';');
                WriteDeclaration(svg, end < 0 ? rest : rest[..end], light);
                rest = end < 0 ? [] : rest[(end + 1)..];
                svg.Raw(rest.Length > 0 ? ";" : "");
            }

            svg.Raw("}\n");
        }

        svg.Raw("</style>\n");
    }

    private static void WriteColours(SvgWriter svg, string[] colours)
    {
        svg.Raw(".gs{");
        for (var role = 0; role < colours.Length; role++)
        {
            svg.Raw(role == 0 ? "--gs-" : ";--gs-");
            svg.Raw(Palette.Roles[role]);
            svg.Raw(":");
            svg.Raw(colours[role]);
        }

        svg.Raw("}");
    }

    private static void WriteDeclaration(SvgWriter svg, ReadOnlySpan<char> declaration, string[] light)
    {
        var dollar = declaration.IndexOf('$');
        if (dollar < 0)
        {
            svg.Raw(declaration);
            return;
        }

        var property = declaration[..dollar];
        var role = declaration[(dollar + 1)..];
        svg.Raw(property);
        for (var i = 0; i < Palette.Roles.Length; i++)
        {
            if (role.SequenceEqual(Palette.Roles[i]))
            {
                svg.Raw(light[i]);
            }
        }

        svg.Raw(";");
        svg.Raw(property);
        svg.Raw("var(--gs-");
        svg.Raw(role);
        svg.Raw(")");
    }
}
