// Changes of the plan in words, for their heading, for undo and for reading aloud: "move W5 by 1 working day".
import { never } from '../../../core/answer.ts';
import { dateWords, type TimeWords } from '../time-words.ts';
import type { PlanChange } from './change-text.ts';

export interface ChangeNames {
  readonly words: Pick<TimeWords, 'day' | 'full'>;
  /** The number of a note by its id. */
  readonly note: (id: string) => string;
}

export function changeWords(changes: readonly PlanChange[], names: ChangeNames): string {
  return changes.map((change) => oneChange(change, names)).join(', ');
}

/** Short enough to be kept with a change that is carried out. */
export function aboutWords(changes: readonly PlanChange[], names: ChangeNames): string {
  const words = changeWords(changes, names);
  return words.length <= 300 ? words : `${words.slice(0, 297)}...`;
}

function oneChange(change: PlanChange, { words, note }: ChangeNames): string {
  switch (change.kind) {
    case 'move':
      return moveWords(change);
    case 'drop':
      return `drop ${change.pour}`;
    case 'stock':
      return stockWords(change.entry, words);
    case 'set-of-forms': {
      const gangs = change.gangs.map(({ design, quantity }) => `${quantity} ${design}`);
      return `add a set of ${gangs.join(' and ')} from ${words.day(change.from)}`;
    }
    case 'delivery':
      return change.expectedAt === null
        ? `${note(change.note)} does not come`
        : `${note(change.note)} comes ${words.full(change.expectedAt)}`;
    case 'fix':
      return `fix ${choiceWords(change.choice)}`;
    case 'unfix':
      return `let go of ${choiceWords(change.choice)}`;
    case 'strip':
      return `strip ${change.pour} after ${change.stripMinimumH} h`;
    case 'design':
      return `${change.design} at ${change.pour} side ${change.side}, gang ${change.position}`;
    case 'calendar':
      return calendarWords(change.exception);
    case 'date':
    case 'pour-times':
      return `${change.pour} ends ${words.full(change.finishAt)}`;
    case 'crane':
      return craneWords(change.booking, words);
    case 'hold':
      return change.hold === null ? `take the hold off ${change.pour}` : `hold ${change.pour}`;
    default:
      return never(change);
  }
}

function moveWords({ pour, workingDays }: Extract<PlanChange, { kind: 'move' }>): string {
  const size = Math.abs(workingDays);
  return `move ${pour} ${workingDays < 0 ? 'back ' : ''}by ${size} working day${size === 1 ? '' : 's'}`;
}

function stockWords(
  { kind, quantity, component, from, to, source }: Extract<PlanChange, { kind: 'stock' }>['entry'],
  words: ChangeNames['words'],
): string {
  const pieces = `${Math.abs(quantity)} ${component}`;
  const span = `from ${words.day(from)}${to === null ? '' : ` to ${words.day(to)}`}`;
  if (quantity < 0) return `${pieces} fewer ${span}`;
  switch (kind) {
    case 'hire':
      return `hire ${pieces} ${span}`;
    case 'transfer':
      return `bring ${pieces}${source === null ? '' : ` of ${source}`} ${span}`;
    case 'set-of-forms':
    case 'other':
      return `${pieces} more ${span}`;
    default:
      return never(kind);
  }
}

function choiceWords(choice: Extract<PlanChange, { kind: 'fix' }>['choice']): string {
  switch (choice.kind) {
    case 'follow':
      return `${choice.from} goes on to ${choice.to}`;
    case 'assemble':
      return `${choice.turn} is assembled`;
    case 'break-down':
      return `${choice.turn} is broken down`;
    case 'no-regang':
      return `${choice.turn} is not re-ganged`;
    default:
      return never(choice);
  }
}

function calendarWords(exception: Extract<PlanChange, { kind: 'calendar' }>['exception']): string {
  return exception.kind === 'off'
    ? `nobody works on ${dateWords(exception.date)}`
    : `an extra shift on ${dateWords(exception.date)}, ${exception.start} to ${exception.end}`;
}

function craneWords(
  { crane, from, to, kind }: Extract<PlanChange, { kind: 'crane' }>['booking'],
  words: ChangeNames['words'],
): string {
  const span = `from ${words.full(from)} to ${words.full(to)}`;
  switch (kind) {
    case 'extra':
      return `crane ${crane} works ${span} as well`;
    case 'other-trade':
      return `crane ${crane} is taken ${span}`;
    case 'wind':
      return `crane ${crane} stands for wind ${span}`;
    default:
      return never(kind);
  }
}
