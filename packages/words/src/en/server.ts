/** What the server says in the terminal it was started from. */
export const server = {
  'server.open': 'Combside is open at {address}',
  'server.port-taken': 'Port {asked} is taken by another program; port {used} is used instead.',
  'server.database': 'The record is kept in {place}.',
  'server.attached': 'Another process already keeps the record in this folder; both work on it.',
  'server.elsewhere':
    'The files of the record stand in {folder}: PostgreSQL does not run as root, and under another name it cannot reach {asked}.',
  'server.pages-missing': 'The pages are not built yet ({folder} is missing): only the addresses below /api answer.',
  'server.open-to-network':
    'Careful: {host} can be reached from other machines and passwords would travel unprotected. Put a TLS proxy in front of it and give --address https://…',
  'server.clock':
    'For a rehearsal: this server believes that it is {now}. What is written now bears that time for good.',
  'server.clock-refused':
    'The option --clock is for tests and rehearsals on this machine alone: leave it out, or leave out --host, --address and DATABASE_URL.',
  'server.demo.withheld':
    'The demo district is not made here: it is for this machine alone, and never for a database that was given.',
  'server.demo.making': 'The district is empty; making the invented demo district…',
  'server.demo.made': '{entries, plural, one {# entry} other {# entries}} of the demo district stored in {seconds} s.',
  'server.demo.invented': 'District, people and visits of the demo are invented.',
  'server.demo.accounts': 'Demo accounts (password for each: {password})',
  'server.demo.inspector': 'inspector, {districts}',
  'server.demo.office': 'office, every district',
  'server.stop-how': 'Stop with Ctrl-C.',
  'server.stopping': 'Stopping; what was stored stays stored.',
  'server.stopped': 'Stopped.',
  'server.failed': 'Combside could not start: {why}',
  'server.usage':
    'Usage: start [--data FOLDER] [--port NUMBER] [--host ADDRESS] [--address URL] [--pack ID] [--web FOLDER] [--map FILE] [--clock INSTANT] [--demo]',
  'server.option-unknown': 'There is no option {option}.',
  'server.option-value': 'The option {option} needs a value that fits; given: {value}',
} as const;
