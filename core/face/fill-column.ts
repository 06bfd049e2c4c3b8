// Proposals for a column formed by two halves of an L. Every pair of gangs on paper that fits is looked at, and the best
// fillings of both faces; what is said to be proven is proven by bounds that no half can go below.
import { type Answer, answer, refuse } from '../answer.ts';
import { type Finding, shown } from '../gang/findings.ts';
import { type FilledHalves, filledHalves, knownHalves } from './column-halves.ts';
import { type ColumnProposal, columnProposal } from './column-proposal.ts';
import { type ColumnForm, type ColumnTask, faceNames } from './column.ts';
import { noPieces, stackOf } from './wall-corners.ts';
import { wallRows } from './wall-rows.ts';
import type { ProposalOrder, WallAnswer, WallProposal } from './wall.ts';

/**
 * The best two halves first; where they leave a tie hole alone, the best without any as well; where they are gangs on
 * paper, the best of new ones too. Refuses what wallRows and fillFace refuse, and 'face-too-short'.
 */
export function fillColumn(task: ColumnTask): Answer<WallAnswer> {
  const form = formOf(task);
  if (!form.ok) return form;
  const filled = filledHalves(task, form.value);
  if (!filled.ok) return filled;
  const made = filled.value.halves.map((halves) => columnProposal(task, form.value, halves));
  const known = knownHalves(task, form.value).map((halves) => columnProposal(task, form.value, halves));
  const proposals = inOrder(made, known, filled.value).slice(0, task.best);
  const { corner, formNm } = form.value;
  const bare: readonly Finding[] =
    corner.pieces.length > 0 ? [] : [noPieces('outside', formNm, 'corners of the column')];
  return answer({
    proposals: proposals.map((proposal) => ({ ...proposal, findings: [...bare, ...proposal.findings] })),
    proven: proposals[0]?.proven ?? filled.value.impossible,
    findings: filled.value.findings,
  });
}

function formOf({ system, column }: ColumnTask): Answer<ColumnForm> {
  const rows = wallRows(system.panels, column.heightNm + column.freeboardNm, undefined);
  if (!rows.ok) return rows;
  const formNm = rows.value.reduce((sum, each) => sum + each, 0);
  const corner = stackOf(system, 'outside-corner', undefined, formNm, false);
  const legsNm = corner.legBeforeNm + corner.legAfterNm;
  const panelsNm = { A: column.widthANm - legsNm, B: column.widthBNm - legsNm };
  const narrow = faceNames.find((face) => panelsNm[face] <= 0);
  if (narrow !== undefined)
    return refuse(
      'face-too-short',
      `Face ${narrow} of the column is too narrow: the legs of its corner pieces are ${shown(legsNm)}.`,
      { field: `column.width${narrow}` },
    );
  return answer({ rowsNm: rows.value, formNm, panelsNm, corner });
}

function inOrder(
  made: readonly ColumnProposal[],
  known: readonly ColumnProposal[],
  { least }: FilledHalves,
): readonly WallProposal[] {
  const found: WallProposal[] = [];
  const add = (order: ProposalOrder, from: readonly ColumnProposal[]): void => {
    const [best] = from.toSorted(compareScores);
    if (best === undefined) return;
    const isKnown = known.includes(best);
    found.push({ ...best, order, proven: isKnown || meetsBounds(best, least) });
  };
  const all = [...known, ...made];
  add('first', all);
  const [first] = found;
  if (first === undefined) return found;
  if (first.score[1] > 0)
    add(
      'no-tie-stops',
      all.filter(({ score }) => score[1] === 0),
    );
  if (first.score[0] === 0) add('new-gangs', made);
  return found;
}

/** The first five parts decide; symmetry after them. */
function compareScores({ score: one }: ColumnProposal, { score: other }: ColumnProposal): number {
  const [difference = 0] = one.map((part, index) => part - (other[index] ?? 0)).filter((each) => each !== 0);
  return difference;
}

/** No tie hole alone, nothing short, the least fillers that there can be, and with them the fewest panels. */
function meetsBounds({ score }: ColumnProposal, least: FilledHalves['least']): boolean {
  const [, alone, shortage, fillerNm, panelCount] = score;
  if (least === undefined || alone > 0 || shortage > 0) return false;
  return fillerNm === 2 * least.fillerNm && panelCount === 2 * least.panelCount;
}
