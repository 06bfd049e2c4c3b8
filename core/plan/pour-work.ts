// The work that a pour itself brings, whatever gangs serve it: set, close, pour, strip, and the moment in
// between at which its strength is forecast to be met.
import { closingSide, type PourTimes } from './pour-times.ts';
import type { Pour } from './pours.ts';
import type { Work } from './steps.ts';
import type { PourTurn } from './turns-from-pours.ts';

export function pourWork(pour: Pour, times: PourTimes, turns: readonly PourTurn[]): Work[] {
  const own = turns.filter((turn) => turn.pour === pour.code);
  const closing = closingSide(times);
  const of = (kind: Work['kind'], from: number, to: number, some: readonly PourTurn[]): Work => ({
    kind,
    from,
    to,
    pour: pour.code,
    toPour: null,
    designs: some.map((turn) => turn.design),
    turns: some.map((turn) => turn.id),
  });
  const setting = times.sides.map(({ side, setFrom, setTo }) =>
    of(
      pour.order === 'face-first' && side === closing ? 'close' : 'set',
      setFrom,
      setTo,
      own.filter((turn) => turn.side === side),
    ),
  );
  return [
    ...setting,
    of('pour', times.finish, times.finish, own),
    of('ready', times.ready, times.ready, own),
    of('strip', times.stripFrom, times.stripTo, own),
  ];
}
