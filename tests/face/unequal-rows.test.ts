// Random faces of rows of two heights as a script asks them, lengths as texts, held against counting: every filling
// of each height, every pair of them, in order; then every panel and filler at its place.
import { expect, test } from 'vitest';
import { calculateOne } from '../../core/cli/calculate.ts';
import { calcFill } from '../../core/procedures/calc-fill.ts';
import { type Counted, countedFillings } from './counted-fillings.ts';
import { inchNm, numbersFrom } from './random-faces.ts';

const seed = Number(process.env['REGANG_TEST_SEED'] ?? 602);
const inchMm = 25.4;

interface Face {
  readonly panels: readonly { readonly code: string; readonly inches: number; readonly feet: number }[];
  readonly lengthInches: number;
  readonly fillerInches: number;
  readonly rowsFeet: readonly number[];
  readonly stock?: Readonly<Record<string, number>>;
}

/** Panels of the two heights stand mixed in the catalogue, some of one width, some of a height that no row has. */
function randomFace(number: (below: number) => number): Face {
  const panels = Array.from({ length: 3 + number(4) }, (_, place) => ({
    code: `P${(7 * place) % 11}`,
    inches: 3 + number(9),
    feet: [8, 4, 3][number(7) === 0 ? 2 : number(2)] ?? 8,
  }));
  const rowsFeet = Array.from({ length: 2 + number(2) }, () => (number(2) === 0 ? 8 : 4));
  // a code that the stock does not name has none
  const stock = panels.flatMap(({ code }) => (number(4) === 0 ? [] : [[code, number(5)] as const]));
  return {
    panels,
    lengthInches: 6 + number(18),
    fillerInches: number(5),
    rowsFeet: [12 - rowsFeet[0]!, ...rowsFeet.slice(0, -1)],
    ...(number(4) > 0 && { stock: Object.fromEntries(stock) }),
  };
}

/** Counts by the whole catalogue. */
function everyFilling({ panels, lengthInches, fillerInches, rowsFeet, stock }: Face): readonly Counted[] {
  let all: Counted[] = [{ counts: panels.map(() => 0), score: [0, 0, 0] }];
  for (const height of new Set(rowsFeet)) {
    const places = panels.flatMap(({ feet }, place) => (feet === height ? [place] : []));
    const ofHeight = countedFillings({
      lengthNm: lengthInches * inchNm,
      rows: rowsFeet.filter((feet) => feet === height).length,
      widthsNm: places.map((place) => panels[place]!.inches * inchNm),
      ...(stock && { stock: places.map((place) => stock[panels[place]!.code] ?? 0) }),
      maximumFillerNm: fillerInches * inchNm,
      best: 1,
    });
    all = all.flatMap(({ counts, score }) =>
      ofHeight.map((other) => ({
        counts: counts.map((count, place) => count + (other.counts[places.indexOf(place)] ?? 0)),
        score: [score[0] + other.score[0], score[1] + other.score[1], score[2] + other.score[2]] as const,
      })),
    );
  }
  return all.sort((one, other) => {
    const [left, right] = [one, other].map(({ score, counts }) => [...score, ...counts.map((n) => -n)]);
    const first = left!.findIndex((value, place) => value !== right![place]);
    return first < 0 ? 0 : left![first]! - right![first]!;
  });
}

interface Answered {
  readonly proposals: readonly {
    readonly design: {
      readonly panels: readonly { panel: string; x: number; y: number; onSide: boolean }[];
      readonly fillers: readonly { x: number; y: number; width: number; height: number }[];
    };
    readonly fillerMm: number;
    readonly panelCount: number;
    readonly short: Record<string, number>;
    readonly score: readonly [number, number, number];
  }[];
  readonly proven: boolean;
  readonly findings: readonly { rule: string }[];
}

