// The small forms by which a change is entered: what each asks for, and how it is read. Where there is a typed form, it is
// that which reads, so that both refuse alike.
import { type Answer, answer, never, refuse } from '../../../core/answer.ts';
import { type Known, type PlanChange, readChanges } from '../../parts/changes/change-text.ts';
import { readWhen } from '../../parts/when-text.ts';

export interface FormField {
  readonly name: string;
  readonly label: string;
  readonly from: 'text' | 'pours' | 'components' | 'designs' | 'notes';
  readonly first?: string;
  readonly placeholder?: string;
}

export type ChangeKind = 'move' | 'drop' | 'pieces' | 'set' | 'delivery' | 'extra' | 'off';
export type Values = Readonly<Record<string, string>>;

const pour: FormField = { name: 'pour', label: 'Pour', from: 'pours' };
const from: FormField = { name: 'from', label: 'From', from: 'text', placeholder: '9 Mar' };
const onDay: FormField = { name: 'date', label: 'Day', from: 'text', placeholder: '14 Mar' };

export const changeKinds: readonly {
  readonly kind: ChangeKind;
  readonly name: string;
  readonly fields: readonly FormField[];
}[] = [
  {
    kind: 'move',
    name: 'A pour moves',
    fields: [pour, { name: 'days', label: 'Working days', from: 'text', first: '+1' }],
  },
  { kind: 'drop', name: 'A pour is dropped', fields: [pour] },
  {
    kind: 'pieces',
    name: 'Pieces more or fewer',
    fields: [
      { name: 'component', label: 'Component', from: 'components' },
      { name: 'quantity', label: 'Pieces', from: 'text', first: '+10' },
      from,
      { name: 'to', label: 'Until, or empty', from: 'text', placeholder: '20 Mar' },
    ],
  },
  {
    kind: 'set',
    name: 'A set of forms more',
    fields: [
      { name: 'design', label: 'Design', from: 'designs' },
      { name: 'quantity', label: 'Gangs', from: 'text', first: '1' },
      from,
    ],
  },
  {
    kind: 'delivery',
    name: 'A delivery on another day',
    fields: [
      { name: 'note', label: 'Draft note', from: 'notes' },
      { name: 'at', label: 'Comes at', from: 'text', placeholder: '13 Mar 09:00' },
    ],
  },
  {
    kind: 'extra',
    name: 'An extra shift',
    fields: [
      onDay,
      { name: 'start', label: 'Starts', from: 'text', first: '07:00' },
      { name: 'end', label: 'Ends', from: 'text', first: '15:30' },
    ],
  },
  { kind: 'off', name: 'A day without work', fields: [onDay] },
];

/** Refusals carry the name of the field that they are about. */
export function readForm(kind: ChangeKind, values: Values, known: Known): Answer<readonly PlanChange[]> {
  const value = (name: string): string => (values[name] ?? '').trim();
  switch (kind) {
    case 'move':
      return typed(`${value('pour')} ${signedText(value('days'))}d`, known, 'days');
    case 'drop':
      return typed(`${value('pour')} drop`, known, 'pour');
    case 'pieces': {
      if (value('component') === '') return missing('component', 'Which component?');
      const wrong = wrongDay(value('from'), 'from', known) ?? wrongDay(value('to'), 'to', known);
      if (wrong !== null) return wrong;
      const span = value('from') === '' ? '' : ` from ${value('from')}`;
      const end = value('to') === '' ? '' : ` to ${value('to')}`;
      if (span === '' && end !== '') return missing('from', 'From when until then? Maybe 9 Mar.');
      return typed(`${value('component')} ${signedText(value('quantity'))}${span}${end}`, known, 'quantity');
    }
    case 'set': {
      const wrong = wrongDay(value('from'), 'from', known);
      if (wrong !== null) return wrong;
      const span = value('from') === '' ? '' : ` from ${value('from')}`;
      return typed(`set ${value('design')} x${value('quantity')}${span}`, known, 'quantity');
    }
    case 'delivery':
      return readDelivery(value('note'), value('at'), known);
    case 'extra':
      return readExtra(value('date'), value('start'), value('end'), known);
    case 'off': {
      const day = readDay(value('date'), known);
      if (!day.ok) return day;
      const off = { kind: 'off', date: day.value, reason: 'other', remark: null } as const;
      return answer([{ kind: 'calendar', exception: off }]);
    }
    default:
      return never(kind);
  }
}

function typed(text: string, known: Known, field: string): Answer<readonly PlanChange[]> {
  const read = readChanges(text, known);
  if (read.kind === 'changes') return answer(read.changes);
  return refuse('unclear', read.kind === 'unclear' ? read.message : 'Nothing was entered.', { field });
}

function readDelivery(note: string, at: string, known: Known): Answer<readonly PlanChange[]> {
  const draft = known.notes.find(({ id }) => id === note);
  if (draft === undefined) return missing('note', 'Which draft note?');
  const read = readWhen(at, draft.expectedAt ?? known.from, known.timeZone);
  return read.ok
    ? answer([{ kind: 'delivery', note, expectedAt: read.value }])
    : refuse(read.error.code, `${read.error.message} ${read.error.hint ?? ''}`, { field: 'at' });
}

function readExtra(day: string, start: string, end: string, known: Known): Answer<readonly PlanChange[]> {
  const date = readDay(day, known);
  if (!date.ok) return date;
  const clock = /^([01]\d|2[0-3]):[0-5]\d$/u;
  for (const [field, text] of Object.entries({ start, end }))
    if (!clock.test(text))
      return refuse('unclear', `"${text}" is no time of day. Write it like 07:00.`, { field });
  const weekday = new Date(`${date.value}T00:00:00Z`).getUTCDay();
  const reason = weekday === 6 ? 'saturday' : end <= start ? 'night' : 'other';
  const extra = { kind: 'extra', date: date.value, start, end, reason, remark: null } as const;
  return answer([{ kind: 'calendar', exception: extra }]);
}

function readDay(text: string, known: Known): Answer<string> {
  const read = readWhen(text, known.from, known.timeZone);
  return read.ok
    ? answer(read.value.slice(0, 10))
    : refuse(read.error.code, `${read.error.message} Write it like 14 Mar.`, { field: 'date' });
}

/** Null where it can be read or is left empty. */
function wrongDay(text: string, field: string, known: Known) {
  const read = text === '' ? null : readWhen(text, known.from, known.timeZone);
  if (read === null || read.ok) return null;
  return refuse(read.error.code, `${read.error.message} Write it like 9 Mar.`, { field });
}

function missing(field: string, message: string) {
  return refuse('missing', message, { field });
}

/** "3" is three more. */
function signedText(text: string): string {
  return /^\d/u.test(text) ? `+${text}` : text;
}
