/** Where texts stand in the window. */
import * as vscode from "vscode";

/** The column in which a text has a tab, be it in front or not; undefined when it has none. */
export const columnOf = (uri: vscode.Uri): vscode.ViewColumn | undefined =>
  vscode.window.tabGroups.all.find(({ tabs }) => tabs.some(({ input }) => input instanceof vscode.TabInputText && input.uri.toString() === uri.toString()))?.viewColumn;
