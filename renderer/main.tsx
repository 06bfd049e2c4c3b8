// Where the page begins.
import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';
import { localTransport } from './client/local-transport.ts';
import { portTransport } from './client/port-transport.ts';
import { chooseTransport } from './client/transport.ts';
import { watchPrinting } from './parts/printing.ts';
import './style/tokens.css';
import './style/base.css';
import './style/shell.css';
import './style/table.css';
import './style/widgets.css';
// Last, so that it has the last word on paper.
import './style/print.css';

const root = document.querySelector('#root');
if (root === null) throw new Error('The page has no #root.');
const transport = chooseTransport(
  () => portTransport(window),
  () => localTransport(),
);
watchPrinting();
createRoot(root).render(<App transport={transport} />);
