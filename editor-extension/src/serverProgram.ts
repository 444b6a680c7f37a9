/** Which program is started: only ever the server that came with the extension. */
import { existsSync } from "node:fs";
import * as path from "node:path";

/** A program and its arguments. */
export interface ServerProgram {
  readonly command: string;
  readonly args: readonly string[];
}

/** Why no server can be started, in a sentence for the grower. */
export class ServerMissing extends Error {}

/** The system the extension runs on, so that a test can stand in for it. */
export interface Surroundings {
  readonly platform: NodeJS.Platform;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly exists: (file: string) => boolean;
}

const here: Surroundings = { platform: process.platform, env: process.env, exists: existsSync };

/**
 * The server's program.
 * @param extensionFolder Where the extension was installed.
 * @throws {ServerMissing} when it came without a server of its own and no .NET is found.
 */
export function serverProgram(extensionFolder: string, surroundings: Surroundings = here): ServerProgram {
  const native = path.join(extensionFolder, "server", surroundings.platform === "win32" ? "grovespec.exe" : "grovespec");
  const portable = path.join(extensionFolder, "server", "grovespec.dll");
  if (surroundings.exists(portable)) {
    return { command: findDotnet(surroundings), args: [portable, "language-server"] };
  }

  if (surroundings.exists(native)) {
    return { command: native, args: ["language-server"] };
  }

  throw new ServerMissing("The checker that belongs to this extension is not there. Install the extension again.");
}

/**
 * Where .NET is. Only places named by whole paths are looked at, so that a folder that was opened cannot slip in a program of its own.
 */
function findDotnet({ platform, env, exists }: Surroundings): string {
  const windows = platform === "win32";
  const paths = windows ? path.win32 : path.posix;
  const name = windows ? "dotnet.exe" : "dotnet";
  const folders = [
    env["DOTNET_ROOT"],
    ...(env["PATH"] ?? env["Path"] ?? "").split(paths.delimiter),
    ...(windows ? [paths.join(env["ProgramFiles"] ?? "C:\\Program Files", "dotnet")] : ["/usr/local/share/dotnet", "/usr/share/dotnet", "/usr/lib/dotnet", "/opt/homebrew/bin"]),
  ];
  for (const folder of folders) {
    if (folder && paths.isAbsolute(folder) && exists(paths.join(folder, name))) {
      return paths.join(folder, name);
    }
  }

  throw new ServerMissing("Checking and drawing need the .NET 10 runtime, and none was found. Install it from https://dotnet.microsoft.com, then start the checker again.");
}
