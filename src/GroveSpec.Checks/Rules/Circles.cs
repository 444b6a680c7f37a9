using GroveSpec.Model;

namespace GroveSpec.Checks.Rules;

/// <summary>Finds circles among things that point at each other.</summary>
internal static class Circles
{
    /// <summary>
    /// One circle for each knot of things that can all be reached from each other. A walk in depth with a stack of its own,
    /// so that a chain of any length is walked; each link is looked at once.
    /// </summary>
    /// <param name="links">For each thing, what it points at and where that is said.</param>
    /// <returns>Circles, each as the things on it in order and where the link to the next is said. No two share a thing.</returns>
    public static List<List<(int From, Origin Origin)>> Of(List<(int To, Origin Origin)>[] links)
    {
        var circles = new List<List<(int From, Origin Origin)>>();
        var onPath = new int[links.Length];
        var isDone = new bool[links.Length];
        var isOnCircle = new bool[links.Length];
        var path = new List<(int Node, int Next)>();
        for (var start = 0; start < links.Length; start++)
        {
            if (isDone[start])
            {
                continue;
            }

            path.Add((start, 0));
            onPath[start] = 1;
            while (path.Count > 0)
            {
                var (node, next) = path[^1];
                if (next == links[node].Count)
                {
                    isDone[node] = true;
                    onPath[node] = 0;
                    path.RemoveAt(path.Count - 1);
                    continue;
                }

                path[^1] = (node, next + 1);
                var to = links[node][next].To;
                if (onPath[to] > 0)
                {
                    Take(circles, path, onPath[to] - 1, links, isOnCircle);
                }
                else if (!isDone[to])
                {
                    path.Add((to, 0));
                    onPath[to] = path.Count;
                }
            }
        }

        return circles;
    }

    private static void Take(List<List<(int From, Origin Origin)>> circles, List<(int Node, int Next)> path, int from, List<(int To, Origin Origin)>[] links, bool[] isOnCircle)
    {
        for (var index = from; index < path.Count; index++)
        {
            if (isOnCircle[path[index].Node])
            {
                return;
            }
        }

        var circle = new List<(int From, Origin Origin)>(path.Count - from);
        for (var index = from; index < path.Count; index++)
        {
            var (node, next) = path[index];
            isOnCircle[node] = true;
            circle.Add((node, links[node][next - 1].Origin));
        }

        circles.Add(circle);
    }
}
