// The foot of every screen: how many lines are not yet sent, why, and what can be done about it.
import { type ReactNode, useState } from 'react';
import { never } from '../../../core/answer.ts';
import { addresses } from '../address.ts';
import { linesOnPaper, unsentLines, unsentWords } from '../counting/pending.ts';
import { useKept } from '../kept/state.ts';
import { type Connection, useConnection } from '../sending/connection.ts';
import { sendAll } from '../sending/sender.ts';

export function SendingBar(): ReactNode {
  const { batches, drafts } = useKept();
  const connection = useConnection();
  const [isBusy, setBusy] = useState(false);
  const unsent = unsentLines(batches, drafts);
  const lines = linesOnPaper(batches.filter(({ state }) => state === 'refused'));
  const waits = batches.find(({ state, refusal }) => state === 'waiting' && refusal !== null)?.refusal;
  const send = (): void => {
    setBusy(true);
    void sendAll(true).finally(() => setBusy(false));
  };
  return (
    <footer className="sending-bar">
      {lines === 0 ? null : (
        <a className="refused-link" href={addresses.unsent}>
          {lines} {lines === 1 ? 'line was' : 'lines were'} refused: look at {lines === 1 ? 'it' : 'them'}
        </a>
      )}
      <div className="sending-row">
        <output className="sending-words">
          <strong>{unsentWords(unsent)}.</strong> {connectionWords(connection, unsent)} {waits?.message ?? ''}
        </output>
        {connection === 'signed-out' ? (
          <a className="button" href={addresses.signIn}>
            Enter a code
          </a>
        ) : unsent > 0 ? (
          <button type="button" className="primary" onClick={send} disabled={isBusy}>
            {isBusy ? 'Sending …' : 'Send now'}
          </button>
        ) : null}
      </div>
    </footer>
  );
}

function connectionWords(connection: Connection, unsent: number): string {
  switch (connection) {
    case 'unknown':
    case 'there':
      return unsent === 0 ? '' : 'Kept on this phone.';
    case 'none':
      return `No connection${unsent === 0 ? '' : ': kept on this phone'}.`;
    case 'signed-out':
      return `This phone is signed out${unsent === 0 ? '' : ': all of it stays here'}.`;
    default:
      return never(connection);
  }
}
