// Three dates that a pour could have, side by side, each with what it would do to the whole plan. Nothing is stored before one
// is taken.
import type { ReactNode } from 'react';
import { useCore } from '../../client/core.tsx';
import type { Output } from '../../client/shapes.ts';
import { useApply } from '../../parts/changes/use-apply.ts';
import { useJob } from '../../parts/job.tsx';
import { useLiveNow } from '../../parts/live-now.ts';
import { RefusalNote, Waiting } from '../../parts/notes.tsx';
import { withSpokenInstants } from '../../parts/spoken-instants.ts';
import { timeWords } from '../../parts/time-words.ts';
import { useUnits } from '../../parts/units.tsx';
import { breaksWords, heldBackWords, meritWords } from '../board/date-words.ts';
import { costWords } from '../board/gang-words.ts';
import { PoursPanel } from './pours-panel.tsx';

type OneDate = Output<'pour.dates'>['dates'][number];

interface DatesProps {
  readonly pour: string;
  readonly timeZone: string;
  readonly onClose: () => void;
  readonly onSay: (words: string) => void;
}

export function DatesPanel(props: DatesProps): ReactNode {
  const { pour, timeZone } = props;
  const job = useJob();
  const apply = useApply(job.code);
  const asked = { job: job.code, pour, ...useLiveNow(job.code) };
  // Not planned anew for a date that is just being taken.
  const dates = useCore('pour.dates', asked, { enabled: !apply.busy });
  const words = timeWords(timeZone);
  const take = async ({ times: { finishAt } }: OneDate): Promise<void> => {
    const about = `${pour} ends ${words.full(finishAt)}`;
    try {
      await apply.apply([{ kind: 'date', pour, finishAt }], about);
    } catch {
      // It stands in `error`, and the panel stays.
      return;
    }
    props.onSay(`${about}. Ctrl+Z takes it back.`);
    props.onClose();
  };
  const found = dates.data?.pour === pour ? dates.data : undefined;
  return (
    <PoursPanel title={`Three dates for ${pour}`} onClose={props.onClose}>
      {apply.error === null ? null : <RefusalNote error={apply.error} />}
      {dates.error === null ? null : <RefusalNote error={dates.error} />}
      {found === undefined && dates.error === null ? (
        <Waiting what="Planning every working day of four weeks …" />
      ) : null}
      {found === undefined ? null : (
        <>
          <p className="soft">
            {found.heldBack === null ? '' : heldBackWords(found.heldBack, words)}
            {found.waitsForUndated.length === 0
              ? ''
              : ` It comes after ${found.waitsForUndated.join(', ')}, without a date too.`}{' '}
            {found.looked} working days were planned as a whole, each against{' '}
            {found.dateOpen ? `the plan without ${pour}` : 'the plan as it is'}.
          </p>
          <ul className="date-cards">
            {found.dates.map((date) => (
              <DateCard
                key={date.times.finishAt}
                date={date}
                timeZone={timeZone}
                busy={apply.busy}
                onTake={() => void take(date)}
              />
            ))}
          </ul>
        </>
      )}
    </PoursPanel>
  );
}

function DateCard(props: {
  readonly date: OneDate;
  readonly timeZone: string;
  readonly busy: boolean;
  readonly onTake: () => void;
}): ReactNode {
  const { date, timeZone } = props;
  const { currency } = useCore('board.read', { job: useJob().code }).data?.job ?? { currency: '' };
  const units = useUnits();
  const words = timeWords(timeZone);
  const { sides, finishAt, stripFrom, freeAt } = date.times;
  return (
    <li className="date-card">
      <h3>
        {words.full(finishAt)} <span className="soft">{meritWords(date.merits)}</span>
      </h3>
      <p>
        {sides.map(({ side, setFrom }) => `Side ${side} ${words.full(setFrom)}`).join(', ')}. Strip from{' '}
        {words.full(stripFrom)}, pieces ready again {words.full(freeAt)}: a forecast.
      </p>
      <p className={date.breaks === 0 ? undefined : 'short-word'}>
        {withSpokenInstants(sentence(breaksWords(date)), timeZone)}
      </p>
      <p>Whole plan: {costWords(date.costChangeCents, (cents) => units.money(cents, currency))}.</p>
      {date.isNow ? (
        <p className="soft">The date it has now.</p>
      ) : (
        <button
          type="button"
          className="primary"
          disabled={props.busy}
          aria-label={`Take this date, ${words.full(finishAt)}`}
          onClick={props.onTake}
        >
          Take this date
        </button>
      )}
    </li>
  );
}

function sentence(words: string): string {
  return `${words.slice(0, 1).toUpperCase()}${words.slice(1)}${words.endsWith('.') ? '' : '.'}`;
}
