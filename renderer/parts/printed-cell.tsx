// Only on paper: when it was printed, in the title block, and the same with job and name at the foot of every
// page, where style/print.css takes it from.
import { type ReactNode, useLayoutEffect } from 'react';
import { useCore } from '../client/core.tsx';
import type { Job } from './job.tsx';
import { usePrintedAt } from './printing.ts';
import { timeWords } from './time-words.ts';

export function PrintedWhen(props: {
  readonly job: Job | null;
  readonly screen: string;
  readonly who: string;
}): ReactNode {
  const { job, screen, who } = props;
  const at = usePrintedAt();
  const board = useCore('board.read', { job: job?.code ?? '' }, { enabled: job !== null });
  const zone = board.data?.job.timeZone ?? zoneHere();
  const when = at === null ? '' : whenWords(at, zone);
  const words = [
    ...(job === null ? [] : [`${job.code} ${job.name}`]),
    screen,
    `printed ${when} by ${who}`,
    'planning aid only',
  ].join(' · ');
  useLayoutEffect(() => {
    const { style } = document.documentElement;
    if (at === null) style.removeProperty('--paper-words');
    // A CSS string ends at a quote and at a line; neither is of use at the foot of a page.
    else style.setProperty('--paper-words', `"${words.replaceAll(/["\\\n\r\f]/gu, ' ')}"`);
  }, [at, words]);
  return when;
}

/** Where there is no job whose clock it could be. */
function zoneHere(): string {
  return Intl.DateTimeFormat().resolvedOptions().timeZone;
}

/** "Wed 11 Mar 2026 07:00" */
function whenWords(at: string, zone: string): string {
  const words = timeWords(zone);
  return `${words.day(at)} ${words.date(at).slice(0, 4)} ${words.time(at)}`;
}
