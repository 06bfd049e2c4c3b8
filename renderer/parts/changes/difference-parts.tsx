// The difference of two plans in parts, as the board's pane and the what-if screen show it: pours at other times, what is
// short, what it costs, crew and crane, what was told, whom to call, gangs that go another way.
import type { ReactNode } from 'react';
import { instructionWords } from '../../screens/board/told-words.ts';
import { capital, LongPart, Part } from './part.tsx';
import { withSpokenInstants } from '../spoken-instants.ts';
import { dateWords } from '../time-words.ts';
import {
  costParts,
  type Difference,
  grouped,
  loadLines,
  type Says,
  signed,
  type Summary,
} from './difference.ts';

interface PartProps {
  readonly difference: Difference;
  readonly says: Says;
}

const mostTables = 3;

/** The first few in full, the others in a line each. */
export function PourParts(props: PartProps & { readonly heads: readonly [string, string] }): ReactNode {
  const { difference, says } = props;
  const { pours } = difference;
  const whole = pours.slice(0, mostTables);
  return (
    <>
      {whole.map((one) => (
        <PourTimes key={one.pour} one={one} says={says} heads={props.heads} />
      ))}
      {pours.length === whole.length ? null : (
        <LongPart
          title="Other pours at other times"
          lines={pours.slice(mostTables).map((one) => (
            <li key={one.pour}>
              <b>{one.pour}</b> {one.name}{' '}
              <span className="soft">
                {one.after === null ? 'not poured' : `ends ${says.words.full(one.after.finishAt)}`}
              </span>
            </li>
          ))}
        />
      )}
    </>
  );
}

