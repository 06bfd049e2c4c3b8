// The assembly sheets of the demo's designs, read as a crew reads them and held against the take-off and the
// drawing's own arithmetic: quantities, sums, scale, places.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { SheetNode } from '../../core/sheets/node.ts';
import { demoHost, type DemoHost } from '../procedures/demo-host.ts';
import { numberOf, rowsOf, withClass, withTag, wordsOf } from './read-tree.ts';

let host: DemoHost;
let designs: readonly string[];

beforeAll(async () => {
  host = await demoHost();
  designs = (await host.ask('design.list', {})).designs.map(({ code }) => code);
});
afterAll(() => host.close());

async function sheetAndDesign(design: string, units: 'us' | 'metric' = 'us') {
  const [sheet, detail] = await Promise.all([
    host.ask('sheet.assembly', { design, units }),
    host.ask('design.read', { design }),
  ]);
  return { tree: sheet.tree as SheetNode, detail };
}

function quantitiesOf(detail: {
  readonly lines: readonly { readonly component: string; readonly quantity: number }[];
}): Record<string, number> {
  return Object.fromEntries(detail.lines.map(({ component, quantity }) => [component, quantity]));
}

test('the pieces to tick are the lines of the take-off, with their sum and weight', async () => {
  expect(designs.length).toBeGreaterThan(8);
  for (const design of designs) {
    const { tree, detail } = await sheetAndDesign(design);
    const rows = rowsOf(tree, 'pieces').slice(1);
    const listed = rows.filter(([, , component]) => component !== '');
    expect(listed).toHaveLength(detail.lines.length);
    expect(
      Object.fromEntries(listed.map(([, quantity, component]) => [component, Number(quantity)])),
    ).toEqual(quantitiesOf(detail));
    const [withoutHooks] = rows.filter(([, , component]) => component === '');
    expect(Number(withoutHooks?.[1])).toBe(
      detail.lines.filter(({ kind }) => kind !== 'hook').reduce((sum, { quantity }) => sum + quantity, 0),
    );
    // The sum in pounds; 1 lb = 453.59237 g (international yard and pound agreement, 1959).
    const pounds = Math.round(detail.summary.weightGrams / 453.592_37).toLocaleString('en-US');
    expect(withoutHooks?.[5]).toBe(`${pounds} lb`);
  }
});

test('the steps take every piece of the take-off once, panels before locks before rails', async () => {
  for (const design of designs) {
    const { tree, detail } = await sheetAndDesign(design);
    const taken = new Map<string, number>();
    for (const [, , , pieces = ''] of rowsOf(tree, 'steps').slice(1))
      for (const [, quantity, component = ''] of pieces.matchAll(/(\d+) (\S+)/gu))
        taken.set(component, (taken.get(component) ?? 0) + Number(quantity));
    expect(Object.fromEntries(taken)).toEqual(quantitiesOf(detail));
    for (const [, , words = '', pieces = ''] of rowsOf(tree, 'steps').filter(([, , what]) =>
      /ocks/u.test(what ?? ''),
    )) {
      const said = [...words.matchAll(/(\d+) joints? with (\d+)|(\d+) more/gu)].reduce(
        (sum, [, joints = 1, each, more]) => sum + Number(joints) * Number(each ?? more),
        0,
      );
      expect(said, words).toBe(Number.parseInt(pieces, 10));
    }
    const steps = withClass(tree, 'step-what').map(wordsOf);
    const first = (start: string): number => steps.findIndex((step) => step.startsWith(start));
    expect(steps[0]).toBe('Level timbers.');
    expect(first('Locks')).toBeGreaterThan(first('Panels'));
    if (first('Stiffening') >= 0) expect(first('Stiffening')).toBeGreaterThan(first('Locks'));
    expect(steps.at(-1)).toBe('Look it over.');
  }
});

