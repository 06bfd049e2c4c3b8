// Where the page on a phone begins: what is kept on it first, then the screens, then the sending.
import { createRoot } from 'react-dom/client';
import '../style/tokens.css';
import '../style/base.css';
import './phone.css';
import './line-sheet.css';
import { renew } from './kept/state.ts';
import { PhoneApp } from './phone-app.tsx';
import { NothingKept } from './screens/nothing-kept.tsx';
import { keepSending } from './sending/keep-sending.ts';
import { openOffline } from './sending/open-offline.ts';

const element = document.querySelector('#root');
if (element === null) throw new Error('The page has no #root.');
const root = createRoot(element);

try {
  await renew();
  root.render(<PhoneApp />);
  keepSending();
  openOffline();
} catch (error) {
  root.render(<NothingKept why={String(error)} />);
}
