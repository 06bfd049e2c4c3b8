// Tags of gangs and containers: what stands on them, and that the code says what the tag says.
import { describe, expect, test } from 'vitest';
import { type SheetTag, tagSheet } from '../../core/sheets/tag-sheet.ts';
import { readScanCode, scanCode } from '../../core/yard/scan-code.ts';
import { withClass, withTag, wordsOf } from './read-tree.ts';

const tag = (code: string, more: Partial<SheetTag> = {}): SheetTag => ({
  code,
  kind: 'gang',
  name: 'GA Wall gang',
  facts: [['Weight', '1,704 lb']],
  scan: scanCode({ kind: 'gang', job: 'TB26', code }),
  warnings: ['Nobody on or under it while it hangs.'],
  ...more,
});

describe('a sheet of tags', () => {
  test('two tags: two codes that a scanner reads as the tags that stand beside them', () => {
    const sheet = tagSheet('Tags of all gangs', [tag('GA-1'), tag('GÄ 2')], {
      job: 'TB26 Basin',
      units: 'us',
    });
    const codes = withTag(sheet.tree, 'svg').map((mark) =>
      (mark.attributes['aria-label'] ?? '').replace('QR code ', ''),
    );
    expect(codes.map((text) => readScanCode(text))).toEqual([
      { ok: true, value: { kind: 'gang', job: 'TB26', code: 'GA-1' } },
      { ok: true, value: { kind: 'gang', job: 'TB26', code: 'GÄ 2' } },
    ]);
    expect(withClass(sheet.tree, 'tag-code').map(wordsOf)).toEqual(['GA-1', 'GÄ 2']);
    const words = wordsOf(sheet.tree);
    for (const part of ['1,704 lb', 'Nobody on or under it', 'Planning aid only', 'pick sheet'])
      expect(words).toContain(part);
    expect(words.toLowerCase()).not.toMatch(/\bsafe\b/u);
  });

  test.each([
    ['GA-1', 'short'],
    ['GBL-12', 'middle'],
    ['TANK-WALL-1', 'long'],
    ['TANK-WALL-EAST-SIDE-1', 'longest'],
  ])('the tag %s is set as %s', (code, size) => {
    const [heading] = withClass(
      tagSheet('Tag', [tag(code)], { job: 'none named', units: 'metric' }).tree,
      'tag-code',
    );
    expect(heading?.attributes.class).toContain(`sh-tag-${size}`);
  });

  test('without a tag it says so', () => {
    expect(
      wordsOf(tagSheet('Tags of all containers', [], { job: 'TB26 Basin', units: 'us' }).tree),
    ).toContain('nothing to tag yet');
  });
});
