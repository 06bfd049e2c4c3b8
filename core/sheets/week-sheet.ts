// The week plan for the wall: two weeks, a row a pour, and what every day asks of crew and crane. In type that is read
// across a room; what has changed since the last printing bears a sign and the word.
import { cautionsPart, weekCautions } from './cautions.ts';
import { changedMark, supersededWords } from './changed-mark.ts';
import { changesSince, type PrintState, type SheetChanges } from './changes.ts';
import { dayWords, timeOf } from './day-words.ts';
import { el, of, type Sheet, type SheetElement, type SheetNode } from './node.ts';
import { paperHead } from './paper-head.ts';
import { phonesPart } from './phones-part.ts';
import { row } from './pieces-part.ts';
import {
  gatesText,
  shortText,
  type Stage,
  stages,
  type WeekDay,
  weekLines,
  type WeekPour,
  type WeekSheetFacts,
} from './week-lines.ts';

const kind = 'Week plan';

export function weekSheet(facts: WeekSheetFacts): Sheet {
  const { job, from, to, print } = facts;
  const changes = changesSince(weekLines(facts), print.before);
  const shown = facts.pours.filter(({ isShown }) => isShown);
  const tree = of(
    'article',
    `sheet wall-sheet wall-sheet-${facts.units}`,
    head(facts),
    poursPart(shown, changes),
    ...gonePart(changes, print),
    daysPart(facts, changes),
    ...phonesPart(facts.phones),
    cautionsPart(weekCautions),
  );
  return {
    title: `${kind} ${job.code} ${from} revision ${print.revision}`,
    foot: `${kind} ${dayWords(from)} to ${dayWords(to)} · revision ${print.revision} · ${job.code} ${job.name}`,
    tree,
  };
}

function head({ job, from, to, print, given, changeNumber }: WeekSheetFacts): SheetElement {
  const all = [...new Set([...print.given, ...given])];
  return paperHead({
    kind,
    code: `${dayWords(from)} to ${dayWords(to)}`,
    name: job.name,
    cells: [
      ['Job', job.code],
      ['Revision', String(print.revision)],
      ['Plan', `of entry ${changeNumber}`],
      ['Given to', all.length === 0 ? '……………………' : all.join(', ')],
    ],
    under: supersededWords(print, 'the plan'),
  });
}

function poursPart(pours: readonly WeekPour[], changes: SheetChanges): SheetElement {
  const heads = ['pour', 'steel in', 'set', 'close', 'pour', 'first strip shift'];
  return of(
    'section',
    'part week-pours',
    of('h2', 'part-name', 'Pours'),
    ...(pours.length === 0
      ? [of('p', 'soft', 'No pour has anything in these two weeks.')]
      : [
          of(
            'table',
            'lines wall-lines',
            el('thead', {}, row('th', heads)),
            el('tbody', {}, ...pours.flatMap((pour) => pourRows(pour, changes))),
          ),
        ]),
  );
}

function pourRows(pour: WeekPour, changes: SheetChanges): readonly SheetElement[] {
  const isNew = stages.every((stage) => changes.changed.get(`${pour.code} ${stage}`) === null);
  const cells = stages.map((stage) => stageCell(pour, stage, isNew ? undefined : changes));
  const name = of(
    'div',
    'wall-pour',
    of('strong', 'wall-code', pour.code),
    of('div', 'wall-name', pour.name),
    ...(isNew ? [changedMark('new on the plan')] : []),
  );
  const gates = gatesText(pour);
  const was = isNew ? undefined : changes.changed.get(`${pour.code} gates`);
  if (gates === '' && was === undefined) return [row('td', [name, ...cells])];
  return [
    row('td', [name, ...cells]),
    el(
      'tr',
      { class: 'wall-gates' },
      el('td', {}),
      el(
        'td',
        { colspan: '5' },
        gates === '' ? 'No gate is open any more.' : of('strong', 'not-ready', `Not ready: ${gates}`),
        ...(was === undefined ? [] : [changedMark(was === null || was === '' ? 'new' : `was: ${was}`)]),
      ),
    ),
  ];
}

function stageCell(pour: WeekPour, stage: Stage, changes: SheetChanges | undefined): SheetNode {
  const was = changes?.changed.get(`${pour.code} ${stage}`);
  return of(
    'div',
    'wall-when',
    ...stageNodes(pour, stage),
    ...(was === undefined ? [] : [changedMark(was === null || was === '' ? 'new' : `was ${was}`)]),
  );
}

function stageNodes(pour: WeekPour, stage: Stage): readonly SheetNode[] {
  if (stage === 'steel') {
    const { steel } = pour;
    if (steel === null) return ['–'];
    const promised = of('div', 'wall-time', steel.done ? 'in' : 'promised');
    return [of('div', 'wall-day', dayWords(steel.date)), promised];
  }
  const at = pour[stage];
  if (at === null) return ['–'];
  return [of('div', 'wall-day', dayWords(at)), of('div', 'wall-time', timeOf(at))];
}

function gonePart({ gone }: SheetChanges, print: PrintState): readonly SheetElement[] {
  const pours = [
    ...new Set(gone.filter(({ key }) => key.endsWith(' set')).map(({ key }) => key.slice(0, -4))),
  ];
  if (pours.length === 0 || print.before === null) return [];
  return [
    of(
      'section',
      'part week-gone',
      changedMark(`no longer on the plan since revision ${print.before.revision}: ${pours.join(', ')}`),
    ),
  ];
}

function daysPart({ days }: WeekSheetFacts, changes: SheetChanges): SheetElement {
  // A column that says on every day that nothing was entered is one line instead.
  const hasCrane = days.some(({ crane }) => crane !== null);
  const heads = ['day', 'crew hours', ...(hasCrane ? ['crane minutes'] : []), 'pieces short'];
  return of(
    'section',
    'part week-days',
    of('h2', 'part-name', 'Days'),
    of(
      'table',
      'lines wall-lines',
      el('thead', {}, row('th', heads)),
      el('tbody', {}, ...days.map((day) => dayRow(day, changes, hasCrane))),
    ),
    ...(hasCrane
      ? []
      : [of('p', 'soft', 'Crane minutes are not reckoned: no hours of a crane are entered.')]),
  );
}

function dayRow(day: WeekDay, changes: SheetChanges, hasCrane: boolean): SheetElement {
  const was = changes.changed.get(`short ${day.date}`);
  const { crane } = day;
  return row('td', [
    of('strong', 'wall-day', dayWords(day.date)),
    ofThere(day.crewHours, day.crewHoursThere, 'h'),
    ...(hasCrane ? [crane === null ? '–' : ofThere(crane.minutes, crane.minutesThere, 'min')] : []),
    of(
      'div',
      'wall-short',
      day.short.length === 0 ? 'none' : of('strong', 'is-short', shortText(day.short)),
      ...(was === undefined || was === null ? [] : [changedMark(was === '' ? 'was none' : `was ${was}`)]),
    ),
  ]);
}

/** What is over is said in a word. */
function ofThere(needed: number, there: number, unit: string): SheetNode {
  const words = `${Math.round(needed * 10) / 10} of ${Math.round(there * 10) / 10} ${unit}`;
  return needed > there ? of('strong', 'over', `${words}, too much`) : words;
}
