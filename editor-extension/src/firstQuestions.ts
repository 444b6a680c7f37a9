/** What is asked before a first planting is written. */
import * as vscode from "vscode";
import { habits, type Habit } from "./firstPlanting";

/** The answers. */
export interface FirstAnswers {
  readonly name: string;
  readonly habit: Habit;
}

const title = "A first planting";
const suggested = "First Planting";

/**
 * Asks for a name and a kind; undefined when it is called off.
 * The second question takes the place of the first. Were the first closed before, the page below, which is the walkthrough for most who
 * come here, would take the keys back and close the second. Neither goes when the keys go elsewhere, since a drawing may take them just
 * as the list of commands closes, and a name once typed would be lost; Escape calls both off.
 */
export function askForFirst(): Promise<FirstAnswers | undefined> {
  return new Promise((resolve) => {
    const box = vscode.window.createInputBox();
    const list = vscode.window.createQuickPick<(typeof habits)[number]>();
    let isNamed = false;
    const end = (answers?: FirstAnswers): void => {
      resolve(answers);
      box.dispose();
      list.dispose();
    };

    Object.assign(box, { title, ignoreFocusOut: true, step: 1, totalSteps: 2, prompt: "What is it called?", value: suggested, valueSelection: [0, suggested.length] });
    box.onDidChangeValue((text) => (box.validationMessage = text.trim() === "" ? "Give it a name." : undefined));
    box.onDidAccept(() => {
      if (box.value.trim() !== "") {
        isNamed = true;
        list.show();
      }
    });
    box.onDidHide(() => isNamed || end());

    Object.assign(list, { title, ignoreFocusOut: true, step: 2, totalSteps: 2, placeholder: "How do its trunks belong together?", items: habits });
    list.onDidAccept(() => {
      const [habit] = list.selectedItems;
      if (habit) {
        end({ name: box.value.trim(), habit: habit.label });
      }
    });
    list.onDidHide(() => end());
    box.show();
  });
}
