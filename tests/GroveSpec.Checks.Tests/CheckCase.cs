using System.Collections.Immutable;

namespace GroveSpec.Checks.Tests;

/// <summary>A source with one number left open, at which a check tells its finding or lets it be.</summary>
/// <param name="Check">The check's name.</param>
/// <param name="Template">The source, with the number as {0}.</param>
/// <param name="Trunks">The trunks of the finding, sorted and parted by spaces.</param>
/// <param name="Hit">The last number at which it is told at its usual limit.</param>
/// <param name="Miss">The next at which it is not.</param>
internal sealed record CheckCase(string Check, string Template, string Trunks, string Hit, string Miss)
{
    /// <summary>Limits that a file may set, with the numbers on both sides of them; none for a check without a limit.</summary>
    public ImmutableArray<(string Tolerance, string Hit, string Miss)> Moved { get; init; } = [];

    /// <summary>
    /// One of each check of composition. Numbers are the least step apart that a length has, a nanometre, but where a number
    /// is counted (even-count) or ranked (depth-reversed).
    /// </summary>
    public static ImmutableArray<CheckCase> All { get; } =
    [
        // Of three trunks of the radius r, the ends at one height and the middle h above them, the closeness is h / 2r.
        new("three-in-line", "trunk A at -100, 0 mm diameter 20 mm\ntrunk B at 0, {0} mm diameter 20 mm\ntrunk C at 100, 0 mm diameter 20 mm", "A B C", "10", "10.000001")
        {
            Moved = [("0.4", "8", "8.000001"), ("0.75", "15", "15.000001")],
        },
        new("even-gaps", "trunk M at 0, 0 mm diameter 20 mm\ntrunk A at {0}, 0 mm diameter 14 mm\ntrunk B at 0, 100 mm diameter 10 mm", "A B M", "92.000001", "92")
        {
            Moved = [("5 %", "95.000001", "95"), ("12.5 %", "87.500001", "87.5")],
        },

        // A is seen at -110 · 1500/1650 = -100 mm.
        new("even-gaps-in-view", "trunk A at -110, 150 mm diameter 20 mm\ntrunk M at 0, 0 mm diameter 14 mm\ntrunk B at {0}, 0 mm diameter 10 mm", "A B M", "92.000001", "92")
        {
            Moved = [("5 %", "95.000001", "95"), ("12.5 %", "87.500001", "87.5")],
        },
        new("twin-diameters", "trunk A at 0, 0 mm diameter 20 mm\ntrunk B at 80, 30 mm diameter {0} mm", "A B", "18.400001", "18.4")
        {
            Moved = [("5 %", "19.000001", "19"), ("12.5 %", "17.500001", "17.5")],
        },
        new("twin-heights", "trunk A at 0, 0 mm height 200 mm\ntrunk B at 80, 30 mm height {0} mm", "A B", "184.000001", "184")
        {
            Moved = [("5 %", "190.000001", "190"), ("12.5 %", "175.000001", "175")],
        },
        new("wide-but-short", "trunk W at 0, 0 mm diameter 25 mm height 150 mm\ntrunk T at 90, 40 mm diameter {0} mm height 200 mm", "W", "23", "23.000001")
        {
            Moved = [("4 %", "24", "24.000001"), ("12 %", "22", "22.000001")],
        },
        new("thin-but-tall", "trunk A at 0, 0 mm diameter 25 mm height 150 mm\ntrunk B at 90, 40 mm diameter 25 mm height 149 mm\ntrunk T at -70, 60 mm diameter {0} mm height 200 mm", "T", "23", "23.000001")
        {
            Moved = [("4 %", "24", "24.000001"), ("12 %", "22", "22.000001")],
        },

        // Where these numbers come from, and that no nanometre lies between, is in HiddenTrunkTests.
        new("hidden-trunk", "trunk N at 0, -100 mm diameter 40 mm\ntrunk F at {0}, 100 mm diameter 16 mm", "F", "19.658702", "19.658703")
        {
            Moved = [("50 %", "22.858904", "22.858905"), ("90 %", "16.458645", "16.458646")],
        },

        // Spearman's coefficient of five is 1 − 6·Σd²/120. From the front their ranks by nearness are 5, 4, 3, 2, 1 and by
        // diameter 1, 5, 2, 4, 3: -0.3. With A wider than C it is -0.1; with both equal, each of the rank 1.5, −2/√95 = -0.2052.
        new("depth-reversed", Near + "trunk A at -90, -100 mm diameter {0} mm\ntrunk B at -50, -50 mm diameter 40 mm\ntrunk C at 10, 0 mm diameter 12 mm\ntrunk D at 40, 50 mm diameter 30 mm\ntrunk E at 80, 100 mm diameter 20 mm", "", "11.999999", "12")
        {
            Moved = [("0.2052", "11.999999", "12.000001"), ("0.2051", "12", "12.000001"), ("0.1", "12.000001", "25")],
        },
        new("level-tops", "trunk A at -100, 0 mm diameter 20 mm height 200 mm\ntrunk B at 0, 0 mm diameter 20 mm height {0} mm\ntrunk C at 100, 0 mm diameter 20 mm height 200 mm", "A B C", "206", "206.000001")
        {
            Moved = [("1 %", "202", "202.000001"), ("5.5 %", "211", "211.000001")],
        },
        new("centred-main", "trunk M at {0}, 0 mm diameter 40 mm\ntrunk A at -120, 60 mm diameter 20 mm", "M", "48", "48.000001")
        {
            Moved = [("5 %", "30", "30.000001"), ("12.5 %", "75", "75.000001")],
        },
        new("even-count", "trunk A at 0, 0 mm diameter 20 mm\ntrunk B at 90, 40 mm diameter 16 mm\ntrunk C at -70, 60 mm diameter 12 mm\n{0}", "", "trunk D at 30, -80 mm diameter 9 mm", "# no fourth"),
        new("touching", "trunk A at 0, 0 mm diameter 24 mm\ntrunk B at {0}, 0 mm diameter 16 mm", "A B", "20", "20.000001"),
        new("near-rim", "trunk A at {0}, 0 mm diameter 20 mm", "A", "280.000001", "280")
        {
            Moved = [("5 mm", "285.000001", "285"), ("25 mm", "265.000001", "265"), ("1 in", "264.600001", "264.6")],
        },
        new("off-container", "trunk A at {0}, 0 mm diameter 20 mm", "A", "290.000001", "290"),
    ];

    private static string Near => Tests.Check.Head.Replace("eye 200 mm", "eye 200 mm, near", StringComparison.Ordinal);

    /// <summary>The source with a number and further statements.</summary>
    /// <param name="number">The number.</param>
    /// <param name="besides">The statements.</param>
    public string Source(string number, string besides = "") => Template.Replace("{0}", number, StringComparison.Ordinal) + "\n" + besides + "\n";
}
