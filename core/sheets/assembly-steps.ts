// In which order a gang is put together lying face down, from what it has. Every line of the take-off is taken
// by one step, so that the quantities of the steps are those of the list.
import type { PointNm } from '../gang/findings.ts';
import type { DrawnPanel } from '../gang/take-off.ts';
import type { TakeOffLine } from '../gang/weights.ts';
import type { DrawnGang, DrawnRail, SheetUnits } from './drawn-gang.ts';

export interface AssemblyStep {
  /** What is done, in a few words. */
  readonly what: string;
  /** How and where, a sentence each. */
  readonly how: readonly string[];
  /** Take-off lines whose pieces it puts in. */
  readonly takes: readonly Pick<TakeOffLine, 'component' | 'quantity'>[];
}

export function assemblySteps(gang: DrawnGang, units: SheetUnits): readonly AssemblyStep[] {
  const ofKind = (...kinds: string[]): readonly TakeOffLine[] =>
    gang.lines.filter(({ kind }) => kinds.includes(kind));
  const platform = ofKind('plank', 'post', 'guardrail');
  const steps = [
    timbers(gang, units),
    ...panelRows(gang, units),
    ...fillerStep(gang, units),
    ...lockSteps(gang, ofKind('lock', 'adjustable-lock')),
    ...railStep(gang, ofKind('stiffening-rail', 'rail-bolt'), units),
    ...stepFor(ofKind('bracket'), 'Walkway brackets', [
      ...placesAlong(gang.brackets, units),
      'Fix them to the back and pin them.',
    ]),
    ...stepFor(platform, 'Planks, posts and guardrails', [
      'They go on as the maker says; nobody steps on a platform whose guardrails are not firm.',
    ]),
    ...stepFor(ofKind('hook'), 'Lifting hooks', [
      ...hookWords(gang, units),
      'Look each hook over first; its latch closes by itself.',
    ]),
    ...stepFor(ofKind('brace', 'brace-shoe'), 'Braces and brace shoes', [
      ...placesAlong(gang.braces, units),
      'Fix the heads and lay the braces along the gang, tied so that they cannot swing.',
    ]),
    ...stepFor(others(gang.lines), 'Everything else on the list', []),
    {
      what: 'Look it over',
      how: [
        'Measure both diagonals again, count against the list, and tick every line.',
        'Write code, revision and weight on the back, where the crane crew reads it.',
      ],
      takes: [],
    },
  ];
  return steps;
}

function timbers(gang: DrawnGang, units: SheetUnits): AssemblyStep {
  const whole = fillsItsRectangle(gang);
  const diagonal = Math.round(Math.hypot(gang.widthNm, gang.heightNm) / 793_750) * 793_750;
  const size = `${units.length(gang.widthNm)} × ${units.length(gang.heightNm)}`;
  return {
    what: 'Level timbers',
    how: [
      `Lay straight timbers on firm ground under the whole ${size}, and check that they are level both ways.`,
      whole
        ? `Mark a square corner; both diagonals are ${units.system === 'us' ? units.length(diagonal) : units.length(Math.round(diagonal / 1e6) * 1e6)}, to the nearest ${units.system === 'us' ? '1/32 in' : 'mm'}.`
        : 'Mark a square corner; the outline is not a rectangle, so square it by its rows.',
    ],
    takes: [],
  };
}

/** Does something stand in each of the four corners? */
function fillsItsRectangle({ panels, fillers, widthNm, heightNm }: DrawnGang): boolean {
  const pieces = [...panels, ...fillers];
  return [0, widthNm].every((x) =>
    [0, heightNm].every((y) =>
      pieces.some(
        (piece) =>
          (piece.xNm === x || piece.xNm + piece.widthNm === x) &&
          (piece.yNm === y || piece.yNm + piece.heightNm === y),
      ),
    ),
  );
}

/** One step a row, from the bottom; in each the panels from the left. */
function panelRows(gang: DrawnGang, units: SheetUnits): readonly AssemblyStep[] {
  const feet = [...new Set(gang.panels.map(({ yNm }) => yNm))].sort((one, other) => one - other);
  return feet.map((footNm, index) => {
    const row = gang.panels.filter(({ yNm }) => yNm === footNm).sort((one, other) => one.xNm - other.xNm);
    const at = index === 0 ? 'the bottom' : `${units.length(footNm)} up`;
    return {
      what: feet.length === 1 ? 'Panels, face down' : `Panels of row ${index + 1}, face down`,
      how: [
        `From the left, as the drawing shows them from the back, with their feet at ${at}: ${inARow(row)}.`,
        ...(index === 0 ? ['Clean and oiled faces, bottom edges in one line.'] : []),
      ],
      takes: counted(row),
    };
  });
}

/** "P836, P836, P824 on its side" as "2 P836, 1 P824 on its side". */
function inARow(row: readonly DrawnPanel[]): string {
  const groups: { words: string; count: number }[] = [];
  for (const { panel, onSide } of row) {
    const words = onSide ? `${panel} on its side` : panel;
    const last = groups.at(-1);
    if (last?.words === words) last.count += 1;
    else groups.push({ words, count: 1 });
  }
  return groups.map(({ words, count }) => `${count} ${words}`).join(', ');
}

