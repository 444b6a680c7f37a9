using System.Collections.Immutable;
using System.Text;

namespace GroveSpec.Editing.Completing;

/// <summary>A piece of what a completion puts in.</summary>
/// <param name="Text">The piece.</param>
/// <param name="IsPlace">Whether it is a place to fill in, one after the other.</param>
public readonly record struct CompletionPart(string Text, bool IsPlace)
{
    /// <summary>Reads a form in which places to fill in stand between ‹ and ›.</summary>
    /// <param name="form">The form.</param>
    /// <returns>Its pieces.</returns>
    internal static ImmutableArray<CompletionPart> Read(string form)
    {
        var parts = ImmutableArray.CreateBuilder<CompletionPart>();
        var text = new StringBuilder();
        foreach (var unit in form)
        {
            if (unit is '‹' or '›')
            {
                if (text.Length > 0 || unit == '›')
                {
                    parts.Add(new(text.ToString(), unit == '›'));
                }

                text.Clear();
            }
            else
            {
                text.Append(unit);
            }
        }

        if (text.Length > 0)
        {
            parts.Add(new(text.ToString(), IsPlace: false));
        }

        return parts.ToImmutable();
    }
}
