// The sheet itself: its tree as elements, on white, with the words at the foot of every page.
import { type ReactNode, useLayoutEffect, useMemo } from 'react';
import { cssString, footWords } from '../../../core/sheets/html.ts';
import { withPrinted } from '../../../core/sheets/node.ts';
import { type Output, useHostState } from '../../client/core.tsx';
import { useTimeWords } from '../../parts/job-time.ts';
import { usePrintedAt } from '../../parts/printing.ts';
import { sheetElement } from './sheet-elements.ts';
import '../../../core/sheets/sheet.css';
import '../../../core/sheets/lists.css';
import '../../../core/sheets/drawing.css';
import '../../../core/sheets/tags.css';
import '../../../core/sheets/week.css';
import './sheets.css';

/** The tree, with the time of printing filled in at the moment of printing. */
export function Paper(props: { readonly sheet: Output<'sheet.assembly'> }): ReactNode {
  const { sheet } = props;
  const at = usePrintedAt();
  const words = useTimeWords();
  const who = useHostState().data?.who ?? '';
  const printed =
    at === null
      ? 'when it is printed'
      : `${words.day(at)} ${words.date(at).slice(0, 4)} ${words.time(at)} by ${who}`;
  const foot = footWords(sheet, printed);
  useLayoutEffect(() => {
    const { style } = document.documentElement;
    style.setProperty('--sheet-words', cssString(foot));
    return () => void style.removeProperty('--sheet-words');
  }, [foot]);
  const tree = useMemo(() => sheetElement(withPrinted(sheet.tree, printed)), [sheet, printed]);
  return (
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- it scrolls, so keys must reach it
    <section className="sheets-table" aria-label={sheet.title} tabIndex={0}>
      {tree}
    </section>
  );
}
