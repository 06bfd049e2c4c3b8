// Between which times each activity can begin, if all is to end by a given time. Rules of reasoning narrow these windows; an
// empty one proves that the time cannot be kept.
import type { Network } from './network.ts';

export interface Windows {
  readonly earliest: Float64Array;
  /** Latest start. */
  readonly latest: Float64Array;
}

/** What is known of the windows: narrowed further, as they were, or proved impossible. */
export type Narrowed = 'yes' | 'no' | 'impossible';

/** How much reasoning is left: counted, not timed, so that the same question has the same answer. */
export interface Effort {
  left: number;
}

export function windowsBy({ count, duration }: Network, end: number): Windows {
  return {
    earliest: new Float64Array(count),
    latest: Float64Array.from(duration, (lasts) => end - lasts),
  };
}

/** Each begins after all before it have ended. */
export function byOrder(network: Network, { earliest, latest }: Windows): Narrowed {
  const { order, duration, before, after } = network;
  let narrowed: Narrowed = 'no';
  for (let position = 0; position < order.length; position += 1) {
    const activity = order[position] ?? 0;
    const end = before.from[activity + 1] ?? 0;
    for (let row = before.from[activity] ?? 0; row < end; row += 1) {
      const first = before.of[row] ?? 0;
      const from = (earliest[first] ?? 0) + (duration[first] ?? 0);
      if (from <= (earliest[activity] ?? 0)) continue;
      earliest[activity] = from;
      narrowed = 'yes';
    }
    if ((earliest[activity] ?? 0) > (latest[activity] ?? 0)) return 'impossible';
  }
  for (let position = order.length - 1; position >= 0; position -= 1) {
    const activity = order[position] ?? 0;
    const end = after.from[activity + 1] ?? 0;
    for (let row = after.from[activity] ?? 0; row < end; row += 1) {
      const until = (latest[after.of[row] ?? 0] ?? 0) - (duration[activity] ?? 0);
      if (until >= (latest[activity] ?? 0)) continue;
      latest[activity] = until;
      narrowed = 'yes';
    }
    if ((earliest[activity] ?? 0) > (latest[activity] ?? 0)) return 'impossible';
  }
  return narrowed;
}
