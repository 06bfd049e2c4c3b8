// What the desktop prints for `npm start` to read: lines that nobody would print by chance.
export const readyLine = 'regang-desktop: the window is there';
export const alreadyOpenLine = 'regang-desktop: already open';
