// What is in a gang held against what the design it was built to is made of: missing and surplus pieces, pieces that
// are not ready, and whether the design has changed since it was built.
import type { GangStep } from './gang.ts';
import { isReady } from './movement.ts';
import { type Pieces, piecesOf } from './piece-moves.ts';
import { regangDifference } from './gang-moves.ts';
import type { StockLine } from './quantities.ts';

export interface GangFinding {
  readonly rule: 'missing pieces' | 'surplus pieces' | 'pieces not ready' | 'older design' | 'no design';
  readonly severity: 'stop' | 'caution' | 'note';
  readonly message: string;
}

export interface MakeUp {
  /** Of the saved state that it was built to, without hooks; null where it cannot be taken off any more. */
  readonly pieces: Pieces | null;
  /** The saved state in force; null where the design was taken out. */
  readonly inForce: number | null;
}

/** None of a gang that is broken down. */
export function gangContentFindings(
  last: Pick<GangStep, 'gang' | 'state' | 'design' | 'designState'>,
  content: readonly StockLine[],
  makeUp: MakeUp,
): readonly GangFinding[] {
  if (last.state === 'broken-down') return leftIn(last.gang, content);
  return [...designFindings(last, makeUp), ...pieceFindings(last, content, makeUp), ...notReady(content)];
}

/** Whether a gang may not fly on until someone says so. */
export function isBuiltToOlder(last: Pick<GangStep, 'designState'>, inForce: number | null): boolean {
  return inForce !== null && last.designState < inForce;
}

function designFindings(
  { gang, design, designState }: Pick<GangStep, 'gang' | 'design' | 'designState'>,
  { inForce }: MakeUp,
): readonly GangFinding[] {
  if (inForce === null)
    return [
      {
        rule: 'no design',
        severity: 'caution',
        message: `${design} is not among the designs any more; ${gang} was built to its state ${designState}.`,
      },
    ];
  if (!isBuiltToOlder({ designState }, inForce)) return [];
  return [
    {
      rule: 'older design',
      severity: 'caution',
      message:
        `${gang} was built to state ${designState} of ${design}; state ${inForce} is in force. ` +
        'It does not fly on until someone says so.',
    },
  ];
}

function pieceFindings(
  { design, designState }: Pick<GangStep, 'design' | 'designState'>,
  content: readonly StockLine[],
  { pieces }: MakeUp,
): readonly GangFinding[] {
  if (pieces === null)
    return [
      {
        rule: 'no design',
        severity: 'stop',
        message: `State ${designState} of ${design} cannot be taken off, so its pieces are not held against it.`,
      },
    ];
  const { putIn, takenOut } = regangDifference(piecesOf(content), pieces);
  const made = (component: string): string => `${design} has ${pieces[component] ?? 0}`;
  return [
    ...Object.entries(putIn).map(([component, quantity]): GangFinding => ({
      rule: 'missing pieces',
      severity: 'stop',
      message: `${quantity} ${component} missing: ${made(component)}.`,
    })),
    ...Object.entries(takenOut).map(([component, quantity]): GangFinding => ({
      rule: 'surplus pieces',
      severity: 'caution',
      message: `${quantity} ${component} too many: ${made(component)}.`,
    })),
  ];
}

function notReady(content: readonly StockLine[]): readonly GangFinding[] {
  return content
    .filter((line) => !isReady(line.condition))
    .map(({ component, owner, condition, quantity }) => ({
      rule: 'pieces not ready',
      severity: condition === 'to-clean' ? 'note' : 'stop',
      message: `${quantity} ${component} (${owner}) in it ${quantity === 1 ? 'is' : 'are'} booked ${condition}.`,
    }));
}

function leftIn(gang: string, content: readonly StockLine[]): readonly GangFinding[] {
  return Object.entries(piecesOf(content)).map(([component, quantity]) => ({
    rule: 'surplus pieces',
    severity: 'stop',
    message: `${quantity} ${component} still booked to ${gang}, which is broken down.`,
  }));
}
