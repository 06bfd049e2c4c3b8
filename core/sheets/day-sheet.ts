// One day on paper: what is done in order with its gangs and where each goes, the picks in order, the crew, gates that
// are due and whom to call about them, what was told, what is short.
import type { UnitSystem } from '../units/length.ts';
import { cautionsPart, dayCautions } from './cautions.ts';
import { changedMark, supersededWords } from './changed-mark.ts';
import { changesSince, type PrintState, type SheetChanges, type SheetLine } from './changes.ts';
import { dayWords, timeOf } from './day-words.ts';
import { el, of, type Sheet, type SheetElement } from './node.ts';
import { paperHead } from './paper-head.ts';
import { type Phone, phonesPart, withPhone } from './phones-part.ts';
import { row, tick } from './pieces-part.ts';

export interface DayStep {
  /** The same in the next printing. */
  readonly key: string;
  /** Instants in the job's time zone. */
  readonly from: string;
  readonly to: string;
  /** "set 2 GA at P04" */
  readonly words: string;
  /** Tags of the gangs, where they are built. */
  readonly gangs: readonly string[];
  /** "fly on to P05 side A, nr 1", of each gang that goes somewhere. */
  readonly goesTo: readonly string[];
  /** Gates before it that are open, in words. */
  readonly open: readonly string[];
  /** The day for which it was planned, where it was left over. */
  readonly leftFrom: string | null;
}

export interface DayGate {
  readonly name: string;
  readonly who: string;
  readonly pour: string;
  readonly before: 'set' | 'close' | 'pour';
  readonly promised: string;
  readonly late: boolean;
}

export interface DaySheetFacts {
  readonly job: { readonly code: string; readonly name: string };
  readonly date: string;
  readonly shifts: readonly { readonly from: string; readonly to: string }[];
  readonly people: number;
  readonly crewHours: number;
  readonly crewHoursThere: number;
  readonly crane: { readonly minutes: number; readonly minutesThere: number } | null;
  readonly steps: readonly DayStep[];
  /** In order, by crane; null where no hours of a crane are entered. */
  readonly picks:
    | readonly {
        readonly crane: string;
        /** Null where it does not fit into the crane's hours. */
        readonly at: string | null;
        readonly words: string;
      }[]
    | null;
  readonly gates: readonly DayGate[];
  readonly told: readonly string[];
  readonly short: readonly {
    readonly component: string;
    readonly name: string;
    readonly quantity: number;
    readonly from: string;
    readonly to: string;
  }[];
  readonly print: PrintState;
  readonly given: readonly string[];
  readonly phones: readonly Phone[];
  readonly units: UnitSystem;
}

const kind = 'Day sheet';

export function daySheet(facts: DaySheetFacts): Sheet {
  const { job, date, print } = facts;
  const changes = changesSince(dayLinesOf(facts), print.before);
  const tree = of(
    'article',
    `sheet sheet-${facts.units} day-sheet`,
    head(facts),
    stepsPart(facts.steps, changes),
    ...picksPart(facts.picks),
    gatesPart(facts),
    ...listPart('Told to the crew', facts.told),
    ...listPart(
      'Short on this day',
      facts.short.map(
        ({ component, name, quantity, from, to }) =>
          `${quantity} ${component} ${name}, from ${dayWords(from)} ${timeOf(from)} to ${dayWords(to)} ${timeOf(to)}`,
      ),
    ),
    ...phonesPart(facts.phones),
    cautionsPart(dayCautions),
  );
  return {
    title: `${kind} ${job.code} ${date} revision ${print.revision}`,
    foot: `${kind} ${dayWords(date)} · revision ${print.revision} · ${job.code} ${job.name}`,
    tree,
  };
}

export function dayLinesOf({ steps }: Pick<DaySheetFacts, 'steps'>): readonly SheetLine[] {
  return steps.map(({ key, from, words, goesTo, open }) => ({
    key,
    text: [timeOf(from), words, ...goesTo, ...open].join(' · '),
  }));
}

