// What becomes of the page and of what is on it without a connection, said as it is on this address.
import type { ReactNode } from 'react';
import { canOpenOffline } from '../sending/open-offline.ts';

export function OfflineWords(): ReactNode {
  return (
    <p className="soft">
      What you enter is kept on this phone at once, also when it locks, closes or loses the connection, and is
      sent when the connection is back.{' '}
      {canOpenOffline
        ? 'This page opens without a connection too.'
        : 'Without a connection this page cannot be opened anew at this address: leave it open, or open it again when the connection is back; nothing is lost by that.'}{' '}
      Do not use a private window: it forgets what is kept when it is closed.
    </p>
  );
}
