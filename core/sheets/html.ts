// A sheet as one complete HTML file that needs nothing beside it: no script, no address, its own style. Every
// word of the book is escaped; a tag or attribute outside the lists of node.ts is a bug.
import { type Sheet, sheetAttributes, type SheetNode, sheetTags, withPrinted } from './node.ts';

const tags: ReadonlySet<string> = new Set(sheetTags);
const attributes: ReadonlySet<string> = new Set(sheetAttributes);
const policy = "default-src 'none'; style-src 'unsafe-inline'";

/** `css` is sheet.css; `printed` says when and by whom, and is also put at the foot of every page. */
export function sheetHtml(sheet: Sheet, printed: string, css: string): string {
  const words = cssString(footWords(sheet, printed));
  return [
    '<!doctype html>',
    '<html lang="en">',
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${policy}">`,
    `<title>${escaped(sheet.title)}</title>`,
    `<style>\n${css}\n:root { --sheet-words: ${words}; }\n</style>`,
    '</head>',
    `<body class="sh-sheet-body">${nodeHtml(withPrinted(sheet.tree, printed))}</body>`,
    '</html>',
    '',
  ].join('\n');
}

/** What stands at the foot of every page. */
export function footWords(sheet: Pick<Sheet, 'foot'>, printed: string): string {
  return `${sheet.foot} · printed ${printed} · planning aid only`;
}

export function nodeHtml(node: SheetNode): string {
  if (typeof node === 'string') return escaped(node);
  if (!tags.has(node.tag)) throw new Error(`A sheet has no tag ${node.tag}.`);
  const given = Object.entries(node.attributes).map(([name, value]) => {
    if (!attributes.has(name)) throw new Error(`A sheet has no attribute ${name}.`);
    return ` ${name}="${escaped(value)}"`;
  });
  return `<${node.tag}${given.join('')}>${node.children.map(nodeHtml).join('')}</${node.tag}>`;
}

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Control characters, which no HTML file may hold, become blanks. */
function escaped(text: string): string {
  return text
    .replaceAll(/[&<>"']/gu, (sign) => entities[sign] ?? '')
    .replaceAll(/[^\P{Cc}\n\t]|\p{Cs}/gu, ' ');
}

/** A CSS string: all but letters, digits and plain signs as numbers, so that nothing ends it early. */
export function cssString(text: string): string {
  const safe = text.replaceAll(/[^\p{L}\p{N} .,:;·()-]/gu, (sign) => {
    const point = sign.codePointAt(0) ?? 32;
    return point < 32 ? ' ' : `\\${point.toString(16)} `;
  });
  return `"${safe}"`;
}
