// Written so that even an old Node can read it: the first thing both commands do is say when Node is too old.
var wanted = [20, 19];
var have = process.versions.node.split('.').map(Number);

if (have[0] < wanted[0] || (have[0] === wanted[0] && have[1] < wanted[1])) {
  console.error(
    'Combside needs Node ' +
      wanted.join('.') +
      ' or newer; this is Node ' +
      process.versions.node +
      ' (' +
      process.execPath +
      ').\n' +
      'Install a newer Node from https://nodejs.org or your system, then run the command again.',
  );
  process.exit(1);
}
