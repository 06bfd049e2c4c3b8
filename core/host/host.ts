// One way in for every call of a door. Calls about the book's file go one after another and all others
// wait for them; after whatever changed the book, the windows are told.
import { answer, never, refuse } from '../answer.ts';
import type { Answer } from '../answer.ts';
import { procedures as allProcedures } from '../procedures/all.ts';
import { badInput } from './bad-input.ts';
import { BookSession } from './book-session.ts';
import type { SessionOptions } from './book-session.ts';
import { bookCalls } from './host-calls.ts';
import type { BookCallName } from './host-calls.ts';
import { type ImproveCallName, improveCalls } from './improve-calls.ts';
import { Improving } from './improving.ts';
import { phoneCalls } from './phone-calls.ts';
import type { PhoneCallName } from './phone-calls.ts';
import { PhoneDoors } from './phone-doors.ts';
import { planAhead } from './plan-ahead.ts';
import { route } from './router.ts';
import type { Routing } from './router.ts';

export interface HostOptions extends SessionOptions {
  readonly checkOutput: boolean;
  /** Others than the app's own: for tests. */
  readonly procedures?: Routing['procedures'];
  /** The folder of the phone's page. */
  readonly phonePages?: string;
  /** A clock that only goes forward, in milliseconds: for tests. */
  readonly elapsedMs?: () => number;
}

export interface Host {
  /** Never rejects. `who` stands beside what is entered where it is another than the one at this machine. */
  readonly call: (name: string, input: unknown, who?: string) => Promise<Answer<unknown>>;
  /** Told after every command and after another book was opened. Answers how to stop listening. */
  readonly onChanged: (listener: (changeNumber: number) => void) => () => void;
  /** With a copy of the book kept, as once an hour. */
  readonly close: () => Promise<void>;
}

const backUpEveryMs = 3_600_000;

export function createHost(options: HostOptions): Host {
  const session = new BookSession(options);
  const listeners = new Set<(changeNumber: number) => void>();
  const procedures: Routing['procedures'] = options.procedures ?? allProcedures;
  const routing: Routing = { ...options, procedures, book: () => session.book() };
  const underWay = new Set<Promise<unknown>>();
  let turn: Promise<unknown> = Promise.resolve();

  async function tellChanged(): Promise<void> {
    try {
      const changeNumber = (await session.book()?.read((reader) => reader.changeNumber())) ?? 0;
      for (const listener of listeners) listener(changeNumber);
    } catch (error) {
      options.log(`the windows could not be told of a change: ${String(error)}`);
    }
  }

  function inTurn(work: () => Promise<Answer<unknown>>): Promise<Answer<unknown>> {
    // What is still being asked of the open book is answered before its file is closed.
    const done = turn
      .then(async () => Promise.allSettled(underWay))
      .then(work)
      .catch((error: unknown) => fileFailed(error, options.log));
    turn = done;
    return done;
  }

  const backingUp = setInterval(() => {
    void inTurn(async () => answer(await session.backUp()));
  }, backUpEveryMs);
  backingUp.unref();

  async function call(name: string, input: unknown, who?: string): Promise<Answer<unknown>> {
    // Only looks, and so does not wait for a long query that is under way.
    if (name === 'host.state') return turn.then(async () => callSession(session, name, input));
    if (isPhoneCall(name)) return phones.call(name, input);
    if (isImproveCall(name)) return turn.then(async () => improving.call(name, input));
    if (isBookCall(name)) {
      const before = session.book();
      const answered = await inTurn(() => callSession(session, name, input));
      if (session.book() === before) return answered;
      // It was opened for a job of the book that is closed now.
      await phones.close();
      await improving.close();
      await tellChanged();
      return answered;
    }
    await turn;
    const asked: Routing =
      who === undefined ? routing : { ...routing, context: () => ({ ...routing.context(), who }) };
    const routed = planAhead(session.book(), name, input)
      .catch((error: unknown) => options.log(`no plan was made beside: ${String(error)}`))
      .then(async () => route(asked, name, input));
    underWay.add(routed);
    const answered = await routed.finally(() => underWay.delete(routed));
    if (answered.ok && procedures[name]?.kind === 'command') await tellChanged();
    return answered;
  }

  const phones = new PhoneDoors({
    call,
    pages: options.phonePages ?? '',
    now: () => options.context().at,
    elapsedMs: options.elapsedMs ?? (() => performance.now()),
    book: () => session.book(),
  });

  const improving = new Improving({
    book: () => session.book(),
    now: () => options.context().at,
    elapsedMs: options.elapsedMs ?? (() => performance.now()),
  });

  return {
    call,
    onChanged: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    close: async () => {
      clearInterval(backingUp);
      await phones.close();
      await improving.close();
      await inTurn(async () => answer(await session.close()));
    },
  };
}

async function callSession(
  session: BookSession,
  name: BookCallName,
  input: unknown,
): Promise<Answer<unknown>> {
  const parsed = bookCalls[name].input.safeParse(input);
  if (!parsed.success) return badInput(parsed.error, input);
  const file = 'file' in parsed.data ? parsed.data.file : '';
  switch (name) {
    case 'host.state':
      return answer(session.state());
    case 'host.demo':
      return session.demo();
    case 'host.create':
      return session.create(file);
    case 'host.open':
      return session.open(file);
    case 'host.copy':
      return session.copy(file);
    default:
      return never(name);
  }
}

function fileFailed(error: unknown, log: (line: string) => void): Answer<never> {
  log(`the file of the book: ${String(error)}`);
  return refuse('file-failed', error instanceof Error ? error.message : String(error), {
    hint: 'Maybe the folder cannot be written to, or the disk is full.',
  });
}

function isBookCall(name: string): name is BookCallName {
  return Object.hasOwn(bookCalls, name);
}

function isPhoneCall(name: string): name is PhoneCallName {
  return Object.hasOwn(phoneCalls, name);
}

function isImproveCall(name: string): name is ImproveCallName {
  return Object.hasOwn(improveCalls, name);
}
