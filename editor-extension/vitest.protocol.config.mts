import { defineConfig } from "vitest/config";

// A second client against the native program that GROVESPEC_PROGRAM names.
export default defineConfig({ test: { include: ["tests/protocol/**/*.test.ts"], environment: "node", testTimeout: 30_000 } });
