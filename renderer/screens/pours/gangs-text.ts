// The gangs of one side in a line: "GA at 0, GB at 12'-0"". Read back from the same words.
import { type Answer, answer, refuse } from '../../../core/answer.ts';
import { formatLength, parseLength, type UnitSystem } from '../../../core/units/length.ts';
import type { PourSide } from './pour-shapes.ts';

type Gangs = PourSide['gangs'];

export function gangsText(gangs: Gangs, system: UnitSystem): string {
  return gangs.map(({ design, atNm }) => `${design} at ${formatLength(atNm, system)}`).join(', ');
}

/** "4 GA, 2 GB": how many of each design, in the order of their first place. */
export function gangsCount(gangs: Gangs): string {
  const counts = new Map<string, number>();
  for (const { design } of gangs) counts.set(design, (counts.get(design) ?? 0) + 1);
  return [...counts].map(([design, count]) => (count === 1 ? design : `${count} ${design}`)).join(', ');
}

/**
 * Reads gangs parted by commas or semicolons. A place that is told in ~ was rounded in print: where the
 * gang it came from is given in `before`, the exact place is kept.
 */
export function readGangs(text: string, before: Gangs, system: UnitSystem): Answer<Gangs> {
  const gangs: Gangs = [];
  for (const part of text.split(/[,;\n]/u).map((one) => one.trim())) {
    if (part === '') continue;
    const found = /^(\S+)(?:\s+(?:at|@)\s*(.+))?$/u.exec(part);
    const [, design, place] = found ?? [];
    if (design === undefined || place === undefined)
      return refuse('gang-unreadable', `"${part}" does not say which gang stands where.`, {
        hint: `Maybe write it like GA at ${system === 'us' ? `12'-0"` : '3600 mm'}.`,
      });
    const kept = before.find((gang) => formatLength(gang.atNm, system) === place.trim());
    const length = kept === undefined ? parseLength(/^0$/u.test(place) ? 0 : place) : answer(kept.atNm);
    if (!length.ok) return length;
    gangs.push({ design, atNm: length.value });
  }
  return answer(gangs);
}
