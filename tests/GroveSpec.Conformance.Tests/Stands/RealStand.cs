using System.Globalization;
using System.Text;
using GroveSpec.Conformance.Tests.Outside;
using Xunit;

namespace GroveSpec.Conformance.Tests.Stands;

/// <summary>A mapped stand of trees from the R package spatstat.data (GPL), read when the tests run and kept nowhere.</summary>
/// <param name="Name">The data set's name.</param>
/// <param name="Left">The least x of its window, in its own unit.</param>
/// <param name="Front">The least y of its window.</param>
/// <param name="Width">The window's width.</param>
/// <param name="Breadth">The window's other side.</param>
/// <param name="MillimetresPerUnit">The scale at which it is planted here.</param>
/// <param name="MillimetresPerCentimetre">How many millimetres a centimetre of trunk becomes, for a data set with diameters.</param>
internal sealed record RealStand(string Name, double Left, double Front, double Width, double Breadth, double MillimetresPerUnit, double MillimetresPerCentimetre = 0)
{
    /// <summary>Saplings of Japanese black pine in a square of 5.7 m.</summary>
    public static readonly RealStand JapanesePines = new("japanesepines", 0, 0, 1, 1, 600);

    /// <summary>Redwood seedlings.</summary>
    public static readonly RealStand Redwood = new("redwood", 0, -1, 1, 1, 600);

    /// <summary>Swedish pines; the unit is a decimetre.</summary>
    public static readonly RealStand SwedishPines = new("swedishpines", 0, 0, 96, 100, 10);

    /// <summary>Finnish pines with diameters in cm and heights in m; the unit is a metre.</summary>
    public static readonly RealStand FinnishPines = new("finpines", -5, -8, 10, 10, 60, 0.6);

    // A trunk of no diameter cannot be written down. One nanometre is the least that can, and changes no mean that is looked at.
    private const string LeastDiameter = "0.000001";

    /// <summary>The places of the trees in the data set's own unit.</summary>
    /// <returns>The places, as R gives them. Skips the test where R or the data set is missing.</returns>
    public IReadOnlyList<(double X, double Y)> Places() => [.. Rows().Select(columns => (columns[0], columns[1]))];

    /// <summary>The stand as a file.</summary>
    /// <returns>The text. Skips the test where R or the data set is missing.</returns>
    public string Text()
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"planting \"{Name}\"\nhabit group\ncontainer rectangle {Width * MillimetresPerUnit} x {Breadth * MillimetresPerUnit} x 40 mm\nviewed from 180 deg, at 2000 mm, eye 300 mm\n");
        var number = 0;
        foreach (var columns in Rows())
        {
            var x = (columns[0] - Left - (Width / 2)) * MillimetresPerUnit;
            var y = (columns[1] - Front - (Breadth / 2)) * MillimetresPerUnit;
            var diameter = columns.Length < 3 ? "4" : columns[2] == 0 ? LeastDiameter : (columns[2] * MillimetresPerCentimetre).ToString("0.######", CultureInfo.InvariantCulture);
            var height = columns.Length < 4 ? 150 : columns[3] * MillimetresPerUnit;
            text.Append(CultureInfo.InvariantCulture, $"trunk T{++number} at {x:0.######}, {y:0.######} mm diameter {diameter} mm height {height:0.######} mm\n");
        }

        return text.ToString();
    }

    private List<double[]> Rows()
    {
        OutsideProgram.R.Require();
        string table;
        try
        {
            table = OutsideProgram.R.Run(
            [
                "--vanilla", "-e",
                $"suppressMessages(library(spatstat.data)); p <- get('{Name}'); m <- p$marks; d <- data.frame(x=p$x, y=p$y); if (is.data.frame(m)) d <- cbind(d, m); write.table(format(d, digits=15), quote=FALSE, row.names=FALSE, col.names=FALSE)",
            ]).Output;
        }
        catch (InvalidOperationException fault) when (fault.Message.Contains("spatstat.data", StringComparison.Ordinal))
        {
            Assert.Skip("the R package spatstat.data is not installed (Debian: apt-get install r-cran-spatstat.data)");
            throw;
        }

        return
        [
            .. table.Split('\n', StringSplitOptions.RemoveEmptyEntries)
                .Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(column => double.Parse(column, CultureInfo.InvariantCulture)).ToArray()),
        ];
    }
}
