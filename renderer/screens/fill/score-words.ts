// What decided between proposals, in its order and in words.
import type { Proposal } from './fill-shapes.ts';

/** Without gangs that may stand there the whole order gives new gangs only. */
export function proposalName({ order }: Pick<Proposal, 'order'>, useDesigns: boolean): string {
  if (order === 'first') return useDesigns ? 'Gangs on paper first' : 'New gangs';
  return order === 'no-tie-stops' ? 'Ties first' : 'New gangs only';
}

/** Halves of a column have no middle to be even about. */
export function scoreHeads({ gangs }: Pick<Proposal, 'gangs'>): readonly string[] {
  const heads = ['New gangs', 'Ties', 'Stock', 'Filler', 'Panels'];
  return gangs.length > 0 ? [...heads, 'Symmetry'] : heads;
}

export interface ScoreWords {
  readonly words: string;
  /** Shown as what is missing. */
  readonly isBad: boolean;
}

/** One for each of the heads. */
export function scoreWords(
  { score, gangs }: Pick<Proposal, 'score' | 'gangs'>,
  units: { readonly length: (lengthNm: number) => string },
): readonly ScoreWords[] {
  return [
    plain(score.newFaceNm <= 0 ? 'none' : `${units.length(score.newFaceNm)} of face`),
    score.holesAlone === 0
      ? plain('every tie through')
      : { words: `${pieces(score.holesAlone, 'hole')} alone`, isBad: true },
    score.shortage === 0
      ? plain('none short')
      : { words: `${pieces(score.shortage, 'panel')} short`, isBad: true },
    plain(score.fillerNm === 0 ? 'none' : units.length(score.fillerNm)),
    plain(pieces(score.panelCount, 'panel')),
    ...(gangs.length > 0 ? [plain(score.asymmetry === 0 ? 'even' : 'uneven')] : []),
  ];
}

export function proofWords(proven: boolean): string {
  return proven ? 'Proven: nothing better exists.' : 'Not proven the best in the effort given.';
}

function pieces(count: number, word: string): string {
  return `${count} ${word}${count === 1 ? '' : 's'}`;
}

function plain(words: string): ScoreWords {
  return { words, isBad: false };
}
