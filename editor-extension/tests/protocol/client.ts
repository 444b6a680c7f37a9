/** A second client, which shares no code with the extension nor with the server: the protocol's own library over the program's standard streams. */
import { spawn, type ChildProcess } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import {
  ApplyWorkspaceEditRequest,
  ConfigurationRequest,
  createProtocolConnection,
  DidOpenTextDocumentNotification,
  ExitNotification,
  InitializedNotification,
  InitializeRequest,
  PublishDiagnosticsNotification,
  RegistrationRequest,
  ShutdownRequest,
  StreamMessageReader,
  StreamMessageWriter,
  WorkDoneProgressCreateRequest,
  type ClientCapabilities,
  type InitializeResult,
  type ProtocolConnection,
  type PublishDiagnosticsParams,
  type TextEdit,
} from "vscode-languageserver-protocol/node";

/** The native program; the test command makes it and names it. */
export function program(): string {
  const named = process.env["GROVESPEC_PROGRAM"];
  if (!named) {
    throw new Error("GROVESPEC_PROGRAM is to name the native program: dotnet publish src/GroveSpec.Cli -c Release -p:Native=true -o artifacts/program");
  }

  return named;
}

/** A connection to a server of its own, with a folder of its own. */
export class Client {
  readonly folder = mkdtempSync(join(tmpdir(), "grovespec-protocol-"));
  readonly connection: ProtocolConnection;
  readonly ended: Promise<number | null>;
  private readonly server: ChildProcess;
  private readonly published: PublishDiagnosticsParams[] = [];
  private readonly watchers = new Set<() => void>();

  constructor() {
    this.server = spawn(program(), ["language-server"], { stdio: ["pipe", "pipe", "inherit"] });
    this.ended = new Promise((resolve) => this.server.once("exit", resolve));
    this.connection = createProtocolConnection(new StreamMessageReader(this.server.stdout!), new StreamMessageWriter(this.server.stdin!));
    this.connection.onNotification(PublishDiagnosticsNotification.type, (params) => {
      this.published.push(params);
      this.watchers.forEach((look) => look());
    });
    this.connection.onRequest(RegistrationRequest.type, () => undefined);
    this.connection.onRequest(WorkDoneProgressCreateRequest.type, () => undefined);
    this.connection.onRequest(ConfigurationRequest.type, ({ items }) => items.map(() => null));
    this.connection.onRequest(ApplyWorkspaceEditRequest.type, () => ({ applied: false }));
    this.connection.listen();
  }

  /** Says hello. */
  async begin(capabilities: ClientCapabilities = {}): Promise<InitializeResult> {
    const result = await this.connection.sendRequest(InitializeRequest.type, {
      processId: process.pid,
      rootUri: this.uriOf(""),
      capabilities,
      workspaceFolders: [{ uri: this.uriOf(""), name: "plantings" }],
    });
    await this.connection.sendNotification(InitializedNotification.type, {});
    return result;
  }

  uriOf = (name: string): string => pathToFileURL(join(this.folder, name)).toString();

  /** Stores a file. */
  store(name: string, text: string): string {
    writeFileSync(join(this.folder, name), text);
    return this.uriOf(name);
  }

  /** Opens a text. */
  async open(uri: string, text: string, version = 1): Promise<void> {
    await this.connection.sendNotification(DidOpenTextDocumentNotification.type, { textDocument: { uri, languageId: "grovespec", version, text } });
  }

  /** The findings that are sent for a version of a document, as soon as they are. */
  findings(uri: string, version: number): Promise<PublishDiagnosticsParams> {
    return new Promise((resolve) => {
      const look = (): void => {
        const found = this.published.find((params) => params.uri === uri && params.version === version);
        if (found) {
          this.watchers.delete(look);
          resolve(found);
        }
      };
      this.watchers.add(look);
      look();
    });
  }

  /** Says goodbye; what the program ended with. */
  async leave(): Promise<number | null> {
    await this.connection.sendRequest(ShutdownRequest.type);
    await this.connection.sendNotification(ExitNotification.type);
    return await this.ended;
  }

  /** Takes all of it away, whatever state it is in. */
  dispose(): void {
    this.connection.dispose();
    this.server.kill();
    rmSync(this.folder, { recursive: true, force: true });
  }
}

/** A text with edits made in it, as an editor makes them. Positions count UTF-16. */
export function edited(text: string, edits: readonly TextEdit[]): string {
  const starts = [0, ...[...text.matchAll(/\n/g)].map(({ index }) => index + 1)];
  const at = ({ line, character }: TextEdit["range"]["start"]): number => (starts[line] ?? text.length) + character;
  return [...edits]
    .sort((one, other) => at(other.range.start) - at(one.range.start))
    .reduce((before, { range, newText }) => before.slice(0, at(range.start)) + newText + before.slice(at(range.end)), text);
}
