// What rigging manuals, regulations and tables print, reproduced through `calc pick` and the parts under it. The
// source of every value stands beside it in published-values.ts.
import { describe, expect, test } from 'vitest';
import type { z } from 'zod';
import { leastUltimateGrams, needsAttachmentFactor, proofLoadGrams } from '../../core/pick/attachments.ts';
import { windFindings } from '../../core/pick/wind.ts';
import { calcPick } from '../../core/procedures/calc-pick.ts';
import {
  attachmentRules,
  attachmentStrengths,
  bridles,
  chainsEn,
  chainsUs,
  impacts,
  notOurs,
  proofLoads,
  type Published,
  sectionRows,
  slingCapacities,
  slingFactors,
  slingTensions,
  windRules,
} from './published-values.ts';

type Input = z.input<typeof calcPick.input>;
type Output = z.output<typeof calcPick.output>;

const poundKg = 0.45359237;
const grams = (lb: number): number => Math.round(lb * poundKg * 1000);
const windRulesAt = (mps: number): unknown => windFindings(mps, null, '').map((one) => one.severity);
const reproduced = new Set<string>();
const seen = ({ id, source }: Published): string => {
  reproduced.add(id);
  return `${id}: ${source}`;
};

async function pick(input: Input): Promise<Output> {
  const answered = await calcPick.run(calcPick.input.parse(input));
  if (!answered.ok) throw new Error(answered.error.message);
  return calcPick.output.parse(answered.value);
}

/** Pull of the legs in pounds; more than two legs count only where the load is equalised. */
async function legsLb(loadLb: number, legs: number, angleDeg: number): Promise<readonly number[]> {
  const found = await pick({
    weightKg: loadLb * poundKg,
    hooks: { capacityKg: 1_000_000, minimum: legs },
    rigging: { angleDeg },
    equalised: legs > 2,
  });
  return found.slingTensionKn.map((kn) => (kn * 1000) / 9.80665 / poundKg);
}

describe('slings', () => {
  test.each(slingTensions)(
    '$id: $loadLb lb on $legs legs at $angleDeg degrees pull $legLb lb',
    async (row) => {
      const legs = await legsLb(row.loadLb, row.legs, row.angleDeg);
      expect(legs, seen(row)).toHaveLength(row.legs);
      for (const leg of legs) expect(Math.abs(leg - row.legLb)).toBeLessThanOrEqual(row.within);
    },
  );

  test.each(slingFactors)('$id: at $angleDeg degrees the pull is $factor times the share', async (row) => {
    const [leg = 0] = await legsLb(2000, 2, row.angleDeg);
    expect(Math.abs(leg / 1000 - row.factor), seen(row)).toBeLessThanOrEqual(6e-5);
  });

  test.each(slingCapacities)(
    '$id: a $ratedLb lb sling at $angleDeg degrees carries $carriesLb lb',
    async (row) => {
      const [leg = 0] = await legsLb(2 * row.carriesLb, 2, row.angleDeg);
      // the chart is rounded to whole pounds of what is carried
      const roundedLb = 1 / Math.sin((row.angleDeg * Math.PI) / 180);
      expect(Math.abs(leg - row.ratedLb), seen(row)).toBeLessThanOrEqual(roundedLb);
      const { findings } = await pick({
        weightKg: 1,
        hooks: { capacityKg: 100, minimum: 2 },
        rigging: { angleDeg: row.angleDeg },
      });
      const stops = findings.filter((one) => one.severity === 'stop').map((one) => one.rule);
      expect(stops).toEqual(row.angleDeg < 30 ? ['sling.angle'] : []);
    },
  );

  test.each(bridles)(
    '$id: legs of $legFt ft rated $legRatedLb lb, $headroomFt ft high, carry $carriesLb lb',
    async (row) => {
      const half = Math.sqrt(row.legFt ** 2 - row.headroomFt ** 2) * 304.8;
      const found = await pick({
        weightKg: row.carriesLb * poundKg,
        hooks: { capacityKg: 100_000, minimum: 2, positionsMm: [0, 2 * half] },
        rigging: { legLengthMm: `${row.legFt} ft` },
      });
      for (const kn of found.slingTensionKn)
        expect((kn * 1000) / 9.80665 / poundKg, seen(row)).toBeCloseTo(row.legRatedLb, 2);
      expect(found.headroomMm).toBeCloseTo(row.headroomFt * 304.8, 3);
    },
  );

  test('a bridle of four legs is rated as one of two: each of four hooks is counted with half the load', async () => {
    const found = await pick({
      weightKg: 8000 * poundKg,
      hooks: { capacityKg: 100_000, minimum: 2, positionsMm: [0, 1000, 2000, 3000] },
      rigging: { angleDeg: 60 },
    });
    const pulls = found.slingTensionKn.map((kn) => (kn * 1000) / 9.80665 / poundKg);
    for (const pull of pulls) expect(pull).toBeCloseTo(4618.8, 1);
    expect(pulls).toHaveLength(4);
  });
});

