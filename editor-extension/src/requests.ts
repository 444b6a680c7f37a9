/** The requests that are the server's own, as both sides have agreed on them. */
import type { Range, TextDocumentIdentifier, TextEdit } from "vscode-languageclient/node";
import type { Answers, DrawnTask, DrawnTrunk, Field, Plate, Question, Way } from "./messages";

/** Where a fact stands in the text. */
export interface FactPlace {
  readonly origin: string;
  /** The whole statement. */
  readonly range: Range;
  /** The name in it. */
  readonly selection: Range;
}

export interface DrawParams {
  readonly textDocument: TextDocumentIdentifier;
  readonly view: Plate;
}

export interface Picture {
  readonly version: number;
  readonly svg: string;
  readonly title: string;
  readonly places: readonly FactPlace[];
  readonly trunks: readonly DrawnTrunk[];
  readonly tasks: readonly DrawnTask[];
}

export interface GuidesParams extends DrawParams {
  readonly version: number;
  readonly trunk: string;
}

export interface Guides {
  readonly version: number;
  readonly svg: string;
}

export interface DragParams extends GuidesParams {
  /** Where the trunk was let go, in the picture's own coordinates. */
  readonly x: number;
  readonly y: number;
}

export interface StepParams extends GuidesParams {
  /** In the plan millimetres to the viewer's right, in the front degrees of lean to the right. */
  readonly right: number;
  /** In the plan millimetres to the back, in the front millimetres of height. */
  readonly back: number;
}

export interface DecideParams {
  readonly textDocument: TextDocumentIdentifier;
  readonly question: Question;
  /** What was written into its fields; one that is not named has not been touched. */
  readonly answers: Answers;
}

/** What came of a question. */
export interface Sheet {
  readonly version: number;
  readonly title: string;
  readonly says: readonly string[];
  readonly picture?: string;
  readonly ways: readonly (Omit<Way, "canBeWritten"> & { readonly edits: readonly TextEdit[] })[];
  readonly notes: readonly string[];
  readonly fields: readonly Field[];
  readonly places: readonly FactPlace[];
}

interface TaskParams {
  readonly textDocument: TextDocumentIdentifier;
  readonly version: number;
  readonly task: string;
}

export interface TaskDragParams extends TaskParams {
  /** Where the middle of its mark was let go, in the picture's own coordinates. */
  readonly x: number;
}

export interface TaskStepParams extends TaskParams {
  readonly days: number;
}

export interface Move {
  readonly version: number;
  readonly edits: readonly TextEdit[];
  readonly says?: string;
  readonly refusal?: string;
}

/** A request by its method, with what is asked and what is answered. */
export interface Request<Params, Answer> {
  readonly method: string;
  /** Never there: it only binds the shapes to the method. */
  readonly shapes?: (params: Params) => Answer;
}

export const drawRequest: Request<DrawParams, Picture | null> = { method: "grovespec/draw" };
export const guidesRequest: Request<GuidesParams, Guides | null> = { method: "grovespec/guides" };
export const dragRequest: Request<DragParams, Move | null> = { method: "grovespec/drag" };
export const stepRequest: Request<StepParams, Move | null> = { method: "grovespec/step" };
export const dragTaskRequest: Request<TaskDragParams, Move | null> = { method: "grovespec/dragTask" };
export const stepTaskRequest: Request<TaskStepParams, Move | null> = { method: "grovespec/stepTask" };
export const decideRequest: Request<DecideParams, Sheet | null> = { method: "grovespec/decide" };
