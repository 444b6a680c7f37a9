/** The page that a drawing stands in. */
import { randomBytes } from "node:crypto";

/** What the page is made of: addresses under the extension's own folder, and where such addresses come from. */
export interface PageParts {
  readonly source: string;
  readonly script: string;
  readonly style: string;
  readonly faces: string;
  readonly nonce: string;
}

/** A word that only this page knows. */
export const newNonce = (): string => randomBytes(18).toString("base64url");

/**
 * What the page may do: run its one script, take its own styles and faces, and nothing else. There is no image, no frame, no form and
 * no address outside the extension's folder in it, and no style or script that stands in the text of a picture takes effect by itself.
 */
export const contentSecurityPolicy = ({ source, nonce }: Pick<PageParts, "source" | "nonce">): string =>
  `default-src 'none'; script-src 'nonce-${nonce}'; style-src ${source}; font-src ${source}; base-uri 'none'; form-action 'none'`;

/** The page's text. Nothing in it comes from a file. */
export const pageText = (parts: PageParts): string => `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${contentSecurityPolicy(parts)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<link rel="stylesheet" href="${parts.faces}">
<link rel="stylesheet" href="${parts.style}">
<title>Drawing</title>
</head>
<body>
<header>
<div id="views" role="tablist" aria-label="Plates">
<button type="button" role="tab" id="view-plan" data-view="plan" aria-controls="stage" aria-selected="false" tabindex="-1">Plan</button>
<button type="button" role="tab" id="view-front" data-view="front" aria-controls="stage" aria-selected="false" tabindex="-1">Front</button>
<button type="button" role="tab" id="view-timeline" data-view="timeline" aria-controls="stage" aria-selected="false" tabindex="-1">Timeline</button>
<button type="button" role="tab" id="view-wiring" data-view="wiring" aria-controls="stage" aria-selected="false" tabindex="-1">Wire</button>
<button type="button" role="tab" id="view-decide" data-view="decide" aria-controls="stage" aria-selected="false" tabindex="-1">Decide</button>
</div>
<div id="glass" role="group" aria-label="Size">
<button type="button" id="farther" aria-label="Farther" title="Farther (-)">−</button>
<button type="button" id="whole" aria-label="The whole plate" title="The whole plate (0)">whole</button>
<button type="button" id="nearer" aria-label="Nearer" title="Nearer (+)">+</button>
</div>
</header>
<div id="questions" role="tablist" aria-label="What is to be decided">
<button type="button" role="tab" id="question-thin" data-question="thin" aria-controls="ways" aria-selected="false" tabindex="-1">which stay</button>
<button type="button" role="tab" id="question-fronts" data-question="fronts" aria-controls="ways" aria-selected="false" tabindex="-1">which side is the front</button>
<button type="button" role="tab" id="question-nudge" data-question="nudge" aria-controls="ways" aria-selected="false" tabindex="-1">what to move a little</button>
<button type="button" role="tab" id="question-ground" data-question="ground" aria-controls="ways" aria-selected="false" tabindex="-1">where one more goes</button>
<button type="button" role="tab" id="question-survey" data-question="survey" aria-controls="ways" aria-selected="false" tabindex="-1">what the tape says</button>
<button type="button" role="tab" id="question-stand" data-question="stand" aria-controls="ways" aria-selected="false" tabindex="-1">how natural it stands</button>
</div>
<div id="table">
<main id="stage" role="listbox" tabindex="0" aria-label="Trunks" aria-describedby="keys">
<div id="sheet"></div>
<div id="trunks"></div>
</main>
<section id="ways" tabindex="-1" aria-label="Choices"></section>
</div>
<p id="keys" class="unseen">Arrow keys walk from trunk to trunk, Enter goes to the line, Alt with an arrow key moves the trunk, plus, minus and zero change the size.</p>
<footer><p id="note" role="status" aria-live="polite"></p></footer>
<script nonce="${parts.nonce}" src="${parts.script}"></script>
</body>
</html>
`;
