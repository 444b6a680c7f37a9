using System.Globalization;
using GroveSpec.Binding;
using GroveSpec.Drawing;

namespace GroveSpec.Editing.Deciding;

/// <summary>How the pictures of a sheet are drawn.</summary>
internal static class SheetDrawing
{
    /// <summary>The options of one of the pictures; its sentences stand beside it, not below.</summary>
    /// <param name="assessment">The file.</param>
    /// <param name="number">The picture's number among those of one sheet, which one page shows together.</param>
    /// <returns>The options.</returns>
    public static DrawingOptions Options(Assessment assessment, int number) => new()
    {
        Units = assessment.Units,
        TellsFindings = false,
        IdPrefix = string.Create(CultureInfo.InvariantCulture, $"choice-{number}"),
    };
}
