using GroveSpec.Binding;
using GroveSpec.Binding.Use;

namespace GroveSpec.Editing.Names;

/// <summary>Finds the file that a planting means by a name.</summary>
public static class NamedFile
{
    /// <summary>The file that stands under a name in a planting's own lines.</summary>
    /// <param name="assessment">The planting.</param>
    /// <param name="name">The name as it is written, from the planting's folder on.</param>
    /// <returns>The file; null where it could not be read.</returns>
    public static UsedFile? Of(Assessment assessment, string name)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        if (name.Contains('\0', StringComparison.Ordinal) || Path.GetDirectoryName(assessment.File) is not { } folder)
        {
            return null;
        }

        var path = Path.GetFullPath(Path.Combine(folder, name));
        return assessment.Used.FirstOrDefault(used => Path.GetFullPath(used.Path) == path);
    }
}
