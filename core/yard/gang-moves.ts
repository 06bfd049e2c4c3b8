// Which pieces move when a gang is built, re-ganged and broken down: a re-gang moves exactly the difference between
// what is in the gang and what it is to be, component by component, and nothing else.
import { type Answer, answer, refuse } from '../answer.ts';
import { type Condition, conditions } from './movement.ts';
import { type Issue, issuePieces, type PieceMove, type Pieces, piecesOf } from './piece-moves.ts';
import type { StockLine } from './quantities.ts';

/** What is booked to a gang. */
export function gangContent(stock: readonly StockLine[], gang: string): readonly StockLine[] {
  return stock.filter((line) => line.location === gang && line.quantity > 0);
}

/**
 * Every piece of a design from a place to the gang.
 * Codes: not-enough (every short component named), gang-not-empty.
 */
export function buildGang(gang: string, issue: Issue): Answer<readonly PieceMove[]> {
  const inIt = gangContent(issue.stock, gang);
  if (inIt.length > 0)
    return refuse('gang-not-empty', `Pieces are booked to ${gang} already: ${textOf(piecesOf(inIt))}.`, {
      field: 'gang',
      hint: 'Maybe another tag is free, or this gang is to be re-ganged.',
    });
  return issuePieces(issue, gang);
}

/** Where pieces that are taken out go, and how they are then. */
export interface TakenOutTo {
  readonly place: string;
  readonly condition: Condition;
}

/**
 * From what is in the gang to the pieces of another design. Taken out are pieces that are not ready before ready
 * ones, and of those suppliers' before ours, so that hired pieces become free first; none comes out better than it was.
 * Code: not-enough.
 */
export function regangTo(gang: string, issue: Issue, out: TakenOutTo): Answer<readonly PieceMove[]> {
  const content = gangContent(issue.stock, gang);
  const { putIn, takenOut } = regangDifference(piecesOf(content), issue.pieces);
  const put = issuePieces({ ...issue, pieces: putIn }, gang);
  if (!put.ok) return put;
  const leaving = Object.entries(takenOut).flatMap(([component, quantity]) =>
    leave(
      content.filter((line) => line.component === component),
      quantity,
      issue.order.owners,
    ).map((line) => takenOutOf(gang, line, out)),
  );
  return answer([...leaving, ...put.value]);
}

/** What a re-gang takes out and puts in, by component. */
export function regangDifference(
  content: Pieces,
  wanted: Pieces,
): { readonly takenOut: Pieces; readonly putIn: Pieces } {
  const takenOut: Record<string, number> = {};
  const putIn: Record<string, number> = {};
  for (const component of [...new Set([...Object.keys(content), ...Object.keys(wanted)])].sort()) {
    const by = (wanted[component] ?? 0) - (content[component] ?? 0);
    if (by < 0) takenOut[component] = -by;
    if (by > 0) putIn[component] = by;
  }
  return { takenOut, putIn };
}

/** How the pieces of a gang are found to be when it is broken down. */
export interface FoundPieces {
  readonly component: string;
  readonly condition: Condition;
  readonly quantity: number;
}

/**
 * All pieces of a gang back to a place. With `found`, each quantity in the condition it was found in, and together
 * exactly what is booked to the gang; without, all in the condition of `out`, or the worse one they had.
 * Code: not-what-is-in-it.
 */
export function breakDown(
  gang: string,
  stock: readonly StockLine[],
  out: TakenOutTo,
  found?: readonly FoundPieces[],
): Answer<readonly PieceMove[]> {
  const content = gangContent(stock, gang);
  if (found === undefined) return answer(content.map((line) => takenOutOf(gang, line, out)));
  const booked = piecesOf(content);
  const told = piecesOf(found);
  const different = [...new Set([...Object.keys(booked), ...Object.keys(told)])]
    .filter((component) => (booked[component] ?? 0) !== (told[component] ?? 0))
    .sort();
  if (different.length > 0)
    return refuse(
      'not-what-is-in-it',
      `${different
        .map((each) => `${each}: ${told[each] ?? 0} entered, ${booked[each] ?? 0} booked to ${gang}`)
        .join('; ')}.`,
      {
        field: 'lines',
        hint: 'Maybe pieces that are gone are to be booked as lost from the gang first, or counted on a strip ticket.',
      },
    );
  return answer(found.filter((each) => each.quantity > 0).flatMap(pairedWith(gang, content, out.place)));
}

/** Worse found with worse booked, so that as few pieces as can be change their condition. */
function pairedWith(
  gang: string,
  content: readonly StockLine[],
  to: string,
): (found: FoundPieces) => readonly PieceMove[] {
  const left = content.map((line) => ({ ...line }));
  return ({ component, condition, quantity }) => {
    const moves: PieceMove[] = [];
    let rest = quantity;
    const nearest = left
      .filter((line) => line.component === component)
      .sort((one, other) => distance(one.condition, condition) - distance(other.condition, condition));
    for (const line of nearest) {
      const some = Math.min(line.quantity, rest);
      if (some === 0) continue;
      line.quantity -= some;
      rest -= some;
      moves.push(moveOut(gang, { ...line, quantity: some }, to, condition));
    }
    return moves;
  };
}

function distance(one: Condition, other: Condition): number {
  return Math.abs(conditions.indexOf(one) - conditions.indexOf(other));
}

function leave(
  content: readonly StockLine[],
  quantity: number,
  oursFirst: readonly string[],
): readonly StockLine[] {
  const ordered = [...content].sort(
    (one, other) =>
      conditions.indexOf(other.condition) - conditions.indexOf(one.condition) ||
      lastPlace(oursFirst, other.owner) - lastPlace(oursFirst, one.owner) ||
      (one.owner < other.owner ? 1 : -1),
  );
  let rest = quantity;
  return ordered.flatMap((line) => {
    const some = Math.min(line.quantity, rest);
    rest -= some;
    return some > 0 ? [{ ...line, quantity: some }] : [];
  });
}

function lastPlace(list: readonly string[], each: string): number {
  return list.includes(each) ? list.indexOf(each) : list.length;
}

function takenOutOf(gang: string, line: StockLine, { place, condition }: TakenOutTo): PieceMove {
  const isWorse = conditions.indexOf(line.condition) > conditions.indexOf(condition);
  return moveOut(gang, line, place, isWorse ? line.condition : condition);
}

function moveOut(gang: string, line: StockLine, to: string, conditionAfter: Condition): PieceMove {
  const { component, quantity, owner, condition } = line;
  return { component, quantity, owner, from: gang, to, condition, conditionAfter, reason: 'break-down' };
}

function textOf(pieces: Pieces): string {
  return Object.entries(pieces)
    .map(([component, quantity]) => `${quantity} ${component}`)
    .join(', ');
}
