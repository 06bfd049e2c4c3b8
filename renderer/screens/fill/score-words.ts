// What decided between proposals, in its order and in words.
import type { Units } from '../../parts/units.tsx';
import type { Proposal } from './fill-shapes.ts';

const orderWords: Readonly<Record<Proposal['order'], string>> = {
  first: 'Gangs on paper first',
  'no-tie-stops': 'Every tie through',
  'new-gangs': 'New gangs only',
};

export function proposalName({ order }: Proposal): string {
  return orderWords[order];
}

export function scoreWords({ score, gangs }: Proposal, units: Units): readonly string[] {
  return [
    score.newFaceNm <= 0 ? 'no new gang' : `${units.length(score.newFaceNm)} of face in new gangs`,
    score.holesAlone === 0 ? 'every tie through' : `${pieces(score.holesAlone, 'tie hole')} alone`,
    score.shortage === 0 ? 'no panel short' : `${pieces(score.shortage, 'panel')} short`,
    score.fillerNm === 0 ? 'no filler' : `${units.length(score.fillerNm)} of filler`,
    pieces(score.panelCount, 'panel'),
    ...(gangs.length > 0
      ? [score.asymmetry === 0 ? 'even about the middle' : 'uneven about the middle']
      : []),
  ];
}

export function proofWords(proven: boolean): string {
  return proven ? 'Proven: nothing better exists.' : 'Not proven the best in the effort given.';
}

function pieces(count: number, word: string): string {
  return `${count} ${word}${count === 1 ? '' : 's'}`;
}
