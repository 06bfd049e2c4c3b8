// Opens and closes the phone door when the app asks for it: one at a time, for one job of the open book, on an address
// of this machine. It never opens by itself.
import { answer, never, refuse, type Answer } from '../answer.ts';
import { badInput } from './bad-input.ts';
import type { CallCore } from './phone-asks.ts';
import { networkAddresses } from './network-addresses.ts';
import { phoneCalls, usualPhonePort } from './phone-calls.ts';
import type { PhoneCallName, PhoneState } from './phone-calls.ts';
import { openPhoneDoor } from './phone-door.ts';
import type { PhoneDoor } from './phone-door.ts';
import type { BookReader } from '../book/book.ts';

export interface PhoneDoorsOptions {
  readonly call: CallCore;
  readonly pages: string;
  readonly now: () => string;
  readonly elapsedMs: () => number;
  /** Null while no book is open. */
  readonly book: () => {
    readonly readOnly: boolean;
    readonly read: <T>(asked: (reader: BookReader) => Promise<T>) => Promise<T>;
  } | null;
}

interface Opened {
  readonly door: PhoneDoor;
  readonly address: string;
  readonly job: string;
  readonly openedAt: string;
}

export class PhoneDoors {
  readonly #options: PhoneDoorsOptions;
  #opened: Opened | null = null;
  #turn: Promise<unknown> = Promise.resolve();

  constructor(options: PhoneDoorsOptions) {
    this.#options = options;
  }

  /** One after another, so that no door opens while one closes. */
  call(name: PhoneCallName, input: unknown): Promise<Answer<PhoneState>> {
    const done = this.#turn.then(() => this.#run(name, input));
    this.#turn = done.catch(() => undefined);
    return done;
  }

  async close(): Promise<void> {
    await this.call('phone.close', {});
  }

  async #run(name: PhoneCallName, input: unknown): Promise<Answer<PhoneState>> {
    const parsed = phoneCalls[name].input.safeParse(input);
    if (!parsed.success) return badInput(parsed.error, input);
    const opened = this.#opened;
    switch (name) {
      case 'phone.state':
        return answer(this.#state());
      case 'phone.open':
        return this.#open(phoneCalls[name].input.parse(input));
      case 'phone.code':
        if (opened === null) return closed;
        opened.door.code.renew();
        return answer(this.#state());
      case 'phone.end': {
        const { session } = phoneCalls[name].input.parse(input);
        if (opened === null) return closed;
        return opened.door.sessions.end(session)
          ? answer(this.#state())
          : refuse('no-such-phone', 'That phone is not signed in any more.', { field: 'session' });
      }
      case 'phone.close':
        this.#opened = null;
        await opened?.door.close();
        return answer(this.#state());
      default:
        return never(name);
    }
  }

  async #open(asked: {
    readonly address: string;
    readonly job: string;
    readonly port?: number | undefined;
  }): Promise<Answer<PhoneState>> {
    const { address, job, port = usualPhonePort } = asked;
    const objected = await this.#objection(address, job);
    if (!objected.ok) return objected;
    const { call, pages, now, elapsedMs } = this.#options;
    try {
      const door = await openPhoneDoor({ call, pages, address, port, job, now, elapsedMs });
      this.#opened = { door, address, job, openedAt: now() };
      return answer(this.#state());
    } catch (error) {
      return notOpened(error, address, port);
    }
  }

  async #objection(address: string, job: string): Promise<Answer<null>> {
    if (this.#opened !== null)
      return refuse('phone-door-open', `The phone door is open already, at ${this.#opened.door.url}.`, {
        hint: 'Maybe close it first.',
      });
    const book = this.#options.book();
    if (book === null) return refuse('no-book', 'No book is open.');
    if (book.readOnly)
      return refuse('read-only', 'This book is open for reading only: nothing counted could be entered.', {
        hint: 'Maybe it is open in another window of the app.',
      });
    if (!networkAddresses().some((own) => own.address === address))
      return refuse('no-such-address', `${address} is not an address of this machine.`, {
        field: 'address',
        hint: 'Maybe the network has changed: choose again.',
      });
    const jobs = await book.read((reader) => reader.jobs());
    return jobs.some(({ code }) => code === job)
      ? answer(null)
      : refuse('unknown-job', `There is no job ${job} in this book.`, { field: 'job' });
  }

  #state(): PhoneState {
    const opened = this.#opened;
    return {
      addresses: [...networkAddresses()],
      usualPort: usualPhonePort,
      door:
        opened === null
          ? null
          : {
              url: opened.door.url,
              address: opened.address,
              port: opened.door.port,
              job: opened.job,
              openedAt: opened.openedAt,
              code: opened.door.code.state(),
              sessions: opened.door.sessions.list().map((session) => ({ ...session })),
            },
    };
  }
}

const closed = refuse('phone-door-closed', 'The phone door is closed.', { hint: 'Maybe open it first.' });

function notOpened(error: unknown, address: string, port: number): Answer<never> {
  const why = error instanceof Error && 'code' in error ? error.code : null;
  if (why === 'EADDRINUSE')
    return refuse('port-taken', `Port ${port} of ${address} is taken by another program.`, {
      field: 'port',
      hint: 'Maybe another window of the app has its phone door open.',
    });
  return refuse('phone-door-failed', `The phone door could not be opened at ${address}: ${String(error)}`, {
    field: 'address',
    hint: 'Maybe the network has changed: choose again.',
  });
}
