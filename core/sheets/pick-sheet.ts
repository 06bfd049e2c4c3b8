// The sheet a pick is talked over with, the day before: verdict, how it hangs, weight line by line, hooks and
// slings, crane at both radii, wind, what is filled in by hand, what is looked at, cautions.
import type { PickCheck } from '../pick/pick-check.ts';
import type { WeightLine } from '../pick/pick-weights.ts';
import type { Crane, PickSetup } from '../pick/setup.ts';
import type { Split } from '../pick/split.ts';
import type { UnitSystem } from '../units/length.ts';
import { beforeFlying, handLines, tickList } from './by-hand.ts';
import { cautionsPart, pickCautions } from './cautions.ts';
import { type DrawnGang, sheetUnits } from './drawn-gang.ts';
import { findingsPart, numberedFindings } from './findings-part.ts';
import { of, type Sheet, type SheetNode } from './node.ts';
import { pickDrawing } from './pick-drawing.ts';
import { cranePart, slingsPart } from './pick-tables.ts';
import { pickWeightsPart } from './pick-weights-part.ts';
import { footOf, type SheetGangName, type SheetJob, titlePart } from './title-part.ts';
import { verdictPart } from './verdict-part.ts';

export interface PickEntered {
  readonly setup: PickSetup;
  readonly crane: Crane | null;
  readonly check: PickCheck;
  /** Looked for where the pick is refused. */
  readonly split: Split | null;
}

export interface PickFacts {
  readonly gang: SheetGangName;
  readonly drawn: DrawnGang;
  readonly job: SheetJob | null;
  /** Null where nobody entered how the gang is picked. */
  readonly entered: PickEntered | null;
  /** Of the gang alone, for a sheet on which nothing else is entered. */
  readonly weights: readonly WeightLine[];
  readonly units: UnitSystem;
}

const kind = 'Pick sheet';

export function pickSheet(facts: PickFacts): Sheet {
  const { gang, drawn, job, entered } = facts;
  const units = sheetUnits(facts.units);
  const tree = of(
    'article',
    `sheet sheet-${facts.units}`,
    titlePart(kind, gang, job, [
      ['Size', `${units.length(drawn.widthNm)} × ${units.length(drawn.heightNm)}`],
      ['On the crane', entered === null ? 'not known' : units.weight(entered.check.onCraneGrams)],
      ['Crane', entered?.crane?.name ?? 'not entered'],
      ['Picked up', entered === null ? 'not entered' : pickedUpWords[entered.setup.pickedUpFrom]],
    ]),
    verdictPart(entered?.check ?? null, entered?.split ?? null, units),
    ...(entered === null ? [] : enteredParts(drawn, entered, facts)),
    pickWeightsPart(
      entered?.check.weights ?? facts.weights,
      drawn.weightGrams,
      entered?.check ?? null,
      units,
    ),
    handLines('Filled in on the day', [
      ['crane operator', 'signal person', 'rigger'],
      ['radius measured: pick-up', 'set', 'wind measured at the crane', 'time'],
      ['exclusion zone, and who keeps it', 'where it is set down, and who anchors the braces'],
      ['planned by', 'date', 'checked by', 'date'],
    ]),
    tickList('Before it flies', beforeFlying),
    cautionsPart(pickCautions),
  );
  return { title: `${kind} ${gang.code} ${gang.name}`, foot: footOf(kind, gang, job), tree };
}

const pickedUpWords = { flat: 'from flat', standing: 'standing' } as const;

function enteredParts(
  drawn: DrawnGang,
  { setup, crane, check }: PickEntered,
  facts: PickFacts,
): readonly SheetNode[] {
  const units = sheetUnits(facts.units);
  return [
    findingsPart(numberedFindings(check.findings), units, 'picked'),
    pickDrawing(drawn, check, units),
    slingsPart(check, setup, units),
    cranePart(check, setup, crane, units),
  ];
}
