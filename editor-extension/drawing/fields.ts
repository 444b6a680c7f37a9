/** What was written into the fields of a question. */
import type { Answers } from "../src/messages";

/** A field as it stands: what is in it, and what was in it when it was last asked with. */
export interface FilledField {
  readonly name: string;
  readonly value: string;
  readonly sent: string;
}

/** What was written since the question was last asked; undefined for nothing. A field that was left alone is not named, so that what is usual there may follow the others. */
export function written(fields: readonly FilledField[]): Answers | undefined {
  const changed = fields.filter(({ value, sent }) => value !== sent);
  return changed.length === 0 ? undefined : Object.fromEntries(changed.map(({ name, value }) => [name, value]));
}
