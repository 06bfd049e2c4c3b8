// What will move where, before it is saved, and what that does to the whole plan.
import type { ReactNode } from 'react';
import { type Output, useCore } from '../../client/core.tsx';
import { useJob } from '../../parts/job.tsx';
import { RefusalNote } from '../../parts/notes.tsx';
import { withSpokenInstants } from '../../parts/spoken-instants.ts';
import type { TimeWords } from '../../parts/time-words.ts';
import { useUnits } from '../../parts/units.tsx';
import type { SaidDay } from './day-draft.ts';
import { moveWords } from './line-words.ts';

export function MovesPart(props: {
  readonly date: string;
  readonly said: SaidDay;
  readonly currency: string;
  readonly words: TimeWords;
}): ReactNode {
  const { date, said, words } = props;
  const job = useJob();
  const isWhole = said.faults.length === 0 && said.steps.length > 0;
  const preview = useCore('dayend.preview', { job: job.code, date, steps: said.steps }, { enabled: isWhole });
  const still = said.faults.filter(({ field }) => field === 'reason').length;
  return (
    <section className="day-part" aria-label="What moves">
      <h2>What moves</h2>
      {isWhole ? (
        <Moves preview={preview.data} error={preview.error} {...props} words={words} />
      ) : (
        <p className="soft">
          {said.steps.length === 0
            ? 'Nothing is on the list of this day.'
            : still === 0
              ? 'Put right what is marked above, and what moves stands here.'
              : `${still} of ${said.steps.length} steps are not ticked and have no reason yet.`}
        </p>
      )}
    </section>
  );
}

function Moves(props: {
  readonly preview: Output<'dayend.preview'> | undefined;
  readonly error: unknown;
  readonly date: string;
  readonly currency: string;
  readonly words: TimeWords;
}): ReactNode {
  const { preview, error, words } = props;
  if (error !== null) return <RefusalNote error={error} />;
  if (preview === undefined) return <p className="soft">Reckoning …</p>;
  return (
    <>
      {preview.takesBack ? <p>What the first end of this day moved is put back before that.</p> : null}
      {preview.moves.length === 0 ? (
        <p className="soft">No pour moves.</p>
      ) : (
        <ul className="day-moves">
          {preview.moves.map((move) => (
            <li key={`${move.pour} ${move.what} ${move.side ?? ''}`}>{moveWords(move, words)}</li>
          ))}
        </ul>
      )}
      {preview.findings.map((each) => (
        <p key={each.message} className="caution-word-ink">
          {each.severity === 'note' ? 'Note' : 'Caution'}: {withSpokenInstants(each.message)}
        </p>
      ))}
      {preview.moves.length === 0 || preview.takesBack ? null : <Difference {...props} preview={preview} />}
    </>
  );
}

function Difference(props: {
  readonly preview: Output<'dayend.preview'>;
  readonly date: string;
  readonly currency: string;
}): ReactNode {
  const job = useJob();
  const { money } = useUnits();
  const { changes } = props.preview;
  const asked = { job: job.code, changes, today: props.date };
  const whatif = useCore('plan.whatif', asked, { enabled: changes.length > 0 });
  if (whatif.data === undefined) return null;
  const { newShortfalls, goneShortfalls, costChangeCents, call } = whatif.data;
  const short = newShortfalls.map(({ quantity, component }) => `${quantity} ${component}`).join(', ');
  const more = `${costChangeCents < 0 ? '−' : '+'}${money(Math.abs(costChangeCents), props.currency)}`;
  return (
    <p>
      In the whole plan: {newShortfalls.length === 0 ? 'nothing is newly short' : `newly short ${short}`}
      {goneShortfalls.length === 0 ? '' : `, ${goneShortfalls.length} shortfalls go`}, cost{' '}
      {costChangeCents === 0 ? 'as before' : more}.
      {call.length === 0
        ? ''
        : ` To be called: ${call.map(({ who, about, pour }) => `${who} (${about}, ${pour})`).join('; ')}.`}
    </p>
  );
}
