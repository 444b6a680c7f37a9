/** Reads a picture that was sent as text. The text is data: it is parsed as SVG, and nothing in it that could act is taken over. */

const svgNamespace = "http://www.w3.org/2000/svg";
const known = new Set(["svg", "g", "path", "rect", "circle", "ellipse", "line", "polyline", "polygon", "text", "tspan", "title", "desc", "defs", "clipPath", "use", "linearGradient", "radialGradient", "stop"]);

/** What a picture is made of once read. */
export interface ReadPicture {
  readonly root: SVGSVGElement;
  /** The rules of its own style block. They go into a sheet that the page makes, because the block itself has no effect here. */
  readonly styles: string;
}

/** Reads a whole picture; undefined for text that is no SVG. */
export function readPicture(text: string): ReadPicture | undefined {
  // The page's policy forbids style blocks, also while a text is parsed: the picture's own is taken out beforehand.
  let styles = "";
  const bare = text.replace(/<style>([^<]*)<\/style>/g, (_, rules: string) => {
    styles += `${rules}\n`;
    return "";
  });
  const read = new DOMParser().parseFromString(bare, "image/svg+xml");
  const root = read.documentElement;
  if (root.namespaceURI !== svgNamespace || root.localName !== "svg" || read.querySelector("parsererror")) {
    return undefined;
  }

  clean(root);
  return { root: document.importNode(root, true) as unknown as SVGSVGElement, styles };
}

/** Reads a piece of a picture, to be laid over one. */
export function readPiece(text: string): SVGElement | undefined {
  const read = readPicture(`<svg xmlns="${svgNamespace}">${text}</svg>`);
  const piece = read?.root.firstElementChild;
  return piece instanceof SVGElement ? piece : undefined;
}

function clean(element: Element): void {
  for (const { name, value } of [...element.attributes]) {
    const isReference = name === "href" || name.endsWith(":href");
    if (name.toLowerCase().startsWith("on") || name === "style" || (isReference && !value.startsWith("#"))) {
      element.removeAttribute(name);
    }
  }

  for (const child of [...element.children]) {
    if (child.namespaceURI === svgNamespace && known.has(child.localName)) {
      clean(child);
    } else {
      child.remove();
    }
  }
}