function head(facts: DaySheetFacts): SheetElement {
  const { job, date, shifts, people, print, given, crane } = facts;
  const all = [...new Set([...print.given, ...given])];
  const hours = shifts.map(({ from, to }) => `${timeOf(from)} to ${timeOf(to)}`).join(', ');
  const crew = `${people} people, ${hoursWords(facts.crewHours)} of ${hoursWords(facts.crewHoursThere)} h`;
  return paperHead({
    kind,
    code: `${dayWords(date)} ${date.slice(0, 4)}`,
    name: job.name,
    cells: [
      ['Job', job.code],
      ['Shift', hours === '' ? 'nobody works by the calendar' : hours],
      ['Crew', facts.crewHours > facts.crewHoursThere ? `${crew}, too much` : crew],
      [
        'Crane',
        crane === null
          ? 'no hours entered'
          : `${Math.round(crane.minutes)} of ${Math.round(crane.minutesThere)} min${crane.minutes > crane.minutesThere ? ', too much' : ''}`,
      ],
      ['Revision', String(print.revision)],
      ['Given to', all.length === 0 ? '……………………' : all.join(', ')],
    ],
    under: supersededWords(print, 'this day'),
  });
}

function hoursWords(hours: number): string {
  return String(Math.round(hours * 10) / 10);
}

function stepsPart(steps: readonly DayStep[], changes: SheetChanges): SheetElement {
  const gone = changes.gone.map(({ text }) => text);
  return of(
    'section',
    'part day-steps',
    of('h2', 'part-name', 'In order'),
    ...(steps.length === 0
      ? [of('p', 'soft', 'The plan has nothing for this day.')]
      : [
          of(
            'table',
            'lines day-lines',
            el('thead', {}, row('th', ['', 'from – to', 'what', 'gangs', 'where it goes'])),
            el('tbody', {}, ...steps.map((step) => stepRow(step, changes))),
          ),
        ]),
    ...gone.map((text) => changedMark(`not any more: ${text}`)),
  );
}

function stepRow(step: DayStep, { changed }: SheetChanges): SheetElement {
  const was = changed.get(step.key);
  const notes = [
    ...(step.leftFrom === null ? [] : [of('div', 'left-over', `left over from ${dayWords(step.leftFrom)}`)]),
    ...step.open.map((words) => of('strong', 'not-ready', `Not ready: ${words}`)),
    ...(was === undefined ? [] : [changedMark(was === null ? 'new' : `was ${was}`)]),
  ];
  const until = step.to === step.from ? '' : ` – ${timeOf(step.to)}`;
  return row('td', [
    tick(),
    `${timeOf(step.from)}${until}`,
    of('div', 'day-what', of('strong', 'day-words', step.words), ...notes),
    step.gangs.length === 0 ? '–' : step.gangs.join(', '),
    step.goesTo.length === 0
      ? '–'
      : of('div', 'day-goes', ...step.goesTo.map((words) => of('div', 'goes-to', words))),
  ]);
}

function gatesPart({ gates, phones }: DaySheetFacts): SheetElement {
  return of(
    'section',
    'part day-gates',
    of('h2', 'part-name', 'Gates that are due'),
    ...(gates.length === 0
      ? [of('p', 'soft', 'No open gate is due by the end of this day.')]
      : [
          of(
            'table',
            'lines gate-lines',
            el('thead', {}, row('th', ['', 'gate', 'before', 'promised', 'by'])),
            el(
              'tbody',
              {},
              ...gates.map(({ name, who, pour, before, promised, late }) =>
                row('td', [
                  tick(),
                  name,
                  `${before} of ${pour}`,
                  `${dayWords(promised)}${late ? ', too late' : ''}`,
                  withPhone(who, phones),
                ]),
              ),
            ),
          ),
        ]),
  );
}

function picksPart(picks: DaySheetFacts['picks']): readonly SheetElement[] {
  const cranes = [...new Set(picks?.map(({ crane }) => crane))];
  return cranes.flatMap((crane) =>
    listPart(
      `Picks of ${crane} in order`,
      (picks ?? [])
        .filter((pick) => pick.crane === crane)
        .map(({ at, words }) => `${at === null ? 'does not fit:' : timeOf(at)} ${words}`),
    ),
  );
}

function listPart(name: string, lines: readonly string[]): readonly SheetElement[] {
  if (lines.length === 0) return [];
  return [
    of(
      'section',
      'part day-list',
      of('h2', 'part-name', name),
      of('ol', 'day-items', ...lines.map((words) => of('li', 'day-item', words))),
    ),
  ];
}
