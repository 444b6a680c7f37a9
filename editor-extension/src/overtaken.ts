/** Questions that the next letter overtakes. */
import type { CancellationToken, TextDocument } from "vscode";

/**
 * Asks again for as long as the text changes while it is asked and nothing comes back, for the server gives no answer for an older text.
 * The editor asks for offers once, at the first letter of a word: without this a fast hand would see only what needs no server.
 */
export async function askedAnew<Answer>(document: Pick<TextDocument, "version">, token: Pick<CancellationToken, "isCancellationRequested">, ask: () => Promise<Answer>): Promise<Answer> {
  for (;;) {
    const asked = document.version;
    const answer = await ask();
    if ((answer ?? undefined) !== undefined || document.version === asked || token.isCancellationRequested) {
      return answer;
    }
  }
}