function holdsPlaces(face: Face, { design }: Answered['proposals'][number]): void {
  let [bottom, panelsSeen, fillersSeen] = [0, 0, 0];
  for (const feet of face.rowsFeet) {
    const y = bottom * 12 * inchMm;
    const row = design.panels.filter((panel) => Math.abs(panel.y - y) < 1e-6);
    let [atInches, last] = [0, 0];
    for (const { panel, x, onSide } of row) {
      const place = face.panels.findIndex(({ code }) => code === panel);
      expect(face.panels[place]?.feet).toBe(feet);
      expect(onSide).toBe(false);
      expect(place).toBeGreaterThanOrEqual(last);
      expect(x).toBeCloseTo(atInches * inchMm, 6);
      atInches += face.panels[place]!.inches;
      last = place;
    }
    const gap = face.lengthInches - atInches;
    expect(gap).toBeGreaterThanOrEqual(0);
    expect(gap).toBeLessThanOrEqual(face.fillerInches);
    const fillers = design.fillers.filter((filler) => Math.abs(filler.y - y) < 1e-6);
    expect(fillers.length).toBe(gap > 0 ? 1 : 0);
    for (const filler of fillers) {
      expect(filler.x).toBeCloseTo(atInches * inchMm, 6);
      expect(filler.width).toBeCloseTo(gap * inchMm, 6);
      expect(filler.height).toBeCloseTo(feet * 12 * inchMm, 6);
    }
    panelsSeen += row.length;
    fillersSeen += fillers.length;
    bottom += feet;
  }
  expect([panelsSeen, fillersSeen]).toEqual([design.panels.length, design.fillers.length]);
}

test(`the best 3 of 200 random faces with seed ${seed}, and the place of each piece, are those of counting`, async () => {
  const number = numbersFrom(seed);
  let [empty, unequal, several] = [0, 0, 0];
  for (let time = 0; time < 200; time += 1) {
    const face = randomFace(number);
    const { panels, stock, rowsFeet } = face;
    const input = {
      system: {
        panels: panels.map(({ code, inches, feet }) => ({
          code,
          width: `${inches} in`,
          height: `${feet} ft`,
          weightKg: 10,
        })),
      },
      face: { length: `${face.lengthInches} in`, height: `${rowsFeet.reduce((sum, feet) => sum + feet)} ft` },
      rows: rowsFeet.map((feet) => `${feet}'-0"`),
      maximumFiller: `${face.fillerInches} in`,
      ...(stock && { stock }),
    };
    const outcome = await calculateOne(calcFill, JSON.stringify(input));
    expect(outcome).toMatchObject({ exitCode: 0 });
    const { proposals, proven, findings } = outcome.document as Answered;
    const every = everyFilling(face);
    const mine = proposals.map(({ design, score }) => ({
      counts: panels.map(({ code }) => design.panels.filter(({ panel }) => panel === code).length),
      score: [score[0], Math.round(score[1] * 1e6), score[2]],
    }));
    expect({ mine, proven, input }).toEqual({ mine: every.slice(0, 3), proven: true, input });
    for (const proposal of proposals) {
      holdsPlaces(face, proposal);
      expect([proposal.fillerMm, proposal.panelCount]).toEqual(proposal.score.slice(1));
      const short = panels.flatMap(({ code }) => {
        const used = proposal.design.panels.filter(({ panel }) => panel === code).length;
        const over = used - (stock?.[code] ?? (stock ? 0 : used));
        return over > 0 ? [[code, over] as const] : [];
      });
      expect(proposal.short).toEqual(Object.fromEntries(short));
    }
    expect(findings.some(({ rule }) => rule === 'fill.no-way')).toBe(every.length === 0);
    if (every.length === 0) empty += 1;
    if (every.length > 2) several += 1;
    if (every.length > 0 && new Set(rowsFeet).size > 1) unequal += 1;
  }
  expect(empty).toBeGreaterThan(5);
  expect(unequal).toBeGreaterThan(20);
  expect(several).toBeGreaterThan(20);
});
