// Days for all pours without a date together, found beside everything that has one; with why none is a day earlier, how soon it
// could be at the best, what is not reckoned with, and what the whole plan would say. Taken over in one step.
import type { ReactNode } from 'react';
import { useCore } from '../../client/core.tsx';
import type { Output } from '../../client/shapes.ts';
import { useApply } from '../../parts/changes/use-apply.ts';
import { useJob } from '../../parts/job.tsx';
import { useLiveNow } from '../../parts/live-now.ts';
import { RefusalNote, Waiting } from '../../parts/notes.tsx';
import { withSpokenInstants } from '../../parts/spoken-instants.ts';
import { dateWords, timeWords } from '../../parts/time-words.ts';
import { useUnits } from '../../parts/units.tsx';
import { breaksWords } from '../board/date-words.ts';
import { costWords } from '../board/gang-words.ts';
import { notBeforeWords } from './place-words.ts';
import { PoursPanel } from './pours-panel.tsx';

type Placing = Output<'pour.place'>;

interface PlaceProps {
  readonly pours: readonly string[];
  readonly timeZone: string;
  readonly onClose: () => void;
  readonly onSay: (words: string) => void;
}

export function PlacePanel(props: PlaceProps): ReactNode {
  const { pours, timeZone } = props;
  const job = useJob();
  const asked = { job: job.code, pours: [...pours], ...useLiveNow(job.code) };
  const apply = useApply(job.code);
  // Not placed anew while the dates are being taken.
  const placed = useCore('pour.place', asked, { enabled: pours.length > 0 && !apply.busy });
  const take = async ({ changes, placed: dated }: Placing): Promise<void> => {
    const about = `dates for ${dated.map(({ pour }) => pour).join(', ')}`;
    try {
      await apply.apply(changes, about.slice(0, 300));
    } catch {
      // It stands in `error`, and the panel stays.
      return;
    }
    props.onSay(`${dated.length} pours have dates. Ctrl+Z takes them back.`);
    props.onClose();
  };
  return (
    <PoursPanel title={`${pours.length} pours without a date, placed`} onClose={props.onClose}>
      {apply.error === null ? null : <RefusalNote error={apply.error} />}
      {placed.error === null ? null : <RefusalNote error={placed.error} />}
      {placed.data === undefined && placed.error === null ? <Waiting what="Placing them …" /> : null}
      {placed.data === undefined ? null : (
        <div className="placing">
          <PlacedTable placing={placed.data} timeZone={timeZone} />
          <div>
            <PlacingWords placing={placed.data} timeZone={timeZone} />
            <button
              type="button"
              className="primary"
              disabled={apply.busy || placed.isPlaceholderData || placed.data.changes.length === 0}
              onClick={() => placed.data !== undefined && void take(placed.data)}
            >
              Take these dates
            </button>
          </div>
        </div>
      )}
    </PoursPanel>
  );
}

function PlacedTable(props: { readonly placing: Placing; readonly timeZone: string }): ReactNode {
  const words = timeWords(props.timeZone);
  const order = props.placing.placed.toSorted((one, other) =>
    one.times.finishAt < other.times.finishAt ? -1 : 1,
  );
  return (
    <table className="plain placed-table" aria-label="Dates found">
      <thead>
        <tr>
          <th scope="col">Pour</th>
          <th scope="col">First set</th>
          <th scope="col">Finish</th>
          <th scope="col">First strip shift</th>
          <th scope="col">Why not a day sooner</th>
        </tr>
      </thead>
      <tbody>
        {order.map(({ pour, name, times, notBefore }) => (
          <tr key={pour}>
            <th scope="row">
              {pour} <span className="soft">{name}</span>
            </th>
            <td>{words.full(firstSet(times.sides))}</td>
            <td>{words.full(times.finishAt)}</td>
            <td>{words.full(times.stripFrom)}</td>
            <td>{notBefore === null ? '' : notBeforeWords(notBefore, words)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function firstSet(sides: Placing['placed'][number]['times']['sides']): string {
  return (
    sides.map(({ setFrom }) => setFrom).toSorted((one, other) => Date.parse(one) - Date.parse(other))[0] ?? ''
  );
}

function PlacingWords(props: { readonly placing: Placing; readonly timeZone: string }): ReactNode {
  const { placing, timeZone } = props;
  const { currency } = useCore('board.read', { job: useJob().code }).data?.job ?? { currency: '' };
  const units = useUnits();
  const cost = costWords(placing.costChangeCents, (cents) => units.money(cents, currency));
  return (
    <>
      <p>
        All stripped by {dateWords(placing.lastDate)}
        {placing.lastDate === placing.boundDate
          ? ', which cannot be sooner.'
          : `; before ${dateWords(placing.boundDate)} that cannot be.`}{' '}
        Whole plan: {cost}.
      </p>
      <p className={placing.breaks === 0 ? undefined : 'short-word'}>
        The plan with them: {withSpokenInstants(breaksWords(placing), timeZone)}.
      </p>
      {placing.unplaced.length === 0 ? null : (
        <p className="short-word">No day was found for {placing.unplaced.join(', ')}.</p>
      )}
      {placing.shortAnyway.map(({ pour, component, needed, there }) => (
        <p key={`${pour} ${component}`} className="caution-word-ink">
          {pour} needs {needed} {component}, and {there} are left at the most: not heeded here.
        </p>
      ))}
      <p className="soft">
        Reckoned by whole days, as if every gang were assembled for its pour and broken down after it; each
        pour keeps its own steps. Hours of assembling, crane, pads and hiring are left out: the plan with them
        is what counts.
      </p>
    </>
  );
}
