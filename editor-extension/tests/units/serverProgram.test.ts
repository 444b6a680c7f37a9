import { expect, test } from "vitest";
import { FallCount } from "../../src/fallCount";
import { serverProgram, ServerMissing, type Surroundings } from "../../src/serverProgram";

const on = (files: string[], env: Record<string, string> = {}, platform: NodeJS.Platform = "linux"): Surroundings => ({ platform, env, exists: (file) => files.includes(file) });

test("The native server inside the extension is started", () => {
  expect(serverProgram("/ext", on(["/ext/server/grovespec"]))).toEqual({ command: "/ext/server/grovespec", args: ["language-server"] });
});

test("The portable server runs on the .NET that is found, by its whole path", () => {
  const portable = "/ext/server/grovespec.dll";
  expect(serverProgram("/ext", on([portable, "/opt/net/dotnet", "/usr/bin/dotnet"], { DOTNET_ROOT: "/opt/net", PATH: "/bin:/usr/bin" }))).toEqual({
    command: "/opt/net/dotnet",
    args: [portable, "language-server"],
  });
  expect(serverProgram("/ext", on([portable, "/usr/bin/dotnet"], { PATH: "/bin:/usr/bin" })).command).toBe("/usr/bin/dotnet");
  expect(serverProgram("/ext", on([portable, "/usr/share/dotnet/dotnet"])).command).toBe("/usr/share/dotnet/dotnet");
});

test("A program in the folder that is open is never taken for .NET", () => {
  expect(() => serverProgram("/ext", on(["/ext/server/grovespec.dll", "dotnet", "./dotnet", "bin/dotnet"], { PATH: ":.:bin", DOTNET_ROOT: "." }))).toThrow(ServerMissing);
});

test("What is missing is told in a sentence", () => {
  expect(() => serverProgram("/ext", on(["/ext/server/grovespec.dll"]))).toThrow(/need the \.NET 10 runtime, and none was found/);
  expect(() => serverProgram("/ext", on([]))).toThrow(/Install the extension again/);
});

test("A server that falls over now and then is started again, one that does so all the time is not", () => {
  const falls = new FallCount(3, 1000);
  expect([0, 10, 20].map((now) => falls.isFirmAfter(now))).toEqual([true, true, true]);
  expect(falls.isFirmAfter(30)).toBe(false);
  expect(falls.isFirmAfter(1500)).toBe(true);
  falls.isFirmAfter(1501);
  falls.isFirmAfter(1502);
  falls.forget();
  expect(falls.isFirmAfter(1503)).toBe(true);
});
