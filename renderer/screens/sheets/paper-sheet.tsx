// A sheet of the yard on screen: a ticket, a count, a list, a note, tags.
import type { ReactNode } from 'react';
import { Button } from 'react-aria-components';
import { Link } from 'wouter';
import { useCore } from '../../client/core.tsx';
import { RefusalNote, Waiting } from '../../parts/notes.tsx';
import { type PaperSheetKind, paperSheets } from '../../parts/paper-sheets.ts';
import { printScreen } from '../../parts/printing.ts';
import { useUnits } from '../../parts/units.tsx';
import { DaysSheet } from './days-sheet.tsx';
import { Paper } from './paper.tsx';
import { SavePdf } from './save-pdf.tsx';

export function PaperSheetScreen(props: { readonly kind: PaperSheetKind; readonly id: string }): ReactNode {
  const { kind, id } = props;
  return kind === 'week' || kind === 'day' ? (
    // Not the sheet of another day while this one is laid out.
    <DaysSheet key={`${kind} ${id}`} kind={kind} id={id} />
  ) : (
    <OnePaper kind={kind} id={id} />
  );
}

function OnePaper(props: {
  readonly kind: Exclude<PaperSheetKind, 'week' | 'day'>;
  readonly id: string;
}): ReactNode {
  const { kind, id } = props;
  const { system } = useUnits();
  const sheet = useCore(`sheet.${kind}`, { id, units: system });
  const { back, backName } = paperSheets[kind];
  return (
    <div className="screen sheets">
      <div className="sheets-tools off-paper">
        <Button className="primary" onPress={printScreen}>
          Print
        </Button>
        <SavePdf />
        <nav className="sheets-links" aria-label="From here">
          <Link href={back}>{backName}</Link>
        </nav>
      </div>
      {sheet.error === null ? null : <RefusalNote error={sheet.error} />}
      {sheet.data === undefined ? (
        sheet.error === null ? (
          <Waiting what="Laying out the sheet …" />
        ) : null
      ) : (
        <Paper key={`${kind} ${id}`} sheet={sheet.data} />
      )}
    </div>
  );
}
