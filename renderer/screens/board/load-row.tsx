// One kind of load under the days: what is needed of what is there, as a bar and a number; days that are over stand out
// by pattern and word, and open what clears them.
import { memo, type ReactNode } from 'react';
import { dateWords } from '../../parts/time-words.ts';
import type { BoardDay } from './board-types.ts';
import type { DayBox, DayScale } from './day-scale.ts';

export interface LoadKind {
  readonly kind: 'crew' | 'crane' | 'pads';
  /** "crew hours" */
  readonly name: string;
  readonly needed: (day: BoardDay) => number | null;
  readonly there: (day: BoardDay) => number | null;
}

export const crewLoad: LoadKind = {
  kind: 'crew',
  name: 'crew hours',
  needed: (day) => day.crewHoursNeeded,
  there: (day) => day.crewHoursThere,
};

export const craneLoad: LoadKind = {
  kind: 'crane',
  name: 'crane minutes',
  needed: (day) => day.craneMinutesNeeded,
  there: (day) => day.craneMinutesThere,
};

export const padLoad: LoadKind = {
  kind: 'pads',
  name: 'places on the pads',
  needed: (day) => day.padPlacesNeeded,
  there: (day) => day.padPlacesThere,
};

export const LoadRow = memo(function LoadRow(props: {
  readonly kind: LoadKind;
  readonly scale: DayScale;
  readonly head: ReactNode;
  /** Height of its letters in pixels. */
  readonly text: number;
  /** A row that is within its limit on every day shown gives way. */
  readonly onlyOver: boolean;
  readonly onOpen: (date: string) => void;
}): ReactNode {
  const { scale, kind } = props;
  if (scale.days.every(({ day }) => day === undefined || kind.there(day) === null)) return null;
  if (props.onlyOver && !scale.days.some(({ day }) => day !== undefined && isOver(day, kind))) return null;
  return (
    <div className="foot-row crew">
      <div className="foot-head">{props.head}</div>
      <div className="foot-chart crew-chart" style={{ width: scale.width }}>
        {scale.days.map((day) => (
          <LoadDay key={day.date} kind={kind} day={day} text={props.text} onOpen={props.onOpen} />
        ))}
      </div>
      <div className="foot-then soft">
        <OverDays scale={scale} kind={kind} onOpen={props.onOpen} />
      </div>
    </div>
  );
});

function LoadDay(props: {
  readonly kind: LoadKind;
  readonly day: DayBox;
  readonly text: number;
  readonly onOpen: (date: string) => void;
}): ReactNode {
  const { day, kind } = props;
  const needed = day.day === undefined ? 0 : (kind.needed(day.day) ?? 0);
  const there = day.day === undefined ? 0 : (kind.there(day.day) ?? 0);
  if (needed === 0 && there === 0) return null;
  const over = day.day !== undefined && isOver(day.day, kind);
  const room = day.width / props.text;
  const short = loadWords(needed, there, room);
  const words = over && roomFor(`${short} over`, room) ? `${short} over` : short;
  const share = there === 0 ? 1 : Math.min(needed / there, 1);
  const all = `${dateWords(day.date)}: ${amountText(needed)} of ${amountText(there)} ${kind.name}`;
  const place = { left: day.x, width: day.width };
  const inside = (
    <>
      <span className="crew-bar">
        <span style={{ width: `${share * 100}%` }} />
      </span>
      <span className="crew-number">{words}</span>
    </>
  );
  // A day that is narrower than a finger is opened from the words beside the row.
  return over && day.width >= fingerPx ? (
    <button
      type="button"
      className="crew-day over"
      style={place}
      title={all}
      aria-label={`${words} ${all}, over: open`}
      onClick={() => props.onOpen(day.date)}
    >
      {inside}
    </button>
  ) : (
    <div className={over ? 'crew-day over' : 'crew-day'} style={place} title={all}>
      {inside}
    </div>
  );
}

/** A crane may have minutes enough and yet not when they are wanted: the core says which days are over. */
function isOver({ overloads }: BoardDay, { kind }: LoadKind): boolean {
  return overloads.some((id) => id.startsWith(kind));
}

/** "60 of 42.5", "60 of 43", "60" or nothing, the longest there is room for; `width` in heights of a letter. */
function loadWords(needed: number, there: number, width: number): string {
  const exact = `${amountText(needed)} of ${amountText(there)}`;
  const rounded = `${whole(needed)} of ${whole(there)}`;
  if (roomFor(exact, width)) return exact;
  if (roomFor(rounded, width)) return rounded;
  // All days or none: a number here and there would say something that the others do not.
  return needed > 0 && roomFor('00', width) ? whole(needed) : '';
}

function roomFor(words: string, width: number): boolean {
  return words.length * 0.58 + 0.7 < width;
}

function whole(amount: number): string {
  return String(Math.round(amount));
}

function amountText(amount: number): string {
  return amount >= 100 ? String(Math.round(amount)) : String(Math.round(amount * 10) / 10);
}

function OverDays(props: {
  readonly scale: DayScale;
  readonly kind: LoadKind;
  readonly onOpen: (date: string) => void;
}): ReactNode {
  const over = props.scale.days.filter(({ day }) => day !== undefined && isOver(day, props.kind));
  const [first] = over;
  if (first === undefined) return 'never over';
  return (
    <button type="button" className="link" onClick={() => props.onOpen(first.date)}>
      over on {over.length} {over.length === 1 ? 'day' : 'days'}
      <span className="visually-hidden"> {props.kind.name}: open the first</span>
    </button>
  );
}

const fingerPx = 26;
