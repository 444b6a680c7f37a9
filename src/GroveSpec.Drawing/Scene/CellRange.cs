namespace GroveSpec.Drawing.Scene;

/// <summary>A block of cells of a <see cref="CellGrid"/>, its last ones included.</summary>
/// <param name="FirstColumn">Its leftmost column.</param>
/// <param name="FirstRow">Its uppermost row.</param>
/// <param name="LastColumn">Its rightmost column.</param>
/// <param name="LastRow">Its lowest row.</param>
internal readonly record struct CellRange(int FirstColumn, int FirstRow, int LastColumn, int LastRow);
