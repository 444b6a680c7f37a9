namespace GroveSpec.Binding.Use;

/// <summary>Reads the files that a planting uses.</summary>
public interface IFileReader
{
    /// <summary>Reads a file that lies below the folder of another.</summary>
    /// <param name="usingFile">The path of the file that uses it, as it was given or as an earlier reading named it; "-" for standard input.</param>
    /// <param name="path">The path of the used file, relative to that folder, with slashes and without "..".</param>
    /// <returns>The file, or why it cannot be had. It never throws for anything that a path or a disk may do.</returns>
    FileReading Read(string usingFile, string path);
}
