// How many pieces are in a container by its weight: gross less tare over the weight of a piece, with every count that
// the scale's step and the tolerances of piece and tare leave possible. Whole grams throughout; halves of a step are
// kept out of the sums by doubling them.
import { answer, type Answer, refuse } from '../answer.ts';

export interface Weighing {
  readonly grossGrams: number;
  /** Of the empty container, and by how much that may be off. */
  readonly tareGrams: number;
  readonly tareToleranceGrams: number;
  /** Of one piece, and by how much the average of those in it may be off. */
  readonly pieceGrams: number;
  readonly pieceToleranceGrams: number;
  /** The scale shows whole steps: what it shows may be off by half of one. */
  readonly scaleStepGrams: number;
}

export interface CountedByWeight {
  readonly quantity: number;
  /** No fewer and no more pieces give that weight. */
  readonly least: number;
  readonly most: number;
}

/** Codes: no-piece-weight, tolerance-too-great, gross-below-tare, no-whole-number. */
export function countByWeight(weighing: Weighing): Answer<CountedByWeight> {
  const { grossGrams, tareGrams, tareToleranceGrams, pieceGrams, pieceToleranceGrams, scaleStepGrams } =
    weighing;
  if (pieceGrams <= 0)
    return refuse(
      'no-piece-weight',
      'What a piece weighs is not entered, so it cannot be counted by weight.',
      {
        field: 'component',
        hint: 'Maybe weigh ten pieces and enter a tenth of it.',
      },
    );
  if (pieceToleranceGrams >= pieceGrams)
    return refuse(
      'tolerance-too-great',
      `A piece of ${pieceGrams} g that may be off by ${pieceToleranceGrams} g cannot be counted by weight.`,
      { field: 'pieceToleranceGrams' },
    );
  const net = 2 * (grossGrams - tareGrams);
  const off = scaleStepGrams + 2 * tareToleranceGrams;
  if (net + off < 0)
    return refuse(
      'gross-below-tare',
      `With its content it weighs ${grossGrams} g, empty ${tareGrams} g: that cannot be.`,
      { field: 'grossGrams', hint: 'Maybe the weight is that of another container, or in another unit.' },
    );
  const least = Math.max(0, Math.ceil((net - off) / (2 * (pieceGrams + pieceToleranceGrams))));
  const most = Math.floor((net + off) / (2 * (pieceGrams - pieceToleranceGrams)));
  if (least > most)
    return refuse(
      'no-whole-number',
      `No whole number of pieces of ${pieceGrams} g weighs ${grossGrams - tareGrams} g: ${most} are too few, ${least} too many.`,
      { field: 'grossGrams', hint: 'Maybe other pieces are in it too, or mud and concrete.' },
    );
  const nearest = Math.round(net / (2 * pieceGrams));
  return answer({ quantity: Math.min(most, Math.max(least, nearest)), least, most });
}
