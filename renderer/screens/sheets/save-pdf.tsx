// On the desktop a sheet is also saved as a PDF, to a file that a native dialog asks for. In a browser the print
// dialog does that.
import { type ReactNode, useState } from 'react';
import { Button } from 'react-aria-components';

export function SavePdf(): ReactNode {
  const save = window.regang?.savePdf;
  const [said, setSaid] = useState('');
  if (save === undefined) return null;
  const run = async (): Promise<void> => {
    const saved = await save();
    if (saved !== null) setSaid('error' in saved ? saved.error : `Saved as ${saved.file}`);
  };
  return (
    <>
      <Button onPress={() => void run()}>Save as PDF…</Button>
      <output className="sheets-said">{said}</output>
    </>
  );
}
