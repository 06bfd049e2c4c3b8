// A sheet as an HTML file, attacked: whatever stands in the book is words on paper, never a part of the page.
import { describe, expect, test } from 'vitest';
import { cssString, nodeHtml, sheetHtml } from '../../core/sheets/html.ts';
import { el, of, printedHere, type SheetNode, withPrinted } from '../../core/sheets/node.ts';

const attacks = [
  '<script>alert(1)</script>',
  '"><img src=x onerror=alert(1)>',
  "' onmouseover='alert(1)",
  '</style><script>alert(1)</script>',
  '</title><script>alert(1)</script>',
  '--><svg onload=alert(1)>',
  'a\u0000b\u001b[31m',
  '"; } body { display: none } :root { --x: "',
  '\\"); @import url(//example.invalid); ("',
];

function wrong(parts: object): SheetNode {
  return { tag: 'p', attributes: {}, children: [], ...parts };
}

describe('what stands in the book is only words', () => {
  test.each(attacks)('%j as a name, in an attribute, as a title and at the foot', (attack) => {
    const tree = of('article', 'sheet', el('svg', { 'aria-label': attack }), attack, printedHere());
    const html = sheetHtml({ title: attack, foot: attack, tree }, attack, '.a { color: #000 }');
    // Taken apart by its signs: every tag is one of those that were put there.
    const tags = [...html.matchAll(/<\/?([a-z!][a-z0-9]*)/giu)].map(([, tag]) => tag?.toLowerCase());
    const own = ['!doctype', 'html', 'head', 'meta', 'title', 'style', 'body', 'article', 'svg', 'span'];
    for (const tag of tags) expect(own).toContain(tag);
    expect(tags.filter((tag) => tag === 'style')).toHaveLength(2);
    expect(tags.filter((tag) => tag === 'title')).toHaveLength(2);
    // No attribute of a tag but those given.
    for (const [, inside = ''] of html.matchAll(/<(?:svg|span|article|body)([^>]*)>/giu))
      expect(inside.replaceAll(/ (?:class|aria-label)="[^"<>]*"/gu, '')).toBe('');
    expect(html.replaceAll('\n', '')).not.toMatch(/\p{Cc}/u);
    // The file loads nothing and runs nothing, whatever is in it.
    expect(html).toContain("default-src 'none'");
  });

  test('escaped words read as they were written', () => {
    expect(nodeHtml(el('p', {}, `8'-4" & <more>`))).toBe('<p>8&#39;-4&quot; &amp; &lt;more&gt;</p>');
  });

  test('a CSS string holds no sign that could end it', () => {
    for (const attack of attacks) expect(cssString(attack).slice(1, -1)).not.toMatch(/["<>{}\n]/u);
    expect(cssString('Gang "A"')).toBe(String.raw`"Gang \22 A\22 "`);
  });

  test('a tag or an attribute outside the lists is a bug, not a page', () => {
    expect(() => nodeHtml(wrong({ tag: 'script' }))).toThrow('no tag script');
    expect(() => nodeHtml(wrong({ attributes: { onclick: 'x' } }))).toThrow('no attribute onclick');
    expect(() => nodeHtml(wrong({ attributes: { style: 'x' } }))).toThrow('no attribute style');
  });
});

test('when and by whom comes to stand where the tree has a place for it, and nowhere else', () => {
  const tree = of('article', 'sheet', of('p', 'plain', 'printed-here'), of('dd', 'cell', printedHere()));
  expect(nodeHtml(withPrinted(tree, 'Wed by N'))).toBe(
    '<article class="sh-sheet"><p class="sh-plain">printed-here</p><dd class="sh-cell"><span class="sh-printed-here">Wed by N</span></dd></article>',
  );
});
