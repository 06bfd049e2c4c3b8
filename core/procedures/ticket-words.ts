// Strip tickets in words: where a gang goes next, what a part is, and what a component is taken for.
import { never } from '../answer.ts';
import type { BookComponent, BookReader } from '../book/book.ts';
import type { UnitSystem } from '../units/length.ts';
import { formatLength } from '../units/length.ts';
import { differingMeasure, proposedPairs, type TellApart } from '../yard/look-alikes.ts';
import { loosePart, type NextOfGang, type TicketPart } from '../yard/strip-ticket.ts';
import { measuredOf } from './lookalike-list.ts';

/** "Fly on to P05 side A, nr 1" */
export function nextWords(next: NextOfGang | null, place: string): string {
  if (next === null) return `Lay down at ${place}`;
  switch (next.how) {
    case 'fly-on':
      return `Fly on to ${turnWords(next.turn, next.pour)}`;
    case 'regang':
      return `Re-gang into ${next.design} for ${turnWords(next.turn, next.pour)}`;
    case 'stand-by':
      return `Stand by, made up, at ${next.place}`;
    case 'break-down':
      return `Break down at ${next.place}`;
    default:
      return never(next);
  }
}

/** "P05 side A, nr 1" of P05/A1. */
function turnWords(turn: string, pour: string): string {
  const [, side, number] = /\/([AB])(\d+)$/u.exec(turn) ?? [];
  return side === undefined ? pour : `${pour} side ${side}, nr ${number}`;
}

/** "Gang GA-1 (GA) at P01 side A, nr 1", "GA at P01 side A, nr 2", "Loose pieces of P01" */
export function partTitle(part: Pick<TicketPart, 'part' | 'turn' | 'gang' | 'design'>, pour: string): string {
  if (part.part === loosePart) return `Loose pieces of ${pour}`;
  const name = part.gang === null ? (part.design ?? part.part) : `Gang ${part.gang} (${part.design ?? ''})`;
  return `${name} at ${part.turn === null ? pour : turnWords(part.turn, pour)}`;
}

/** For each component what it is taken for and what tells them apart, where that is known. */
export async function lookAlikeWords(
  book: BookReader,
  components: readonly BookComponent[],
  units: UnitSystem,
): Promise<{
  readonly words: ReadonlyMap<string, string>;
  readonly partners: ReadonlyMap<string, readonly string[]>;
}> {
  const entered = await book.lookAlikes();
  const measured = new Map(components.map((each) => [each.code, measuredOf(each)]));
  const words = new Map<string, string>();
  const partners = new Map<string, string[]>();
  const add = (one: string, other: string, apart: string): void => {
    words.set(
      one,
      `${words.has(one) ? `${words.get(one)}; ` : ''}${other}${apart === '' ? '' : `: ${apart}`}`,
    );
    partners.set(one, [...(partners.get(one) ?? []), other]);
  };
  for (const { component, other, tellApart } of entered) {
    const [one, two] = [measured.get(component), measured.get(other)];
    const by = one === undefined || two === undefined ? null : differingMeasure(one, two);
    add(component, other, tellApart === '' ? apartWords(by, units) : tellApart);
    add(other, component, tellApart === '' ? apartWords(swapped(by), units) : tellApart);
  }
  for (const { component, other, tellApart } of proposedPairs([...measured.values()], entered)) {
    add(component, other, apartWords(tellApart, units));
    add(other, component, apartWords(swapped(tellApart), units));
  }
  return { words, partners };
}

/** "4 ft high, this 8 ft" of the other one. */
function apartWords(by: TellApart | null, units: UnitSystem): string {
  if (by === null) return '';
  const word = { width: 'wide', height: 'high', length: 'long' }[by.measure];
  return `${formatLength(by.otherNm, units)} ${word}, this ${formatLength(by.componentNm, units)}`;
}

function swapped(by: TellApart | null): TellApart | null {
  return by === null ? null : { ...by, componentNm: by.otherNm, otherNm: by.componentNm };
}
