namespace GroveSpec.Craft.Survey;

/// <summary>What a further reading is good for.</summary>
public enum NextReadingReason
{
    /// <summary>It was found to be off: read again, it can take part.</summary>
    ReadAgain,

    /// <summary>It is one of several of which one is off.</summary>
    TellWhichIsOff,

    /// <summary>It ties a trunk that nothing was read to.</summary>
    Tie,

    /// <summary>It holds what can move.</summary>
    Hold,

    /// <summary>It tells a place from its mirror image.</summary>
    TellSides,

    /// <summary>It tells whether two trunks, each of which may stand on either side, stand on the same one.</summary>
    TellSameSide,

    /// <summary>Nothing checks the readings yet: with one more than is needed a mistake shows.</summary>
    Check,

    /// <summary>It narrows the widest ellipse.</summary>
    Narrow,
}
