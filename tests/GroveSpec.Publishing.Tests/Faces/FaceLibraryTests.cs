using GroveSpec.Publishing.Faces;
using Xunit;

namespace GroveSpec.Publishing.Tests.Faces;

public sealed class FaceLibraryTests
{
    [Fact]
    public void The_licence_of_the_faces_is_carried()
    {
        Assert.Contains("SIL OPEN FONT LICENSE Version 1.1", FaceLibrary.Licence, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("EB Garamond", FaceLibrary.Licence, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("Frank Ruhl", FaceLibrary.Licence, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("Noto Project", FaceLibrary.Licence, StringComparison.OrdinalIgnoreCase);
    }
}
