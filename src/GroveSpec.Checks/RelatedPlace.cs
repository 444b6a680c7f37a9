using GroveSpec.Syntax.Text;

namespace GroveSpec.Checks;

/// <summary>Another place that a finding is about.</summary>
/// <param name="Place">Where.</param>
/// <param name="Message">What it has to do with it, in a few words.</param>
public sealed record RelatedPlace(SourceSpan Place, string Message);
