namespace GroveSpec.Craft.Moving;

/// <summary>A trunk that may be shifted or bent. Ways are in millimetres from where it is at first, to the right and to the back.</summary>
public abstract class Movable
{
    /// <summary>Makes one.</summary>
    /// <param name="trunk">Its place among the trunks.</param>
    private protected Movable(int trunk) => Trunk = trunk;

    /// <summary>Its place among the trunks.</summary>
    public int Trunk { get; }

    /// <summary>How far it may go at most, whichever way.</summary>
    public abstract double Farthest { get; }

    /// <summary>Puts it somewhere.</summary>
    /// <param name="stand">The stand it is of.</param>
    /// <param name="rightward">The way to the right.</param>
    /// <param name="backward">The way to the back.</param>
    public abstract void Put(LooseStand stand, double rightward, double backward);

    /// <summary>The nearest way that can be written down.</summary>
    /// <param name="rightward">The way to the right.</param>
    /// <param name="backward">The way to the back.</param>
    /// <returns>That way; none for one that rounds to where it is at first.</returns>
    public abstract (double Rightward, double Backward) Rounded(double rightward, double backward);

    /// <summary>Whether it may go so far.</summary>
    /// <param name="rightward">The way to the right.</param>
    /// <param name="backward">The way to the back.</param>
    /// <returns>True when it may.</returns>
    public abstract bool MayGo(double rightward, double backward);
}
