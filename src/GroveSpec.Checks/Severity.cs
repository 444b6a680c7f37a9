namespace GroveSpec.Checks;

/// <summary>How much a finding weighs; the least comes first, so that a sort puts errors before hints.</summary>
public enum Severity
{
    /// <summary>A contradiction or an impossible value: it fails a run.</summary>
    Error,

    /// <summary>A fault of the composition: it fails a strict run.</summary>
    Warning,

    /// <summary>A habit of the trade, or a default that was taken: it fails no run.</summary>
    Hint,
}
