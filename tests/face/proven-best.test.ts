// Fillings held against two other ways: a general integer solver, and counting every filling of small faces.
import { beforeAll, describe, expect, test } from 'vitest';
import type { Highs } from 'highs';
import { fillRows } from '../../core/face/fill-rows.ts';
import { countedFillings } from './counted-fillings.ts';
import { type FaceSize, numbersFrom, randomFace } from './random-faces.ts';
import { loadHighs, solvedScore } from './solved-fillings.ts';

const seed = Number(process.env['REGANG_TEST_SEED'] ?? 20_250);

describe(`with seed ${seed}`, () => {
  let highs: Highs;
  beforeAll(async () => {
    highs = await loadHighs();
  });

  const solved: readonly (readonly [count: number, faces: string, size: FaceSize])[] = [
    [300, 'faces of one row', { rows: 1, codes: 12, lengths: [20, 400], widths: [6, 48] }],
    [50, 'faces of two rows', { rows: 2, codes: 6, lengths: [20, 150], widths: [8, 48] }],
    [20, 'faces of three rows', { rows: 3, codes: 4, lengths: [20, 100], widths: [8, 48] }],
  ];
  for (const [count, faces, size] of solved)
    test(`the best of ${count} random ${faces} is that of an integer solver`, { timeout: 120_000 }, () => {
      const number = numbersFrom(seed);
      let [filled, short, empty] = [0, 0, 0];
      // faces that nothing fills are held too, beside as many as were wanted
      while (filled < count) {
        const request = randomFace(number, size);
        const { fillings, proven } = fillRows(request);
        const [first] = fillings;
        const mine = first === undefined ? null : [first.shortage, first.fillerNm, first.panelCount];
        expect({ mine, proven, request }).toEqual({
          mine: solvedScore(highs, request),
          proven: true,
          request,
        });
        if (mine === null) empty += 1;
        else filled += 1;
        if ((mine?.[0] ?? 0) > 0) short += 1;
      }
      expect(empty).toBeGreaterThan(0);
      expect(short).toBeGreaterThan(count / 10);
    });

  const counted: readonly FaceSize[] = [
    { rows: 1, codes: 5, lengths: [5, 60], widths: [2, 11] },
    { rows: 2, codes: 4, lengths: [5, 30], widths: [2, 11] },
    { rows: 3, codes: 3, lengths: [5, 22], widths: [2, 11] },
    { rows: 5, codes: 2, lengths: [5, 22], widths: [2, 11] },
  ];
  for (const size of counted)
    test(`the list of 200 small faces of ${size.rows} rows is that of counting every filling, in order`, () => {
      const number = numbersFrom(seed + size.rows);
      let several = 0;
      for (let face = 0; face < 200; face += 1) {
        const request = randomFace(number, size);
        const { fillings, proven } = fillRows(request);
        const mine = fillings.map(({ counts, shortage, fillerNm, panelCount }) => ({
          counts,
          score: [shortage, fillerNm, panelCount],
        }));
        expect({ mine, proven, request }).toEqual({
          mine: countedFillings(request).slice(0, request.best),
          proven: true,
          request,
        });
        if (mine.length > 2) several += 1;
      }
      expect(several).toBeGreaterThan(20);
    });

  test('rows filled jointly, without splitting their sum first, give the same list', () => {
    const number = numbersFrom(seed);
    for (let face = 0; face < 100; face += 1) {
      const request = randomFace(number, { rows: 2, codes: 4, lengths: [5, 30], widths: [2, 11] });
      const jointly = fillRows(request, { remainders: 1_000_000, splits: 0, shares: 1_000_000 });
      expect(jointly.proven).toBe(true);
      expect(jointly.fillings.map(({ counts }) => counts)).toEqual(
        countedFillings(request)
          .slice(0, request.best)
          .map(({ counts }) => counts),
      );
    }
  });
});
