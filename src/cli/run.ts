/**
 * The commands of `npm run -s deck -- …`, on the same core as the app.
 * Exit codes: 0 done, 1 the deck has errors or nothing to ask, 2 the command or a file could not be used.
 */
import { FAMILIES } from '../core/questions/families/index.ts';
import { makeUnit } from '../core/unit/unit.ts';
import { makeSay } from '../words/words.ts';
import { askQuestions } from './ask.ts';
import { type Checked, checkAsData, checkFile, checkInWords, countOf } from './check.ts';
import { Failure } from './failure.ts';
import { table } from './layout.ts';
import { MOST_COUNT, MOST_SEED, numberOption, type Options, readOptions } from './options.ts';
import { questionAsData, questionInWords } from './question-text.ts';
import { onlyFile, readDeck } from './read-deck.ts';
import { solveAsData, solveDeck, solveInWords } from './solve.ts';

export type ExitCode = 0 | 1 | 2;

/** Where a command writes: results to `out`, one line for each complaint to `err`. */
export interface Streams {
  out(text: string): void;
  err(text: string): void;
}

interface Command {
  /** Names of options with a value. */
  readonly valued: readonly string[];
  run(options: Options, streams: Streams): ExitCode;
}

const say = makeSay(null);

const inData = (data: unknown) => JSON.stringify(data, null, 2);
const complain = (streams: Streams, failure: Failure) => streams.err(`deck: ${say(failure.phrase)}`);

/** All files are checked, also when one of them cannot be read. */
function check({ files, json }: Options, streams: Streams): ExitCode {
  if (files.length === 0) throw new Failure(2, 'cli.no-file', { command: 'check' });
  const checked: Checked[] = [];
  let code: ExitCode = 0;
  for (const file of files) {
    try {
      checked.push(checkFile(file));
    } catch (error) {
      if (!(error instanceof Failure)) throw error;
      complain(streams, error);
      code = 2;
    }
  }
  if (json) streams.out(inData(checkAsData(checked, say)));
  else if (checked.length > 0) streams.out(checked.map((each) => checkInWords(each, say)).join('\n\n'));
  const failed = checked.some(({ findings }) => countOf(findings, 'error') > 0);
  return code === 0 && failed ? 1 : code;
}

/** Solves whatever has the shape of a deck; that the deck has errors is said besides. */
function solve({ files, json }: Options, streams: Streams): ExitCode {
  const file = onlyFile('solve', files);
  const { deck, findings } = readDeck(file);
  const solved = solveDeck(deck);
  streams.out(json ? inData(solveAsData(solved)) : solveInWords(solved, say));
  const count = countOf(findings, 'error');
  if (count > 0) complain(streams, new Failure(1, 'cli.solve.errors', { file, count }));
  return 0;
}

function ask(options: Options, streams: Streams): ExitCode {
  const file = onlyFile('ask', options.files);
  const seed = numberOption(options, 'seed', 1, [0, MOST_SEED]);
  const count = numberOption(options, 'count', 1, [1, MOST_COUNT]);
  const { deck, findings } = readDeck(file);
  const errors = countOf(findings, 'error');
  if (errors > 0) throw new Failure(1, 'cli.ask.errors', { file, count: errors });
  const unit = makeUnit(deck);
  const { values } = options;
  const asked = { family: values.get('family'), fact: values.get('fact'), seed, count };
  const questions = askQuestions(unit, asked);
  const inDeck = makeSay(deck);
  streams.out(
    options.json
      ? inData(questions.map((question) => questionAsData(question, inDeck)))
      : questions.map((question) => questionInWords(question, unit, inDeck)).join('\n\n'),
  );
  return 0;
}

function families({ files, json }: Options, streams: Streams): ExitCode {
  if (files.length > 0) throw new Failure(2, 'cli.no-files', { command: 'families' });
  const rows = FAMILIES.map(({ id, level, form }) => ({
    id,
    level,
    form,
    title: say({ key: `family.${id}` }),
  }));
  streams.out(
    json ? inData(rows) : table(rows.map(({ id, level, form, title }) => [id, level, form, title])),
  );
  return 0;
}

const COMMANDS: ReadonlyMap<string, Command> = new Map([
  ['check', { valued: [], run: check }],
  ['solve', { valued: [], run: solve }],
  ['ask', { valued: ['family', 'seed', 'count', 'fact'], run: ask }],
  ['families', { valued: [], run: families }],
]);

function dispatch(args: readonly string[], streams: Streams): ExitCode {
  const [name, ...rest] = args;
  if (name === undefined) throw new Failure(2, 'cli.no-command', { known: [...COMMANDS.keys()] });
  const usage = (): ExitCode => {
    streams.out(say({ key: 'cli.usage' }));
    return 0;
  };
  if (['--help', '-h', 'help'].includes(name)) return usage();
  const command = COMMANDS.get(name);
  if (!command) throw new Failure(2, 'cli.unknown-command', { name, known: [...COMMANDS.keys()] });
  const options = readOptions(name, rest, command.valued);
  return options.help ? usage() : command.run(options, streams);
}

/** Runs one command line; every failure becomes one line. */
export function runDeck(args: readonly string[], streams: Streams): ExitCode {
  try {
    return dispatch(args, streams);
  } catch (error) {
    const failure =
      error instanceof Failure
        ? error
        : new Failure(2, 'cli.broken', { message: String(error).slice(0, 300) });
    complain(streams, failure);
    return failure.code;
  }
}
