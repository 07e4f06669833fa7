// The parts that many screens are made of.

export const partsText = {
  table: 'The figures in a table',
  needs_server: 'This needs the server, and there is no connection just now.',
  again: 'Try again',
};
