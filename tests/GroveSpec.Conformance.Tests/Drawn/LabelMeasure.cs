using System.Text.Json;
using GroveSpec.Conformance.Tests.Outside;

namespace GroveSpec.Conformance.Tests.Drawn;

/// <summary>Where the labels of drawings really are, measured in Chromium.</summary>
internal static class LabelMeasure
{
    // What a label covers: across, what the browser says; up and down, from a little above the capitals to the foot of a g.
    // Turned labels are compared as they are turned. Half a pixel is let pass, for rounding to two decimals.
    private const string Script =
        """
        const ascent = 0.68, descent = 0.22, slack = 0.5;
        const stand = document.createElement("div");
        document.body.appendChild(stand);
        for (const face of input.faces) {
          await document.fonts.load(`16px "${face}"`);
          await document.fonts.load(`italic 16px "${face}"`);
        }

        function cornersOf(text, toPage) {
          const size = parseFloat(getComputedStyle(text).fontSize);
          const box = text.getBBox();
          const baseline = text.getStartPositionOfChar(0).y;
          const [x1, x2, y1, y2] = [box.x, box.x + box.width, baseline - ascent * size, baseline + descent * size];
          const matrix = toPage.multiply(text.getScreenCTM());
          return [[x1, y1], [x2, y1], [x2, y2], [x1, y2]].map(([x, y]) => {
            const point = new DOMPoint(x, y).matrixTransform(matrix);
            return [point.x, point.y];
          });
        }

        // How deep two convex outlines overlap: the least over the axes of their sides; below zero when apart.
        function depth(left, right) {
          let least = Infinity;
          for (const outline of [left, right]) {
            for (let i = 0; i < outline.length; i++) {
              const [ax, ay] = outline[i], [bx, by] = outline[(i + 1) % outline.length];
              const length = Math.hypot(bx - ax, by - ay);
              if (length === 0) continue;
              const nx = (ay - by) / length, ny = (bx - ax) / length;
              const reach = (points) => points.map(([x, y]) => x * nx + y * ny);
              const [l, r] = [reach(left), reach(right)];
              least = Math.min(least, Math.max(...l) - Math.min(...r), Math.max(...r) - Math.min(...l));
            }
          }
          return least;
        }

        const troubles = [];
        let count = 0;
        let smallest = Infinity;
        for (const drawing of input.drawings) {
          stand.innerHTML = drawing.svg;
          const svg = stand.querySelector("svg");
          for (const face of input.faces) {
            const force = document.createElement("style");
            force.textContent = `svg text, svg tspan { font-family: "${face}" !important; }`;
            stand.appendChild(force);
            const toPage = svg.getScreenCTM().inverse();
            const view = svg.viewBox.baseVal;
            const labels = [];
            for (const text of svg.querySelectorAll("text")) {
              if (text.textContent.trim() === "" || text.getNumberOfChars() === 0) continue;
              const style = getComputedStyle(text);
              if (style.display === "none" || style.visibility === "hidden") continue;
              smallest = Math.min(smallest, parseFloat(style.fontSize));
              const corners = cornersOf(text, toPage);
              labels.push({ words: text.textContent, corners });
            }
            count += labels.length;
            labels.forEach((label, i) => {
              for (const [x, y] of label.corners) {
                const off = Math.max(view.x - x, x - view.x - view.width, view.y - y, y - view.y - view.height);
                if (off > slack) {
                  troubles.push(`${drawing.name}, set in ${face}: "${label.words}" leaves the page by ${off.toFixed(1)} px`);
                  break;
                }
              }
              for (const other of labels.slice(0, i)) {
                const deep = depth(label.corners, other.corners);
                if (deep > slack) {
                  troubles.push(`${drawing.name}, set in ${face}: "${other.words}" and "${label.words}" overlap by ${deep.toFixed(1)} px`);
                }
              }
            });
            force.remove();
          }
        }
        return { troubles, count, smallest };
        """;

    /// <summary>Measures drawings.</summary>
    /// <param name="drawings">Each drawing with a name to tell it by.</param>
    /// <param name="faces">The families to set every label in, one after the other.</param>
    /// <returns>A sentence for each label that overlaps another or leaves the page, how many labels were measured, and the size of the smallest in pixels.</returns>
    public static (string[] Troubles, int Count, double Smallest) Of(IEnumerable<(string Name, string Svg)> drawings, params string[] faces)
    {
        var input = JsonSerializer.SerializeToElement(new { faces, drawings = drawings.Select(drawing => new { name = drawing.Name, svg = drawing.Svg }) });
        using var answer = Browser.Evaluate(Script, input, $"<style>{BuiltInFaces.Rules}</style>");
        var result = answer.RootElement.GetProperty("result");
        return (
            [.. result.GetProperty("troubles").EnumerateArray().Select(trouble => trouble.GetString()!)],
            result.GetProperty("count").GetInt32(),
            result.GetProperty("smallest").ValueKind == JsonValueKind.Number ? result.GetProperty("smallest").GetDouble() : double.NaN);
    }
}
