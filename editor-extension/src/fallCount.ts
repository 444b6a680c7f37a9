/** Counts how often something fell over lately, to tell bad luck from a fault that comes back. */
export class FallCount {
  private falls: number[] = [];

  /**
   * @param most How many falls within the while are still bad luck.
   * @param whileMilliseconds How long a fall is remembered.
   */
  constructor(
    private readonly most: number,
    private readonly whileMilliseconds: number,
  ) {}

  /** Notes a fall; false when there were too many lately. */
  isFirmAfter(nowMilliseconds: number): boolean {
    this.falls = [...this.falls.filter((fall) => nowMilliseconds - fall < this.whileMilliseconds), nowMilliseconds];
    return this.falls.length <= this.most;
  }

  /** Begins anew. */
  forget(): void {
    this.falls = [];
  }
}
