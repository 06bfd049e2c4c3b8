// A sheet on screen, as it will lie on the table: on white whatever the theme, with what prints it above.
import type { ReactNode } from 'react';
import { Button } from 'react-aria-components';
import { Link } from 'wouter';
import { useCore } from '../../client/core.tsx';
import { useAddressQuery } from '../../client/query.ts';
import { useJob } from '../../parts/job.tsx';
import { RefusalNote, Waiting } from '../../parts/notes.tsx';
import { printScreen } from '../../parts/printing.ts';
import { sheetAddress, type SheetKind, sheetKinds, sheetName } from '../../parts/sheet-address.ts';
import { useUnits } from '../../parts/units.tsx';
import { Paper } from './paper.tsx';
import { SavePdf } from './save-pdf.tsx';

export function SheetScreen(props: { readonly kind: SheetKind; readonly code: string }): ReactNode {
  const { kind, code } = props;
  const [query] = useAddressQuery();
  const job = useJob();
  const { system } = useUnits();
  const pour = query.get('pour') ?? undefined;
  const asked = { design: code, job: job.code, units: system, ...(pour !== undefined && { pour }) };
  const sheet = useCore(`sheet.${kind}`, asked);
  return (
    <div className="screen sheets">
      <SheetTools kind={kind} code={code} pour={pour} />
      {sheet.error === null ? null : <RefusalNote error={sheet.error} />}
      {sheet.data === undefined ? (
        sheet.error === null ? (
          <Waiting what="Laying out the sheet …" />
        ) : null
      ) : (
        <Paper key={`${kind} ${code}`} sheet={sheet.data} />
      )}
    </div>
  );
}

function SheetTools(props: {
  readonly kind: SheetKind;
  readonly code: string;
  readonly pour: string | undefined;
}): ReactNode {
  const { kind, code, pour } = props;
  return (
    <div className="sheets-tools off-paper">
      <Button className="primary" onPress={printScreen}>
        Print
      </Button>
      <SavePdf />
      <PourChoice code={code} pour={pour} />
      <nav className="sheets-links" aria-label="About this gang">
        {sheetKinds
          .filter((other) => other !== kind)
          .map((other) => (
            <Link key={other} href={sheetAddress(other, code, pour)}>
              {sheetName(other)}
            </Link>
          ))}
        <Link href={`/designs/${encodeURIComponent(code)}`}>Design {code}</Link>
      </nav>
    </div>
  );
}

/** At which of its pours the gang is shown in its wall. */
function PourChoice(props: { readonly code: string; readonly pour: string | undefined }): ReactNode {
  const job = useJob();
  const design = useCore('design.read', { design: props.code });
  const [, change] = useAddressQuery();
  const turns = design.data?.turns.filter((turn) => turn.job === job.code) ?? [];
  const pours = [...new Set(turns.map(({ pour }) => pour))].sort();
  if (pours.length === 0) return null;
  return (
    <label className="sheets-pour">
      Shown at
      <select
        value={props.pour ?? ''}
        onChange={(event) => change({ pour: event.target.value === '' ? null : event.target.value })}
      >
        <option value="">its first pour</option>
        {pours.map((pour) => (
          <option key={pour} value={pour}>
            {pour}
          </option>
        ))}
      </select>
    </label>
  );
}