function PourTimes(props: {
  readonly one: Difference['pours'][number];
  readonly says: Says;
  readonly heads: readonly [string, string];
}): ReactNode {
  const { one, says } = props;
  const rows = [
    ['Set from', 'setFrom'],
    ['Pour ends', 'finishAt'],
    ['First strip', 'stripFrom'],
    ['Pieces free', 'freeAt'],
    ['Free to work', 'freeShift'],
  ] as const;
  const at = (times: typeof one.before, key: (typeof rows)[number][1], none: string): string =>
    times === null ? none : says.words.full(times[key]);
  return (
    <table className="before-after">
      <caption>
        {one.pour} {one.name}
      </caption>
      <thead>
        <tr>
          <td aria-label="What" />
          <th scope="col">{props.heads[0]}</th>
          <th scope="col">{props.heads[1]}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(([name, key]) => {
          const [before, after] = [at(one.before, key, 'no date'), at(one.after, key, 'not poured')];
          return (
            <tr key={key}>
              <th scope="row">{name}</th>
              <td>{before}</td>
              <td>{before === after ? <span className="soft">the same</span> : <b>{after}</b>}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

export function ShortPart(props: PartProps & { readonly left: number }): ReactNode {
  const { difference, says } = props;
  const { newShortfalls, goneShortfalls, changedShortfalls } = difference;
  const same = newShortfalls.length + goneShortfalls.length + changedShortfalls.length === 0;
  const line = (word: 'new' | 'gone') => (one: (typeof newShortfalls)[number]) => (
    <li key={`${word}${one.id}`}>
      <b className="change-word">{word}</b>{' '}
      <span className={word === 'new' ? 'short-word' : 'gone-words'}>
        {one.quantity} {one.component}
      </span>{' '}
      <span className="soft">
        {one.name}, {says.words.full(one.from)}
      </span>
    </li>
  );
  return (
    <Part title="Short" none={same ? `No change: ${leftWords(props.left)}.` : null}>
      {newShortfalls.map(line('new'))}
      {changedShortfalls.map(({ before, after }) => (
        <li key={after.id}>
          <b className="change-word">changed</b>{' '}
          <span className="short-word">
            {after.quantity} {after.component}
          </span>{' '}
          <span className="soft">
            {after.name}, {says.words.full(after.from)}; was {before.quantity}
            {before.from === after.from ? '' : `, ${says.words.full(before.from)}`}
          </span>
        </li>
      ))}
      {goneShortfalls.map(line('gone'))}
    </Part>
  );
}

/** Only the parts that change, under the whole. */
export function CostPart(
  props: PartProps & { readonly before: Summary; readonly after: Summary },
): ReactNode {
  const { before, after, says, difference } = props;
  const { money } = says;
  return (
    <Part title="Cost" none={null}>
      <li>
        <b>{capital(signed(difference.allChangeCents, money))}</b>{' '}
        <span className="soft">
          {money(before.allCents)} to {money(after.allCents)}
        </span>
      </li>
      {before.cost.unmet === after.cost.unmet ? null : (
        <li>
          Piece-days short that cannot be hired: <b>{after.cost.unmet}</b>{' '}
          <span className="soft">were {before.cost.unmet}</span>
        </li>
      )}
      {costParts
        .map(({ name, of }) => ({ name, change: of(after) - of(before) }))
        .filter(({ change }) => change !== 0)
        .map(({ name, change }) => (
          <li key={name}>
            {name} {signed(change, money)}
          </li>
        ))}
    </Part>
  );
}

export function LoadPart({ difference }: Pick<PartProps, 'difference'>): ReactNode {
  const lines = loadLines(difference.days, dateWords);
  const cranes = difference.days.some(({ after }) => after !== null && after.craneMinutesNeeded !== null);
  return (
    <LongPart
      title={cranes ? 'Crew and crane' : 'Crew'}
      none="Every day as it was."
      lines={lines.map((line) => (
        <li key={line.key}>
          {line.over ? <b className="short-word">over</b> : null} {line.what}{' '}
          <span className="soft">{line.text}</span>
        </li>
      ))}
    />
  );
}

export function ToldPart({ difference }: Pick<PartProps, 'difference'>): ReactNode {
  const { toldChanged, toldAgain } = difference;
  const lines = [
    ...toldChanged.map((each) => ({ word: 'otherwise', text: instructionWords(each) })),
    ...toldAgain.map((each) => ({ word: 'as told', text: instructionWords(each) })),
  ];
  return (
    <Part
      title={
        toldChanged.length === 0
          ? 'Told to the crew'
          : `Told to the crew: ${toldChanged.length} ${toldChanged.length === 1 ? 'changes' : 'change'}`
      }
      none={lines.length === 0 ? 'Nothing that was told changes.' : null}
    >
      {lines.map(({ word, text }) => (
        <li key={`${word}${text}`}>
          <b className="change-word">{word}</b> {text}
        </li>
      ))}
    </Part>
  );
}

export function CallPart({ difference }: Pick<PartProps, 'difference'>): ReactNode {
  const { call } = difference;
  return (
    <Part title="Call" none={call.length === 0 ? 'Nobody waits for this by the book.' : null}>
      {call.map((one) => (
        <li key={`${one.who}${one.about}${one.pour}`}>
          <b>{one.who}</b> {one.phone === null ? null : <b className="phone-number">{one.phone}</b>}{' '}
          {one.about}{' '}
          <span className="soft">
            {[one.pour, one.promised === null ? null : `promised ${dateWords(one.promised)}`]
              .filter((each) => each !== null)
              .join(', ')}
          </span>
        </li>
      ))}
    </Part>
  );
}

export function HeldPart({ difference, says }: PartProps): ReactNode {
  const lines = grouped(
    difference.heldLonger.map(
      (one) => `${one.design} at ${one.pour}, until ${says.words.dayTime(one.until)}`,
    ),
  );
  return (
    <LongPart
      title="Gangs held longer"
      none="None."
      lines={lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    />
  );
}

export function ReroutedPart({ difference }: Pick<PartProps, 'difference'>): ReactNode {
  return (
    <LongPart
      title="Gangs that go another way"
      none="None."
      lines={difference.rerouted.map((one) => (
        <li key={one.turn}>
          <b>{one.pour}</b> {one.after} <span className="soft">was {one.before}</span>
        </li>
      ))}
    />
  );
}

export function FindingsPart({ difference, says }: PartProps): ReactNode {
  return difference.findings.map((finding) => {
    const place = typeof finding.where === 'string' ? `${finding.where}: ` : '';
    return (
      <p key={`${finding.rule}${finding.message}${place}`} className={`finding ${finding.severity}`}>
        <b>{finding.severity}</b> {place}
        {withSpokenInstants(finding.message, says.timeZone)}
      </p>
    );
  });
}

function leftWords(count: number): string {
  if (count === 0) return 'nothing is short';
  return count === 1 ? 'the one shortfall stays' : `the ${count} shortfalls stay`;
}
