/** A question that is asked again while its answer is under way: only the newest counts, and no more than one is under way. */
export class Newest<Answer> {
  private isAsking = false;
  private isWanted = false;
  private isOver = false;

  /**
   * @param ask Asks once.
   * @param take Takes an answer; one that was overtaken by a newer {@link want} never comes here.
   * @param fail Takes what went wrong; the next {@link want} asks again.
   */
  constructor(
    private readonly ask: () => Promise<Answer>,
    private readonly take: (answer: Answer) => void,
    private readonly fail: (error: unknown) => void,
  ) {}

  /** Asks, at once or as soon as the answer under way is in. */
  want(): void {
    this.isWanted = true;
    if (!this.isAsking && !this.isOver) {
      void this.run();
    }
  }

  /** Takes no answer any more. */
  dispose(): void {
    this.isOver = true;
  }

  private async run(): Promise<void> {
    this.isAsking = true;
    while (this.isWanted && !this.isOver) {
      this.isWanted = false;
      try {
        const answer = await this.ask();
        if (!this.isWanted && !this.isOver) {
          this.take(answer);
        }
      } catch (error) {
        if (!this.isWanted && !this.isOver) {
          this.fail(error);
        }
      }
    }

    this.isAsking = false;
  }
}
