// What is decided of a shortfall: left as it is, with the reason, or on the hire list. It stays on the list, marked, and is open
// again where it grows.
import { type ReactNode, useState } from 'react';
import { Button } from 'react-aria-components';
import { useCommand } from '../../client/core.tsx';
import type { Output } from '../../client/shapes.ts';
import { useLiveNow } from '../../parts/live-now.ts';
import { RefusalNote } from '../../parts/notes.tsx';
import type { TimeWords } from '../../parts/time-words.ts';
import { useUndo } from '../../parts/undo.tsx';
import { TextField } from '../yard/gangs/form-parts.tsx';
import type { Shortfall } from './shortfall-rows.ts';

export type Decision = Output<'shortfall.list'>['decisions'][number];

/** "left as it is", "on the hire list", "left as it was, and grew since" */
export function decisionWords({ decision, hasGrown }: Decision): string {
  const words = decision === 'ignored' ? 'left as it is' : 'on the hire list';
  return hasGrown ? `${words}, but grew since` : words;
}

export function DecisionPart(props: {
  readonly job: string;
  readonly shortfall: Shortfall;
  readonly decision: Decision | undefined;
  readonly words: TimeWords;
}): ReactNode {
  const { job, shortfall, decision, words } = props;
  const { component, from, canBeHired } = shortfall;
  const live = useLiveNow(job);
  const decide = useCommand('shortfall.decide');
  const undecide = useCommand('shortfall.undecide');
  const { remember } = useUndo();
  const [reason, setReason] = useState('');
  const keep = async (kind: Decision['decision']): Promise<void> => {
    const input = { job, component, from, decision: kind, reason, ...live };
    const name = `${shortfall.quantity} ${component}`;
    const { id } = await decide.mutateAsync(input);
    setReason('');
    remember({
      words: kind === 'ignored' ? `leave ${name} short` : `${name} on the hire list`,
      undo: () => undecide.mutateAsync({ job, id }),
      redo: () => decide.mutateAsync(input),
    });
  };
  // A refusal stands beside the field.
  const press = (kind: Decision['decision']): void => void keep(kind).catch(() => undefined);
  const error = decide.error ?? undecide.error;
  return (
    <section className="pane-part" aria-label="Decision">
      <h3>Or leave it</h3>
      {decision === undefined ? null : (
        <p>
          <b>{decisionWords(decision)}</b>
          {decision.reason === '' ? '' : `: ${decision.reason}`}, {decision.who}, {words.full(decision.at)},
          at {decision.quantity} pieces.{' '}
          <Button isDisabled={undecide.isPending} onPress={() => undecide.mutate({ job, id: decision.id })}>
            Take back
          </Button>
        </p>
      )}
      <TextField label="Reason" value={reason} maxLength={200} onChange={setReason} />
      {error === null ? null : <RefusalNote error={error} />}
      <div className="pane-keep">
        <Button isDisabled={decide.isPending} onPress={() => press('ignored')}>
          Leave it as it is
        </Button>
        {canBeHired ? (
          <Button isDisabled={decide.isPending} onPress={() => press('hire-list')}>
            Put on the hire list
          </Button>
        ) : null}
      </div>
    </section>
  );
}
