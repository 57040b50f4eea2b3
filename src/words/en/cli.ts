/** What the command line says. */
export const CLI = {
  'cli.usage': `Detent decks from the command line.

  npm run -s deck -- check FILE... [--json]   what is wrong with a deck (exit 1 on errors)
  npm run -s deck -- solve FILE [--json]      state, ratio, speeds and torques of every row
  npm run -s deck -- ask FILE [--family ID] [--fact ID] [--seed N] [--count K] [--json]
                                              whole questions, with answers and explanations
  npm run -s deck -- families [--json]        the question families, a line each

Exit codes: 0 done; 1 the deck has errors, or there is nothing to ask; 2 the command or a file cannot be used.`,
  'cli.no-command': 'No command given. Use one of {known}, or --help.',
  'cli.unknown-command': 'There is no command "{name}". Use one of {known}.',
  'cli.unknown-option': 'The command {command} has no option {option}. Use {known}.',
  'cli.flag-value': 'The option {option} takes no value. Leave out what follows the equals sign.',
  'cli.no-value': 'The option {option} needs a value after it.',
  'cli.option-twice': 'The option {option} is given twice. Leave one out.',
  'cli.bad-number':
    'The option {option} is "{text}". Give a whole number from {least, number, ::group-off} to {most, number, ::group-off}.',
  'cli.no-file': 'The command {command} needs a deck file: npm run -s deck -- {command} decks/kestrel-7.json',
  'cli.one-file': 'The command {command} takes one deck file. Leave out "{extra}".',
  'cli.no-files': 'The command {command} takes no file. Leave it out.',
  'cli.file-missing': 'There is no file {file}. Check the path.',
  'cli.file-folder': 'The path {file} is a folder. Name a deck file in it.',
  'cli.file-forbidden': 'The file {file} may not be read. Check its permissions.',
  'cli.file-device': 'The path {file} is not a file. Name a deck file.',
  'cli.file-large':
    'The file {file} is {size, number} bytes long, far too large for a deck. Name a deck file.',
  'cli.file-unread': 'The file {file} cannot be read ({code}). Check the path and the disk.',
  'cli.file-binary': 'The file {file} is not text. Give a deck: JSON text in UTF-8.',
  'cli.not-json': 'The file {file} is not JSON (line {line}, column {column}). Run check on it to see why.',
  'cli.not-a-deck':
    'The file {file} has not the shape of a deck ({count, plural, one {one finding} other {# findings}}). Run check on it to see them.',
  'cli.broken': 'Something in this program went wrong ({message}). Nothing was changed; please report it.',
  'cli.revision': 'revision {revision}',
  'cli.check.head':
    '{file}: {errors, plural, =0 {{warnings, plural, =0 {in order} one {one warning} other {# warnings}}} one {one error} other {# errors}}{errors, plural, =0 {} other {{warnings, plural, =0 {} one {, one warning} other {, # warnings}}}}',
  'cli.check.error': 'ERROR    {where}{line}  [{rule}]',
  'cli.check.warning': 'warning  {where}{line}  [{rule}]',
  'cli.check.line': ' (line {line, number, ::group-off})',
  'cli.check.found': 'found',
  'cli.check.expected': 'expected',
  'cli.solve.row': 'row',
  'cli.solve.on': 'on',
  'cli.solve.state': 'state',
  'cli.solve.ratio': 'ratio',
  'cli.solve.exact': 'exact',
  'cli.solve.output': 'output',
  'cli.solve.case': 'case',
  'cli.solve.drives': 'drives',
  'cli.solve.free': 'free',
  'cli.solve.output-held': 'output held',
  'cli.solve.tied-up': 'tied up',
  'cli.solve.unsolved': 'cannot be solved',
  'cli.solve.open': 'open',
  'cli.solve.holding': 'one-way {holding} holds',
  'cli.solve.speeds':
    'Speed of each shaft for one turn of the input. Minus turns against the input; "open" is not settled.',
  'cli.solve.torques':
    'Torque for 1 N·m on the input, without losses: what each element puts on the shaft after the colon, then what load and case put on the unit. Plus acts the way the input turns.',
  'cli.solve.indeterminate':
    '? is indeterminate: several elements share the load, and only their stiffness settles how.',
  'cli.solve.errors':
    'The deck {file} has {count, plural, one {an error} other {# errors}}. Run check on it to see {count, plural, one {it} other {them}}.',
  'cli.ask.no-family': 'There is no family "{family}". Use one of {known}.',
  'cli.ask.no-fact':
    'No question here is about "{fact}". Use one of {known}{more, plural, =0 {} other {, among others}}.',
  'cli.ask.nothing':
    'There is nothing fair to ask on this deck{family, select, all {} other { in the family {family}}}. Try another family or seed, or check what is marked unsure.',
  'cli.ask.errors':
    'The deck {file} has {count, plural, one {an error} other {# errors}}, so nothing is asked from it. Run check on it and put that right first.',
  'cli.ask.seed': 'seed {seed}',
  'cli.ask.answer': 'answer',
  'cli.ask.guess': 'guessing',
  'cli.ask.why': 'why',
  'cli.ask.more': 'more',
  'cli.ask.slip-up': 'slip-up',
  'cli.ask.caution': 'CAUTION',
  'cli.ask.guess-rate': '{rate, number, ::percent .0}',
  'cli.ask.train': 'The gear train is shown with {count, plural, =0 {nothing} other {{applied}}} on.',
  'cli.ask.drawing': 'Drawn: {title}.',
  'cli.ask.form-set': 'Tick all that are right:',
  'cli.ask.form-one': 'Pick one:',
  'cli.ask.form-order': 'Put in order, from {first} to {last}:',
  'cli.ask.form-number':
    '{tolerance, select, 0 {Enter a whole number.} other {Enter a number{unit, select, none {} other { in {unit}}}, right within {tolerance}{signed, select, yes {, with its sign} other {}}.}}',
  'cli.ask.form-pair': 'Give each one of: {right}',
  'cli.ask.form-place': 'Pick one of the places on the drawing:',
  'cli.ask.form-fill': 'Fill the cells marked ? with one of: {marks}',
} as const;
