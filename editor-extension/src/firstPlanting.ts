/** A first planting: a text to change into one's own. */

/** The kinds of planting. */
export const habits = [
  { label: "group", detail: "separate trees in one container" },
  { label: "clump", detail: "trunks from one root base" },
  { label: "raft", detail: "one laid trunk whose branches stand up" },
] as const;

/** One of the kinds. */
export type Habit = (typeof habits)[number]["label"];

/** The file's name for a planting's name: small letters and digits, parted by dashes. */
export function fileStem(name: string): string {
  const stem = name
    .normalize("NFD")
    .replace(/\p{Mark}/gu, "")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-|-$/g, "")
    .slice(0, 60);
  return stem === "" ? "first-planting" : stem;
}

/** The text. A, B and C stand in line on purpose: it is the one thing the checker says, and what the walkthrough begins with. What `grovespec start` writes
 * is another text for another purpose: it has no fault, and is for those who have no walkthrough beside it. */
export function firstPlanting(name: string, habit: Habit): string {
  const written = name.replace(/[\\"]/g, "\\$&").replace(/\p{Control}/gu, " ");
  return `# Change what you know better. What stands behind a # is for you alone.
planting  "${written}"
habit     ${habit}
container oval 420 x 280 x 45 mm
viewed    from 180 deg, at 1100 mm, eye 160 mm, near
concept   "What should be felt by whoever looks at it?"

# at: to the right, then to the back, from the container's middle
trunk A   at -62, -18 mm   diameter 34 mm   height 380 mm   role main
trunk B   at 10, 12 mm     diameter 21 mm   height 255 mm   role side
trunk C   at 70, 37 mm     diameter 13 mm   height 205 mm   role side

role main {  vigour steady   rank 1   story "leads the eye" }
role side {  vigour restrain  story "follows, and leaves the way free" }
`;
}
