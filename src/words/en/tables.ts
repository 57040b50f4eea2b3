/** What is wrong in a table that was pasted or opened. */
export const TABLES = {
  'table.unreadable':
    'This is no table that can be read. Copy the cells from the spreadsheet and paste them again.',
  'table.no-rows': 'There are no lines under the first one.',
  'table.column-missing': 'The first line has no column “{text}”.',
  'table.column-unknown': 'Column {column}: “{text}” is no column of this table. It may have {choices}.',
  'table.column-twice': 'Column {column}: “{text}” is there twice.',
  'table.id-missing': 'Line {line}, column {column}: there is nothing, and something is needed here.',
  'table.id-twice': 'Line {line}, column {column}: “{text}” is there already.',
  'table.mark-unknown':
    'Line {line}, column {column}: “{text}” is no mark. Write X for on, (X) for a one-way that holds, ? where it is not sure, and nothing for off.',
  'table.word-unknown': 'Line {line}, column {column}: “{text}” cannot stand here. It may be {choices}.',
  'table.number-wrong': 'Line {line}, column {column}: “{text}” is no figure like 1.78 or 1,78.',
} as const;
