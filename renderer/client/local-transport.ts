// The browser's transport: one POST a call to the address the page came from, and a stream of events
// that says when the book changed.
import type { Answer } from '../../core/answer.ts';
import { refuse } from '../../core/answer.ts';
import type { Transport } from './transport.ts';

const notReached = refuse('core-not-reached', 'The local door does not answer.', {
  hint: 'Maybe the program that was started in the terminal has ended: start it again.',
});

export function localTransport(): Transport {
  return {
    door: 'local',
    call: async (name, input) => {
      try {
        const response = await fetch(`/call/${name}`, {
          method: 'POST',
          headers: { 'content-type': 'application/json' },
          body: JSON.stringify(input),
        });
        return (await response.json()) as Answer<unknown>;
      } catch {
        return notReached;
      }
    },
    onChanged: (changed) => {
      const events = new EventSource('/changes');
      events.addEventListener('message', changed);
      events.addEventListener('changed', changed);
      return () => events.close();
    },
  };
}
