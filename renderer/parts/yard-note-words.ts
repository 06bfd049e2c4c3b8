// What the yard changes for a plan, in words, and where its paper is.
import type { z } from 'zod';
import { never } from '../../core/answer.ts';
import type { yardNote } from '../../core/procedures/yard-notes.ts';
import { shortDate, type TimeWords } from './time-words.ts';

export type YardNote = z.output<typeof yardNote>;

/** What takes pieces away from the plan, so that the board tells it over the days. */
export function isTold({ kind }: YardNote): boolean {
  switch (kind) {
    case 'lost':
    case 'to-repair':
    case 'quarantine':
    case 'scrapped':
    case 'other-job':
    case 'dirty':
    case 'late':
    case 'repair-late':
    case 'gear':
      return true;
    case 'due-out':
    case 'promised':
    case 'figure':
    case 'spares':
      return false;
    default:
      return never(kind);
  }
}

/** "4 LK lost at S-3", "6 R8 of D-101 late since 12 Mar". */
export function yardNoteWords(note: YardNote, words: TimeWords): string {
  const pieces = `${note.quantity} ${note.component}`;
  const on = note.since === null ? null : shortDate(words.date(note.since));
  const since = on === null ? '' : ` since ${on}`;
  const number = note.paper?.number ?? null;
  const at = number === null ? since : ` at ${number}`;
  const of = number === null ? '' : ` of ${number}`;
  switch (note.kind) {
    case 'lost':
      return `${pieces} lost${at}`;
    case 'to-repair':
      return `${pieces} to repair${at}`;
    case 'quarantine':
      return `${pieces} set apart${at}`;
    case 'scrapped':
      return `${pieces} scrapped${at}`;
    case 'other-job':
      return `${pieces} at another job${at}`;
    case 'dirty':
      return note.until === null
        ? `${pieces}${of} dirty beyond their time${since}`
        : `${pieces}${of} dirty until ${words.full(note.until)}`;
    case 'late':
      return on === null ? `${pieces}${of} on order without a day` : `${pieces}${of} late${since}`;
    case 'repair-late':
      return `${pieces} late from repair${since}`;
    case 'gear':
      return on === null ? `${pieces} not inspected` : `${pieces} out of date from ${on}`;
    case 'due-out':
      return on === null ? `${pieces}${of} due out without a day` : `${pieces}${of} due out ${on}`;
    case 'promised':
      return note.since === null
        ? `${pieces}${of} promised`
        : `${pieces}${of} promised for ${words.full(note.since)}`;
    case 'figure':
      return figureWords(note);
    case 'spares':
      return `${pieces} kept back as spares`;
    default:
      return never(note.kind);
  }
}

/** "LK from a list of 20 Feb", "R8 counted 20 Feb, which is old". */
export function figureWords({ component, figure }: YardNote): string {
  if (figure === null) return component;
  const how = {
    counted: 'counted',
    estimated: 'estimated',
    'taken-from-list': 'from a list',
  }[figure.basis];
  const date = figure.date === null ? '' : ` ${shortDate(figure.date)}`;
  return `${component} ${how}${date}${figure.old ? ', which is old' : ''}`;
}

/** Where it is looked at: its paper, or the screen on which something can be done about it. */
export function yardNoteAddress({ kind, paper, component }: YardNote): string {
  if (paper !== null) {
    const id = encodeURIComponent(paper.id);
    switch (paper.kind) {
      case 'ticket':
        return `/yard/strip/${id}`;
      case 'count':
        return `/yard/counts/${id}`;
      case 'note':
        return `/yard/papers/${id}`;
      case 'repair':
        return `/yard/condition?show=repairs&line=${id}`;
      default:
        return never(paper.kind);
    }
  }
  if (kind === 'dirty') return '/yard/condition';
  if (kind === 'to-repair') return '/yard/condition?show=repairs';
  if (kind === 'quarantine') return '/yard/condition?show=quarantine';
  if (kind === 'spares') return '/yard/condition?show=rates';
  if (kind === 'gear') return '/yard/gangs?show=gear';
  return `/yard?component=${encodeURIComponent(component)}`;
}
