// A counted figure as people write it: 61, 40 + 6, 12 x 20, 12 bdl where the size of a bundle is known, and ~20 or
// 61 + ~20 for what was not counted piece by piece. What can mean two figures, or none, is refused with words.
import { type Answer, answer, refuse } from '../answer.ts';

export interface CountedFigure {
  readonly quantity: number;
  /** Half the width of what it may be off by; zero where every piece was counted. */
  readonly uncertainty: number;
}

const greatest = 1_000_000_000;
const part =
  /^(?<about>~|about |ca\.? )?(?<times>\d+ ?(?:x|×|\*) ?)?(?<number>\d+)(?<unit> ?(?:bdl|bundles?|bd))?(?: ?(?:±|\+\/-) ?(?<off>\d+))?$/u;

/**
 * A figure after ~ that does not say by how much it may be off (~20 ± 5) may be off by as much as itself: nobody has
 * opened the bag. Refuses: count-unreadable, bundle-size-unknown, count-too-great.
 * @param bundleSize pieces in a bundle of this component; null where nobody has said
 */
export function readCounted(
  text: string,
  component: string,
  bundleSize: number | null,
): Answer<CountedFigure> {
  const words = text.trim().toLowerCase().replaceAll(/\+\/-/gu, '±').replaceAll(/\s+/gu, ' ');
  let quantity = 0;
  let uncertainty = 0;
  for (const word of words.split('+')) {
    const found = part.exec(word.trim())?.groups;
    if (found === undefined)
      return refuse('count-unreadable', `"${text.trim()}" cannot be read as a number of pieces.`, {
        hint: 'Maybe write it like 61, 40 + 6, 12 x 20, or 61 + ~20 where a bag was not opened.',
      });
    const { about, times, number, unit, off } = found;
    if (unit !== undefined && bundleSize === null)
      return refuse('bundle-size-unknown', `How many ${component} are in a bundle is not known.`, {
        hint: `Maybe write it like ${number} x 20, or enter the size of a bundle of ${component} in the settings of counts.`,
      });
    const each = Number(number) * (unit === undefined ? 1 : (bundleSize ?? 1));
    const pieces = each * (times === undefined ? 1 : Number.parseInt(times, 10));
    quantity += pieces;
    if (off !== undefined) uncertainty += Number(off);
    else if (about !== undefined) uncertainty += pieces;
  }
  if (quantity > greatest || uncertainty > greatest)
    return refuse('count-too-great', `"${text.trim()}" is more than can be counted.`);
  return answer({ quantity, uncertainty });
}
