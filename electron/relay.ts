// Stands between the pages and the core's process. Calls of all pages go to the one core under numbers of
// our own; when the core ends, every open call is answered with that, and the pages stay.
// Both kinds of core process are relayed alike, so that what is tested with one holds for the other.
import type { MessagePortMain } from 'electron';
import { z } from 'zod';
import { refuse } from '../core/answer.ts';
import type { Answer } from '../core/answer.ts';
import type { CoreLink, CoreListener } from './core-link.ts';

const fromPage = z.strictObject({
  id: z.string().max(64),
  name: z.string().max(64),
  input: z.unknown().optional(),
});
const fromCore = z.union([
  z.strictObject({ id: z.int(), answer: z.custom<Answer<unknown>>((value) => typeof value === 'object') }),
  z.strictObject({ push: z.literal('changed'), changeNumber: z.int() }),
]);

export const coreEnded = refuse('core-ended', 'The part of Regang that keeps the book has ended.', {
  hint: 'Maybe start it again: everything acknowledged before is in the book; look whether the last change is.',
});

export interface RelayEvents {
  /** The core ended without being asked to. */
  readonly onCoreEnd: (why: string) => void;
  /** Answers as they pass, for whatever the window shows of them. */
  readonly onAnswer: (name: string, answered: Answer<unknown>) => void;
}

interface OpenCall {
  readonly name: string;
  readonly done: (answered: Answer<unknown>) => void;
}

export class Relay {
  readonly #start: (listener: CoreListener) => CoreLink;
  readonly #events: RelayEvents;
  readonly #open = new Map<number, OpenCall>();
  readonly #ports = new Set<MessagePortMain>();
  #core: CoreLink | null = null;
  #lastId = 0;

  constructor(start: (listener: CoreListener) => CoreLink, events: RelayEvents) {
    this.#start = start;
    this.#events = events;
  }

  startCore(): void {
    if (this.#core !== null) return;
    const link = this.#start({
      onMessage: (message) => this.#takeFromCore(message),
      onEnd: (why) => this.#coreEnded(link, why),
    });
    this.#core = link;
  }

  /** Ends the core with the book closed; calls after that are refused. */
  async stopCore(): Promise<void> {
    const core = this.#core;
    this.#core = null;
    await core?.stop();
  }

  call(name: string, input: unknown): Promise<Answer<unknown>> {
    const core = this.#core;
    if (core === null) return Promise.resolve(coreEnded);
    this.#lastId += 1;
    const id = this.#lastId;
    return new Promise((done) => {
      this.#open.set(id, { name, done });
      core.send({ id, name, input });
    });
  }

  addPage(port: MessagePortMain): void {
    this.#ports.add(port);
    port.on('close', () => this.#ports.delete(port));
    port.on('message', (event) => {
      const message = fromPage.safeParse(event.data);
      if (!message.success) return;
      const { id, name, input } = message.data;
      void this.call(name, input).then((answered) => port.postMessage({ id, answer: answered }));
    });
    port.start();
  }

  push(message: { readonly push: string; readonly changeNumber?: number }): void {
    for (const port of this.#ports) port.postMessage(message);
  }

  #takeFromCore(raw: unknown): void {
    const message = fromCore.parse(raw);
    if ('push' in message) {
      this.push(message);
      return;
    }
    const call = this.#open.get(message.id);
    this.#open.delete(message.id);
    if (call === undefined) return;
    this.#events.onAnswer(call.name, message.answer);
    call.done(message.answer);
  }

  #coreEnded(link: CoreLink, why: string): void {
    const calls = [...this.#open.values()];
    this.#open.clear();
    for (const call of calls) call.done(coreEnded);
    if (this.#core !== link) return;
    this.#core = null;
    this.push({ push: 'core-ended' });
    this.#events.onCoreEnd(why);
  }
}
