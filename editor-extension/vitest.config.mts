import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

// The editor is only there inside the editor: tests stand a small one in for it.
export default defineConfig({
  test: { include: ["tests/units/**/*.test.ts"], environment: "node" },
  resolve: { alias: { vscode: fileURLToPath(new URL("tests/units/vscode.ts", import.meta.url)) } },
});
