/** A row of tabs: one is chosen, the arrow keys go on to the next, and only the chosen one is reached by Tab. */
export class Tabs<Name extends string> {
  /**
   * @param names The names, in their order.
   * @param elementOf Where a name's tab is.
   * @param turn Called when another is chosen by hand.
   */
  constructor(
    private readonly names: readonly Name[],
    private readonly elementOf: (name: Name) => HTMLElement,
    turn: (name: Name) => void,
  ) {
    for (const [index, name] of names.entries()) {
      const tab = elementOf(name);
      tab.addEventListener("click", () => turn(name));
      tab.addEventListener("keydown", (event) => {
        const by = event.key === "ArrowRight" ? 1 : event.key === "ArrowLeft" ? -1 : 0;
        if (by !== 0) {
          event.preventDefault();
          const next = names[(index + by + names.length) % names.length]!;
          turn(next);
          elementOf(next).focus();
        }
      });
    }
  }

  /** Shows which is chosen. */
  choose(chosen: Name): void {
    for (const name of this.names) {
      const tab = this.elementOf(name);
      tab.setAttribute("aria-selected", String(name === chosen));
      tab.tabIndex = name === chosen ? 0 : -1;
    }
  }
}
