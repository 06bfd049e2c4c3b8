// What was refused, with the reason, and the late finds: nothing of it is lost, and what becomes of it is for a person
// to say.
import { type ReactNode, useState } from 'react';
import { conditionWords } from '../../screens/yard/yard-words.ts';
import { addresses } from '../address.ts';
import { otherTickets } from '../counting/other-tickets.ts';
import { linesOnPaper, linesWords } from '../counting/pending.ts';
import { takeBack, throwAway, turnBatch } from '../kept/entries.ts';
import type { Batch, Paper } from '../kept/kept.ts';
import { useKept } from '../kept/state.ts';
import { askWork, sendAll } from '../sending/sender.ts';
import { useEvery } from '../sending/use-every.ts';
import { Head } from './head.tsx';
import { Refusal } from './refusal.tsx';

const everyMs = 10_000;

export function Unsent(): ReactNode {
  const { batches } = useKept();
  useEvery(askWork, everyMs);
  const refused = batches.filter(({ state }) => state === 'refused');
  const late = batches.filter(({ state }) => state === 'late');
  return (
    <main className="phone-screen">
      <Head title="Refused, and late finds" back={{ to: addresses.work, words: 'To count' }} />
      <h2>Refused</h2>
      {refused.length === 0 ? <p className="soft">Nothing on this phone was refused.</p> : null}
      {refused.map((batch) => (
        <BatchCard key={batch.id} batch={batch} />
      ))}
      <h2>Late finds</h2>
      {late.length === 0 ? (
        <p className="soft">What was counted after a ticket was booked can be kept here.</p>
      ) : null}
      {late.map((batch) => (
        <BatchCard key={batch.id} batch={batch} />
      ))}
    </main>
  );
}

function BatchCard({ batch }: { readonly batch: Batch }): ReactNode {
  const { id, paper, lines, state, refusal } = batch;
  const kept = useKept();
  const count = linesWords(linesOnPaper([batch]));
  const [isSure, setSure] = useState(false);
  const others = otherTickets(kept, batch);
  const take = async (on: Paper): Promise<void> => {
    await takeBack(id, on);
    location.hash = addresses.paper(on.key);
  };
  const open = (on: Paper): void => void take(on);
  return (
    <section className="batch-card" aria-label={`${count} of ${paper.name}`}>
      <h3>
        {paper.name}: {count}
      </h3>
      {refusal === null ? null : <Refusal refusal={refusal} />}
      <ul>
        {lines.map((line) => (
          <li key={JSON.stringify([line.group, line.component, line.owner, line.condition, line.extra])}>
            {line.quantity} {line.component} {conditionWords[line.condition]}
            {line.extra ? ', extra' : ''} ({line.group})
          </li>
        ))}
      </ul>
      <div className="sheet-actions">
        {others.map((other) => (
          <button key={other.key} type="button" className="primary" onClick={() => open(other)}>
            Count them on {other.name}
          </button>
        ))}
        {state === 'refused' ? (
          <>
            <button type="button" onClick={() => open(paper)}>
              Change them
            </button>
            <button
              type="button"
              onClick={() => void turnBatch(id, ['refused'], 'waiting').then(() => sendAll(true))}
            >
              Send again as they are
            </button>
            {paper.kind === 'ticket' ? (
              <button type="button" onClick={() => void turnBatch(id, ['refused'], 'late')}>
                Keep as late finds
              </button>
            ) : null}
          </>
        ) : null}
        {isSure ? (
          <>
            <button type="button" onClick={() => void throwAway(id)}>
              Yes, throw {lines.length === 1 ? 'it' : 'them'} away
            </button>
            <button type="button" onClick={() => setSure(false)}>
              No, keep {lines.length === 1 ? 'it' : 'them'}
            </button>
          </>
        ) : (
          <button type="button" onClick={() => setSure(true)}>
            Throw away …
          </button>
        )}
      </div>
      {state === 'late' && others.length === 0 ? (
        <p className="soft">
          They wait for a second ticket: it is made where the app is open, on {paper.name}, and then stands
          here.
        </p>
      ) : null}
    </section>
  );
}
