// What can be done with a design: change it, make another from it, pick it, print it, take it out.
import { type ReactNode, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { wordsOf } from '../../client/refused.ts';
import { sheetAddress } from '../../parts/sheet-address.ts';
import type { DesignDetail } from './design-shapes.ts';
import { Confirm } from './edit/confirm.tsx';
import { useTakeOut } from './edit/use-save.ts';

export function DesignTools(props: { readonly design: DesignDetail }): ReactNode {
  const { summary, revisions } = props.design;
  const { code } = summary;
  const at = encodeURIComponent(code);
  const [, go] = useLocation();
  const [asking, setAsking] = useState(false);
  const { busy, error, takeOut } = useTakeOut();
  const confirmed = async (): Promise<void> => {
    if (await takeOut(code)) go('/designs');
  };
  return (
    <nav className="design-tools" aria-label={`Design ${code}`}>
      <Link className="button primary" href={`/designs/${at}/edit`}>
        Edit
      </Link>
      <Link href={`/designs/new?copy=${at}`}>Copy</Link>
      {summary.hand === 'symmetrical' ? null : <Link href={`/designs/new?mirror=${at}`}>Mirror</Link>}
      <Link href={`/designs/${at}/revisions`}>
        {revisions} saved state{revisions === 1 ? '' : 's'}
      </Link>
      <Link href={`/designs/${at}/pick`}>Pick</Link>
      <Link href={sheetAddress('assembly', code)}>Assembly sheet</Link>
      <Link href={sheetAddress('pick', code)}>Pick sheet</Link>
      <button type="button" className="quiet" onClick={() => setAsking(true)}>
        Take out …
      </button>
      {asking ? (
        <Confirm
          title={`Take ${code} out?`}
          words={
            error === null ? (
              <p>
                {code} {summary.name} leaves the list of designs. What was saved of it stays in the book.
              </p>
            ) : (
              <p role="alert" className="field-error">
                {wordsOf(error).message} {wordsOf(error).hint}
              </p>
            )
          }
          action="Take out"
          stay="Keep it"
          busy={busy}
          onAction={() => void confirmed()}
          onStay={() => setAsking(false)}
        />
      ) : null}
    </nav>
  );
}
