// Where a code that was typed or scanned leads on a ticket: to the line of a component, to the part of a gang. What
// belongs to another ticket or job is refused with both named.
import { type Answer, answer, refuse } from '../../../../core/answer.ts';
import { readScanCode, scannedInJob } from '../../../../core/yard/scan-code.ts';
import type { TicketPart } from './asked.ts';

export interface ScanTarget {
  readonly part: string;
  /** Null: the part as a whole. */
  readonly component: string | null;
}

export interface Scannable {
  readonly name: string;
  readonly job: string;
  readonly parts: readonly (Pick<TicketPart, 'part' | 'gang'> & {
    readonly expected: readonly { readonly component: string }[];
  })[];
}

/** @param near the part in which one counts: of several lines of a component its own goes first */
export function scanTarget(text: string, ticket: Scannable, near: string | null): Answer<ScanTarget> {
  const words = text.trim();
  const scanned = readScanCode(words);
  if (!scanned.ok) return isCode(words) ? scanned : lineOf(words, ticket, near);
  const ours = scannedInJob(scanned.value, ticket.job);
  if (!ours.ok) return ours;
  const { kind, code } = ours.value;
  if (kind === 'component') return lineOf(code, ticket, near);
  if (kind === 'gang') {
    const part = ticket.parts.find((each) => each.gang === code);
    if (part !== undefined) return answer({ part: part.part, component: null });
    return refuse('not-on-ticket', `Gang ${code} is not on ${ticket.name}.`, {
      hint: 'Maybe it stands at another pour, or is stripped on another ticket.',
    });
  }
  if (kind === 'ticket') {
    const [first] = ticket.parts;
    if (code === ticket.name && first !== undefined) return answer({ part: first.part, component: null });
    return refuse('other-ticket', `This is ticket ${code}; here is ${ticket.name}.`, {
      hint: `Maybe open ${code} from the list of tickets.`,
    });
  }
  return refuse('not-on-ticket', `This is ${kind} ${code}; ${ticket.name} counts components of gangs.`, {
    hint: 'Maybe scan the component, or the tag of the gang.',
  });
}

/** Whether it was meant as a code that a scanner reads, and not typed as a component. */
function isCode(words: string): boolean {
  return words.includes(':') || words.startsWith(']');
}

function lineOf(typed: string, ticket: Scannable, near: string | null): Answer<ScanTarget> {
  const wanted = typed.toLowerCase();
  const parts = [...ticket.parts].sort(
    (one, other) => Number(other.part === near) - Number(one.part === near),
  );
  for (const { part, gang, expected } of parts) {
    const line = expected.find(({ component }) => component.toLowerCase() === wanted);
    if (line !== undefined) return answer({ part, component: line.component });
    if (gang?.toLowerCase() === wanted) return answer({ part, component: null });
  }
  return refuse('not-on-ticket', `${typed} is not expected on ${ticket.name}.`, {
    hint: 'Maybe it is taken for another component; else enter it below as more than expected.',
  });
}
