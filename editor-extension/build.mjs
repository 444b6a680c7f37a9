// Bundles the extension and the page of the drawing, and lays the faces of the drawing beside them.
import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { build } from "esbuild";

const shared = { bundle: true, minify: true, legalComments: "none", logLevel: "warning" };
rmSync("dist", { recursive: true, force: true });
mkdirSync("dist/faces", { recursive: true });

await Promise.all([
  build({ ...shared, entryPoints: ["src/extension.ts"], outfile: "dist/extension.js", platform: "node", format: "cjs", target: "node20", external: ["vscode"] }),
  build({ ...shared, entryPoints: ["drawing/drawing.ts"], outfile: "dist/drawing.js", platform: "browser", format: "iife", target: "es2022" }),
]);

cpSync("drawing/drawing.css", "dist/drawing.css");
const faces = "node_modules/@fontsource/eb-garamond";
const scripts = ["latin", "latin-ext", "greek", "cyrillic"];
let rules = "";
for (const sheet of ["400.css", "400-italic.css"]) {
  for (const rule of readFileSync(`${faces}/${sheet}`, "utf8").match(/@font-face \{[^}]*\}/g)) {
    const name = rule.match(/files\/(eb-garamond-(.+)-400-(?:normal|italic)\.woff2)/);
    if (scripts.includes(name[2])) {
      cpSync(`${faces}/files/${name[1]}`, `dist/faces/${name[1]}`);
      rules += rule.replace(/src: [^;]*;/, `src: url(faces/${name[1]}) format("woff2");`).replace("swap", "block") + "\n";
    }
  }
}
if (rules.split("@font-face").length !== 2 * scripts.length + 1) {
  throw new Error("The faces for the drawing are not laid out as they were.");
}
writeFileSync("dist/faces.css", rules);
cpSync(`${faces}/LICENSE`, "dist/faces/LICENSE");
