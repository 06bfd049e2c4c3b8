// Which state of a gang may follow which, and what a step says: a gang that stands does so for a turn and upright;
// one that does not stand has no turn.
import { type Answer, answer, refuse } from '../answer.ts';
import { type Gang, type GangState, type GangStep } from './gang.ts';
import { momentMs } from './moment.ts';

/** After a state: those that may come next. The same again where it is moved or turned over. */
const following: Readonly<Record<GangState, readonly GangState[]>> = {
  assembled: ['assembled', 'standing', 'standing-by', 'broken-down'],
  standing: ['stripped'],
  stripped: ['stripped', 'standing', 'standing-by', 'assembled', 'broken-down'],
  'standing-by': ['standing-by', 'standing', 'assembled', 'broken-down'],
  'broken-down': ['assembled'],
};

const words: Readonly<Record<GangState, string>> = {
  assembled: 'assembled',
  standing: 'standing',
  stripped: 'stripped',
  'standing-by': 'standing by',
  'broken-down': 'broken down',
};

/** Null where there is no gang of that tag yet. */
export function mayFollow(last: GangState | null): readonly GangState[] {
  return last === null ? ['assembled'] : following[last];
}

export type NewGangStep = Omit<GangStep, 'number' | 'who'>;

/** What a step changes; what is not said stays as it was. */
export interface StepChange {
  readonly state: GangState;
  readonly at: string;
  readonly place?: string | undefined;
  readonly laying?: GangStep['laying'] | undefined;
  readonly job?: string | null | undefined;
  /** Of the turn it stands for; only where it stands. */
  readonly turn?: string | null | undefined;
  readonly nextTurn?: string | null | undefined;
  readonly remark?: string | null | undefined;
  /** Where it is built anew. */
  readonly design?: string | undefined;
  readonly designState?: number | undefined;
  readonly ruleVersion?: number | undefined;
}

/**
 * The next step of a gang.
 * Codes: bad-step (both states named), step-too-early, needs-turn, needs-place.
 */
export function nextGangStep(gang: Gang, change: StepChange): Answer<NewGangStep> {
  const { code, last } = gang;
  const { state, at } = change;
  const may = mayFollow(last.state);
  if (!may.includes(state))
    return refuse('bad-step', `${code} is ${words[last.state]}; it cannot be ${words[state]} next.`, {
      field: 'state',
      hint: `Maybe it is ${may.map((each) => words[each]).join(' or ')} first.`,
    });
  if ((momentMs(at) ?? 0) < (momentMs(last.at) ?? 0))
    return refuse(
      'step-too-early',
      `${code} is ${words[last.state]} since ${last.at}; at ${at} it cannot have become ${words[state]}.`,
      { field: 'at', hint: 'Maybe the day is wrong, or a clock was set back.' },
    );
  const stands = state === 'standing';
  const ruleVersion = change.ruleVersion ?? last.ruleVersion;
  const turn = stands ? (change.turn ?? last.nextTurn) : null;
  if (stands && turn === null)
    return refuse('needs-turn', `${code} is to stand, but for which turn is not said.`, { field: 'turn' });
  if (change.place === undefined && (stands || last.state === 'broken-down'))
    return refuse('needs-place', `Where ${code} is then is not said.`, { field: 'place' });
  return answer({
    gang: code,
    state,
    at,
    design: change.design ?? last.design,
    designState: change.designState ?? last.designState,
    ...(ruleVersion !== undefined && { ruleVersion }),
    place: change.place ?? last.place,
    laying: stands ? 'upright' : (change.laying ?? last.laying),
    job: change.job === undefined ? last.job : change.job,
    turn,
    nextTurn: nextTurnOf(last, change, turn),
    remark: change.remark ?? null,
  });
}

/** Once it stands for the turn that was next, nothing is next unless said. */
function nextTurnOf(last: GangStep, change: StepChange, turn: string | null): string | null {
  if (change.nextTurn !== undefined) return change.nextTurn;
  if (change.state === 'broken-down') return null;
  return turn !== null && turn === last.nextTurn ? null : last.nextTurn;
}

/** The first step: built from loose pieces. */
export function firstGangStep(
  gang: string,
  built: Omit<NewGangStep, 'gang' | 'state' | 'turn'>,
): NewGangStep {
  return { ...built, gang, state: 'assembled', turn: null };
}