describe('chain tables', () => {
  const angles = [60, 45, 30] as const;
  test.each(chainsUs)(
    '$id: $chain chain at 60, 45 and 30 degrees, double, and triple for three and four',
    async (row) => {
      expect(seen(row)).toContain('Ohio');
      for (const [index, angleDeg] of angles.entries())
        for (const [legs, table] of [
          [2, row.double],
          [3, row.triple],
        ] as const) {
          const carriesLb = table[index] ?? 0;
          const [leg = 0] = await legsLb(carriesLb, legs, angleDeg);
          // tables are rounded to preferred figures
          expect(Math.abs(leg / row.singleLb - 1)).toBeLessThanOrEqual(0.015);
        }
    },
  );

  test.each(chainsEn)('$id: $chain chain to 45 and to 60 degrees from the vertical', async (row) => {
    expect(seen(row)).toContain('EN 818-4');
    const factors = { 2: [1.4, 1], 3: [2.1, 1.5] } as const;
    for (const [index, fromVertical] of [45, 60].entries())
      for (const legs of [2, 3] as const) {
        const pullT = async (loadT: number): Promise<number> =>
          (((await legsLb((loadT * 1000) / poundKg, legs, 90 - fromVertical))[0] ?? 0) * poundKg) / 1000;
        // The table's factors are the sines to two figures: under the load they allow, a leg pulls its rating.
        const byFactor = await pullT(row.singleT * (factors[legs][index] ?? 0));
        expect(Math.abs(byFactor / row.singleT - 1)).toBeLessThanOrEqual(0.0102);
        // Its figures are preferred numbers besides, up to 4 % off their factor.
        const byTable = await pullT((legs === 2 ? row.two : row.more)[index] ?? 0);
        expect(Math.abs(byTable / byFactor - 1)).toBeLessThanOrEqual(0.04);
      }
  });
});

describe('lifting attachments', () => {
  test.each(attachmentRules)('$id: a gang of $gangLb lb, rule applies: $applies', (row) => {
    expect(needsAttachmentFactor(grams(row.gangLb)), seen(row)).toBe(row.applies);
    if (row.factor !== null) expect(leastUltimateGrams(1000)).toBe(1000 * row.factor);
  });

  test.each(attachmentStrengths)(
    '$id: $gangLb lb on $points points stand $ultimateLb lb each',
    async (row) => {
      const angleDeg = row.angleFactor === 1 ? 90 : 60;
      const [pull = 0] = await legsLb(row.gangLb, row.points, angleDeg);
      expect(Math.abs(leastUltimateGrams(pull) - row.ultimateLb), seen(row)).toBeLessThanOrEqual(0.5);
    },
  );

  test.each(proofLoads)('$id: gear rated $ratedLb lb is proved with $proofLb lb', (row) => {
    expect(proofLoadGrams(row.ratedLb), seen(row)).toBe(row.proofLb);
  });

  test.each(impacts)(
    '$id: $weightLb lb with an allowance of $fraction need a rating of $ratingLb lb',
    async (row) => {
      const found = await pick({
        weightKg: row.weightLb * poundKg,
        hooks: { capacityKg: 100_000, minimum: 2 },
        rigging: { angleDeg: 90 },
        allowance: row.fraction,
      });
      const carried = found.loadPerHookKg.reduce((sum, kg) => sum + kg, 0) / poundKg;
      expect(Math.abs(carried - row.ratingLb), seen(row)).toBeLessThanOrEqual(0.5);
    },
  );
});

test.each(windRules)('$id: over $overMps m/s without a limit lifting is to be looked at again', (row) => {
  expect(windRulesAt(row.overMps), seen(row)).toEqual(['note']);
  expect(windRulesAt(row.overMps + 0.001)).toEqual(['caution', 'note']);
  expect(windFindings(10, null, '')[0]?.message).toContain(`${row.overMph} mph (${row.overMps} m/s)`);
});

test('every row of the section is reproduced here, or says why it is not ours', () => {
  const told = new Set(notOurs.map((one) => one.id));
  expect(sectionRows).toHaveLength(43);
  expect([...reproduced, ...told].sort()).toEqual([...sectionRows].sort());
  for (const { why } of notOurs) expect(why.length).toBeGreaterThan(20);
});
