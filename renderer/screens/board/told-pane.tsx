// What the crew was told of the gangs: what this plan does otherwise, what would be told next, and what stands. Telling and
// releasing are records of their own; nothing of them is changed later.
import { type ReactNode, useState } from 'react';
import { Button } from 'react-aria-components';
import { useCommand, useCore } from '../../client/core.tsx';
import type { Output } from '../../client/shapes.ts';
import { useLiveNow } from '../../parts/live-now.ts';
import { RefusalNote, Waiting } from '../../parts/notes.tsx';
import { useUnits } from '../../parts/units.tsx';
import { WhenField } from '../yard/when-field.tsx';
import type { BoardModel } from './board-rows.ts';
import { BoardPane } from './side-pane.tsx';
import { instructionWords } from './told-words.ts';

type Told = Output<'told.list'>;

export function ToldPane(props: {
  readonly model: BoardModel;
  readonly readOnly: boolean;
  readonly onClose: () => void;
}): ReactNode {
  const { code } = props.model.board.job;
  const ofClock = useLiveNow(code);
  const [from, setFrom] = useState<string | null>(null);
  const live = from === null ? ofClock : { now: from };
  const told = useCore('told.list', { job: code, ...live });
  const mark = useCommand('told.mark');
  const release = useCommand('told.release');
  return (
    <BoardPane title="Told to the crew" onClose={props.onClose}>
      <p className="told-from">
        <WhenField label="Shifts counted from" placeholder="now" value={from} onChange={setFrom} />
      </p>
      {told.error === null ? null : <RefusalNote error={told.error} />}
      {told.data === undefined ? (
        told.error === null ? (
          <Waiting what="Reading what was told …" />
        ) : null
      ) : (
        <ToldLists
          {...props}
          told={told.data}
          busy={mark.isPending || release.isPending}
          refusal={mark.error ?? release.error}
          onMark={() => mark.mutate({ job: code, ...live })}
          onRelease={(instructions) =>
            release.mutate({ job: code, instructions: [...instructions], ...live })
          }
        />
      )}
    </BoardPane>
  );
}

function ToldLists(props: {
  readonly model: BoardModel;
  readonly readOnly: boolean;
  readonly told: Told;
  readonly busy: boolean;
  readonly refusal: Error | null;
  readonly onMark: () => void;
  readonly onRelease: (instructions: readonly Told['stands'][number]['instruction'][]) => void;
}): ReactNode {
  const { told, model } = props;
  const { words } = model;
  const units = useUnits();
  const off = props.readOnly || props.busy;
  const changed = told.stands.filter(({ standing }) => standing !== 'followed');
  const followed = told.stands.filter(({ standing }) => standing === 'followed');
  return (
    <>
      {props.refusal === null ? null : <RefusalNote error={props.refusal} />}
      <section className="pane-part" aria-label="To be told">
        <h3>
          Next {told.toldShifts === 1 ? 'shift' : `${told.toldShifts} shifts`}, until {words.full(told.until)}
        </h3>
        {told.next.length === 0 ? (
          <p className="soft">No gang is worked on until then that was not told.</p>
        ) : (
          <>
            <ul>
              {told.next.map((each) => (
                <li key={JSON.stringify(each.instruction)}>{instructionWords(each)}</li>
              ))}
            </ul>
            <p className="gang-acts">
              <Button className="primary" isDisabled={off} onPress={props.onMark}>
                Mark as told
              </Button>
            </p>
          </>
        )}
      </section>
      <section className="pane-part" aria-label="Told otherwise">
        <h3>{changed.length === 0 ? 'This plan does as told' : 'This plan does otherwise'}</h3>
        {changed.length === 0 ? (
          <p className="soft">
            A change of what was told counts {units.money(told.changeCents, model.board.job.currency)} against
            a plan.
          </p>
        ) : (
          <>
            <ul>
              {changed.map((each) => (
                <li key={JSON.stringify(each.instruction)}>
                  <span className="short-word">
                    {each.standing === 'gone' ? 'not in the plan any more' : 'otherwise'}
                  </span>{' '}
                  {instructionWords(each)}{' '}
                  <Button
                    className="quiet"
                    isDisabled={off}
                    aria-label={`Release: ${instructionWords(each)}`}
                    onPress={() => props.onRelease([each.instruction])}
                  >
                    Release
                  </Button>
                </li>
              ))}
            </ul>
            <p className="soft">
              Each counts {units.money(told.changeCents, model.board.job.currency)} against the plan until it
              is released.
            </p>
          </>
        )}
      </section>
      {followed.length === 0 ? null : (
        <section className="pane-part" aria-label="Stands told">
          <h3>Stands told</h3>
          <ul>
            {followed.map((each) => (
              <li key={JSON.stringify(each.instruction)}>
                {instructionWords(each)}{' '}
                <span className="soft">
                  {words.full(each.since)}, {each.who}
                </span>
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}
