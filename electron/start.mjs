// The first file of `npm start`, in plain JavaScript: a Node too old for the rest would stop at the first
// type with words that help nobody.
const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
if (major < 22 || (major === 22 && minor < 18)) {
  console.error(
    `Regang needs Node 22.18 or newer; this is ${process.version}. ` +
      'Maybe `npm ci` was not run here: on Linux and Windows (x64) it brings a Node of its own.',
  );
  process.exitCode = 2;
} else {
  await import('./start.ts');
}
