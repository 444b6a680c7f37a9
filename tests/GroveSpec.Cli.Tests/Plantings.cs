namespace GroveSpec.Cli.Tests;

/// <summary>Plantings that tests are about.</summary>
internal static class Plantings
{
    /// <summary>Three trunks with nothing amiss but what the file leaves out.</summary>
    public const string Quiet = """
        planting  "Quiet corner"
        habit     group
        species   larix-kaempferi
        container oval 360 x 240 x 40 mm
        viewed    from 180 deg, at 1000 mm
        trunk A   at -58, -22 mm   diameter 33 mm   height 410 mm
        trunk B   at 41, 12 mm     diameter 21 mm   height 290 mm
        trunk C   at 92, -39 mm    diameter 13 mm   height 180 mm

        """;

    /// <summary>A rod could pass through the middle of all three.</summary>
    public const string InLine = """
        planting  "Fence"
        habit     group
        species   larix-kaempferi
        container oval 360 x 240 x 40 mm
        viewed    from 180 deg, at 1000 mm
        trunk A   at -100, -20 mm   diameter 33 mm   height 410 mm
        trunk B   at 0, 0 mm        diameter 21 mm   height 290 mm
        trunk C   at 60, 12 mm      diameter 13 mm   height 180 mm

        """;

    /// <summary>One statement cannot be read.</summary>
    public const string Broken = """
        planting  "Torn page"
        habit     group
        species   larix-kaempferi
        container oval 360 x 240 x 40 mm
        viewed    from 180 deg, at 1000 mm
        trunk A   at -58, -22 mm   diameter 33 mm   height 410 mm
        trunk B   at 41, mm        diameter 21 mm   height 290 mm
        trunk C   at 92, -39 mm    diameter 13 mm   height 180 mm

        """;
}
