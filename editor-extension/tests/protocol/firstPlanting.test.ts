import { afterEach, beforeEach, expect, test } from "vitest";
import { DocumentFormattingRequest, DocumentSymbolRequest, type DocumentSymbol } from "vscode-languageserver-protocol/node";
import { firstPlanting, habits } from "../../src/firstPlanting";
import { Client } from "./client";

let client: Client;
beforeEach(async () => {
  client = new Client();
  await client.begin({ textDocument: { documentSymbol: { hierarchicalDocumentSymbolSupport: true } } });
});
afterEach(() => client.dispose());

// The walkthrough speaks of this one fault; a second would puzzle whoever reads it, and none would leave its second step empty.
for (const { label } of habits) {
  test(`A first planting of the kind ${label} has the one fault that the walkthrough speaks of, and is lined up`, async () => {
    const uri = client.uriOf("first.grove");
    await client.open(uri, firstPlanting("Salt Bank", label));
    const { diagnostics } = await client.findings(uri, 1);
    expect(diagnostics.map(({ code, message }) => `${code}: ${message.split(":")[0]}`)).toEqual(["three-in-line: A, B and C stand in line"]);
    expect((await client.connection.sendRequest(DocumentFormattingRequest.type, { textDocument: { uri }, options: { tabSize: 2, insertSpaces: true } })) ?? []).toEqual([]);
  });
}

test("A name with quotes, control characters and markup is the name that the planting then has", async () => {
  const uri = client.uriOf("first.grove");
  await client.open(uri, firstPlanting('a "b" \\ <c>\t🌲', "group"));
  const symbols = (await client.connection.sendRequest(DocumentSymbolRequest.type, { textDocument: { uri } })) as DocumentSymbol[];
  expect(symbols[0]).toMatchObject({ name: 'a "b" \\ <c> 🌲', detail: "planting" });
});
