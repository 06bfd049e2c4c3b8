// To the newer and the older page of the ledger.
import type { ReactNode } from 'react';
import type { MovementPage } from './use-movements.ts';

/** Shown only where there is more than one page. */
export function PageButtons(props: { readonly page: MovementPage }): ReactNode {
  const { newer, older } = props.page;
  if (newer === null && older === null) return null;
  return (
    <span className="page-buttons">
      <button type="button" disabled={newer === null} onClick={() => newer?.()}>
        Newer
      </button>
      <button type="button" disabled={older === null} onClick={() => older?.()}>
        Older
      </button>
    </span>
  );
}
