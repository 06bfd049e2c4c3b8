// The take-off of a design of 200 panels, warm, with the contract's tables and with all of them; beside it the fixed
// reference computation.
import type { PanelSystem } from '../../core/catalogue/system.ts';
import type { DesignGeometry } from '../../core/gang/design.ts';
import { takeOff } from '../../core/gang/take-off.ts';
import { commonPractice, designOf, panel, systemWith } from '../gang/common-practice.ts';
import type { Bench, BenchLine } from './bench-line.ts';
import { median, referenceMs } from './reference-work.ts';

const rounds = 60;
const aim = 'under 10 ms';

export const bench: Bench = { name: 'Take-off of 200 panels', run: lines };

// eslint-disable-next-line typescript/require-await -- a bench is asked line by line
async function* lines(): AsyncGenerator<BenchLine> {
  const reference = referenceMs();
  const cases: readonly (readonly [string, PanelSystem, DesignGeometry])[] = [
    ['40 columns of 5 rows, contract tables', systemWith(), wall(false)],
    ['the same with a filler in every row of 10', systemWith(), wall(true)],
    ['the same, rails reaching, merged, for placing too; platform', everyTable(), wall(true)],
  ];
  for (const [what, system, design] of cases) {
    if (design.panels.length !== 200) throw new Error(`${design.panels.length} panels are not 200.`);
    const times = Array.from({ length: rounds }, () => timed(system, design));
    const warm = median(times.slice(rounds / 2));
    yield { what, value: `${warm.toFixed(2)} ms`, aim };
    yield { what: `${what}: over the reference`, value: (warm / reference).toFixed(3) };
  }
}

function timed(system: PanelSystem, design: DesignGeometry): number {
  const started = performance.now();
  const found = takeOff(system, design);
  if (!found.ok || found.value.lines.length === 0) throw new Error('Nothing was taken off.');
  return performance.now() - started;
}

function wall(filled: boolean): DesignGeometry {
  const columns = Array.from({ length: 40 }, (_, column) => column);
  const left = (column: number): number => column * 36 + (filled ? Math.floor(column / 4) * 4 : 0);
  return designOf(
    [0, 1, 2, 3, 4].flatMap((row) =>
      columns.map((column) => ['P3x4', `${left(column)} in`, `${row * 4} ft`] as const),
    ),
    {
      fillers: filled
        ? columns
            .filter((column) => column % 4 === 0 && column > 0)
            .map((column) => ({ x: `${left(column) - 4} in`, y: 0, width: '4 in', height: '20 ft' }))
        : [],
    },
  );
}

function everyTable(): PanelSystem {
  const rails = {
    across: 'horizontal-joints' as const,
    maximumAverageSpacing: '6 ft',
    lengths: [{ gangUpTo: '40 ft', minimum: '3 ft' }],
    bolt: 'RB',
    boltsPerPanelCrossed: 1,
    boltClearance: '6 in',
    reachCrossMember: true,
    mergeMeeting: true,
  };
  return systemWith(
    {
      rails,
      placingRails: { ...rails, across: 'vertical-joints', maximumAverageSpacing: '4 ft' },
      brackets: { component: 'WB', maximumSpacing: '8 ft', platform: { planksWide: 2, guardrailRows: 2 } },
    },
    [panel('P3x4', '3 ft', '4 ft', 55, { crossMembers: ['1 ft', '3 ft'] })],
    [
      ...(commonPractice.components ?? []),
      { code: 'PK', kind: 'plank', weightKg: 20, length: '10 ft' },
      { code: 'GR', kind: 'guardrail', weightKg: 7, length: '10 ft' },
    ],
  );
}
