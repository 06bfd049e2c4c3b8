// What a booking moves, in words: missing against whom and for how much, what goes where, what becomes of the gangs.
import type { ReactNode } from 'react';
import { formatMoney } from '../../../../core/units/money.ts';
import { useCore } from '../../../client/core.tsx';
import { useJob } from '../../../parts/job.tsx';
import { conditionWords, reasonWords, type Reason } from '../yard-words.ts';
import type { Booking } from './asked.ts';
import { componentWords, gangStateWords } from './strip-words.ts';

export function BookingSummary(props: { readonly booking: Booking; readonly isLate: boolean }): ReactNode {
  const { booking, isLate } = props;
  const currency = useCore('board.read', { job: useJob().code }).data?.job.currency ?? 'USD';
  const moves = booking.moves.filter((move) => move.reason !== 'lost');
  return (
    <>
      {isLate ? null : <Missing booking={booking} currency={currency} />}
      <h3>Moves</h3>
      {moves.length === 0 ? (
        <p className="soft">Everything stays where it is booked.</p>
      ) : (
        <ul className="strip-moves">
          {moves.map((move) => (
            <li key={`${move.from} ${move.to} ${move.conditionAfter} ${move.reason}`}>
              {move.from === move.to ? `stays at ${move.to}` : `${move.from} to ${move.to}`},{' '}
              {conditionWords[move.conditionAfter]}
              {move.reason === 'strip' ? '' : ` (${reasonWords[move.reason as Reason]})`}:{' '}
              {componentWords(move.components)}
            </li>
          ))}
        </ul>
      )}
      {booking.gangs.map((gang) => (
        <p key={gang.gang}>
          Gang <b>{gang.gang}</b> is {gangStateWords[gang.state] ?? gang.state}: {gang.next}
        </p>
      ))}
      {booking.cautions.map((caution) => (
        <p key={caution} className="note note-caution">
          <span className="note-word">Caution</span>
          <span>{caution}</span>
        </p>
      ))}
    </>
  );
}

function Missing(props: { readonly booking: Booking; readonly currency: string }): ReactNode {
  const { missing } = props.booking;
  return (
    <>
      <h3>Missing, against whom</h3>
      {missing.length === 0 ? (
        <p className="soft">Nothing is missing.</p>
      ) : (
        <ul className="strip-missing-list">
          {missing.map((line) => (
            <li key={`${line.part} ${line.component} ${line.owner}`}>
              <b>
                {line.quantity} {line.component}
              </b>{' '}
              of {line.ownerName}, {line.part}
              {line.valueCents === null
                ? ', value not entered'
                : `, ${formatMoney(line.valueCents, props.currency)} new`}
            </li>
          ))}
        </ul>
      )}
    </>
  );
}
