// One component's shortfalls as bars under the days, each with its number after it; where not all numbers
// have room, one label before the first of them says the least and the most.
import type { MouseEvent, ReactNode } from 'react';
import type { DayScale } from './day-scale.ts';
import type { Lane } from './short-lanes.ts';

interface LaneBarsProps {
  readonly lane: Lane;
  readonly scale: DayScale;
  readonly height: number;
  /** Height of the letters in pixels. */
  readonly text: number;
  readonly onOpen: (id: string) => void;
}

export function LaneBars(props: LaneBarsProps): ReactNode {
  const { lane, scale, text } = props;
  const bars = lane.shortfalls.map((shortfall, index) => {
    const x = scale.x(Date.parse(shortfall.from));
    const width = Math.max(scale.x(Date.parse(shortfall.to)) - x, 4);
    const next = lane.shortfalls[index + 1];
    const until = next === undefined ? scale.width : scale.x(Date.parse(next.from));
    const words = `${shortfall.component} ${shortfall.quantity}`;
    const room = roomOf(words, text);
    return { shortfall, x, width, words, room, fits: x + width + room <= until };
  });
  const [first] = bars;
  if (first === undefined) return null;
  const all = laneWords(lane);
  const isBefore = bars.some((bar) => !bar.fits) && first.x > roomOf(all, text);
  const left = isBefore ? first.x - roomOf(all, text) : first.x;
  const end = Math.max(...bars.map((bar) => bar.x + bar.width + (bar.fits && !isBefore ? bar.room : 0)));
  // One target for the lane: its bars may be narrower than what a finger hits. A click takes the nearest of them.
  const open = (event: MouseEvent<HTMLElement>): void => {
    const atX = event.clientX - event.currentTarget.getBoundingClientRect().left + left;
    const nearest =
      event.detail === 0
        ? first
        : bars.reduce((best, bar) => (away(bar, atX) < away(best, atX) ? bar : best));
    props.onOpen(nearest.shortfall.id);
  };
  return (
    <div className="lane" style={{ height: props.height }}>
      <button
        type="button"
        className="lane-bar"
        style={{ left, width: Math.max(end - left, 24) }}
        aria-label={laneLabel(lane, isBefore ? all : bars.map((bar) => shownWords(bar)).join(' '))}
        onClick={open}
      >
        {isBefore ? <span className="lane-words before">{all}</span> : null}
        {bars.map((bar) => (
          <span
            key={bar.shortfall.id}
            className="lane-part"
            style={{ left: bar.x - left }}
            title={`${bar.shortfall.quantity} × ${bar.shortfall.name} short`}
          >
            <span className="lane-fill" style={{ width: bar.width }} />
            {isBefore || shownWords(bar) === '' ? null : (
              <span className={bar.fits ? 'lane-words' : 'lane-words inside'}>{shownWords(bar)} </span>
            )}
          </span>
        ))}
      </button>
    </div>
  );
}

interface Bar {
  readonly x: number;
  readonly width: number;
  readonly words: string;
  readonly room: number;
  readonly fits: boolean;
  readonly shortfall: Lane['shortfalls'][number];
}

/** After the bar, on it, only the number on it, or nothing, by the room there is. */
function shownWords(bar: Bar): string {
  if (bar.fits || bar.width > bar.room) return bar.words;
  return bar.width > 26 ? String(bar.shortfall.quantity) : '';
}

/** Begins with the words that are seen, for those who say them aloud. */
function laneLabel(lane: Lane, seen: string): string {
  const times = lane.shortfalls.length;
  return `${seen} ${lane.name} short${times > 1 ? `, ${times} times` : ''}: open`;
}

/** Pixels from a place to a bar; none on it. */
function away(bar: Bar, atX: number): number {
  return Math.max(0, bar.x - atX, atX - bar.x - bar.width);
}

/** "LK 6 to 24", or "LK 6" where all are of one size. */
function laneWords(lane: Lane): string {
  const quantities = lane.shortfalls.map((one) => one.quantity);
  const [least, most] = [Math.min(...quantities), Math.max(...quantities)];
  return `${lane.component} ${least === most ? most : `${least} to ${most}`}`;
}

function roomOf(words: string, text: number): number {
  return words.length * text * 0.6 + 10;
}
