// Proposals for a wall formed on both sides: what stands in every leg (wall-arrange.ts), put together to gangs, with the
// loose pieces and with what the rules find. Pure: who solves the model of the stock is handed in.
import { type Answer, answer, refuse } from '../answer.ts';
import { type Finding, shown } from '../gang/findings.ts';
import { arrangeWall, type Arrangement } from './wall-arrange.ts';
import { checkWall } from './wall-check.ts';
import { type Corners, wallCorners } from './wall-corners.ts';
import { type Leg, panelLengthNm, wallLegs } from './wall-legs.ts';
import { wallPieces } from './wall-pieces.ts';
import { proposalOf } from './wall-proposal.ts';
import { wallRows } from './wall-rows.ts';
import type { SolveWhole } from './wall-stock.ts';
import type { ProposalOrder, WallAnswer, WallProposal, WallTask } from './wall.ts';

/**
 * The best arrangement first; where it leaves a tie hole alone, the best without any as well; where it stands on gangs
 * on paper, the best of new ones too. Refuses what checkWall and wallRows refuse, and 'leg-too-short'.
 * @param solve null: what is short is not made least, and nothing is proven of it
 */
export function fillWall(task: WallTask, solve: SolveWhole | null): Answer<WallAnswer> {
  const checked = checkWall(task.wall);
  if (!checked.ok) return checked;
  const { wall } = task;
  const rows = wallRows(task.system.panels, wall.heightNm + wall.freeboardNm, wall.rowsNm);
  if (!rows.ok) return rows;
  const formNm = rows.value.reduce((sum, each) => sum + each, 0);
  const corners = wallCorners(task.system, wall, formNm);
  const legs = wallLegs(wall, corners.corners);
  const short = tooShort(legs);
  if (short !== undefined) return short;
  const proposals = proposalsOf(task, rows.value, legs, corners, solve);
  return answer({
    proposals,
    proven: proposals[0]?.proven ?? false,
    findings: proposals.length > 0 ? [] : [nothingFits(rows.value)],
  });
}

function proposalsOf(
  task: WallTask,
  rowsNm: readonly number[],
  legs: readonly Leg[],
  corners: Corners,
  solve: SolveWhole | null,
): readonly WallProposal[] {
  const withDesigns = wallPieces(task, rowsNm, hasOneTier(task, rowsNm));
  if (withDesigns.classes.length === 0) return [];
  const propose = (order: ProposalOrder, designs: boolean): WallProposal | undefined => {
    const pieces = designs ? withDesigns : wallPieces(task, rowsNm, false);
    const arranged: Arrangement | undefined = arrangeWall(task, pieces, legs, order, solve);
    return arranged && proposalOf(task, rowsNm, arranged, corners, order);
  };
  const first = propose('first', true);
  const found: WallProposal[] = [];
  const add = (proposal: WallProposal | undefined): void => {
    if (proposal !== undefined) found.push(proposal);
  };
  add(first);
  if (first !== undefined && first.score[1] > 0) add(propose('no-tie-stops', true));
  if (first?.designs.some(({ isNew }) => !isNew) === true) add(propose('new-gangs', false));
  return found.slice(0, task.best);
}

/** A gang on paper is as high as the form; where gangs stand over each other none is. */
function hasOneTier({ limits }: WallTask, rowsNm: readonly number[]): boolean {
  return limits.heightNm === undefined || rowsNm.reduce((sum, each) => sum + each, 0) <= limits.heightNm;
}

function tooShort(legs: readonly Leg[]): ReturnType<typeof refuse> | undefined {
  for (const leg of legs)
    for (const side of ['A', 'B'] as const) {
      const leftNm = panelLengthNm(leg, side);
      if (leftNm < 0)
        return refuse(
          'leg-too-short',
          `Leg ${leg.index + 1} is too short on side ${side}: thickness and corner pieces need ${shown(-leftNm)} more than it has.`,
          { field: `wall.legs[${leg.index}]`, hint: 'Maybe corner pieces with shorter legs.' },
        );
    }
  return undefined;
}

function nothingFits(rowsNm: readonly number[]): Finding {
  return {
    rule: 'fill.no-way',
    severity: 'stop',
    message: `No panels stand over each other in rows of ${rowsNm.map(shown).join(' and ')} with joints through all rows.`,
    where: 'wall',
  };
}
