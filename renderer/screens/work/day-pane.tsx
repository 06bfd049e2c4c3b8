// One day in full: what is too much and what clears it, its calendar, its crew step by step and by whose rate, its crane
// pick by pick.
import { type ReactNode, useState } from 'react';
import { Button } from 'react-aria-components';
import { useCore } from '../../client/core.tsx';
import { useJob } from '../../parts/job.tsx';
import { useLiveNow } from '../../parts/live-now.ts';
import { dateWords, type TimeWords } from '../../parts/time-words.ts';
import { OverWays } from '../board/over-pane.tsx';
import { overloadWords } from '../board/over-words.ts';
import { BoardPane } from '../board/side-pane.tsx';
import { stepName, unitWords } from '../day-end/rate-words.ts';
import { BookingsPart } from './bookings-part.tsx';
import { CalendarPart } from './calendar-part.tsx';
import { oneDecimal, pickWords, type CraneOfDay, type Work, type WorkDay } from './work-words.ts';

interface DayProps {
  readonly work: Work;
  readonly day: WorkDay;
  readonly words: TimeWords;
  readonly readOnly: boolean;
  readonly onClose: () => void;
}

export function DayPane(props: DayProps): ReactNode {
  const { work, day, words, readOnly } = props;
  return (
    <BoardPane title={dateWords(day.date)} onClose={props.onClose}>
      {work.overloads
        .filter(({ date }) => date === day.date)
        .map((overload) => (
          <OverloadPart key={overload.id} overload={overload} readOnly={readOnly} />
        ))}
      <CalendarPart day={day} readOnly={readOnly} />
      <CrewPart day={day} />
      {day.cranes.map((crane) => (
        <CranePart key={crane.crane} crane={crane} words={words} />
      ))}
      <BookingsPart day={day} words={words} readOnly={readOnly} />
      {day.pads === null || day.pads.lying.length === 0 ? null : (
        <section className="pane-part" aria-label="Pads">
          <h3>
            Pads: {day.pads.needed} of {day.pads.there} places
          </h3>
          <p>
            {day.pads.lying
              .map(({ use, turn }) => `${turn} ${use === 'clean' ? 'cleaned' : 'assembled'}`)
              .join(', ')}
          </p>
        </section>
      )}
    </BoardPane>
  );
}

function OverloadPart(props: {
  readonly overload: Work['overloads'][number];
  readonly readOnly: boolean;
}): ReactNode {
  const { overload } = props;
  const job = useJob().code;
  const board = useCore('board.read', { job, ...useLiveNow(job) });
  const [asked, setAsked] = useState(false);
  return (
    <section className="pane-part" aria-label={overloadWords(overload)}>
      <h3 className="short-word">{overloadWords(overload)}</h3>
      {asked && board.data !== undefined ? (
        <OverWays board={board.data} overload={overload} readOnly={props.readOnly} />
      ) : (
        <p className="gang-acts">
          <Button onPress={() => setAsked(true)}>What clears it?</Button>
          <span className="soft">the least change, each planned through</span>
        </p>
      )}
    </section>
  );
}

function CrewPart({ day: { crew } }: { readonly day: WorkDay }): ReactNode {
  return (
    <section className="pane-part" aria-label="Crew">
      <h3>
        Crew: {oneDecimal(crew.needed)} of {oneDecimal(crew.there)} hours of people
      </h3>
      {crew.steps.length === 0 ? <p className="soft">No step of the plan falls on this day.</p> : null}
      <ul className="work-lines">
        {crew.steps.map(({ step, pour, toPour, personHours, rate }, index) => (
          <li key={`${index} ${step} ${pour}`}>
            <span>
              {stepName(step)} {pour}
              {toPour === null ? '' : ` for ${toPour}`}
            </span>
            <span className="amount">{oneDecimal(personHours)} h</span>
            <span className="soft">
              {rate === null
                ? 'as entered'
                : `${rate.personHours} ${unitWords[rate.unit]}, ${rate.owner}${rate.source === null ? ', no source' : ''}`}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}

function CranePart({ crane, words }: { readonly crane: CraneOfDay; readonly words: TimeWords }): ReactNode {
  const free = crane.free.map(({ from, to }) => `${words.time(from)}-${words.time(to)}`).join(', ');
  return (
    <section className="pane-part" aria-label={`Crane ${crane.crane}`}>
      <h3>
        Crane {crane.crane}: {crane.minutesNeeded} of {oneDecimal(crane.minutesThere)} minutes
      </h3>
      <p className="soft">{free === '' ? 'Not there for the forms.' : `For the forms ${free}.`}</p>
      <ul className="work-lines">
        {crane.picks.map(({ at, minutes, kind, pour, toPour, design }, index) => (
          <li key={`${index} ${pour}`} className={at === null ? 'short-word' : undefined}>
            <span>{at === null ? 'does not fit' : words.time(at)}</span>
            <span>
              {pour} {design ?? ''} {pickWords(kind, toPour)}
            </span>
            <span className="soft">{minutes} min</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