function counted(row: readonly DrawnPanel[]): AssemblyStep['takes'] {
  const counts = new Map<string, number>();
  for (const { panel } of row) counts.set(panel, (counts.get(panel) ?? 0) + 1);
  return [...counts].map(([component, quantity]) => ({ component, quantity }));
}

function fillerStep({ fillers }: DrawnGang, units: SheetUnits): readonly AssemblyStep[] {
  if (fillers.length === 0) return [];
  const words = fillers.map(
    ({ xNm, yNm, widthNm, heightNm }) =>
      `${units.length(widthNm)} × ${units.length(heightNm)} at ${units.length(xNm)} along, ${units.length(yNm)} up`,
  );
  return [
    {
      what: `Fillers: ${fillers.length} to cut`,
      how: [`${words.join('; ')}.`, 'Faces flush with the panels.'],
      takes: [],
    },
  ];
}

function lockSteps(gang: DrawnGang, lines: readonly TakeOffLine[]): readonly AssemblyStep[] {
  return lines.map((line) => {
    const takenBy = (table: string): boolean => line.because.some(({ rule }) => rule.startsWith(table));
    const [plain, overFillers] = [takenBy('locks'), takenBy('fillerLocks')];
    const joints = gang.joints.filter(
      ({ kind, locks }) => locks > 0 && (kind === 'filler' ? overFillers : plain),
    );
    const byCount = new Map<number, number>();
    for (const { locks } of joints) byCount.set(locks, (byCount.get(locks) ?? 0) + 1);
    const words = [...byCount]
      .sort(([one], [other]) => other - one)
      .map(([locks, count]) => `${count} ${count === 1 ? 'joint' : 'joints'} with ${locks}`);
    // Those that an edge needs where no level joint ends at it.
    const beside = line.quantity - joints.reduce((sum, { locks }) => sum + locks, 0);
    const joined = [...words, ...(beside > 0 ? [`${beside} more at the edges`] : [])].join(', ');
    return {
      what: plain ? 'Locks' : 'Adjustable locks over the fillers',
      how: [
        ...(joined === '' ? [] : [`${joined}.`]),
        ...(plain ? ['Draw the joints tight and flush first; no lock is left out, none left loose.'] : []),
      ],
      takes: [taken(line)],
    };
  });
}

function railStep(
  gang: DrawnGang,
  lines: readonly TakeOffLine[],
  units: SheetUnits,
): readonly AssemblyStep[] {
  const groups = new Map<string, { readonly rail: DrawnRail; readonly at: string[] }>();
  for (const rail of gang.rails) {
    const key = `${rail.component} ${rail.direction} ${rail.bolts} ${rail.neededFor}`;
    const group = groups.get(key) ?? { rail, at: [] };
    const { xNm, yNm } = rail;
    group.at.push(
      rail.direction === 'level'
        ? `${units.length(yNm)} up${xNm === 0 ? '' : ` from ${units.length(xNm)} along`}`
        : `${units.length(xNm)} along${yNm === 0 ? '' : ` from ${units.length(yNm)} up`}`,
    );
    groups.set(key, group);
  }
  const how = [...groups.values()].map(({ rail, at }) => {
    const bolts = `${rail.bolts} ${rail.bolts === 1 ? 'bolt' : 'bolts'}${at.length > 1 ? ' each' : ''}`;
    return `${at.length} ${rail.component} ${rail.direction}${neededWords[rail.neededFor]}, ${bolts}: ${at.join('; ')}.`;
  });
  const moved =
    gang.railMoves.length > 0 ? ['Those that the pick needs now; what is moved when stands below.'] : [];
  return stepFor(lines, 'Stiffening rails and their bolts', [
    ...moved,
    ...how,
    'Bolts through every panel that a rail crosses.',
  ]);
}

const neededWords = { picking: ' for picking alone', placing: ' for placing alone', both: '' } as const;

function hookWords({ hooks }: DrawnGang, units: SheetUnits): readonly string[] {
  return hooks.map(
    ({ xNm, yNm }, index) => `H${index + 1} at ${units.length(xNm)} along, ${units.length(yNm)} up.`,
  );
}

function placesAlong(places: readonly PointNm[], units: SheetUnits): readonly string[] {
  if (places.length === 0) return [];
  return [`At ${places.map(({ xNm }) => units.length(xNm)).join(', ')} along.`];
}

function stepFor(
  lines: readonly TakeOffLine[],
  what: string,
  how: readonly string[],
): readonly AssemblyStep[] {
  return lines.length === 0 ? [] : [{ what, how, takes: lines.map(taken) }];
}

function taken({ component, quantity }: TakeOffLine): { component: string; quantity: number } {
  return { component, quantity };
}

const placed = new Set([
  'panel', 'lock', 'adjustable-lock', 'stiffening-rail', 'rail-bolt', 'bracket', 'plank', 'post', 'guardrail',
  'brace', 'brace-shoe', 'hook',
]); // prettier-ignore

function others(lines: readonly TakeOffLine[]): readonly TakeOffLine[] {
  return lines.filter(({ kind }) => !placed.has(kind));
}
