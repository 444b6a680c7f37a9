/** What the extension and the page of a drawing say to each other. Ids of facts are opaque: they come from the server and go back to it. */

/** The plates of a planting as it is. */
export const plates = ["plan", "front", "timeline", "wiring"] as const;

/** One of the plates. */
export type Plate = (typeof plates)[number];

/** Whether something from outside names a plate. */
export const isPlate = (value: unknown): value is Plate => plates.includes(value as Plate);

/** What a panel can show: a plate, or what there is to decide. */
export const views = [...plates, "decide"] as const;

/** One of them. */
export type View = (typeof views)[number];

/** Whether something from outside names a view. */
export const isView = (value: unknown): value is View => views.includes(value as View);

/** What can be looked into before something is decided. */
export const questions = ["thin", "fronts", "nudge", "ground", "survey", "stand"] as const;

/** One of the questions. */
export type Question = (typeof questions)[number];

/** Whether something from outside names a question. */
export const isQuestion = (value: unknown): value is Question => questions.includes(value as Question);

/** A trunk as the page knows it. */
export interface DrawnTrunk {
  readonly name: string;
  readonly origin: string;
  readonly isFixed: boolean;
  /** A sentence about it, for those who hear the drawing. */
  readonly summary: string;
  /** Where it is taken hold of, in the picture's own coordinates: its centre in the plan, its top in the front. */
  readonly x?: number;
  readonly y?: number;
}

/** A task of a timeline as the page knows it. */
export interface DrawnTask {
  readonly name: string;
  readonly origin: string;
  /** A sentence about it, for those who hear the drawing. */
  readonly summary: string;
  /** The middle of its mark, in the picture's own coordinates. */
  readonly x: number;
  readonly y: number;
}

/** To the page, first of all: whose drawing it is. The page keeps it, so that the drawing comes back with the window. */
export interface BeginMessage {
  readonly type: "begin";
  readonly uri: string;
  readonly view: View;
  readonly question: Question;
}

/** To the page: a new picture takes the place of the old one. */
export interface PictureMessage {
  readonly type: "picture";
  readonly view: Plate;
  readonly version: number;
  readonly svg: string;
  readonly title: string;
  readonly trunks: readonly DrawnTrunk[];
  /** The tasks of a timeline; none in the other plates. */
  readonly tasks: readonly DrawnTask[];
  /** The ids that lead to a line. */
  readonly origins: readonly string[];
}

/** Something that a question asks for, as it was answered or as is usual. */
export interface Field {
  readonly name: string;
  readonly label: string;
  readonly value: string;
  readonly hint: string;
  /** Why it was not understood. */
  readonly trouble?: string;
}

/** One choice. */
export interface Way {
  readonly title: string;
  readonly says: readonly string[];
  /** Its own picture; without one, the picture of all shows it. */
  readonly picture?: string;
  /** Whether it can be written into the text. */
  readonly canBeWritten: boolean;
  /** What writing it does; or why it cannot be written. */
  readonly deed: string;
}

/** To the page: what came of a question. */
export interface SheetMessage {
  readonly type: "sheet";
  readonly question: Question;
  readonly version: number;
  readonly title: string;
  readonly says: readonly string[];
  /** All choices in one picture. */
  readonly picture?: string;
  readonly ways: readonly Way[];
  readonly notes: readonly string[];
  readonly fields: readonly Field[];
  /** The ids that lead to a line. */
  readonly origins: readonly string[];
}

/** To the page: these facts are where the caret stands. */
export interface LitMessage {
  readonly type: "lit";
  readonly origins: readonly string[];
}

/** To the page: what to keep clear of while a trunk is held. */
export interface GuidesMessage {
  readonly type: "guides";
  readonly trunk: string;
  readonly version: number;
  readonly svg: string;
}

/** To the page: how a change of the text by hand or key ended. A new picture follows where it was made. */
export interface SettledMessage {
  readonly type: "settled";
  readonly isMade: boolean;
  readonly says: string;
}

/** To the page: a line of text below the drawing. */
export interface NoteMessage {
  readonly type: "note";
  readonly says: string;
  /** Whether the picture no longer shows the text, as when the text was closed. */
  readonly isStale: boolean;
}

/** What goes to the page. */
export type ToPage = BeginMessage | PictureMessage | SheetMessage | LitMessage | GuidesMessage | SettledMessage | NoteMessage;

/** What was written into the fields of a question, by their names. */
export type Answers = Readonly<Record<string, string>>;

/** What comes from the page. It is checked by {@link readFromPage} before it is used. */
export type FromPage =
  | { readonly type: "ready" }
  | { readonly type: "view"; readonly view: View }
  | { readonly type: "ask"; readonly question: Question; readonly answers?: Answers }
  | { readonly type: "write"; readonly question: Question; readonly version: number; readonly way: number }
  | { readonly type: "reveal"; readonly origin: string; readonly isEntered: boolean }
  | { readonly type: "hold"; readonly trunk: string; readonly view: Plate; readonly version: number }
  | { readonly type: "drop"; readonly trunk: string; readonly view: Plate; readonly version: number; readonly x: number; readonly y: number }
  | { readonly type: "step"; readonly trunk: string; readonly view: Plate; readonly right: number; readonly back: number }
  | { readonly type: "dropTask"; readonly task: string; readonly version: number; readonly x: number }
  | { readonly type: "stepTask"; readonly task: string; readonly days: number }
  | { readonly type: "undo" }
  | { readonly type: "redo" };

/** Reads what came from the page; undefined for anything that is not one of its messages. */
export function readFromPage(value: unknown): FromPage | undefined {
  if (typeof value !== "object" || value === null) {
    return undefined;
  }

  const { type, view, origin, isEntered, trunk, task, version, x, y, right, back, days, question, answers, way } = value as Record<string, unknown>;
  switch (type) {
    case "ready":
    case "undo":
    case "redo":
      return { type };
    case "view":
      return isView(view) ? { type, view } : undefined;
    case "reveal":
      return isText(origin) ? { type, origin, isEntered: isEntered === true } : undefined;
    case "hold":
      return isText(trunk) && isPlate(view) && isNumber(version) ? { type, trunk, view, version } : undefined;
    case "drop":
      return isText(trunk) && isPlate(view) && isNumber(version) && isNumber(x) && isNumber(y) ? { type, trunk, view, version, x, y } : undefined;
    case "step":
      return isText(trunk) && isPlate(view) && isNumber(right) && isNumber(back) ? { type, trunk, view, right, back } : undefined;
    case "ask":
      return !isQuestion(question) ? undefined : answers === undefined ? { type, question } : isAnswers(answers) ? { type, question, answers } : undefined;
    case "write":
      return isQuestion(question) && isNumber(version) && isNumber(way) ? { type, question, version, way } : undefined;
    case "dropTask":
      return isText(task) && isNumber(version) && isNumber(x) ? { type, task, version, x } : undefined;
    case "stepTask":
      return isText(task) && isNumber(days) && Number.isInteger(days) ? { type, task, days } : undefined;
    default:
      return undefined;
  }
}

const isText = (value: unknown): value is string => typeof value === "string" && value.length <= 20_000;
const isNumber = (value: unknown): value is number => typeof value === "number" && Number.isFinite(value);
const isAnswers = (value: unknown): value is Answers => typeof value === "object" && value !== null && Object.keys(value).length <= 20 && Object.values(value).every(isText);