describe.each(['us', 'metric'] as const)('the drawing in %s units', (units) => {
  test('is to the scale it names: every panel in its size and place', async () => {
    for (const design of designs) {
      const { tree, detail } = await sheetAndDesign(design, units);
      const [drawing] = withClass(tree, 'drawing-block');
      if (drawing === undefined) throw new Error(`${design} has no drawing.`);
      const ratio = Number(/Scale 1:(\d+)/u.exec(wordsOf(drawing))?.[1]);
      const [svg] = withTag(drawing, 'svg');
      const panels = withClass(drawing, 'panel');
      expect(panels).toHaveLength(detail.panels.length);
      // One unit of the viewBox is one millimetre of paper.
      expect(svg?.attributes.viewBox).toBe(
        `0 0 ${svg?.attributes.width?.slice(0, -2)} ${svg?.attributes.height?.slice(0, -2)}`,
      );
      const left = Math.min(...panels.map((panel) => numberOf(panel, 'x')));
      const foot = Math.max(...panels.map((panel) => numberOf(panel, 'y') + numberOf(panel, 'height')));
      for (const [index, { xNm, yNm, widthNm, heightNm }] of detail.panels.entries()) {
        const drawn = panels[index]!;
        const paperMm = (nm: number): number => nm / 1e6 / ratio;
        expect(numberOf(drawn, 'width')).toBeCloseTo(paperMm(widthNm), 1);
        expect(numberOf(drawn, 'height')).toBeCloseTo(paperMm(heightNm), 1);
        expect(numberOf(drawn, 'x') - left).toBeCloseTo(paperMm(xNm), 1);
        expect(foot - numberOf(drawn, 'y') - numberOf(drawn, 'height')).toBeCloseTo(paperMm(yNm), 1);
      }
    }
  });

  test('shows as many locks, bolts, holes, hooks and rails as are counted', async () => {
    for (const design of designs) {
      const { tree, detail } = await sheetAndDesign(design, units);
      const [block] = withClass(tree, 'drawing-block');
      const [svg] = block === undefined ? [] : withTag(block, 'svg');
      if (svg === undefined) throw new Error(`${design} has no drawing.`);
      const drawn = (name: string): number => withClass(svg, name).length;
      const locks = detail.joints.reduce((sum, joint) => sum + joint.locks, 0);
      expect(drawn('lock') + drawn('lock-adjustable')).toBe(locks);
      expect(
        withClass(svg, 'count').reduce((sum, count) => sum + Number.parseInt(wordsOf(count), 10), 0),
      ).toBe(locks);
      expect(drawn('rail')).toBe(detail.rails.length);
      expect(drawn('bolt')).toBe(detail.rails.reduce((sum, rail) => sum + rail.boltPlaces.length, 0));
      expect(drawn('hole')).toBe(detail.holes.length);
      expect(drawn('hook')).toBe(detail.hooks.length);
      expect(drawn('centre')).toBe(1);
    }
  });
});

test('a stop stands first, framed, whole, and with its number at its place on the drawing', async () => {
  const { geometry, summary, assembleH, breakDownH } = await host.ask('design.read', { design: 'GA' });
  const [first, second, ...rest] = geometry.panels;
  // The second panel two inches into the first.
  const overlapping = { ...second!, xNm: second!.xNm - 50_800_000 };
  const { name, system, revision } = summary;
  await host.ask('design.save', {
    commandId: 'command-stop-1',
    isNew: true,
    design: {
      code: 'BAD',
      name: `${name} <b>bold</b>`,
      system,
      revision,
      hand: 'left',
      assembleH,
      breakDownH,
      geometry: { ...geometry, panels: [first!, overlapping, ...rest] },
    },
  });
  const { tree, detail } = await sheetAndDesign('BAD');
  const stops = detail.findings.filter(({ severity }) => severity === 'stop');
  expect(stops.length).toBeGreaterThan(0);
  const listed = withClass(tree, 'finding');
  expect(listed).toHaveLength(detail.findings.length);
  for (const [index, stop] of stops.entries()) expect(wordsOf(listed[index]!)).toContain(stop.message);
  expect(withClass(tree, 'has-stops')).toHaveLength(1);
  const pinned = stops.filter(({ where }) => where !== undefined && typeof where !== 'string');
  expect(withClass(tree, 'pin-stop')).toHaveLength(pinned.length);
  const words = wordsOf(tree);
  expect(words.indexOf(stops[0]!.message)).toBeLessThan(words.indexOf('Pieces'));
});

test('every sheet says who decides: planning aid, weights, the maker, superseded', async () => {
  for (const name of ['sheet.assembly', 'sheet.pick'] as const) {
    const { tree } = await host.ask(name, { design: 'GA' });
    const cautions = withClass(tree, 'caution').map(wordsOf).join(' ');
    for (const part of [
      'Planning aid only',
      'entered piece weights',
      'maker’s instructions',
      'Superseded once',
      'suspended form',
    ])
      expect(cautions).toContain(part);
    expect(wordsOf(tree)).not.toMatch(/\b(?:is|are) safe\b/u);
  }
});
