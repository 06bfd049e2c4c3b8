// The sheet from which a crew puts a gang together: drawing, pieces to tick, order of work, hooks, findings, what
// is looked at before it flies, where it stands, cautions, and lines to sign.
import { formatHours } from '../units/hours.ts';
import type { UnitSystem } from '../units/length.ts';
import { areaWords } from './area-words.ts';
import { assemblySteps, type AssemblyStep } from './assembly-steps.ts';
import { beforeFlying, handLines, tickList } from './by-hand.ts';
import { assemblyCautions, cautionsPart } from './cautions.ts';
import { type DrawnGang, sheetUnits, type SheetUnits } from './drawn-gang.ts';
import { findingsPart, numberedFindings } from './findings-part.ts';
import { gangDrawing } from './gang-drawing.ts';
import { hooksPart, type HookRule } from './hooks-part.ts';
import { el, of, type Sheet, type SheetElement } from './node.ts';
import { piecesPart, row, tick } from './pieces-part.ts';
import { railMovesPart } from './rail-moves-part.ts';
import { footOf, type SheetGangName, type SheetJob, titlePart } from './title-part.ts';
import { wallPart, type WallSide } from './wall-part.ts';

export interface AssemblyFacts {
  readonly gang: SheetGangName;
  readonly drawn: DrawnGang;
  readonly assembleH: number;
  readonly job: SheetJob | null;
  /** The rule of the hooks; null where there is none. */
  readonly hookRule: HookRule | null;
  /** Sides to draw, and in words where else it stands. */
  readonly walls: readonly WallSide[];
  readonly othersInWords: string;
  readonly units: UnitSystem;
}

const kind = 'Assembly sheet';

export function assemblySheet(facts: AssemblyFacts): Sheet {
  const { gang, drawn, job } = facts;
  const units = sheetUnits(facts.units);
  const findings = numberedFindings(drawn.findings);
  const stands = facts.walls.length > 0 || facts.othersInWords !== '';
  const tree = of(
    'article',
    `sheet sheet-${facts.units}`,
    titlePart(kind, gang, job, [
      ['Size', `${units.length(drawn.widthNm)} × ${units.length(drawn.heightNm)}`],
      ['Area', areaWords(drawn.areaM2, facts.units)],
      ['Weight without hooks', units.weight(drawn.weightGrams)],
      ['Planned to assemble', formatHours(facts.assembleH)],
    ]),
    findingsPart(findings, units, 'built'),
    gangDrawing(drawn, findings, units),
    ...(stands ? [wallPart(gang.code, facts.walls, facts.othersInWords, units)] : []),
    piecesPart(drawn, units),
    stepsPart(drawn, units),
    ...railMovesPart(drawn.railMoves, units),
    ...(drawn.hooks.length === 0 && facts.hookRule === null ? [] : [hooksPart(drawn, facts.hookRule, units)]),
    tickList('Before it flies', beforeFlying),
    handLines('Assembled', [
      ['crew', 'start', 'finish', 'hours'],
      ['short, and what was used instead (with whose word)'],
      ['assembled by', 'date', 'checked by', 'date'],
    ]),
    cautionsPart(assemblyCautions),
  );
  return { title: `${kind} ${gang.code} ${gang.name}`, foot: footOf(kind, gang, job), tree };
}

function stepsPart(drawn: DrawnGang, units: SheetUnits): SheetElement {
  const steps = assemblySteps(drawn, units);
  return of(
    'section',
    'part steps',
    of('h2', 'part-name', 'Order of assembly, face down'),
    of(
      'table',
      'lines step-lines',
      el('thead', {}, row('th', ['', 'step', 'what', 'pieces'])),
      el(
        'tbody',
        {},
        ...steps.map((step, index) => row('td', [tick(), String(index + 1), stepWords(step), takes(step)])),
      ),
    ),
  );
}

function stepWords({ what, how }: AssemblyStep): SheetElement {
  return of('div', 'step', of('strong', 'step-what', `${what}. `), how.join(' '));
}

function takes({ takes: taken }: AssemblyStep): SheetElement {
  return of(
    'div',
    'takes',
    ...taken.map(({ component, quantity }) => of('div', 'take', `${quantity} ${component}`)),
  );
}
