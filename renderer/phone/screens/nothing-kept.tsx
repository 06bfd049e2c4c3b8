// Where the phone lets the page keep nothing, nothing can be counted on it: said before anything is entered.
import type { ReactNode } from 'react';

export function NothingKept(props: { readonly why: string }): ReactNode {
  return (
    <main className="phone-screen">
      <h1>Counting is not possible here</h1>
      <p>
        This phone does not let the page keep what is entered, so that a lost connection would lose it. Maybe
        this is a private window: open the page in a usual one.
      </p>
      <p className="soft">{props.why}</p>
    </main>
  );
}
