// Whether what a person counted may be added to a strip ticket. A count that cannot be is refused with its figures, so
// that the person looks again; what really is more than expected is entered as extra, on purpose.
import { answer, type Answer, refuse, type Refusal } from '../answer.ts';
import { type StripTicket, type TicketEntry, ticketName } from './strip-ticket.ts';
import { countedLines, extraCounts } from './ticket-counts.ts';

export interface EntryView {
  readonly components: ReadonlySet<string>;
  readonly owners: ReadonlySet<string>;
  /** For each component those that are taken for it. */
  readonly lookAlikes: ReadonlyMap<string, readonly string[]>;
}

type Lines = TicketEntry['lines'];
type Counting = Pick<StripTicket, 'parts' | 'number'>;

/**
 * Codes: unknown-part, unknown-component, unknown-owner, not-on-ticket, below-zero, more-than-expected.
 * @param before the entries that are there
 */
export function checkTicketEntry(
  ticket: Counting,
  before: readonly Pick<TicketEntry, 'lines'>[],
  lines: Lines,
  view: EntryView,
): Answer<null> {
  for (const [index, line] of lines.entries()) {
    const refusal = checkNames(ticket, line, view) ?? checkOnTicket(ticket, line, view);
    if (refusal !== null)
      return { ok: false, error: { ...refusal, field: `lines.${index}.${refusal.field}` } };
  }
  const touched = (part: string, component: string): number =>
    lines.findIndex((line) => line.part === part && line.component === component);
  const after = [...before, { lines }];
  for (const { part, expected, most, marked, missing } of countedLines(ticket, after)) {
    const index = touched(part.part, expected.component);
    if (index < 0) continue;
    const below = marked.find(({ quantity }) => quantity < 0);
    if (below !== undefined) return belowZero(part.part, expected.component, below, index);
    if (missing < 0) return moreThanExpected(ticket, { part: part.part, expected, most }, -missing, index);
  }
  for (const { part, component, marked } of extraCounts(ticket, after)) {
    const below = marked.find(({ quantity }) => quantity < 0);
    const index = touched(part, component);
    if (below !== undefined && index >= 0) return belowZero(part, component, below, index);
  }
  return answer(null);
}

function checkNames(ticket: Counting, line: Lines[number], view: EntryView): Refusal | null {
  const { part, component, owner } = line;
  if (!ticket.parts.some((each) => each.part === part))
    return {
      code: 'unknown-part',
      message: `${ticketName(ticket)} has no part ${part}.`,
      field: 'part',
      hint: `Maybe one of ${ticket.parts.map((each) => each.part).join(', ')}.`,
    };
  if (!view.components.has(component))
    return {
      code: 'unknown-component',
      message: `There is no component ${component} in this book.`,
      field: 'component',
      hint: 'Maybe it is spelt in another way.',
    };
  if (owner !== undefined && !view.owners.has(owner))
    return {
      code: 'unknown-owner',
      message: `There is no owner ${owner} in this book.`,
      field: 'owner',
      hint: 'Maybe it is spelt in another way, or has to be entered first.',
    };
  return null;
}

function checkOnTicket(ticket: Counting, line: Lines[number], view: EntryView): Refusal | null {
  const { part, component, extra } = line;
  const of = ticket.parts.find((each) => each.part === part);
  if (extra === true || of === undefined) return null;
  if (of.expected.some((each) => each.component === component)) return null;
  const alike = (view.lookAlikes.get(component) ?? []).filter((other) =>
    of.expected.some((each) => each.component === other),
  );
  const elsewhere = ticket.parts.find((each) =>
    each.expected.some((expected) => expected.component === component),
  );
  const other = elsewhere === undefined ? '' : `, or it belongs to ${elsewhere.part}`;
  return {
    code: 'not-on-ticket',
    message: `${component} is not expected back from ${part} on ${ticketName(ticket)}.`,
    field: 'component',
    hint:
      alike.length > 0
        ? `Maybe it is ${alike.join(' or ')}, which it is taken for: measure it${other}. Else enter it as extra.`
        : `Maybe enter it as extra${other}.`,
  };
}

function belowZero(
  part: string,
  component: string,
  {
    owner,
    condition,
    quantity,
  }: { readonly owner: string | null; readonly condition: string; readonly quantity: number },
  index: number,
) {
  const mark = owner === null ? '' : ` marked ${owner}`;
  return refuse(
    'below-zero',
    `${component} of ${part}, ${condition}${mark}, would stand at ${quantity}: more would be taken back than was counted.`,
    {
      field: `lines.${index}.quantity`,
      hint: 'Maybe it was counted in another condition, or under another owner’s mark.',
    },
  );
}

function moreThanExpected(
  ticket: Counting,
  line: {
    readonly part: string;
    readonly most: number;
    readonly expected: { readonly component: string; readonly unbooked?: number; readonly sought?: number };
  },
  over: number,
  index: number,
) {
  const { part, most, expected } = line;
  const { component, unbooked = 0, sought } = expected;
  const what = sought === undefined ? 'are expected back' : 'were missing';
  const why =
    unbooked > 0
      ? `Maybe they are some of the ${unbooked} that the design has and the book has nowhere: enter the ${over} over it as extra.`
      : 'Maybe somebody counted them already, or they are of another gang; if they really are there, enter what is over as extra.';
  return refuse(
    'more-than-expected',
    `${most + over} of ${component} would be counted for ${part} on ${ticketName(ticket)}; ${most} ${what}: ${over} too many.`,
    { field: `lines.${index}.quantity`, hint: why },
  );
}
