// Sends what is kept on the phone, oldest first, whenever the door can be reached. A batch goes with its id until the
// door has said what became of it: sent again, be it by another tab or a day later, it is entered once.
import { never } from '../../../core/answer.ts';
import { keepPaper, keepWork, sealDrafts, settle } from '../kept/entries.ts';
import type { Batch, CountRow, KeptPaper, Paper, ReadCount, ReadTicket, TicketRow } from '../kept/kept.ts';
import { keptNow } from '../kept/state.ts';
import { type Connection, setConnection } from './connection.ts';
import { callDoor, type Outcome } from './door.ts';

/** A draft that was left alone for so long is sent by itself. */
const quietMs = 20_000;

/** The door or its book is not as it should be: that says nothing of what was counted, which waits. */
const passing: ReadonlySet<string> = new Set([
  'bug',
  'no-book',
  'file-failed',
  'book-read-only',
  'other-job',
]);

let underWay: Promise<void> | null = null;

/** @param demanded by a person: what was tapped just now goes too */
export async function sendAll(demanded: boolean): Promise<void> {
  if (demanded) await underWay;
  underWay ??= inOneTab(() => send(demanded)).finally(() => {
    underWay = null;
  });
  return underWay;
}

/** Locks are there only on some addresses; the ids see to it everywhere. */
async function inOneTab(work: () => Promise<void>): Promise<void> {
  const locks = (navigator as { readonly locks?: LockManager }).locks;
  if (locks === undefined) await work();
  else await locks.request('regang-count-send', work);
}

async function send(demanded: boolean): Promise<void> {
  const hello = await callDoor<{ readonly job: string }>('phone.hello', {});
  setConnection(connectionOf(hello));
  if (hello.came !== 'answered') return;
  await sealDrafts(Date.now() - (demanded ? 0 : quietMs));
  const waiting = keptNow()
    .batches.filter(({ state }) => state === 'waiting')
    .sort((one, other) => one.at.localeCompare(other.at));
  for (const batch of waiting) {
    const outcome = await sendBatch(batch);
    if (outcome.came === 'answered' || outcome.came === 'refused') await settleBy(batch, outcome);
    else {
      setConnection(connectionOf(outcome));
      return;
    }
  }
  const papers = new Map(
    keptNow()
      .batches.filter(({ state }) => state === 'done')
      .map(({ paper }) => [paper.key, paper]),
  );
  for (const paper of papers.values()) await readPaper(paper);
}

function connectionOf(outcome: Outcome<unknown>): Connection {
  switch (outcome.came) {
    case 'answered':
    case 'refused':
      return 'there';
    case 'signed-out':
      return 'signed-out';
    case 'unreachable':
      return 'none';
    default:
      return never(outcome);
  }
}

function sendBatch({ id, paper, lines, at }: Batch): Promise<Outcome<unknown>> {
  const sent = { id, at, sentAt: new Date().toISOString() };
  if (paper.kind === 'ticket')
    return callDoor('ticket.enter', {
      ...sent,
      ticket: paper.id,
      lines: lines.map(({ group, component, condition, quantity, extra }) => ({
        part: group,
        component,
        condition,
        quantity,
        ...(extra && { extra }),
      })),
    });
  return callDoor('count.enter', {
    ...sent,
    count: paper.id,
    counter: paper.counter,
    lines: lines.map(({ group, component, owner, condition, quantity }) => ({
      location: group,
      component,
      owner,
      condition,
      quantity,
    })),
  });
}

async function settleBy(
  batch: Batch,
  outcome: Extract<Outcome<unknown>, { came: 'answered' | 'refused' }>,
): Promise<void> {
  if (outcome.came === 'answered') return settle(batch.id, 'done', null);
  const { refusal } = outcome;
  return settle(batch.id, passing.has(refusal.code) ? 'waiting' : 'refused', refusal);
}

/** What had come in before the question is in the answer, and is kept no longer. */
export async function readPaper(paper: Paper): Promise<Outcome<unknown>> {
  const done = keptNow()
    .batches.filter((batch) => batch.paper.key === paper.key && batch.state === 'done')
    .map(({ id }) => id);
  const { key, kind, id, counter } = paper;
  if (kind === 'ticket') {
    const outcome = await callDoor<ReadTicket>('ticket.read', { ticket: id });
    if (outcome.came === 'answered') {
      const read = outcome.value;
      await keepPaper({ key, kind, id, counter, name: read.ticket.name, read } satisfies KeptPaper, done);
    }
    setConnection(connectionOf(outcome));
    return outcome;
  }
  const outcome = await callDoor<ReadCount>('count.read', { count: id, counter });
  if (outcome.came === 'answered') {
    const read = outcome.value;
    await keepPaper({ key, kind, id, counter, name: read.count.name, read } satisfies KeptPaper, done);
  }
  setConnection(connectionOf(outcome));
  return outcome;
}

/** As a screen asks for it, which waits for nothing. */
export function askWork(): void {
  void readWork();
}

export async function readWork(): Promise<void> {
  const [hello, tickets, counts] = await Promise.all([
    callDoor<{ readonly job: string }>('phone.hello', {}),
    callDoor<{ readonly tickets: readonly TicketRow[] }>('ticket.list', {}),
    callDoor<{ readonly counts: readonly CountRow[] }>('count.list', {}),
  ]);
  setConnection(connectionOf(hello));
  if (hello.came !== 'answered' || tickets.came !== 'answered' || counts.came !== 'answered') return;
  await keepWork({
    job: hello.value.job,
    tickets: tickets.value.tickets,
    counts: counts.value.counts.filter(({ state }) => state === 'open'),
  });
}
