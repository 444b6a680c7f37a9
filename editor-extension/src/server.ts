/** The connection to the server: started, kept running, and started again when it falls over. */
import * as vscode from "vscode";
import { CloseAction, ErrorAction, LanguageClient, State, type LanguageClientOptions } from "vscode-languageclient/node";
import { FallCount } from "./fallCount";
import { withCommands } from "./lenses";
import { askedAnew } from "./overtaken";
import type { Request } from "./requests";
import { ServerMissing, serverProgram } from "./serverProgram";

/** The language's name in the editor. */
export const language = "grovespec";

const documentSchemes = ["file", "untitled", "vscode-vfs"];

/** Whether a document is a planting that the server is told of. */
export const isPlanting = (document: vscode.TextDocument): boolean => document.languageId === language && documentSchemes.includes(document.uri.scheme);

/** One server for all folders of the window. */
export class Server implements vscode.Disposable {
  private client: LanguageClient | undefined;
  private readonly falls = new FallCount(5, 3 * 60_000);
  private readonly readiness = new vscode.EventEmitter<void>();
  private readonly watcher = vscode.workspace.createFileSystemWatcher("**/*.grove");
  private readonly log = vscode.window.createOutputChannel("GroveSpec", { log: true });

  /** Tells that the server is up, at first and after each new start. */
  readonly onReady = this.readiness.event;

  constructor(private readonly extensionFolder: string) {}

  /** Starts it; what goes wrong is told to the grower. */
  async start(): Promise<void> {
    try {
      const { command, args } = serverProgram(this.extensionFolder);
      this.client = new LanguageClient(language, "GroveSpec", { command, args: [...args], options: { cwd: this.extensionFolder } }, this.options());
      this.client.onDidChangeState(({ newState }) => {
        if (newState === State.Running) {
          this.readiness.fire();
        }
      });
      await this.client.start();
    } catch (error) {
      this.log.error(error instanceof Error ? error : String(error));
      this.tell(error instanceof ServerMissing ? error.message : "The checker could not be started. Its log says more.");
    }
  }

  /** Ends it and starts it anew. */
  async restart(): Promise<void> {
    this.falls.forget();
    const old = this.client;
    this.client = undefined;
    try {
      await old?.dispose();
    } catch {
      // It was gone already.
    }

    await this.start();
  }

  /** Whether it answers. */
  get isRunning(): boolean {
    return this.client?.isRunning() ?? false;
  }

  /**
   * Asks it.
   * @throws when it does not run or answers with an error.
   */
  async ask<Params, Answer>(request: Request<Params, Answer>, params: Params): Promise<Answer> {
    // The client hears of a change of the text as this extension does; it is to pass the change on before it asks.
    await new Promise((resolve) => setImmediate(resolve));
    if (!this.client) {
      throw new Error("The checker does not run.");
    }

    return await this.client.sendRequest<Answer>(request.method, params);
  }

  /** The way the server names a document. */
  uriOf(uri: vscode.Uri): string {
    return this.client ? this.client.code2ProtocolConverter.asUri(uri) : uri.toString();
  }

  dispose(): void {
    void this.client?.dispose().catch(() => undefined);
    this.client = undefined;
    this.watcher.dispose();
    this.readiness.dispose();
    this.log.dispose();
  }

  private options(): LanguageClientOptions {
    const { units, on, hints, lenses } = vscode.workspace.getConfiguration(language);
    return {
      documentSelector: documentSchemes.map((scheme) => ({ language, scheme })),
      outputChannel: this.log,
      initializationOptions: { units, on, hints, lenses },
      synchronize: { configurationSection: language, fileEvents: this.watcher },
      middleware: {
        provideCodeLenses: async (document, token, next) => withCommands(document, (await next(document, token)) ?? []),
        provideCompletionItem: (document, position, context, token, next) => askedAnew(document, token, async () => await next(document, position, context, token)),
      },
      markdown: { isTrusted: false, supportHtml: false },
      errorHandler: {
        error: () => ({ action: ErrorAction.Continue, handled: true }),
        closed: () => {
          if (this.falls.isFirmAfter(Date.now())) {
            this.log.warn("The checker ended by itself and is started again.");
            return { action: CloseAction.Restart, handled: true };
          }

          this.tell("The checker fell over several times and is left alone.");
          return { action: CloseAction.DoNotRestart, handled: true };
        },
      },
    };
  }

  private tell(message: string): void {
    const again = "Start again";
    const log = "Show the log";
    void vscode.window.showErrorMessage(message, again, log).then((choice) => {
      if (choice === again) {
        void this.restart();
      } else if (choice === log) {
        this.log.show();
      }
    });
  }
}
